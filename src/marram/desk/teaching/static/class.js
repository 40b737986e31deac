// A page of a class shows itself anew where the class has gone on, and the teacher's also where somebody answered.

const page = document.getElementById("class");
const { live, state, answered } = page.dataset;
let source = null;

function heard({ data }) {
  const now = JSON.parse(data);
  const more = answered !== undefined && String(now.answered) !== answered;
  if (now.state !== state || more) location.reload();
}

// A page that is not looked at keeps no connection; it hears how the class stands as soon as it is looked at again.
function listen() {
  source?.close();
  source = null;
  if (document.hidden) return;
  source = new EventSource(live);
  source.addEventListener("class", heard);
}

document.addEventListener("visibilitychange", listen);
addEventListener("pagehide", () => source?.close());
listen();
