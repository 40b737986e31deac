// The shape of an area while it is edited: corners dragged, added, taken away; the whole moved. Nothing leaves a spike:
// corners that are not shown follow the one that is dragged, and a place stands once however often it was drawn.

import { away, metresOfDegree, round } from "./editor_geometry.js";

// Rings of an area, those of several parts one after the other. The arrays are the feature's own.
export function rings(feature) {
  const { type, coordinates } = feature.geometry;
  return type === "MultiPolygon" ? coordinates.flat() : coordinates;
}

function edited(feature, change) {
  const copy = structuredClone(feature);
  change(rings(copy));
  return copy;
}

// A feature moved by metres to the east and north.
export function shifted(feature, east, north) {
  const [longitude, latitude] = rings(feature)[0][0];
  const to = away({ lat: latitude, lng: longitude }, east, north);
  return moved(feature, to[0] - longitude, to[1] - latitude);
}

export function moved(feature, longitudes, latitudes) {
  return edited(feature, (all) => {
    // New places: the first and the last of a ring may be one and the same array.
    for (const ring of all) ring.splice(0, Infinity, ...ring.map(([x, y, ...more]) => [round(x + longitudes), round(y + latitudes), ...more]));
  });
}

// Which corners are shown, by their place on the screen: none nearer to the one before, or to the first, than `apart`.
export function shownCorners(places, apart) {
  const shown = [];
  places.forEach((place, index) => {
    if (!shown.length || place.distanceTo(places[shown.at(-1)]) >= apart) shown.push(index);
  });
  while (shown.length > 1 && places[shown.at(-1)].distanceTo(places[shown[0]]) < apart) shown.pop();
  return shown;
}

// A corner dragged. Corners that are not shown go along, the less the nearer they are to the next one shown.
export function withCorner(feature, number, index, to, shown) {
  return edited(feature, (all) => {
    const ring = all[number];
    const old = ring.slice(0, -1);
    const [right, up] = [to.lng - old[index][0], to.lat - old[index][1]];
    const put = (at, share) => {
      const [x, y, ...more] = old[at];
      ring[at] = [round(x + right * share), round(y + up * share), ...more];
    };
    for (const step of [1, -1]) {
      const way = wayToShown(old, index, step, shown);
      const total = way.at(-1)[1] * (way.at(-1)[0] === index ? 0.5 : 1); // alone, it takes half the ring along each way
      for (const [at, along] of way.slice(0, -1)) if (along <= total) put(at, total ? 1 - along / total : 1);
    }
    put(index, 1);
    once(ring);
  });
}

// The corners from one to the next that is shown, each with its distance along the edge, metres.
function wayToShown(corners, index, step, shown) {
  const degree = metresOfDegree(corners[index][1]);
  const way = [];
  let along = 0;
  for (let at = index; ; ) {
    const next = (at + step + corners.length) % corners.length;
    along += Math.hypot((corners[next][0] - corners[at][0]) * degree.east, (corners[next][1] - corners[at][1]) * degree.north);
    way.push([next, along]);
    if (next === index || shown.includes(next)) return way;
    at = next;
  }
}

export function withNewCorner(feature, number, after, at) {
  return edited(feature, (all) => {
    all[number].splice(after + 1, 0, [round(at.lng), round(at.lat)]);
    once(all[number]);
  });
}

// A corner taken away, with all that stand at the very same place.
export function withoutCorner(feature, { ring, index }) {
  return edited(feature, (all) => {
    const place = String(all[ring][index]);
    all[ring].splice(0, Infinity, ...all[ring].slice(0, -1).filter((one) => String(one) !== place));
    all[ring].push([...all[ring][0]]);
    once(all[ring]);
  });
}

// How many places a ring has.
export function cornersOf(ring) {
  return new Set(ring.map(String)).size;
}

// Keep each of several corners at one place once, and the ring closed.
function once(ring) {
  const kept = ring.slice(0, -1).filter((one, index, all) => index === 0 || String(one) !== String(all[index - 1]));
  while (kept.length > 1 && String(kept.at(-1)) === String(kept[0])) kept.pop();
  ring.splice(0, Infinity, ...kept, [...kept[0]]);
}
