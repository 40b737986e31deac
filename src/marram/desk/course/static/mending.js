// What is to be mended, on the map: a number leads to its proposal, drawn as it is and as it would be.

import { text } from "/static/shell/words.js";

const L = window.L;
const CLOSE = 19;
const CLOSEST = 22; // a bunker of some metres fills the map
const FAR = 50000; // metres from what is to what would be: only one of them can be seen on a map
const find = (id) => document.getElementById(id);
const page = find("mending");
const words = find("mending-words");
const pins = new Map();
const ABOVE = { error: 600, warning: 300, note: 0 }; // what matters most lies on top

const map = L.map("mending-map", { attributionControl: false, zoomControl: false, zoomSnap: 0.1, zoomDelta: 0.75, minZoom: 2, maxZoom: 24 });
L.control.zoom({ position: "bottomright", zoomInTitle: text("zoom_in"), zoomOutTitle: text("zoom_out") }).addTo(map);
L.control.scale({ position: "bottomleft", imperial: false, maxWidth: 120 }).addTo(map);
new ResizeObserver(() => map.invalidateSize({ animate: false })).observe(map.getContainer());
window.marramMap = map; // for whoever looks from outside, such as the tests
const shown = L.layerGroup().addTo(map);
let places = [];

try {
  const answer = await fetch(`/api/map/draft?on=${encodeURIComponent(page.dataset.day)}`);
  if (!answer.ok) throw new Error(answer.statusText);
  const told = await answer.json();
  places = told.places;
  const ground = L.featureGroup(told.ground.map((one) => drawn(one.geometry, `ground k-${one.kind}`)).filter(Boolean)).addTo(map);
  const marks = places.filter((one) => one.at).map((one) => one.at);
  const bounds = told.ground.length ? ground.getBounds() : L.latLngBounds(marks);
  if (bounds.isValid()) map.fitBounds(bounds, { padding: [6, 6], animate: false, maxZoom: CLOSE });
  else map.setView([0, 0], 2, { animate: false });
  for (const one of places) {
    if (!one.at || one.left) continue;
    const icon = L.divIcon({ className: `pin t-${one.severity}`, html: `<span>${one.number}</span>`, iconSize: [44, 44], iconAnchor: [22, 22] });
    const pin = L.marker(one.at, { icon, keyboard: false, alt: `${one.number}`, zIndexOffset: ABOVE[one.severity] }).addTo(map);
    pin.on("click", () => show(one.number, 0, "list"));
    pins.set(one.number, pin);
  }
  find("mending-map").dataset.ready = "yes";
} catch (error) {
  words.textContent = text("not_drawn");
  find("mending-map").dataset.ready = "no";
  console.warn(error);
}

for (const button of document.querySelectorAll(".place")) button.addEventListener("click", () => show(Number(button.dataset.number), 0, "map"));
for (const button of document.querySelectorAll(".look")) button.addEventListener("click", () => show(Number(button.dataset.number), Number(button.dataset.choice), "map"));
for (const button of document.querySelectorAll(".look-all")) button.addEventListener("click", () => showAll(button.dataset.numbers.split(",").map(Number)));
for (const list of document.querySelectorAll(".way-list")) {
  list.addEventListener("change", () => show(Number(list.closest(".task").id.slice("place-".length)), list.selectedIndex - 1, "map"));
}

// A shape as a layer; null for one that cannot be drawn.
function drawn(geometry, name) {
  try {
    return L.geoJSON(geometry, {
      interactive: false,
      smoothFactor: 0.3,
      style: { className: name, weight: 1 },
      pointToLayer: (_one, at) => L.circleMarker(at, { radius: 6, interactive: false, className: name }),
    });
  } catch {
    return null;
  }
}

function show(number, choice, lead) {
  const one = places[number - 1];
  if (!one) return;
  const way = one.choices[choice];
  const bounds = draw([[one, choice]]);
  words.textContent = text("shown", { number, what: way ? way.words : one.what });
  if (bounds.isValid()) map.fitBounds(bounds.pad(0.7), { animate: false, maxZoom: CLOSEST });
  else if (one.at) map.setView(one.at, Math.max(map.getZoom(), 17), { animate: false });
  const task = find(`place-${number}`);
  if (lead !== "list" || !task) return;
  const fold = task.closest("details");
  if (fold) fold.open = true;
  task.scrollIntoView({ block: "nearest" });
}

function showAll(numbers) {
  const bounds = draw(numbers.map((number) => [places[number - 1], 0]));
  words.textContent = text("shown_all", { count: numbers.length });
  if (bounds.isValid()) map.fitBounds(bounds.pad(0.1), { animate: false, maxZoom: CLOSEST });
}

// Draw places, each with one of its choices: as it is, as it would be, what goes. Returns where they lie.
function draw(chosen) {
  const numbers = new Set(chosen.map(([one]) => one.number));
  for (const [number, pin] of pins) {
    pin.getElement()?.classList.toggle("shown", numbers.has(number));
    pin.setZIndexOffset(numbers.has(number) ? 1000 : ABOVE[places[number - 1].severity]);
  }
  for (const task of document.querySelectorAll(".task")) task.classList.toggle("shown", numbers.has(Number(task.id.slice("place-".length))));
  shown.clearLayers();
  const drawings = [];
  const proposed = [];
  const names = new Set();
  for (const [one, choice] of chosen) {
    const way = one.choices[choice];
    const gone = way?.gone ?? [];
    const before = way?.before.length || gone.length ? way.before : one.feature;
    for (const [shapes, name] of [[way?.after ?? [], "as-proposed"], [before, "as-it-is"], [gone, "as-gone"]]) {
      for (const shape of shapes) {
        const layer = drawn(shape, name);
        if (!layer) continue;
        names.add(name);
        shown.addLayer(layer);
        drawings.push(layer);
        if (name === "as-proposed") proposed.push(layer);
        if (/LineString$/.test(shape.type)) shown.addLayer(arrow(shape, name));
      }
    }
  }
  const every = L.featureGroup(drawings).getBounds();
  const after = L.featureGroup(proposed).getBounds();
  const far = after.isValid() && every.getNorthWest().distanceTo(every.getSouthEast()) > FAR;
  if (far) names.delete("as-it-is");
  find("legend").hidden = !names.has("as-proposed") && !names.has("as-gone");
  for (const [part, name] of [["as-is", "as-it-is"], ["proposed", "as-proposed"], ["gone", "as-gone"]]) find("legend").querySelector(`.${part}`).hidden = !names.has(name);
  return far ? after : every;
}

// An arrow at the end of a line: it runs this way.
function arrow(shape, name) {
  const line = shape.type === "LineString" ? shape.coordinates : shape.coordinates.at(-1);
  const [[fromX, fromY], [x, y]] = line.slice(-2);
  const flat = Math.cos((y * Math.PI) / 180);
  const angle = (Math.atan2((x - fromX) * flat, y - fromY) * 180) / Math.PI;
  const colour = name === "as-proposed" ? "#124a63" : "#8a2f1d";
  const html = `<svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true"><path transform="rotate(${angle.toFixed(0)} 11 11)" d="M11 2l7 16-7-4-7 4z" fill="${colour}" stroke="#fff" stroke-width="1.5"/></svg>`;
  const icon = L.divIcon({ className: "arrow", html, iconSize: [22, 22], iconAnchor: [11, 11] });
  return L.marker([y, x], { icon, interactive: false, keyboard: false });
}

// The first fault with a place is where one begins; on a phone the list stays where it is.
const first = places.find((one) => one.key && !one.left) ?? places.find((one) => one.at);
if (first) show(first.number, 0, "map");
