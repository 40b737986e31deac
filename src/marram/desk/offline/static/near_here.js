// The areas near a place, and which of its pieces an area is there (marram/course/lies/united.py, regions.py).

import { signed } from "./distance.js";

export const GROUND = { out: 0, red: 1, yellow: 2, twoColours: 3, bunker: 4, green: 5, tee: 6, general: 7 };

// The areas no farther from a place than a distance.
export const within = (areas, x, y, distance) => areas.filter((area) => signed(area.at, x, y, distance) <= distance);

// The feature of an area that a place is nearest to, or deepest in.
export function holding({ pieces }, x, y) {
  if (pieces.length === 1) return pieces[0].feature;
  const edges = pieces.map((one) => signed(one.at, x, y, Infinity));
  const nearest = Math.min(...edges.map((one) => Math.max(0, one)));
  const places = edges.flatMap((one, at) => (Math.max(0, one) === nearest ? [at] : []));
  return pieces[places.reduce((best, at) => (Math.abs(edges[at]) > Math.abs(edges[best]) ? at : best))].feature;
}

// The feature of an area whose edge is nearest to a place.
export function edgeNear({ pieces }, x, y) {
  const edges = pieces.map((one) => Math.abs(signed(one.at, x, y, Infinity)));
  return pieces[edges.indexOf(Math.min(...edges))].feature;
}

// The features of an area no farther from a place than a distance; the nearest where only a joint is so near.
export function touching(area, x, y, distance) {
  const near = area.pieces.filter((one) => signed(one.at, x, y, distance) <= distance).map((one) => one.feature);
  return near.length ? [...new Set(near)] : [holding(area, x, y)];
}
