// What was found, on the map: a number leads to its words, and the words to its place.

import { drawCourse } from "/static/shell/course.js";
import { text } from "/static/shell/words.js";

const L = window.L;
const CLOSE = 19;
const { day, places, stakes } = JSON.parse(document.getElementById("findings").textContent);
const words = document.getElementById("marking-words");
const pins = new Map();

const map = L.map("marking-map", { attributionControl: false, zoomControl: false, zoomSnap: 0.1, zoomDelta: 0.75, minZoom: 13, maxZoom: 24 });
L.control.zoom({ position: "bottomright", zoomInTitle: text("zoom_in"), zoomOutTitle: text("zoom_out") }).addTo(map);
L.control.scale({ position: "bottomleft", imperial: false, maxWidth: 120 }).addTo(map);
window.addEventListener("resize", () => map.invalidateSize({ animate: false }));
window.marramMap = map; // for whoever looks from outside, such as the tests

try {
  const drawing = await (await fetch(`/api/course?on=${encodeURIComponent(day)}`)).json();
  map.fitBounds(drawCourse(map, drawing).bounds, { padding: [6, 6], animate: false });
} catch {
  words.textContent = text("not_loaded");
  if (places.length) map.fitBounds(places.map((one) => one.at), { maxZoom: CLOSE, animate: false });
}

for (const stake of stakes) L.circleMarker(stake.at, { radius: 4, interactive: false, className: `stake-mark c-${stake.colour}` }).addTo(map);
for (const one of places) {
  const icon = L.divIcon({ className: `pin t-${one.severity}`, html: `<span>${one.number}</span>`, iconSize: [44, 44], iconAnchor: [22, 22] });
  const pin = L.marker(one.at, { icon, keyboard: false, alt: `${one.number}` }).addTo(map);
  pin.on("click", () => show(one.number, false));
  pins.set(one.number, pin);
}
for (const button of document.querySelectorAll(".place")) button.addEventListener("click", () => show(Number(button.dataset.number), true));
document.getElementById("marking-map").dataset.ready = "yes";

function show(number, move) {
  const one = places[number - 1];
  for (const [other, pin] of pins) {
    pin.getElement()?.classList.toggle("shown", other === number);
    pin.setZIndexOffset(other === number ? 1000 : 0);
  }
  for (const task of document.querySelectorAll(".task")) task.classList.toggle("shown", task.id === `task-${number}`);
  words.textContent = text("chosen", { number, what: one.what });
  if (move) map.setView(one.at, Math.max(map.getZoom(), CLOSE), { animate: false });
  else document.getElementById(`task-${number}`)?.scrollIntoView({ block: "nearest" });
}
