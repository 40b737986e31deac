// "Out" beyond the boundary, along as much of it as is in view, so that nobody has to know which side of a dotted line is which.

import { text } from "./words.js";

const L = window.L;

const APART = 190; // pixels along the boundary between two labels
const OFF = 20; // pixels from the boundary to the middle of a label
const AT_MOST = 6;

export function outLabels(map) {
  const layer = L.layerGroup().addTo(map);
  let waiting = 0;

  function place() {
    layer.clearLayers();
    if (map.getContainer().classList.contains("far")) return;
    const size = map.getSize();
    let left = AT_MOST;
    map.eachLayer((one) => {
      const kind = one.feature?.properties.kind;
      if (!one.getLatLngs || !["boundary", "out_of_bounds"].includes(kind)) return;
      for (const rings of polygons(one.getLatLngs())) {
        const outline = rings.map((ring) => ring.map((at) => map.latLngToContainerPoint(at)));
        for (const at of along(outline, size, kind === "boundary")) {
          if (left-- <= 0) return;
          const icon = L.divIcon({ className: "out-label", html: "<span></span>", iconSize: [0, 0] });
          const label = L.marker(map.containerPointToLatLng(at), { icon, interactive: false, keyboard: false }).addTo(layer);
          label.getElement().firstChild.textContent = text("out");
        }
      }
    });
  }

  map.on("moveend resize layeradd", (event) => {
    if (event.type === "layeradd" && !event.layer.feature) return;
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(place);
  });
}

// A polygon's rings, whether it is one or several.
function polygons(places) {
  return Array.isArray(places[0]?.[0]) ? places : [places];
}

// Places beside an outline, in view, on the side that is out.
function* along(outline, size, outside) {
  for (const ring of outline) {
    let since = APART / 2;
    for (let here = 0; here < ring.length; here++) {
      const [start, end] = [ring[here], ring[(here + 1) % ring.length]];
      const part = clipped(start, end, size);
      if (!part) {
        since = APART / 2;
        continue;
      }
      const [from, to] = part;
      const length = from.distanceTo(to);
      if (length < 1) continue;
      const way = to.subtract(from).divideBy(length);
      for (let done = APART - since; done <= length; done += APART) {
        const on = from.add(way.multiplyBy(done));
        const beside = [1, -1].map((side) => on.add(L.point(-way.y, way.x).multiplyBy(side * OFF)));
        const found = beside.find((place) => within(place, outline) !== outside);
        if (found && found.x > OFF && found.y > OFF && found.x < size.x - OFF && found.y < size.y - OFF) yield found;
        since = -done;
      }
      since += length;
    }
  }
}

// The part of a stretch of the outline that is in view (Liang and Barsky 1984).
function clipped(start, end, size) {
  let [first, last] = [0, 1];
  for (const [step, room] of [
    [start.x - end.x, start.x],
    [end.x - start.x, size.x - start.x],
    [start.y - end.y, start.y],
    [end.y - start.y, size.y - start.y],
  ]) {
    if (step === 0 && room < 0) return null;
    if (step < 0) first = Math.max(first, room / step);
    if (step > 0) last = Math.min(last, room / step);
  }
  if (first >= last) return null;
  const way = end.subtract(start);
  return [start.add(way.multiplyBy(first)), start.add(way.multiplyBy(last))];
}

function within(place, outline) {
  let inside = false;
  for (const ring of outline) {
    for (let here = 0, before = ring.length - 1; here < ring.length; before = here++) {
      const [one, other] = [ring[here], ring[before]];
      if (one.y > place.y !== other.y > place.y && place.x < ((other.x - one.x) * (place.y - one.y)) / (other.y - one.y) + one.x) inside = !inside;
    }
  }
  return inside;
}
