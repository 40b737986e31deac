// Whether the edge of an area crosses or touches itself, or runs back on itself as a spike: nobody can tell its inside then.

import { rings } from "./editor_shape.js";

// Where the edges of a feature cross, as [longitude, latitude]; null where they do not.
export function crossing(feature) {
  const edges = rings(feature).flatMap((ring, number) => {
    const places = ring.filter((one, index) => index === 0 || String(one) !== String(ring[index - 1]));
    return places.slice(1).map((to, index) => ({ from: places[index], to, ring: number, index, last: places.length - 2 }));
  });
  for (let one = 0; one < edges.length; one += 1) {
    for (let other = one + 1; other < edges.length; other += 1) {
      if (apart(edges[one], edges[other])) continue;
      if (follow(edges[one], edges[other])) {
        if (spike(edges[one], edges[other])) return edges[other].from;
      } else if (meet(edges[one], edges[other])) return meeting(edges[one], edges[other]);
    }
  }
  return null;
}

function apart(one, other) {
  return [0, 1].some((at) => Math.max(one.from[at], one.to[at]) < Math.min(other.from[at], other.to[at]) || Math.max(other.from[at], other.to[at]) < Math.min(one.from[at], one.to[at]));
}

function follow(one, other) {
  return one.ring === other.ring && (other.index - one.index === 1 || (one.index === 0 && other.index === other.last));
}

// Twice the area of a triangle: its sign tells on which side of a line a place is.
function side(from, to, at) {
  return (to[0] - from[0]) * (at[1] - from[1]) - (to[1] - from[1]) * (at[0] - from[0]);
}

function meet(one, other) {
  const [a, b] = [side(one.from, one.to, other.from), side(one.from, one.to, other.to)];
  const [c, d] = [side(other.from, other.to, one.from), side(other.from, other.to, one.to)];
  if (one.ring !== other.ring) return a * b < 0 && c * d < 0; // two rings may touch at a place
  return a * b <= 0 && c * d <= 0;
}

function meeting(one, other) {
  const [before, after] = [side(other.from, other.to, one.from), side(other.from, other.to, one.to)];
  if (before === after) return other.from; // on one line
  const share = before / (before - after);
  return [0, 1].map((at) => one.from[at] + (one.to[at] - one.from[at]) * share);
}

// Two edges that follow each other on one line, the second back over the first.
function spike(one, other) {
  const [before, after] = other.index - one.index === 1 ? [one, other] : [other, one];
  const back = (before.to[0] - before.from[0]) * (after.to[0] - after.from[0]) + (before.to[1] - before.from[1]) * (after.to[1] - after.from[1]);
  return side(before.from, before.to, after.to) === 0 && back < 0;
}
