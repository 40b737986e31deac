// What others record, shown as it happens. EventSource takes up a cut connection by itself and says what it heard last.

import { text } from "/static/shell/words.js";
import { listening } from "./listening.js";
import { showAsked, showHanded, showPlay } from "./play.js";

const state = document.getElementById("live");
const MOST = 8;

function line(at, parts, headline = "", strong = "") {
  const words = document.createElement("span");
  if (strong) {
    const name = document.createElement("strong");
    name.textContent = strong;
    words.append(name, " ");
  }
  words.append(parts.filter(Boolean).join(strong ? ", " : " · "));
  if (headline) {
    const help = document.createElement("span");
    help.className = "help";
    help.textContent = headline;
    words.append(help);
  }
  const time = document.createElement("span");
  time.className = "at";
  time.textContent = at;
  return [time, " ", words];
}

function hole(number) {
  return number ? text("hole", { hole: number }) : "";
}

function entry(told) {
  showHanded(told);
  const list = document.getElementById("entries");
  if (!list || list.querySelector(`[data-number="${told.number}"]`)) return;
  const item = document.createElement("li");
  item.dataset.number = told.number;
  item.className = "new";
  const linked = "links" in list.dataset;
  const link = document.createElement(linked ? "a" : "div");
  if (linked) link.href = `/log/${told.number}`;
  link.append(...line(told.at, [hole(told.hole), told.player, told.title], told.headline));
  item.append(link);
  list.prepend(item);
  while (list.children.length > MOST) list.lastElementChild.remove();
  list.closest("section").hidden = false;
  document.getElementById("nothing").hidden = true;
}

function fill(list, items, none, away) {
  if (!list) return;
  list.replaceChildren(
    ...items.map((parts) => {
      const item = document.createElement("li");
      item.append(...parts);
      return item;
    }),
  );
  if (none) none.hidden = items.length > 0;
  if (away) away.hidden = items.length === 0;
}

function where(told) {
  const items = told.map((one) => line(one.at, [hole(one.hole), one.words], "", one.name));
  fill(document.getElementById("places"), items, document.getElementById("nowhere"), null);
}

function cases(told) {
  const items = told.map((one) => line(one.at, [one.title || text("begun"), one.by]));
  fill(document.getElementById("cases"), items, null, document.getElementById("open"));
}

const shows = Object.entries({ entry, where, cases, play: showPlay, asked: showAsked }).map(([name, show]) => [
  name,
  (event) => {
    if (event.lastEventId) state.dataset.after = event.lastEventId;
    show(JSON.parse(event.data));
  },
]);
listening(() => `/api/live?after=${state.dataset.after}`, {
  ...Object.fromEntries(shows),
  again: () => location.reload(),
  open: () => {
    state.textContent = "";
    state.dataset.open = "yes";
  },
  error: () => {
    state.textContent = state.dataset.cut;
  },
});
