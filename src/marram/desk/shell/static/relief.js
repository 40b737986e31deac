// The relief options drawn to scale, each with its letter, colour and dash; one can be brought out.

const L = window.L;

const TOGETHER = 40; // metres
const BESIDE = { A: [46, 14], B: [14, 46], C: [-18, 14], D: [14, -18], E: [40, 40], F: [-12, 40] }; // where the letter stands, in pixels

const WIDE = new Set(["line_to_hole", "drop_line", "hole", "not_nearer", "corridor_edge"]);

export class Relief {
  constructor(map) {
    this.map = map;
    this.group = L.layerGroup().addTo(map);
    this.layers = new Map();
    this.chosen = null; // the option brought out last on this page
  }

  show(options) {
    this.group.clearLayers();
    this.layers.clear();
    const all = L.featureGroup();
    for (const option of options.filter((one) => one.drawn)) {
      const layer = L.featureGroup([draw(option), letter(option)].filter(Boolean));
      this.layers.set(option.letter, { layer, option });
      this.group.addLayer(layer);
      all.addLayer(near(option));
    }
    if (this.layers.has(this.chosen)) this.highlight(this.chosen, false);
    else if (this.layers.size === 1) this.highlight([...this.layers.keys()][0], false);
    else if (this.layers.size > 0) this.fit(together(all), 20.5);
  }

  highlight(chosen, scroll = true) {
    this.chosen = chosen;
    for (const [key, { layer }] of this.layers) {
      layer.eachLayer((part) => part.eachLayer?.((one) => mark(one, key === chosen)));
    }
    for (const button of document.querySelectorAll(".show-option")) {
      button.setAttribute("aria-pressed", String(button.dataset.letter === chosen));
    }
    for (const card of document.querySelectorAll(".option")) {
      card.classList.toggle("brought-out", card.dataset.letter === chosen);
    }
    const found = this.layers.get(chosen);
    if (!found) return;
    this.fit(near(found.option).getBounds(), 22.5);
    if (scroll) document.getElementById("map").scrollIntoView({ block: "nearest" });
  }

  fit(bounds, maxZoom) {
    if (bounds.isValid()) this.map.fitBounds(bounds.pad(0.25), { maxZoom, padding: [18, 18], animate: false });
  }
}

// Where the options lie together: an area far from the others (the previous stroke) does not make the rest tiny.
function together(all) {
  const parts = all.getLayers().map((one) => one.getBounds());
  const close = parts.filter((one) => parts.some((other) => other !== one && one.getCenter().distanceTo(other.getCenter()) < TOGETHER));
  return (close.length ? close : parts).reduce((sum, one) => sum.extend(one), L.latLngBounds([]));
}

// What must be in view for an option: its areas and points, not the long lines to the hole.
function near(option) {
  return L.geoJSON(option.features.filter((one) => !WIDE.has(one.properties.role)));
}

function draw(option) {
  return L.geoJSON(option.features, {
    interactive: false,
    style: (feature) => ({ className: `relief r-${feature.properties.role} o-${option.letter}`, weight: 2 }),
    smoothFactor: 0,
    pointToLayer: (feature, at) =>
      L.circleMarker(at, { radius: 5, className: `relief r-point r-${feature.properties.role} o-${option.letter}` })
        .bindTooltip(feature.properties.words, { permanent: false }),
  });
}

function mark(part, chosen) {
  const element = part.getElement?.();
  element?.classList.toggle("faint", !chosen);
  element?.classList.toggle("strong", chosen);
}

function letter(option) {
  const area = option.features.find((one) => ["area", "spot"].includes(one.properties.role));
  if (!area) return null;
  const icon = L.divIcon({ className: `option-letter o-${option.letter}`, html: `<span>${option.letter}</span>`, iconSize: [28, 28], iconAnchor: BESIDE[option.letter] ?? [46, 46] });
  return L.marker(L.geoJSON(area).getBounds().getCenter(), { icon, interactive: false, keyboard: false, zIndexOffset: 400 });
}
