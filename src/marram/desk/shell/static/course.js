// The ground of the course in layers, from the GeoJSON of the desk, which comes in drawing order.

import { text } from "./words.js";

const L = window.L;

const LABELLED = new Set([
  "red_penalty_area",
  "yellow_penalty_area",
  "ground_under_repair",
  "temporary_water",
  "no_play_zone",
  "dropping_zone",
  "out_of_bounds",
]);
const LABEL_ZOOM = 17;
const NEAR_ZOOM = 20; // from here on a drop area matters, and a name would cover it
const FLAG_ZOOM = 15.6;

export function drawCourse(map, drawing) {
  const ground = L.geoJSON(drawing, {
    interactive: false,
    smoothFactor: 0.3,
    filter: (feature) => feature.properties.kind !== "hole" && feature.geometry.type !== "Point",
    style: (feature) => ({ className: `ground k-${feature.properties.kind}`, weight: 1 }),
  }).addTo(map);

  const labels = L.layerGroup();
  const flags = L.layerGroup().addTo(map);
  const numbers = new Map();
  for (const feature of drawing.features) {
    const { kind, name, number } = feature.properties;
    if (LABELLED.has(kind)) labels.addLayer(label(feature, called(text(`ground.${kind}`), name), kind));
    if (kind === "line_of_play") numbers.set(number, numberAt(feature).addTo(map));
    if (kind === "hole") flags.addLayer(flag(feature));
  }
  const toggle = () => {
    if (map.getZoom() >= LABEL_ZOOM && map.getZoom() < NEAR_ZOOM) labels.addTo(map);
    else labels.remove();
    map.getContainer().classList.toggle("far", map.getZoom() < FLAG_ZOOM);
  };
  map.on("zoomend", toggle);
  toggle();
  return {
    bounds: ground.getBounds(),
    // Below what was drawn before it, such as relief, each feature above the one before.
    toBack: () => ground.getLayers().reverse().forEach((one) => one.bringToBack()),
    remove() {
      map.off("zoomend", toggle);
      for (const layer of [ground, labels, flags, ...numbers.values()]) layer.remove();
    },
    choose(hole) {
      for (const [number, marker] of numbers) {
        marker.getElement()?.classList.toggle("chosen", number === hole);
      }
    },
  };
}

function called(kind, name) {
  if (!name) return kind;
  return name.toLowerCase().startsWith(kind.toLowerCase()) ? name : text("named", { ground: kind, name });
}

function label(feature, words, kind) {
  const middle = L.geoJSON(feature).getBounds().getCenter();
  const icon = L.divIcon({ className: `place-label l-${kind}`, html: `<span>${escaped(words)}</span>`, iconSize: [0, 0] });
  return L.marker(middle, { icon, interactive: false, keyboard: false });
}

function numberAt(feature) {
  const [longitude, latitude] = feature.geometry.coordinates[0];
  const icon = L.divIcon({ className: "hole-number", html: `<span>${feature.properties.number}</span>`, iconSize: [24, 24] });
  return L.marker([latitude, longitude], { icon, interactive: false, keyboard: false });
}

function flag(feature) {
  const [longitude, latitude] = feature.geometry.coordinates;
  const html = '<svg viewBox="0 0 14 22" aria-hidden="true"><path d="M3 21V1" stroke="#17231d" stroke-width="1.8"/><path d="M3 1l10 4-10 4z" fill="#8a2f1d" stroke="#fff" stroke-width=".6"/></svg>';
  const icon = L.divIcon({ className: "flag", html, iconSize: [14, 22], iconAnchor: [3, 21] });
  return L.marker([latitude, longitude], { icon, interactive: false, keyboard: false });
}

function escaped(words) {
  const text = document.createElement("span");
  text.textContent = words;
  return text.innerHTML;
}
