// The map editor: choose or draw an area, change it, and save all edits as one version.

import { Draft } from "./editor_draft.js";
import { EditorMap, rings, withoutCorner } from "./editor_map.js";

const find = (id) => document.getElementById(id);
const page = find("editor");
const DONE = { add: "Added", change: "Changed", remove: "Removed" };
const kindByTag = new Map([...find("draw-kind").options].map((one) => [`${one.dataset.key}=${one.dataset.value}`, one.value]));
let told = null; // the last answer of /api/map
let chosen = null;

const draft = new Draft(page.dataset.course, shown);
const map = new EditorMap({
  choose,
  sketched,
  corner: (may) => (find("corner-delete").disabled = !may),
  feature: (ident) => draft.now.get(ident),
  reshape: (feature) => draft.set(chosen, feature),
});

async function load() {
  told = await (await fetch("/api/map")).json();
}

function kindOf(ident, feature) {
  const tags = feature.properties ?? {};
  return told.kinds[ident] ?? kindByTag.get(tags.marram ? `marram=${tags.marram}` : `golf=${tags.golf}`);
}

function words(ident, feature) {
  if (!feature) return "an area";
  const kind = (kindOf(ident, feature) ?? "").replaceAll("_", " ");
  const { name, holes, ref } = feature.properties ?? {};
  const hole = holes ?? (kind === "teeing area" ? ref : undefined);
  return `${kind}${name ? ` “${name}”` : ""}${hole ? `, hole ${hole}` : ""}`;
}

function say(text) {
  find("editor-words").textContent = text;
}

// Everything that follows from the draft.
function shown() {
  const edits = draft.edits();
  if (chosen && !draft.now.has(chosen)) choose(null);
  map.corner = null;
  find("corner-delete").disabled = true;
  map.draw(draft, kindOf, told.order, new Set(edits.map((one) => one.ident)));
  find("undo").disabled = !draft.past.length;
  find("redo").disabled = !draft.future.length;
  find("save").disabled = !edits.length;
  find("edit-count").textContent = edits.length ? `${edits.length} ${edits.length === 1 ? "edit" : "edits"}, kept on this device until saved:` : "No edits yet.";
  find("edit-list").replaceChildren(
    ...edits.map((edit) => item(`${DONE[edit.action]} ${words(edit.ident, edit.feature ?? draft.original.get(edit.ident))}`)),
  );
  const areas = [...draft.now].filter(([ident, one]) => kindOf(ident, one) && /Polygon$/.test(one.geometry?.type));
  const options = areas.map(([ident, one]) => new Option(words(ident, one), ident)).sort((a, b) => a.text.localeCompare(b.text));
  find("area-list").replaceChildren(...options);
  if (chosen) fill();
}

function item(text) {
  const one = document.createElement("li");
  one.textContent = text;
  return one;
}

// Choosing

function choose(ident) {
  chosen = map.chosen = ident;
  map.corner = null;
  find("chosen").hidden = !ident;
  map.draw(draft, kindOf, told.order, new Set(draft.edits().map((one) => one.ident)));
  if (!ident) return say("Choose a kind and draw it, or tap an area to change it.");
  fill();
  map.frame(ident);
  say(`Chosen: ${words(ident, draft.now.get(ident))}.`);
}

function fill() {
  const feature = draft.now.get(chosen);
  find("chosen-title").textContent = `Chosen: ${words(chosen, feature)}`;
  find("chosen-name").value = feature.properties.name ?? "";
  find("chosen-hole").value = feature.properties[holeKey(feature)] ?? "";
  const simple = rings(feature).length === 1;
  find("chosen-corners-fold").hidden = !simple;
  if (simple) find("chosen-corners").value = rings(feature)[0].slice(0, -1).map(([longitude, latitude]) => `${latitude},${longitude}`).join("\n");
}

function holeKey(feature) {
  return kindOf(chosen, feature) === "teeing_area" ? "ref" : "holes";
}

function retag(key, value) {
  const feature = structuredClone(draft.now.get(chosen));
  if (value.trim()) feature.properties[key] = value.trim();
  else delete feature.properties[key];
  draft.set(chosen, feature);
}

find("chosen-name").addEventListener("change", (event) => retag("name", event.target.value));
find("chosen-hole").addEventListener("change", (event) => retag(holeKey(draft.now.get(chosen)), event.target.value));
find("chosen-done").addEventListener("click", () => choose(null));
find("chosen-delete").addEventListener("click", () => {
  const gone = words(chosen, draft.now.get(chosen));
  draft.set(chosen, null);
  say(`Deleted ${gone}. Undo brings it back.`);
  find("undo").focus();
});
find("corner-delete").addEventListener("click", () => draft.set(chosen, withoutCorner(draft.now.get(chosen), map.corner)));
find("corners-use").addEventListener("click", () => {
  const corners = readCorners(find("chosen-corners").value);
  if (!corners) return;
  const feature = structuredClone(draft.now.get(chosen));
  rings(feature)[0].splice(0, Infinity, ...corners, corners[0]);
  draft.set(chosen, feature);
  say("The corners are as typed.");
});
find("area-choose").addEventListener("click", () => {
  if (!find("area-list").value) return;
  choose(find("area-list").value);
  find("chosen-title").focus();
});

// Drawing

find("draw").addEventListener("click", () => {
  choose(null);
  find("tools-idle").hidden = true;
  find("tools-draw").hidden = false;
  map.startSketch();
  find("cancel-draw").focus();
});
find("take-back").addEventListener("click", () => map.takeBack());
find("cancel-draw").addEventListener("click", () => endDrawing("Nothing was drawn."));
find("finish").addEventListener("click", () => {
  const points = map.points;
  endDrawing("");
  add(find("draw-kind").value, "", "", points);
});

function endDrawing(text) {
  map.endSketch();
  find("tools-idle").hidden = false;
  find("tools-draw").hidden = true;
  say(text);
  find("draw").focus({ preventScroll: true });
}

function sketched(count) {
  find("finish").disabled = count < 3;
  find("take-back").disabled = count === 0;
  say(count < 3 ? `Tap its corners in order: ${count} of at least 3.` : `${count} corners. Finish, or tap on.`);
}

function add(kind, name, hole, corners) {
  const option = [...find("draw-kind").options].find((one) => one.value === kind);
  const id = `drawn/${Array.from(crypto.getRandomValues(new Uint8Array(6)), (one) => one.toString(16).padStart(2, "0")).join("")}`;
  const properties = { [option.dataset.key]: option.dataset.value };
  if (name) properties.name = name;
  if (hole) properties[kind === "teeing_area" ? "ref" : "holes"] = hole;
  draft.set(id, { type: "Feature", id, properties, geometry: { type: "Polygon", coordinates: [[...corners, corners[0]]] } });
  choose(id);
}

find("area-form").addEventListener("submit", (event) => {
  event.preventDefault();
  const corners = readCorners(find("area-places").value);
  if (!corners) return;
  add(find("area-kind").value, find("area-name").value.trim(), find("area-hole").value.trim(), corners);
  event.target.reset();
  find("chosen-title").focus();
});
find("by-coordinates").open = !!document.querySelector(".caution:not([hidden])");
for (const field of find("area-form").querySelectorAll(".without-js input")) field.required = false;

// Corners as typed, as [longitude, latitude]; null after saying what is wrong.
function readCorners(text) {
  const faults = [];
  const lines = text.split("\n").map((line) => line.trim());
  const corners = lines.flatMap((line, index) => {
    if (!line) return [];
    const parts = line.split(/[,;\s]+/).map(Number);
    const [latitude, longitude] = parts;
    if (parts.length === 2 && Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) return [[longitude, latitude]];
    faults.push(`Corner in line ${index + 1}: “${line}” is no place; write latitude,longitude in degrees, for example 55.004,4.0012.`);
    return [];
  });
  if (corners.length > 1 && String(corners[0]) === String(corners.at(-1))) corners.pop();
  if (!faults.length && corners.length < 3) faults.push(`An area needs three corners or more, ${corners.length} given; add the rest, one a line.`);
  refuse("These corners cannot be used", faults);
  return faults.length ? null : corners;
}

function refuse(title, faults, ...more) {
  const box = find("editor-faults");
  box.hidden = !faults.length;
  if (!faults.length) return;
  const heading = document.createElement("h2");
  heading.textContent = title;
  const list = document.createElement("ul");
  list.append(...faults.map(item));
  box.replaceChildren(heading, list, ...more);
  box.focus();
}

// Undo, save, conflicts

find("undo").addEventListener("click", () => draft.undo());
find("redo").addEventListener("click", () => draft.redo());
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.target.closest("input, textarea, select")) return;
  if (event.key.toLowerCase() !== "z") return;
  event.preventDefault();
  if (map.points) map.takeBack();
  else if (event.shiftKey) draft.redo();
  else draft.undo();
});

find("save-form").addEventListener("submit", async (event) => {
  event.preventDefault();
  const body = { base: draft.base, who: find("save-who").value, in_force_from: find("save-day").value, note: find("save-note").value, edits: draft.edits() };
  find("save").disabled = true;
  try {
    const answer = await fetch("/api/map", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) });
    const result = await answer.json();
    if (answer.status === 201) {
      draft.forget(draft.base);
      location.assign(`/map?saved=${result.version.number}`);
    } else if (answer.status === 409) conflict(result);
    else refuse("Nothing was saved", result.error.faults);
  } catch {
    refuse("Nothing was saved", ["The desk cannot be reached. Your edits stay on this device; save again when it can."]);
  }
  find("save").disabled = !draft.edits().length;
});

function conflict(result) {
  map.showTheirs(result.theirs);
  const theirs = result.saved_meanwhile.flatMap((one) => one.changes.map((change) => `Version ${one.number}, ${one.who}: ${change}.`));
  const yours = result.yours.map((edit) => `Yours: ${DONE[edit.action]} ${words(edit.ident, edit.feature ?? draft.original.get(edit.ident))}.`);
  const button = document.createElement("button");
  button.type = "button";
  button.className = "big-button";
  button.textContent = `Put mine on version ${result.latest}`;
  button.addEventListener("click", async () => {
    const [edits, base] = [draft.edits(), draft.base];
    find("save").disabled = true; // until they stand on the newest version
    await load();
    draft.start(told);
    draft.apply(edits);
    if (draft.base !== base) draft.forget(base);
    map.showTheirs([]);
    refuse("", []);
    say(`Your edits now stand on version ${told.version}. Look at them, then save.`);
    find("save").focus();
  });
  refuse("Somebody else changed the same; nothing was saved", [...theirs, ...yours], button);
}

// Edits kept from before a reload or a crash are offered again.
function offer() {
  const kept = (draft.pending = draft.kept());
  find("draft-offer").hidden = !kept;
  if (!kept) return;
  const count = `${kept.edits.length} unsaved ${kept.edits.length === 1 ? "edit" : "edits"}`;
  find("draft-words").textContent = `${count} of version ${kept.base} ${kept.edits.length === 1 ? "is" : "are"} kept on this device.`;
  find("draft-take").onclick = () => {
    draft.takeUp(told);
    find("draft-offer").hidden = true;
    say("Your edits are back.");
  };
  find("draft-drop").onclick = () => {
    draft.forget(kept.base);
    offer();
    draft.keep(); // what was edited since stays
  };
}

try {
  await load();
  draft.start(told);
  map.frame(null);
  say("Choose a kind and draw it, or tap an area to change it.");
  offer();
  find("editor-map").dataset.ready = "yes";
} catch {
  say("The map cannot be loaded. Reload the page; by coordinates it goes without the map.");
}
