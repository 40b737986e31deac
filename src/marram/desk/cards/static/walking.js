// A walking scorer's phone: what is told is on the phone first, goes to the desk when it is in reach, and arrives once, as each
// hole has the identifier it was told with. The whole round is on the page, so that the next hole needs no network.

const forms = [...document.querySelectorAll(".walked")];
const links = [...document.querySelectorAll(".walk-holes a")];
const said = document.getElementById("waits");
const AGAIN = 15000; // milliseconds until what waits is tried again (own choice)
const key = `walk ${location.pathname}`;
const toldKey = `walked ${location.pathname}`; // what arrived, for a page that was kept before it did
let sending = false;
let refused = "";

const waiting = () => JSON.parse(localStorage.getItem(key) ?? "{}");

function tell() {
  const count = Object.keys(waiting()).length;
  said.textContent = refused || (count ? said.dataset.waits.replace("{count}", count) : "");
}

function keep(hole, body) {
  const all = waiting();
  if (body === null) delete all[hole];
  else all[hole] = body;
  localStorage.setItem(key, JSON.stringify(all));
}

const arrived = () => JSON.parse(localStorage.getItem(toldKey) ?? '{"upto":0,"holes":{}}');

function fillIn(hole, body) {
  const form = forms.find((one) => one.dataset.hole === hole);
  for (const [name, value] of new URLSearchParams(body)) {
    const field = form && !["seen", "tapped", "hole", "csrf"].includes(name) ? form.elements[name] : null;
    if (field) field.value = value;
  }
  links.find((one) => one.dataset.hole === hole)?.classList.add("told");
}

function showHole(hole) {
  for (const form of forms) form.hidden = form.dataset.hole !== hole;
  for (const link of links) {
    if (link.dataset.hole === hole) link.setAttribute("aria-current", "true");
    else link.removeAttribute("aria-current");
  }
  for (const one of document.querySelectorAll(".taken")) one.classList.remove("taken"); // this page is the one it led to
  history.replaceState(null, "", `?hole=${hole}`);
  scrollTo(0, 0);
}

async function send() {
  if (sending) return;
  sending = true;
  try {
    for (const [hole, body] of Object.entries(waiting())) {
      const answer = await fetch(location.pathname, {
        method: "POST",
        headers: { "Content-Type": "application/x-www-form-urlencoded", Accept: "application/json" },
        body,
      });
      if (!answer.ok) {
        if (answer.status < 500) refused = said.dataset.refused;
        return;
      }
      refused = "";
      const { upto } = await answer.json();
      localStorage.setItem(toldKey, JSON.stringify({ upto, holes: { ...arrived().holes, [hole]: body } }));
      if (waiting()[hole] === body) keep(hole, null); // told anew meanwhile: that one is sent next
      for (const form of forms) form.elements.seen.value = upto;
    }
  } catch (error) {
    if (!(error instanceof TypeError)) throw error; // out of reach: it waits on
  } finally {
    sending = false;
    tell();
  }
}

for (const [place, form] of forms.entries()) {
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    keep(form.dataset.hole, new URLSearchParams(new FormData(form)).toString());
    form.elements.tapped.value = crypto.randomUUID();
    links[place].classList.add("told");
    tell();
    showHole(forms[(place + 1) % forms.length].dataset.hole);
    send();
  });
}

for (const link of links) {
  link.addEventListener("click", (event) => {
    event.preventDefault();
    showHole(link.dataset.hole);
  });
}

addEventListener("online", send);
setInterval(send, AGAIN);
const before = arrived();
for (const [hole, body] of Object.entries(before.holes)) {
  if (forms.some((form) => Number(form.elements.seen.value) < before.upto)) fillIn(hole, body);
}
for (const form of forms) form.elements.seen.value = Math.max(before.upto, Number(form.elements.seen.value));
for (const [hole, body] of Object.entries(waiting())) fillIn(hole, body);
tell();
send();

// Out of reach the page opens again from the phone, once it was opened with the desk in reach.
if ("serviceWorker" in navigator) {
  navigator.serviceWorker.addEventListener("message", ({ data }) => {
    if (data === "kept") document.documentElement.dataset.kept = "yes";
  });
  await navigator.serviceWorker.register("/service-worker.js").catch(() => {});
  const { active } = await navigator.serviceWorker.ready;
  if (navigator.onLine) for (const path of ["/walk", location.pathname]) active.postMessage({ keep: path });
}
