// The relief options drawn to scale, each with its letter, colour and dash; one can be brought out, with its labels.

import { Labels } from "./relief_labels.js";

const L = window.L;

const TOGETHER = 40; // metres
const BESIDE = { A: [46, 14], B: [14, 46], C: [-18, 14], D: [14, -18], E: [40, 40], F: [-12, 40] }; // where the letter stands, in pixels

// Leaflet rounds what it draws to whole pixels, which makes a club-length jagged; here every point keeps its place.
L.Polyline.include({
  _projectLatlngs(places, result, bounds) {
    if (!(places[0] instanceof L.LatLng)) {
      for (const some of places) this._projectLatlngs(some, result, bounds);
      return;
    }
    const origin = this._map.getPixelOrigin();
    const ring = places.map((place) => this._map.project(place).subtract(origin));
    for (const point of ring) bounds.extend(point);
    result.push(ring);
  },
});

export class Relief {
  constructor(map) {
    this.map = map;
    this.group = L.layerGroup().addTo(map);
    this.labels = new Labels(map);
    this.layers = new Map();
    this.chosen = null; // the option brought out last on this page
  }

  show(options) {
    this.group.clearLayers();
    this.labels.clear();
    this.layers.clear();
    for (const option of options.filter((one) => one.drawn)) {
      const layer = L.featureGroup([draw(option), ...letters(option)]);
      this.layers.set(option.letter, { layer, option });
      this.group.addLayer(layer);
    }
    if (this.layers.has(this.chosen)) this.highlight(this.chosen, false);
    else if (this.layers.size === 1) this.highlight([...this.layers.keys()][0], false);
    else if (this.layers.size > 0) this.fit(together([...this.layers.values()].map(({ option }) => L.latLngBounds(option.frame))));
  }

  highlight(chosen, scroll = true) {
    this.chosen = chosen;
    for (const [key, { layer }] of this.layers) {
      layer.eachLayer((part) => (part.eachLayer ? part.eachLayer((one) => mark(one, key === chosen)) : mark(part, key === chosen)));
    }
    for (const button of document.querySelectorAll(".show-option")) {
      button.setAttribute("aria-pressed", String(button.dataset.letter === chosen));
    }
    for (const card of document.querySelectorAll(".option")) {
      card.classList.toggle("brought-out", card.dataset.letter === chosen);
    }
    const found = this.layers.get(chosen);
    if (!found) return;
    this.map.invalidateSize({ animate: false }); // an option brought out gets a taller map on a phone
    this.fit(L.latLngBounds(found.option.frame));
    this.labels.of(found.option);
    if (scroll) document.getElementById("map").scrollIntoView({ block: "nearest" });
  }

  fit(bounds) {
    if (bounds.isValid()) this.map.fitBounds(bounds, { animate: false });
  }
}

// Where the options lie together: an area far from the others (the previous stroke) does not make the rest tiny.
function together(parts) {
  const close = parts.filter((one) => parts.some((other) => other !== one && one.getCenter().distanceTo(other.getCenter()) < TOGETHER));
  return (close.length ? close : parts).reduce((sum, one) => sum.extend(one), L.latLngBounds([]));
}

function draw(option) {
  return L.geoJSON(option.features, {
    interactive: false,
    filter: (feature) => feature.properties.role !== "label",
    style: (feature) => ({ className: `relief r-${feature.properties.role} o-${option.letter}`, weight: 2 }),
    smoothFactor: 0,
    pointToLayer: (feature, at) =>
      L.circleMarker(at, { radius: 5, className: `relief r-point r-${feature.properties.role} o-${option.letter}` }),
  });
}

function mark(part, chosen) {
  const element = part.getElement?.();
  element?.classList.toggle("faint", !chosen);
  element?.classList.toggle("strong", chosen);
}

// The letter stands beside each of its areas: two areas of one option are A1 and A2.
function letters(option) {
  const areas = option.features.filter((one) => ["area", "spot"].includes(one.properties.role));
  return areas.map((area, index) => { // no words to listen to: the option's own card is named by its letter
    const words = areas.length > 1 ? `${option.letter}${index + 1}` : option.letter;
    const icon = L.divIcon({ className: `option-letter o-${option.letter}`, html: `<span aria-hidden="true">${words}</span>`, iconSize: [28, 28], iconAnchor: BESIDE[option.letter] ?? [46, 46] });
    return L.marker(L.geoJSON(area).getBounds().getCenter(), { icon, interactive: false, keyboard: false, zIndexOffset: 400 });
  });
}
