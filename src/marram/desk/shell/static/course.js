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
  "evacuation_point",
]);
const LABEL_ZOOM = 17;
const NEAR_ZOOM = 20; // from here on a drop area matters, and a name would cover it
const FLAG_ZOOM = 15.6;

// Features of one kind that follow each other are one path: a phone draws twenty of them five times as fast as three hundred.
// Where they overlap both are filled, for outlines run one way and the holes in them the other (RFC 7946, 3.1.6).
export function drawCourse(map, drawing) {
  const ground = layers(drawing.features);
  for (const layer of ground) layer.addTo(map);
  const bounds = L.latLngBounds([]);
  for (const layer of ground) bounds.extend(layer.getBounds());

  const flags = L.layerGroup().addTo(map);
  const numbers = new Map();
  for (const feature of drawing.features) {
    const { kind, number } = feature.properties;
    if (kind === "line_of_play") numbers.set(number, numberAt(feature).addTo(map));
    if (kind === "hole") flags.addLayer(flag(feature));
  }
  let labels = null; // made when the map is first close enough to show them
  const toggle = () => {
    if (map.getZoom() >= LABEL_ZOOM && map.getZoom() < NEAR_ZOOM) {
      labels ??= L.layerGroup(drawing.features.filter((one) => LABELLED.has(one.properties.kind)).map(label));
      labels.addTo(map);
    } else labels?.remove();
    map.getContainer().classList.toggle("far", map.getZoom() < FLAG_ZOOM);
  };
  map.on("zoomend", toggle);
  toggle();
  return {
    bounds,
    // Below what was drawn before it, such as relief, each layer above the one before.
    toBack: () => [...ground].reverse().forEach((one) => one.bringToBack()),
    remove() {
      map.off("zoomend", toggle);
      for (const layer of [...ground, flags, ...numbers.values()]) layer.remove();
      labels?.remove();
    },
    choose(hole) {
      for (const [number, marker] of numbers) {
        marker.getElement()?.classList.toggle("chosen", number === hole);
      }
    },
  };
}

// One layer for each run of areas, or of lines, of one kind; what kind it is stands in it for whoever reads the map.
function layers(features) {
  const runs = [];
  for (const feature of features) {
    const { kind } = feature.properties;
    if (kind === "hole") continue;
    for (const { type, coordinates } of parts(feature.geometry)) {
      const area = type.endsWith("Polygon");
      if (!area && !type.endsWith("LineString")) continue;
      let run = runs.at(-1);
      if (run?.kind !== kind || run.area !== area) runs.push((run = { kind, area, places: [] }));
      const each = type.startsWith("Multi") ? coordinates : [coordinates];
      run.places.push(...L.GeoJSON.coordsToLatLngs(each, area ? 2 : 1));
    }
  }
  return runs.map(({ kind, area, places }) => {
    const look = { className: `ground k-${kind}`, fillRule: "nonzero", interactive: false, smoothFactor: 0.3, weight: 1 };
    return Object.assign(area ? L.polygon(places, look) : L.polyline(places, look), { kind, area });
  });
}

function parts(geometry) {
  return geometry.type === "GeometryCollection" ? geometry.geometries.flatMap(parts) : [geometry];
}

function called(kind, name) {
  if (!name) return kind;
  return name.toLowerCase().startsWith(kind.toLowerCase()) ? name : text("named", { ground: kind, name });
}

function label(feature) {
  const { kind, name } = feature.properties;
  const words = called(text(`ground.${kind}`), name);
  const middle = L.geoJSON(feature).getBounds().getCenter();
  const icon = L.divIcon({ className: `place-label l-${kind}`, html: `<span>${escaped(words)}</span>`, iconSize: [0, 0] });
  return L.marker(middle, { icon, interactive: false, keyboard: false });
}

function numberAt(feature) {
  const [longitude, latitude] = feature.geometry.coordinates[0];
  const icon = L.divIcon({ className: "hole-number", html: `<span aria-hidden="true">${feature.properties.number}</span>`, iconSize: [24, 24] });
  return L.marker([latitude, longitude], { icon, interactive: false, keyboard: false });
}

function flag(feature) {
  const [longitude, latitude] = feature.geometry.coordinates;
  return flagAt([latitude, longitude]);
}

export function flagAt(at, name = "flag") {
  const html = '<svg viewBox="0 0 14 22" aria-hidden="true"><path d="M3 21V1" stroke="#17231d" stroke-width="1.8"/><path d="M3 1l10 4-10 4z" fill="#8a2f1d" stroke="#fff" stroke-width=".6"/></svg>';
  const icon = L.divIcon({ className: name, html, iconSize: [14, 22], iconAnchor: [3, 21] });
  return L.marker(at, { icon, interactive: false, keyboard: false });
}

function escaped(words) {
  const text = document.createElement("span");
  text.textContent = words;
  return text.innerHTML;
}
