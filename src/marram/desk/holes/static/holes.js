// Hole locations: choose a hole, drag or type where it is cut, see what it means, save the day as a version.

import { busyWith } from "/static/shell/busy.js";
import { countText, text } from "/static/shell/words.js";
import { answered, LookQueue } from "./holes_asking.js";
import { HoleDraft } from "./holes_draft.js";
import { GreenPicture } from "./holes_green.js";
import { signed } from "/static/shell/signed.js";

const find = (id) => document.getElementById(id);
const page = find("setting");
const { day, query } = page.dataset;
const GRAVE = new Set(["off_green", "too_steep", "near_severe_slope"]);
const draft = new HoleDraft(page.dataset.course, day);
let told = null; // the last answer of /api/holes
let greens = new Map();
let chosen = null;
let theirs = {}; // what others saved of holes that we moved too
let seed = 0;
const aims = new Map(); // where arrow keys lead, by hole, until the desk has answered
const typing = new Set(); // fields with numbers that are not taken over yet

const picture = new GreenPicture(find("green"), { dragged, dropped, nudged, cancelled: () => show() });

function address(path, more = {}) {
  const all = new URLSearchParams(query);
  for (const [key, value] of Object.entries(more)) all.set(key, value);
  return `${path}${all.size ? `?${all}` : ""}`;
}

async function load() {
  told = await answered(fetch(address(`/api/holes/${day}`)));
  greens = new Map(told.greens.map((one) => [one.hole, one]));
}

// Showing

function words(look) {
  if (!look) return text("none_proposed");
  if (!look.on_green) return text("off_green");
  const numbers = { front: look.paces_from_front, side: look.paces_from_side, which: text(`side.${look.side}`) };
  const place = text(look.side === "centre" ? "place.centre" : "place", numbers);
  return look.slope ? `${place} · ${look.slope}` : place;
}

function show() {
  const look = draft.now.get(chosen);
  picture.draw(greens.get(chosen), look, theirs[chosen]);
  const { par, depth } = greens.get(chosen);
  find("hole-title").textContent = text(par ? "hole_par_green" : "hole_green", { hole: chosen, par, depth });
  showLook(look);
  fill("front", look?.paces_from_front ?? "");
  fill("side", look?.paces_from_side ?? "");
  if (look?.on_green) fill("which", look.side);
  find("side").disabled = find("which").value === "centre";
  const days = greens.get(chosen).recent.map((one) => one.day).filter(Boolean);
  find("recent").textContent = days.length ? text("recent", { days: days.join(", ") }) : "";
  strip();
  state();
}

// An answer that comes late never overwrites what is being typed.
function fill(id, value) {
  if (!typing.has(id)) find(id).value = value;
}

function showLook(look) {
  find("numbers").textContent = words(look);
  find("warnings").replaceChildren(
    ...(look?.warnings ?? []).map((one) => {
      const item = document.createElement("li");
      item.textContent = one.words;
      if (GRAVE.has(one.kind)) item.className = "grave";
      return item;
    }),
  );
  if (!look) {
    const why = told.without[chosen];
    if (why) find("numbers").textContent = text("without", { why });
  }
}

function strip() {
  const box = find("hole-strip");
  if (!box.children.length) {
    for (const hole of greens.keys()) {
      const button = document.createElement("button");
      button.type = "button";
      button.dataset.hole = hole;
      button.addEventListener("click", () => choose(hole));
      box.append(button);
    }
  }
  for (const button of box.children) {
    const hole = Number(button.dataset.hole);
    const look = draft.now.get(hole);
    const warned = look?.warnings.length > 0 || !look;
    const moved = draft.isMoved(hole);
    button.setAttribute("aria-pressed", hole === chosen);
    button.classList.toggle("moved", moved);
    button.innerHTML = `<span class="hidden">${text("hole")} </span>${hole}${warned ? `<span class="mark" aria-hidden="true">!</span><span class="hidden">, ${text("look_at_it")}</span>` : ""}${moved ? `<span class="hidden">, ${text("not_saved_yet")}</span>` : ""}`;
  }
}

function choose(hole) {
  chosen = hole;
  typing.clear();
  show();
  find("hole-strip").querySelector(`[data-hole="${hole}"]`).scrollIntoView({ block: "nearest", inline: "center" });
}

function state() {
  const count = draft.moved().size;
  find("undo").disabled = !draft.past.length;
  find("redo").disabled = !draft.future.length;
  let said = text("saved", { version: told.base });
  if (!told.base) said = countText("proposed", draft.now.size);
  else if (count) said = countText("changed", count);
  find("changes").textContent = said;
  find("kept-offer").hidden = !draft.restored;
  find("save").disabled = page.dataset.kept !== "yes" || !toSave().size;
}

// What a save holds: what was moved, and on a new day what is proposed too.
function toSave() {
  return told.base ? draft.moved() : new Map(draft.now);
}

const looks = new LookQueue(
  find("green"),
  (place) => answered(fetch(address(`/api/holes/${day}/look`, place))),
  (error) => (error ? complain(text("cannot_be"), error.faults ?? [text("no_desk.moved")]) : complain("", [])),
);

function dragged(x, y) {
  const hole = chosen;
  looks.ask({ hole, x, y }, (found) => found && hole === chosen && showLook(found));
}

function dropped(x, y) {
  settle({ hole: chosen, x, y });
}

function nudged(right, up, big) {
  const at = aims.get(chosen) ?? draft.now.get(chosen);
  if (!at) return;
  const step = (greens.get(chosen).pace / 2) * (big ? 4 : 1);
  const aim = { x: at.x + right * step, y: at.y - up * step };
  aims.set(chosen, aim); // quick presses add up before the first is answered
  settle({ hole: chosen, ...aim });
}

function settle(place) {
  looks.ask(place, (found) => {
    aims.delete(place.hole);
    if (found?.on_green) draft.set(found.hole, found);
    else if (found) complain(text("is_off"), [text("stays", { hole: found.hole })]);
    show();
    if (found?.on_green) find("moved-words").textContent = [text("moved", { hole: found.hole, place: words(found) }), ...found.warnings.map((one) => one.words)].join(" ");
  });
}

function typed() {
  find("side").disabled = find("which").value === "centre";
  const [front, side, which] = [find("front").value, find("side").value, find("which").value];
  if (front === "" || (which !== "centre" && side === "")) return;
  settle({ hole: chosen, front, side: side || 0, which });
}

for (const id of ["front", "side", "which"]) {
  find(id).addEventListener("input", () => typing.add(id));
  find(id).addEventListener("change", () => {
    typing.delete(id);
    typed();
  });
}
find("undo").addEventListener("click", () => step("undo"));
find("redo").addEventListener("click", () => step("redo"));
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z" || event.target.closest("input, select")) return;
  event.preventDefault();
  step(event.shiftKey ? "redo" : "undo");
});

function step(way) {
  const hole = draft[way]();
  if (hole) chosen = hole;
  show();
}

find("propose").addEventListener("click", () => busyWith(find("green"), propose));

async function propose() {
  seed += 1;
  find("propose").disabled = true;
  try {
    const other = await answered(fetch(address(`/api/holes/${day}`, { seed })));
    draft.setAll(Object.values(other.proposed));
    show();
    find("moved-words").textContent = text("others");
  } catch (error) {
    complain(text("not_proposed"), error.faults ?? [text("no_desk")]);
  }
  find("propose").disabled = false;
}

find("throw-away").addEventListener("click", () => {
  draft.throwAway();
  theirs = {};
  complain("", []);
  show();
});

function complain(title, faults, ...more) {
  const box = find("setting-faults");
  box.hidden = !faults.length;
  if (!faults.length) return;
  const heading = document.createElement("h2");
  heading.textContent = title;
  const list = document.createElement("ul");
  for (const fault of faults) list.append(Object.assign(document.createElement("li"), { textContent: fault }));
  box.replaceChildren(heading, list, ...more);
  if (more.length) box.focus();
}

// Saving, and what others saved meanwhile

find("save-form").addEventListener("submit", (event) => {
  event.preventDefault();
  busyWith(find("save-form"), save);
});

async function save() {
  const moved = Object.fromEntries([...toSave()].map(([hole, at]) => [hole, [at.longitude, at.latitude]]));
  const body = { base: draft.base, who: find("who").value, note: find("note").value, moved };
  find("save").disabled = true;
  try {
    const saved = await answered(
      fetch(address(`/api/holes/${day}`), { method: "POST", headers: signed({ "Content-Type": "application/json" }), body: JSON.stringify(body) }),
    );
    draft.forget();
    location.assign(address(`/holes/${day}`, { saved: saved.version.number }));
    return;
  } catch (error) {
    if (error.status === 409) await conflict(error.body);
    else complain(text("not_saved"), error.faults ?? [text("no_desk.save")], document.createElement("span"));
  }
  state();
}

async function conflict(body) {
  theirs = body.theirs;
  await load(); // what they saved of other holes is shown from now on
  draft.rebase(told, Object.keys(theirs).map(Number));
  const list = document.createElement("ul");
  list.className = "conflict";
  for (const hole of Object.keys(theirs).map(Number)) list.append(side(hole, body.latest.who));
  choose(Number(Object.keys(theirs)[0]));
  complain(text("conflict"), body.error.faults, list);
}

function side(hole, who) {
  const item = document.createElement("li");
  const both = document.createElement("p");
  both.textContent = text("both", { hole, who, theirs: words(theirs[hole]), yours: words(draft.now.get(hole)) });
  const row = document.createElement("p");
  row.className = "row";
  const decide = (label, act) => {
    const button = Object.assign(document.createElement("button"), { type: "button", className: "quiet-button", textContent: label });
    button.addEventListener("click", () => {
      act();
      delete theirs[hole];
      item.remove();
      if (!Object.keys(theirs).length) {
        complain("", []);
        find("save").focus();
      }
      choose(hole);
    });
    row.append(button);
  };
  decide(text("keep_mine", { hole }), () => {});
  decide(text("take_theirs", { who }), () => draft.set(hole, told.saved[hole]));
  item.append(both, row);
  return item;
}

// Tomorrow and today by the clock of whoever reads, in whatever zone they are.
function nearDays() {
  const words = JSON.parse(find("near-days").dataset.words);
  const now = new Date();
  for (const [name, ahead] of [["today", 0], ["tomorrow", 1]]) {
    const link = find("near-days").querySelector(`[data-near=${name}]`);
    const on = new Date(now.getFullYear(), now.getMonth(), now.getDate() + ahead);
    const iso = [on.getFullYear(), String(on.getMonth() + 1).padStart(2, "0"), String(on.getDate()).padStart(2, "0")].join("-");
    link.href = `/holes/${iso}${query}`;
    link.querySelector(".near-day").textContent = words[iso] ?? iso;
    if (iso === day) link.setAttribute("aria-current", "date");
    else link.removeAttribute("aria-current");
  }
}

nearDays();
try {
  await load();
  draft.start(told);
  for (const id of ["green-pane", "chosen-hole", "save-part"]) find(id).inert = false;
  choose(greens.keys().next().value);
  page.dataset.ready = "yes";
} catch (error) {
  document.documentElement.classList.add("no-js"); // the numbers can be typed without it
  complain(text("not_drawn"), error.faults ?? [text("no_desk.reload")]);
}
