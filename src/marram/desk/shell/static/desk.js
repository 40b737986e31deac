// The page around the map: focus after a step, drafts of typed numbers, and the start of the map.

import { startMap } from "./map.js";
import "./sharing.js";
import { guardTaps } from "./taps.js";
import { drawn } from "./drawings.js";
import { wholeScreen } from "./whole_screen.js";

guardTaps();
wholeScreen();
const map = document.getElementById("map") ? startMap() : null;

const PATIENCE = 10_000; // ms that what a page needs later waits for its map

function arrived() {
  keepDrafts();
  drawn();
  return map?.sync();
}

document.body.addEventListener("htmx:afterSettle", (event) => {
  if (event.detail.target.id !== "panel" && !document.getElementById("panel")?.contains(event.detail.target)) return;
  if (event.detail.target.id === "incidents") return;
  arrived();
  // A screen reader reads on from the new heading; the page does not jump for the others.
  document.getElementById("heading")?.focus({ preventScroll: true });
});

// What happened is found while it is typed, without waiting for the desk.
for (const kind of ["focusin", "input"]) {
  document.addEventListener(kind, async ({ target }) => {
    if (!target.matches?.("#q")) return;
    const finding = await import("../rulings/finding.js");
    if (kind === "input") finding.find(target);
    else finding.prepare();
  });
}

// A refused request still has a page that says why.
document.body.addEventListener("htmx:beforeSwap", (event) => {
  if (event.detail.xhr.status >= 400) {
    event.detail.shouldSwap = false;
    const page = event.detail.pathInfo.finalRequestPath ?? event.detail.pathInfo.requestPath;
    window.location.assign(page);
  }
});

// What is typed but not yet sent survives a reload.
function keepDrafts() {
  for (const field of document.querySelectorAll("[data-draft]")) {
    const key = `draft ${location.pathname}${location.search} ${field.name}`;
    const kept = sessionStorage.getItem(key);
    if (kept !== null) field.value = kept;
    field.addEventListener("input", () => sessionStorage.setItem(key, field.value));
    field.form?.addEventListener("submit", () => sessionStorage.removeItem(key));
  }
}

// What keeps the desk on this phone, and sends what waits on it, comes when the map has all it needs.
Promise.race([arrived(), new Promise((resolve) => setTimeout(resolve, PATIENCE))]).finally(() => {
  const start = () => import("../offline/here.js");
  if (window.requestIdleCallback) window.requestIdleCallback(start, { timeout: PATIENCE });
  else start();
});
