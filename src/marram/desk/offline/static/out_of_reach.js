// The page without the desk: the book, finding, the groups of the day, and what is recorded here until it arrives.

import { readModel } from "/static/rulings/finding_model.js";
import { text } from "/static/shell/words.js";
import { readBook } from "./book.js";
import { openBook } from "./book_pages.js";
import { element, listed } from "./element.js";
import { placesOn } from "./map_page.js";
import { readMap } from "./map_read.js";
import { recordForm, waitingList } from "./recording_here.js";
import { send } from "./waiting.js";

const panel = document.getElementById("panel");

async function fetched(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
}

async function open() {
  if ("serviceWorker" in navigator) {
    navigator.serviceWorker.addEventListener("message", ({ data }) => {
      if (data === "filled") document.getElementById("held").textContent = text("held");
    });
    await navigator.serviceWorker.register("/service-worker.js").catch(() => {});
    navigator.serviceWorker.ready.then(({ active }) => navigator.onLine && active.postMessage("fill"));
  }
  const event = await fetched("/api/offline/event").catch(() => null);
  const shown = () => waitingList(document.getElementById("waiting"), event, shown);
  await shown();
  addEventListener("online", () => send().then(shown));
  send().then(shown);
  const [plain, model] = await Promise.all(["/api/offline/book", "/api/finding/model"].map(fetched)).catch(() => []);
  if (!plain) {
    panel.removeAttribute("aria-busy");
    panel.replaceChildren(element("h1", { textContent: document.title, tabIndex: -1 }), element("p", { textContent: text("not_held") }));
    return;
  }
  const map = await fetched("/api/offline/map").then(readMap).catch(() => null); // without it the rest works
  const book = readBook(plain);
  const places = placesOn(map, book);
  const after = (step) => (step.incident ? recordForm(event, step, shown, places.hole) : null);
  openBook({ book, model: readModel(model), panel, title: document.title, after, places });
  panel.removeAttribute("aria-busy");
  const groups = (event?.groups ?? []).map((one) => `${one.number} · ${one.starts_at} · ${one.players.map((player) => player.name).join(", ")}`);
  document.getElementById("groups").append(listed(groups));
}

open();
