// Why the map alone cannot be relied on at a place (marram/course/lies/doubts.py): each doubt with the kind of feature it is
// about, and whether it leaves open which area of the course the ball lies in.

import { fromLine, inside, signed } from "./distance.js";
import { GROUND, edgeNear, holding, touching, within } from "./near_here.js";

const NOT_ABOUT_AREA = new Set(["ground_under_repair", "temporary_water", "path", "obstruction", "no_play_zone", "barrier"]);

const doubt = (kind, feature = null) => ({ kind, of: feature?.kind ?? null, about: !NOT_ABOUT_AREA.has(feature?.kind) });

export function doubtsAt(map, hole, place) {
  const reading = { ...place, ...map.distances };
  return [accuracy(map, hole, reading), cover(map, reading), teesAndGreen(hole, reading), water(hole, reading), bounds(map, hole, reading), paths(hole, reading), obstructions(hole, reading), unsettled(hole, reading)].flat();
}

function accuracy(map, hole, { x, y, accuracy: off, answer, touch, rounding }) {
  const reach = Math.max(off, rounding);
  const found = answer.edge <= reach ? [doubt("within_accuracy")] : [];
  for (const { feature, edges, off: rough } of map.rough) {
    const away = Math.min(Infinity, ...edges.map((line) => fromLine(line, x, y)));
    if (reach < away && away <= rough + touch) found.push(doubt("within_accuracy", feature));
  }
  const areas = [...hole.conditions, ...(answer.ground === GROUND.general ? hole.wrongGreens : [])];
  for (const area of within(areas, x, y, touch + reach)) {
    const feature = edgeNear(area, x, y);
    if (Math.abs(signed(area.at, x, y, Infinity) - touch) <= reach && feature.width === null) found.push(doubt("within_accuracy", feature));
  }
  return found;
}

const cover = (map, { x, y }) => (map.covered && !map.covered.some((one) => inside(one, x, y)) ? [doubt("not_covered")] : []);

function teesAndGreen(hole, { x, y, answer, touch, green_reach: reach }) {
  const { ground, feature } = answer;
  const found = ground === GROUND.tee && !feature.of_the_day ? [doubt("tee_markers", feature)] : [];
  if (ground !== GROUND.general) return found;
  if (within(hole.idleTees, x, y, touch).length) found.push(doubt("idle_tee"));
  if (!hole.green && Math.hypot(x - hole.at[0], y - hole.at[1]) <= reach) found.push(doubt("no_green"));
  return found;
}

function water(hole, { x, y, answer, unmapped_edge: unmapped }) {
  const { ground, feature } = answer;
  if (ground === GROUND.twoColours) return [doubt("two_colours", feature)];
  if (ground < GROUND.twoColours) return feature?.kind === "water" ? [{ ...doubt("unmarked_water", feature), about: false }] : [];
  return within(hole.water, x, y, unmapped).length ? [doubt("unmarked_water")] : [];
}

function bounds(map, hole, { answer, near_outline: nearOutline }) {
  if (!hole.bounds.in) return [{ ...doubt("no_boundary"), about: false }];
  const near = answer.ground === GROUND.out || answer.bounds > -nearOutline;
  return map.outline_as_boundary && near ? [doubt("outline_as_boundary")] : [];
}

const nearOf = (hole, kind, x, y, near) => within(hole.conditions, x, y, near).filter((area) => area.kind === kind).flatMap((area) => touching(area, x, y, near));

function paths(hole, { x, y, accuracy: off, touch, near_path: near }) {
  return nearOf(hole, "path", x, y, near).flatMap((path) => {
    const away = Math.min(Math.max(0, signed(path.at.polygons, x, y, Infinity)), ...path.at.lines.map((line) => fromLine(line, x, y)));
    const isOn = away <= touch + (path.width ?? 0) / 2;
    const found = isOn && !path.surface ? [doubt("path_without_surface", path)] : [];
    return path.width !== null && (isOn || away <= near) ? [...found, { ...doubt("path_without_width", path), stands: away + off <= path.width / 2 }] : found;
  });
}

const obstructions = (hole, { x, y, near_path: near }) => nearOf(hole, "obstruction", x, y, near).filter((one) => one.width !== null).map((one) => doubt("obstruction_without_size", one));

function unsettled(hole, { x, y, answer, near_path: near, unmapped_edge: unmapped }) {
  const walls = within(hole.unsettled, x, y, near).filter((area) => area.kind === "barrier");
  const found = walls.map((area) => doubt("barrier_without_status", holding(area, x, y)));
  if (answer.ground <= GROUND.twoColours) return found;
  const wet = within(hole.unsettled, x, y, unmapped).filter((area) => area.kind === "wetland");
  return [...found, ...wet.map((area) => doubt("wetland_without_status", holding(area, x, y)))];
}
