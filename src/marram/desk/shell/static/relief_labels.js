// The labels of the option brought out: beside what they name, never on each other, on its area or letter and on the tools of
// the map only where there is no other place; and which way the hole is.

const L = window.L;

const AWAY = [16, 30, 48, 70]; // pixels between a point and its label
const TURNS = [0, 180, 90, 270, 45, 135, 315, 225]; // degrees: to the right first
const CLEAR = 12; // pixels around a point that no label covers
const UNDER = 2; // a label over the area costs more than the farthest place beside it
const OVER = 4; // and one over a letter or a tool of the map more than that
const TOOLS = ".option-letter:not(.faint), .map-key .tool, .leaflet-control-zoom, .leaflet-control-scale";
const EDGE = 4; // pixels between a label and the edge of the map
const CORNER = { left: 0, right: 150, top: 0, bottom: 34 }; // where the way to the hole is told

export class Labels {
  constructor(map) {
    this.map = map;
    this.layer = L.layerGroup().addTo(map);
    this.option = null;
    this.moved = []; // places that were moved onto their edge: how far, where they were shown
    this.hole = new (L.Control.extend({ onAdd: () => L.DomUtil.create("div", "to-hole") }))({ position: "topleft" });
    map.on("moveend resize", () => this.place());
  }

  clear() {
    this.option = null;
    this.place();
  }

  of(option) {
    this.option = option;
    this.place();
  }

  // Words at places that belong to no option, clear of another place.
  beside(words, clear) {
    const at = ([latitude, longitude]) => ({ type: "Point", coordinates: [longitude, latitude] });
    const feature = (role, told, place) => ({ properties: { role, words: told }, geometry: at(place) });
    this.option = { features: [feature("clear", "", clear), ...words.map((one) => feature("label", one.words, one.at))] };
    this.place();
  }

  place() {
    this.layer.clearLayers();
    this.hole.remove();
    if (!this.option) this.option = this.moved.length ? { features: [] } : null;
    if (!this.option) return;
    const anchors = this.option.features
      .filter((one) => one.properties.role === "label")
      .map((one) => ({ words: one.properties.words, at: L.GeoJSON.coordsToLatLng(one.geometry.coordinates) }))
      .concat(this.moved)
      .filter(({ at }) => this.map.getBounds().contains(at));
    const clear = this.option.features.filter((one) => one.properties.role === "clear").map((one) => L.GeoJSON.coordsToLatLng(one.geometry.coordinates));
    const taken = [CORNER, ...clear.map((at) => around(this.map.latLngToContainerPoint(at))), ...anchors.map(({ at }) => around(this.map.latLngToContainerPoint(at)))];
    const areas = this.option.features.filter((one) => ["area", "where_not"].includes(one.properties.role)).flatMap((one) => this.rings(one.geometry));
    const tools = this.tools();
    const told = new Set();
    for (const { words, at } of merged(anchors, this.map)) if (!told.has(words) && this.put(words, at, taken, areas, tools)) told.add(words);
    this.point();
  }

  // Where a label stands: the first free place around its point, rather beside the area than over it.
  put(words, at, taken, areas, tools) {
    const icon = L.divIcon({ className: "relief-label", html: "<span></span>", iconSize: [0, 0] });
    const label = L.marker(at, { icon, interactive: false, keyboard: false, zIndexOffset: 450 }).addTo(this.layer);
    const span = label.getElement().firstChild;
    span.textContent = words;
    const [wide, high, point, size] = [span.offsetWidth, span.offsetHeight, this.map.latLngToContainerPoint(at), this.map.getSize()];
    let best = null;
    for (const [far, away] of AWAY.entries()) {
      for (const turn of TURNS) {
        const [right, down] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
        const middle = L.point(point.x + right * (away + wide / 2), point.y + down * (away + high / 2));
        const left = Math.max(EDGE, Math.min(middle.x - wide / 2, size.x - EDGE - wide)); // long words are moved into the map
        const box = { left, right: left + wide, top: middle.y - high / 2, bottom: middle.y + high / 2 };
        const within = box.top >= EDGE && box.right <= size.x - EDGE && box.bottom <= size.y - EDGE;
        if (!within || taken.some((other) => overlap(box, other))) continue;
        const cost = far / AWAY.length + (areas.some((ring) => covers(box, ring)) ? UNDER : 0) + (tools.some((other) => overlap(box, other)) ? OVER : 0);
        if (!best || cost < best.cost) best = { cost, box };
      }
    }
    if (!best) {
      label.remove();
      return false;
    }
    taken.push(best.box);
    span.style.translate = `${best.box.left - point.x}px ${best.box.top - point.y}px`;
    return true;
  }

  // What else stands on the map: the letters shown, the key, zoom and scale.
  tools() {
    const frame = this.map.getContainer();
    const { left, top } = frame.getBoundingClientRect();
    const boxes = [...frame.querySelectorAll(TOOLS)].map((one) => one.getBoundingClientRect()).filter((box) => box.width > 0);
    return boxes.map((box) => ({ left: box.left - left, right: box.right - left, top: box.top - top, bottom: box.bottom - top }));
  }

  rings(geometry) {
    const polygons = geometry.type === "MultiPolygon" ? geometry.coordinates : [geometry.coordinates];
    return polygons.map(([ring]) => ring.map(([longitude, latitude]) => this.map.latLngToContainerPoint([latitude, longitude])));
  }

  // The hole is out of the picture as a rule: an arrow says which way, and how far.
  point() {
    if (!this.option.to_hole) return;
    const { from, to, words } = this.option.to_hole;
    if (this.map.getBounds().contains(to)) return;
    const [here, there] = [this.map.project(from, 20), this.map.project(to, 20)];
    this.hole.addTo(this.map);
    const box = this.hole.getContainer();
    box.innerHTML = '<svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true"><path d="M10 1l6 17-6-4-6 4z" fill="currentColor"/></svg><span></span>';
    box.firstChild.style.rotate = `${(Math.atan2(there.x - here.x, here.y - there.y) * 180) / Math.PI}deg`;
    box.lastChild.textContent = words;
  }
}

// Points that lie on each other share a label.
function merged(anchors, map) {
  const kept = [];
  for (const one of anchors) {
    const same = kept.find((other) => map.latLngToContainerPoint(other.at).distanceTo(map.latLngToContainerPoint(one.at)) < 5);
    if (!same) kept.push({ ...one });
    else if (!same.words.includes(one.words)) same.words = `${same.words}, ${one.words}`;
  }
  return kept;
}

function around(point) {
  return { left: point.x - CLEAR, right: point.x + CLEAR, top: point.y - CLEAR, bottom: point.y + CLEAR };
}

function overlap(one, other) {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

// Whether a label would lie on an area: a place along its upper or lower edge in it, or a corner of the area under it.
function covers(box, ring) {
  if (ring.some(({ x, y }) => x > box.left && x < box.right && y > box.top && y < box.bottom)) return true;
  return [0, 0.25, 0.5, 0.75, 1].some((part) => {
    const x = box.left + part * (box.right - box.left);
    return inside(x, box.top, ring) || inside(x, box.bottom, ring);
  });
}

function inside(x, y, ring) {
  let within = false;
  for (let here = 0, before = ring.length - 1; here < ring.length; before = here++) {
    const [one, other] = [ring[here], ring[before]];
    if (one.y > y !== other.y > y && x < ((other.x - one.x) * (y - one.y)) / (other.y - one.y) + one.x) within = !within;
  }
  return within;
}
