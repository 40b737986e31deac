// The map editor: choose, draw or mark an area, change it, and save all edits as one version.

import { busyWith } from "/static/shell/busy.js";
import { countText, dayWords, text } from "/static/shell/words.js";
import { Chosen } from "./editor_chosen.js";
import { Draft, byIdent, same } from "./editor_draft.js";
import { nearestHole } from "./editor_geometry.js";
import { EditorMap } from "./editor_map.js";
import { Mark } from "./editor_mark.js";
import { Save } from "./editor_save.js";
import { rings } from "./editor_shape.js";
import { Corners, called, find, item, refuse, say } from "./editor_words.js";

const page = find("editor");
const kindByTag = new Map([...find("draw-kind").options].map((one) => [`${one.dataset.key}=${one.dataset.value}`, one.value]));
let told = null; // the last answer of /api/map
let asked = 0; // which question to /api/map was the last

const draft = new Draft(page.dataset.course, shown);
const map = new EditorMap({
  choose,
  sketched,
  corner: (may) => (find("corner-delete").disabled = !may),
  feature: (ident) => draft.now.get(ident),
  reshape: (feature) => draft.set(chosen.ident, feature),
});
const mark = new Mark(map, { say, changed: (state) => draft.hold("mark", state && { ...state, kind: find("draw-kind").value }) });
const chosen = new Chosen(draft, map, { kindOf, titleOf, told: () => told, done: () => choose(null) });
const save = new Save(draft, map, { load, goTo, busy: () => map.points !== null || map.marking, titleOf });

// The map of a day, with the versions up to a number; null when another question was asked meanwhile.
function load(day, upto = null) {
  return busyWith(find("editor-map"), () => fetched(day, upto));
}

async function fetched(day, upto) {
  const mine = (asked += 1);
  const address = `/api/map?on=${encodeURIComponent(day)}${upto ? `&upto=${upto}` : ""}`;
  const answer = await fetch(address).catch(() => fetch(address)); // one that was under way while the network changed is lost
  if (!answer.ok) throw new Error((await answer.json()).error.message);
  const found = await answer.json();
  return mine === asked ? found : null;
}

// Edit another map, of another day or a newer version, with all edits made so far.
function goTo(fresh) {
  told = fresh;
  return draft.moveTo(fresh);
}

function kindOf(ident, feature) {
  if (feature === draft.original?.get(ident)) return told.kinds[ident];
  const tags = feature.properties ?? {};
  return kindByTag.get(tags.marram ? `marram=${tags.marram}` : `golf=${tags.golf}`) ?? told.kinds[ident];
}

function titleOf(ident, feature) {
  return called(feature, feature && kindOf(ident, feature));
}

// Everything that follows from the draft.
function shown() {
  const edits = draft.edits();
  if (chosen.ident && !draft.now.has(chosen.ident)) choose(null);
  map.corner = null;
  find("corner-delete").disabled = true;
  map.draw(draft, kindOf, told.order, new Set(edits.map((one) => one.ident)));
  find("undo").disabled = !draft.past.length;
  find("redo").disabled = !draft.future.length;
  find("save").disabled = !edits.length;
  find("edit-count").textContent = edits.length ? countText("edits", edits.length) : text("no_edits");
  find("edit-list").replaceChildren(
    ...edits.map((edit) => item(text(edit.action, { area: titleOf(edit.ident, edit.feature ?? draft.original.get(edit.ident)) }))),
  );
  tellDay();
  listAreas();
  if (chosen.ident) chosen.fill();
}

function tellDay() {
  const { on: day, version, in_force_from: since } = told;
  find("map-day").textContent = text(since ? "map_of_since" : "map_of", { day: dayWords(day), version, since: dayWords(since) });
  const later = told.prepared.map((one) => text("prepared.map", { since: dayWords(one.in_force_from), version: one.version, who: one.who }));
  find("map-prepared").hidden = !later.length;
  find("map-prepared").textContent = text("prepared", { maps: later.join(", ") });
}

// Areas by hole, those of one kind and no name numbered.
function listAreas() {
  const groups = new Map();
  const features = [...draft.now.values()];
  for (const [ident, one] of draft.now) {
    if (!kindOf(ident, one) || !/Polygon$/.test(one.geometry?.type)) continue;
    const around = kindOf(ident, one) === "boundary" ? "" : nearestHole(features, rings(one)[0][0]);
    const hole = one.properties.holes?.split(";")[0] ?? around ?? "";
    if (!groups.has(hole)) groups.set(hole, []);
    groups.get(hole).push([titleOf(ident, one), ident]);
  }
  const before = find("area-list").value;
  const sorted = [...groups].sort(([one], [other]) => Number(one || 999) - Number(other || 999));
  find("area-list").replaceChildren(
    ...sorted.map(([hole, entries]) => {
      const group = document.createElement("optgroup");
      group.label = hole ? text("hole", { hole }) : text("the_course");
      entries.sort(([one], [other]) => one.localeCompare(other));
      entries.forEach(([title, ident], index) => {
        const alike = entries.filter(([other]) => other === title).length > 1;
        const number = entries.slice(0, index + 1).filter(([other]) => other === title).length;
        group.append(new Option(alike ? text("numbered", { area: title, number }) : title, ident));
      });
      return group;
    }),
  );
  if (draft.now.has(chosen.ident ?? before)) find("area-list").value = chosen.ident ?? before;
}

function choose(ident) {
  chosen.ident = map.chosen = ident;
  map.corner = null;
  find("chosen").hidden = !ident;
  chosen.crossed = false;
  map.warn(null);
  map.draw(draft, kindOf, told.order, new Set(draft.edits().map((one) => one.ident)));
  if (!ident) return say(text("choose"));
  say(text("chosen", { area: titleOf(ident, draft.now.get(ident)) }));
  chosen.fill();
  map.frame(ident);
}

find("area-choose").addEventListener("click", () => {
  if (!find("area-list").value) return;
  choose(find("area-list").value);
  find("chosen-title").focus();
});

// Drawing and marking

function tools(which) {
  for (const one of ["idle", "draw", "mark"]) find(`tools-${one}`).hidden = one !== which;
  find("editor-cross").hidden = which === "idle";
}

function startDrawing(points = []) {
  choose(null);
  tools("draw");
  map.startSketch(points);
}

function startMarking(held = null) {
  choose(null);
  tools("mark");
  mark.start(held);
  find("editor-map").scrollIntoView({ block: "start" });
}

find("draw").addEventListener("click", () => {
  startDrawing();
  find("cancel-draw").focus();
});
find("mark").addEventListener("click", () => {
  startMarking();
  find("mark-use").focus({ preventScroll: true });
});
find("take-back").addEventListener("click", () => map.takeBack());
find("at-cross").addEventListener("click", () => map.addAtCross());
find("cancel-draw").addEventListener("click", () => idle(text("not_drawn")));
find("cancel-mark").addEventListener("click", () => idle(text("not_marked")));
find("finish").addEventListener("click", () => {
  const { points } = map;
  idle("");
  add(find("draw-kind").value, points);
});
find("mark-use").addEventListener("click", () => {
  const [points, accuracy] = [mark.points(), mark.accuracy()];
  idle("");
  add(find("draw-kind").value, points, accuracy === null ? {} : { accuracy: String(accuracy) });
  find("save-title").focus({ preventScroll: true });
  find("save-form").scrollIntoView({ block: "center" });
  say(text("on_map"));
});

function idle(words) {
  if (map.marking) mark.stop();
  else map.endSketch();
  draft.hold("sketch", null);
  tools("idle");
  say(words);
  find("draw").focus({ preventScroll: true });
}

function sketched(count) {
  find("finish").disabled = count < 3;
  find("take-back").disabled = count === 0;
  draft.hold("sketch", { kind: find("draw-kind").value, points: map.points });
  say(text(count < 3 ? "corners_left" : "corners", { count }));
}

function add(kind, corners, tags = {}) {
  const option = [...find("draw-kind").options].find((one) => one.value === kind);
  const id = `drawn/${Array.from(crypto.getRandomValues(new Uint8Array(6)), (one) => one.toString(16).padStart(2, "0")).join("")}`;
  const properties = { [option.dataset.key]: option.dataset.value, ...tags };
  draft.set(id, { type: "Feature", id, properties, geometry: { type: "Polygon", coordinates: [[...corners, corners[0]]] } });
  choose(id);
}

find("area-form").addEventListener("submit", (event) => {
  event.preventDefault();
  const corners = Corners.read(find("area-places").value);
  if (!corners) return;
  const kind = find("area-kind").value;
  const tags = { name: find("area-name").value.trim(), serves: kind === "dropping_zone" ? find("area-serves").value : "" };
  if (kind === "evacuation_point") tags.evacuation = find("area-evacuation").value;
  tags[kind === "teeing_area" ? "ref" : "holes"] = find("area-hole").value.trim();
  add(kind, corners, Object.fromEntries(Object.entries(tags).filter(([, value]) => value)));
  event.target.reset();
  find("chosen-title").focus();
});
find("by-coordinates").open = !!document.querySelector("#page-faults");
for (const field of find("area-form").querySelectorAll(".without-js input")) field.required = false;

// Undo and redo

find("undo").addEventListener("click", () => draft.undo());
find("redo").addEventListener("click", () => draft.redo());
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.target.closest("input, textarea, select")) return;
  const key = event.key.toLowerCase();
  if (key !== "z" && key !== "y") return;
  event.preventDefault();
  if (map.points) map.takeBack();
  else if (key === "y" || event.shiftKey) draft.redo();
  else draft.undo();
});

// Edits kept from before a reload or a crash are offered again; a drawing under way simply goes on.
function offer() {
  const kept = (draft.pending = draft.kept());
  find("draft-offer").hidden = !kept;
  if (!kept) return;
  find("draft-words").textContent = countText("kept", kept.edits.length, { version: kept.base, day: dayWords(kept.day) });
}

find("draft-take").addEventListener("click", async () => {
  try {
    const fresh = await upToDate(draft.pending);
    if (!fresh) return;
    told = fresh;
    draft.takeUp(fresh);
    find("save-day").value = draft.day;
    find("draft-offer").hidden = true;
    say(text("back"));
  } catch (error) {
    refuse(text("still_kept"), [text("map_for_them", { fault: error.message })]);
  }
});
find("draft-drop").addEventListener("click", () => {
  draft.forget(draft.pending.base, draft.pending.day);
  offer();
  draft.keep(); // what was edited since stays
});

// The newest map of the day; but where others changed the same features, the map the edits were made on,
// so that the desk finds the conflict when they are saved.
async function upToDate({ base, day, edits }) {
  const fresh = await load(day);
  if (!fresh || fresh.base === base) return fresh;
  const old = await load(day, base);
  if (!old) return null;
  const [now, then] = [byIdent(fresh), byIdent(old)];
  return edits.every((one) => same(now.get(one.ident), then.get(one.ident))) ? fresh : old;
}

function goOn() {
  const [sketch, held] = [draft.held("sketch"), draft.held("mark")];
  const address = new URL(location.href);
  const wanted = address.searchParams.get("mark");
  address.searchParams.delete("mark"); // once is enough: a reload goes on with what is under way
  history.replaceState(null, "", address);
  if (sketch?.points.length) {
    find("draw-kind").value = sketch.kind;
    startDrawing(sketch.points);
    const [longitude, latitude] = sketch.points.at(-1);
    map.map.setView([latitude, longitude], 19, { animate: false });
  } else if (held) {
    find("draw-kind").value = held.kind;
    startMarking(held);
  } else if (wanted !== null) {
    const at = wanted.split(",").map(Number);
    find("draw-kind").value = "ground_under_repair";
    const placed = at.length === 2 && at.every(Number.isFinite);
    if (placed) map.map.setView(at, 19.5, { animate: false });
    startMarking();
    if (placed) mark.hold();
  }
}

try {
  told = await load(find("save-day").value);
  draft.start(told);
  map.frame(null);
  say(text("choose"));
  save.fill();
  offer();
  goOn();
  find("editor-map").dataset.ready = "yes";
} catch (error) {
  say(text("not_loaded"));
  throw error;
}
