// "Out" beyond the boundary, along as much of it as is in view, so that nobody has to know which side of a dotted line is which.

import { clipped, polygons, within } from "./outlines.js";
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
      if (!["boundary", "out_of_bounds"].includes(one.kind)) return;
      for (const rings of polygons(one.getLatLngs())) {
        const outline = rings.map((ring) => ring.map((at) => map.latLngToContainerPoint(at)));
        for (const at of along(outline, size, one.kind === "boundary")) {
          if (left-- <= 0) return;
          const icon = L.divIcon({ className: "out-label", html: "<span></span>", iconSize: [0, 0] });
          const label = L.marker(map.containerPointToLatLng(at), { icon, interactive: false, keyboard: false }).addTo(layer);
          label.getElement().firstChild.textContent = text("out");
        }
      }
    });
  }

  map.on("moveend resize layeradd", (event) => {
    if (event.type === "layeradd" && !event.layer.kind) return;
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(place);
  });
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
