// Which incidents are likely where a ball lies on the map of this phone. Done alike in marram/services/cases/likely.py, whose
// tables the book brings along.

import { fromLine, signed } from "./distance.js";

// The names of the incidents, the likeliest first; lie: as lieOf() of spot.js reads it, or null.
export function likelyHere({ likely }, map, lie) {
  if (!likely || !lie) return []; // a book kept before there were such tables
  const near = nearKinds(map, lie, likely.near);
  const nearby = likely.by_kind.flatMap(([kind, names]) => (near.has(kind) ? names : []));
  const ofArea = likely.by_area[lie.area];
  const names = likely.area_first.includes(lie.area) ? [...ofArea, ...nearby] : [...nearby, ...ofArea];
  if (lie.area === "general_area" && onGreen(map, lie)) names.unshift("wrong_green"); // a green of another hole, then (Rule 13.1f)
  names.splice(1, 0, ...likely.by_local_rule[lie.area]);
  return [...new Set([...names, ...likely.by_competition])].slice(0, likely.most);
}

function nearKinds(map, { x, y }, reach) {
  const isNear = ({ at }) => signed(at.polygons, x, y, reach) <= reach || at.lines.some((line) => fromLine(line, x, y) <= reach);
  const found = new Set(map.telling.filter(isNear).map((one) => one.kind));
  if (map.boundary.some((line) => fromLine(line, x, y) <= reach)) found.add("out_of_bounds");
  return found;
}

const onGreen = (map, { x, y }) => map.spoken.some(({ kind, at }) => kind === "putting_green" && signed(at.polygons, x, y, 0) <= 0);
