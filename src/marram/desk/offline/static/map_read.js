// The course map as services/offline/course_map.py writes it, made ready to be asked: metres, and areas instead of numbers.

import { boxOf } from "./distance.js";

const FORMAT = 1;
const MILLIMETRES = 1000;

export function readMap(plain) {
  if (plain.marram !== FORMAT || plain.kind !== "offline_map") throw new TypeError(`${plain.kind} ${plain.marram}`);
  const polygons = plain.polygons.map((rings) => polygonOf(rings.map(corners)));
  const lines = plain.lines.map(corners);
  const shape = (places) => places && places.map((at) => polygons[at]);
  const ground = ([own, others]) => ({ polygons: shape(own), lines: others.map((at) => lines[at]) });
  const features = plain.features.map((one) => ({ width: null, words: "", ...one, at: ground(one.at) }));
  const areas = plain.areas.map((one) => ({ ...one, at: shape(one.at), pieces: one.pieces.map(([feature, at]) => ({ feature: features[feature], at: shape(at) })) }));
  const own = (places = []) => places.map((at) => areas[at]);
  const shared = { conditions: own(plain.shared.conditions), water: own(plain.shared.water), unsettled: own(plain.shared.unsettled), idleTees: own(plain.shared.idle_tees) };
  const holes = plain.holes.map((one) => ({
    ...one,
    ...shared,
    line: one.line.map((at) => lines[at]),
    at: one.at.map((number) => number / MILLIMETRES),
    bounds: { in: shape(one.bounds.in), out: shape(one.bounds.out) },
    regions: one.regions.map(([which, at, of]) => ({ ground: which, at: shape(at), areas: own(of) })),
    wrongGreens: own(one.wrong_greens),
  }));
  return {
    ...plain,
    features,
    areas,
    holes: new Map(holes.map((one) => [one.number, one])),
    spoken: plain.spoken.map((at) => features[at]),
    rough: plain.rough.map(([feature, edges, off]) => ({ feature: features[feature], edges: edges.map((at) => lines[at]), off })),
    telling: (plain.telling ?? []).map((at) => features[at]),
    boundary: (plain.boundary ?? []).map((at) => lines[at]),
    covered: shape(plain.covered),
    drawn: plain.drawn.map(([kind, of, others]) => ({ kind, ...ground([of, others]) })),
  };
}

const polygonOf = (rings) => ({ rings, box: boxOf(rings) });

function corners(steps) {
  const found = new Float64Array(steps.length);
  let [x, y] = [0, 0];
  for (let at = 0; at < steps.length; at += 2) {
    found[at] = (x += steps[at]) / MILLIMETRES;
    found[at + 1] = (y += steps[at + 1]) / MILLIMETRES;
  }
  return found;
}

// Metres east and north of the middle of the course, of a place in degrees.
export function toMetres({ plane }, longitude, latitude) {
  const away = ((((longitude - plane.middle[0] + 180) % 360) + 360) % 360) - 180;
  const [x, y] = [away / plane.degrees[0], (latitude - plane.middle[1]) / plane.degrees[1]];
  return plane.inward.map((row) => plane.metres * sum(row, x, y));
}

// Longitude and latitude of a place in metres.
export function toDegrees({ plane }, x, y) {
  return plane.outward.map((row, at) => plane.middle[at] + plane.degrees[at] * sum(row, x / plane.metres, y / plane.metres));
}

// A polynomial of two variables: its coefficients by total power, the first variable's power rising.
function sum(row, x, y) {
  let [total, at] = [0, 0];
  for (let power = 0; at < row.length; power += 1) for (let i = 0; i <= power; i += 1) total += row[at++] * x ** i * y ** (power - i);
  return total;
}
