// One tap, one answer. After a choice nothing is taken until the page it leads to stands there and had time to be
// seen: a second tap of the same hand would fall on another question. That a tap was taken is shown at once, and that
// one was not; where the desk is out of reach that is said, and the choice is kept and made again as soon as it can be.

import { otherStoodThere, watchList } from "./changed_list.js";
import { controlAt, controlsNear, tellNotTaken } from "./not_taken.js";

const SEEN = 350; // ms a new page stands there before a tap on it can be meant for it (own choice)
const APART = 750; // ms: taps nearer to each other than this are one double tap (slowest seen: 700)
const NEAR = 64; // CSS pixels: the second tap of one hand falls no farther from the first (own choice: a thumb's breadth)
const CHOICES = ":is(#panel, #conditions) :is(a[href], button, summary, label)";
const AGAIN = 2000; // ms until a choice that could not be sent is tried again; doubled each time
const AGAIN_AT_MOST = 30_000;
const SENT = "sent"; // what was chosen and where, until its page is there: a reload loses neither
const LAST = "tapped"; // when and where the last choice was made, for the page that is loaded next

let waiting = false; // a choice is on its way
let taken = null; // the control of the choice made last
let refused = null; // why the pointer that went down takes nothing; null where it does
let down = {}; // where it went down
let free = 0; // when the next tap is taken
let freeHere = 0; // when one near the last is
let kept = null; // makes a choice again that could not be sent
let again = AGAIN;
let timer = 0;
let freed = 0; // what lets the page take taps again

const panel = () => document.getElementById("panel");

export function guardTaps() {
  document.addEventListener("pointerdown", (event) => {
    refused = refusal(event);
    down = { x: event.clientX, y: event.clientY };
    if (refused) tellNotTaken(controlAt(panel(), CHOICES, event), refused);
  }, true);
  document.addEventListener("click", (event) => tapped(event), true);
  const { body } = document;
  body.addEventListener("htmx:beforeRequest", (event) => {
    if (leadsOn(event)) sent(event);
    else if (waiting) event.preventDefault(); // a list of a page that is being left
  });
  watchList();
  body.addEventListener("htmx:afterSwap", () => waiting && panel()?.classList.add("still"));
  body.addEventListener("htmx:afterSettle", (event) => leadsOn(event) && arrived());
  for (const lost of ["htmx:sendError", "htmx:timeout"]) {
    body.addEventListener(lost, (event) => leadsOn(event) && unsent());
  }
  for (const refused of ["htmx:responseError", "htmx:swapError", "htmx:sendAbort"]) {
    body.addEventListener(refused, (event) => leadsOn(event) && released());
  }
  document.addEventListener("moved", () => wait({ at: Date.now(), x: -Infinity, y: -Infinity }));
  window.addEventListener("online", () => kept?.());
  sendKept();
  const since = () => wait(lastTap());
  window.addEventListener("pageshow", (event) => event.persisted && since());
  since();
}

// Whether the pointer went down on a page that stood there long enough, and that waits for nothing.
export const wasMeant = () => !waiting && !refused;

// Why a pointer that goes down takes nothing: "again" for the second tap of one hand, which needs no words.
function refusal(event) {
  const { at, x, y } = lastTap();
  const now = Date.now();
  const again = at && now < at + APART && Math.hypot(event.clientX - x, event.clientY - y) < NEAR;
  const changed = otherStoodThere(event);
  const why = waiting ? "answering" : now < free ? "new" : changed ? "changed" : null;
  if (again) return why || now < freeHere ? "again" : null;
  return why;
}

// When and where a choice was last made by hand; none in a time that a clock set back has not reached.
function lastTap() {
  const last = JSON.parse(sessionStorage.getItem(LAST) ?? "{}");
  return last.at <= Date.now() ? last : {};
}

// Whether a request of htmx leads to another page, rather than filling a list on this one.
function leadsOn(event) {
  return event.detail.target?.id === "panel";
}

function tapped(event) {
  const choice = event.target.closest?.(CHOICES);
  if (!choice) return;
  const byHand = event.detail > 0; // a key or a script gives no count of taps, and meets what has the focus
  if (waiting || (byHand && !wasMeant())) {
    event.preventDefault();
    event.stopImmediatePropagation();
    return;
  }
  taken = choice;
  if (choice.matches("a[href], button:not([type=button])")) choice.classList.add("taken"); // seen at once, whatever the desk and the network do
  if (byHand) sessionStorage.setItem(LAST, JSON.stringify({ at: Date.now(), ...down }));
  else sessionStorage.removeItem(LAST);
}

function sent(event) {
  const { elt, requestConfig } = event.detail;
  const submitter = requestConfig.triggeringEvent?.submitter;
  const control = submitter ?? (elt.matches("form") ? taken : elt);
  forget();
  waiting = true;
  kept = () => {
    clearTimeout(timer);
    if (waiting || !elt.isConnected) return;
    if (elt.matches("form")) elt.requestSubmit(submitter ?? null);
    else elt.click();
  };
  sessionStorage.setItem(SENT, JSON.stringify({ from: here(), to: event.detail.pathInfo.finalRequestPath }));
  for (const one of panel().querySelectorAll(".htmx-request")) if (one !== elt) window.htmx.trigger(one, "htmx:abort");
  control?.classList.add("taken");
  panel().setAttribute("aria-busy", "true");
  panel().classList.add("still");
}

function arrived() {
  waiting = false;
  sessionStorage.removeItem(SENT);
  kept = null;
  again = AGAIN;
  clearTimeout(timer);
  tell("");
  wait(lastTap());
}

// Leave a page alone until it had time to be seen, and what is near the last tap until a double tap would be over.
function wait(last) {
  const now = Date.now();
  free = last.at ? now + SEEN : 0;
  freeHere = last.at ? Math.max(free, last.at + APART) : 0;
  clearTimeout(freed);
  hold();
  function hold() {
    const [whole, here] = [free - Date.now(), freeHere - Date.now()];
    if (whole > 0 || !waiting) panel()?.classList.toggle("still", whole > 0);
    const near = here > 0 ? controlsNear(panel(), CHOICES, last, NEAR) : [];
    for (const one of document.querySelectorAll(".held")) one.classList.toggle("held", near.includes(one));
    for (const one of near) one.classList.add("held");
    const next = whole > 0 ? whole : here;
    panel()?.classList.toggle("fresh", next > 0); // some tap is not taken yet
    if (next > 0) freed = setTimeout(hold, next);
  }
}

// The desk answered with nothing to show: the page stands as it was, and the next tap is taken.
function released() {
  waiting = false;
  sessionStorage.removeItem(SENT);
  kept = null;
  panel().removeAttribute("aria-busy");
  panel().classList.remove("still");
}

function unsent() {
  waiting = false;
  panel().removeAttribute("aria-busy");
  panel().classList.remove("still");
  tell(document.getElementById("reach").dataset.words);
  timer = setTimeout(() => kept?.(), again);
  again = Math.min(2 * again, AGAIN_AT_MOST);
}

// What was chosen before this page was loaded anew, and has not arrived, is chosen again; once, for its page is an address.
function sendKept() {
  const { from, to } = JSON.parse(sessionStorage.getItem(SENT) ?? "{}");
  if (!to || from !== here() || !panel()) {
    sessionStorage.removeItem(SENT);
    return;
  }
  const link = Object.assign(document.createElement("a"), { href: to, hidden: true });
  panel().append(link);
  const send = () => link.isConnected && link.click();
  if (document.readyState === "complete") send();
  else window.addEventListener("load", send);
}

const here = () => `${location.pathname}${location.search}`;

function forget() {
  clearTimeout(timer);
  kept = null;
  for (const one of document.querySelectorAll(".taken")) one.classList.remove("taken");
}

function tell(words) {
  const reach = document.getElementById("reach");
  if (reach.textContent !== words) reach.textContent = words;
}
