// The list of incidents changes while one types: a tap meant for the entry that stood there must not take the one that
// has come in its place. An entry that stayed where it was, or that came where nothing stood, is taken at once.

const SEEN = 350; // ms until a changed list was seen, so that a tap on it is meant for what stands there (own choice)

let before = []; // where each entry stood before the list changed last
let now = []; // where each stands
let changed = 0; // when
let links = "";
let pressed = false; // a finger is on the list

const list = () => document.getElementById("incidents");
const entries = () => [...document.querySelectorAll("#incidents a[href]")];
const leads = (link) => link.pathname + link.search.replace(/&said=[^&]*/, "");

const typing = () => document.activeElement?.id === "q";

export function watchList() {
  links = entries().map(leads).join(" ");
  document.addEventListener("focusin", () => (now = typing() ? standing() : []));
  if (typing()) now = standing();
  new MutationObserver(() => {
    const found = entries().map(leads).join(" ");
    if (found === links) return;
    links = found;
    changed = typing() ? Date.now() : 0;
    if (!changed) return; // nothing is measured that nobody asks for: it would draw the page before its time
    before = now;
    now = standing();
    showNew();
  }).observe(document.body, { childList: true, subtree: true });
  for (const up of ["pointerup", "pointercancel"]) {
    document.addEventListener(up, () => setTimeout(() => (pressed = false)), true);
  }
  // While a finger is on the list no other takes its place.
  document.body.addEventListener("htmx:beforeSwap", (event) => {
    if (pressed && event.detail.target.id === "incidents") event.detail.shouldSwap = false;
  });
}

// A finger goes down: whether another entry stood there so shortly ago that it may be the one that is meant.
export function otherStoodThere({ target, clientX, clientY }) {
  pressed = Boolean(target.closest?.("#incidents"));
  const link = target.closest?.("#incidents a[href]");
  if (!link || Date.now() >= changed + SEEN) return false;
  const [x, y] = [clientX + window.scrollX, clientY + window.scrollY];
  const stood = before.find((one) => one.left <= x && x <= one.right && one.top <= y && y <= one.bottom);
  return Boolean(stood) && stood.to !== leads(link);
}

function standing() {
  return entries().map((link) => {
    const { left, right, top, bottom } = link.getBoundingClientRect();
    const [x, y] = [window.scrollX, window.scrollY];
    return { to: leads(link), left: left + x, right: right + x, top: top + y, bottom: bottom + y };
  });
}

// The list itself tells that it has just changed.
function showNew() {
  const left = changed + SEEN - Date.now();
  list()?.classList.toggle("new", left > 0);
  if (left > 0) setTimeout(showNew, left);
}
