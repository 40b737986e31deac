// Outlines as the screen shows them: what of them is in view.

// Whether any of a layer of the ground is in view.
export function inView(map, layer) {
  const size = map.getSize();
  const middle = size.divideBy(2);
  const onScreen = (ring) => ring.map((at) => map.latLngToContainerPoint(at));
  const crosses = (ring, closed) => ring.some((at, here) => (here || closed) && clipped(ring.at(here - 1), at, size) !== null);
  if (!layer.area) return lines(layer.getLatLngs()).some((line) => crosses(onScreen(line), false));
  return polygons(layer.getLatLngs()).some((rings) => {
    const outline = rings.map(onScreen);
    return outline.some((ring) => crosses(ring, true)) || within(middle, outline);
  });
}

// A polygon's rings, whether it is one or several.
export function polygons(places) {
  return Array.isArray(places[0]?.[0]) ? places : [places];
}

// A line's places, whether it is one or several.
function lines(places) {
  return Array.isArray(places[0]) ? places : [places];
}

// The part of a stretch of the outline that is in view (Liang and Barsky 1984).
export function clipped(start, end, size) {
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

// Whether a place is within an outline, by its rings.
export function within(place, outline) {
  let inside = false;
  for (const ring of outline) {
    for (let here = 0, before = ring.length - 1; here < ring.length; before = here++) {
      const [one, other] = [ring[here], ring[before]];
      if (one.y > place.y !== other.y > place.y && place.x < ((other.x - one.x) * (place.y - one.y)) / (other.y - one.y) + one.x) inside = !inside;
    }
  }
  return inside;
}
