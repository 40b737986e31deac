// The drawings of a ruling come after its words: asked for once the page stands, and set into the folds of its options.
// One that could not be fetched is asked for again as soon as somebody wants to see it or the desk is in reach.

let asked = { of: null, arrival: null }; // the options last asked for, and what tells whether their drawings are there

// Return whether every drawing of the page stands in it; they are fetched if they do not.
export function drawn() {
  const options = document.querySelector("[data-drawings]");
  if (!options?.querySelector("figure[data-drawing]")) return Promise.resolve(true);
  if (asked.of !== options) asked = { of: options, arrival: fetched(options).catch(() => missing(options)) };
  return asked.arrival;
}

async function fetched(options) {
  const answer = await fetch(options.dataset.drawings, { priority: "low" });
  if (!answer.ok) throw new Error(String(answer.status));
  return setIn(options, await answer.text());
}

function setIn(options, markup) {
  const page = new DOMParser().parseFromString(markup, "text/html");
  for (const figure of page.querySelectorAll("figure[data-drawing]")) {
    const place = options.querySelector(`figure[data-drawing="${figure.dataset.drawing}"]`);
    place?.replaceChildren(...figure.childNodes);
    place?.removeAttribute("data-drawing");
  }
  return !options.querySelector("figure[data-drawing]");
}

// A page that is printed by the browser's own key waits for nothing but what answers before the next line: so it is asked.
export function drawnAtOnce() {
  const options = document.querySelector("[data-drawings]");
  if (!options?.querySelector("figure[data-drawing]")) return;
  const asking = new XMLHttpRequest();
  asking.open("GET", options.dataset.drawings, false);
  try {
    asking.send();
    if (asking.status === 200 && setIn(options, asking.responseText)) return;
  } catch {
    // out of reach: said below
  }
  missing(options);
}

function missing(options) {
  for (const place of options.querySelectorAll("figure[data-drawing]")) place.textContent = options.dataset.missing;
  if (asked.of === options) asked = { of: null, arrival: null };
  return false;
}

document.addEventListener("toggle", ({ target }) => target.matches?.(".measures[open]") && drawn(), true);
// What was on its way when the desk came in reach may have been sent before it was, and then fails: it is asked for once more.
addEventListener("online", async () => (await drawn()) || drawn());
