// Where a ball lies, read on this phone: by distance, in the order of Rule 2.2c, as marram/course/lies/decision.py and
// marram/relief/place/place_facts.py read it, and as they are compared with it place by place.

import { fromLine, signed } from "./distance.js";
import { doubtsAt } from "./doubts_here.js";
import { GROUND, holding, touching, within } from "./near_here.js";


const AREAS = ["out", "penalty_area", "penalty_area", "penalty_area", "bunker", "putting_green", "teeing_area", "general_area"];
const COLOURS = { [GROUND.red]: "red", [GROUND.yellow]: "yellow" };
const SPEAKING = ["red_penalty_area", "yellow_penalty_area", "bunker", "putting_green", "teeing_area", "fairway", "path", "obstruction", "integral_object", "barrier", "ground_under_repair", "temporary_water", "no_play_zone", "dropping_zone", "out_of_bounds", "wetland", "trees"];
const IN_THE_WAY = [["ground_under_repair", "ground_under_repair"], ["temporary_water", "temporary_water"], ["path", "immovable_obstruction"], ["obstruction", "immovable_obstruction"]];

// The hole whose line of play is nearest to a place.
export function holeNear(map, x, y) {
  const away = (hole) => Math.min(...hole.line.map((line) => fromLine(line, x, y)));
  return [...map.holes.values()].reduce((best, hole) => (away(hole) < away(best) ? hole : best));
}

// What the map knows of a ball at a place in metres when a hole is played; null where that is nowhere near the course.
export function lieAt(map, number, x, y, accuracy = map.distances.tap) {
  const { touch, furthest, far_away: farAway } = map.distances;
  if (!(Math.hypot(x, y) <= furthest)) return null;
  const hole = map.holes.get(number);
  const answer = decided(hole, x, y, touch, touch + Math.max(accuracy, map.distances.near_outline));
  const general = answer.ground === GROUND.general;
  const wrongGreen = general && within(hole.wrongGreens, x, y, touch).length > 0;
  const conditions = within(hole.conditions, x, y, touch).flatMap((area) => touching(area, x, y, touch));
  const doubts = doubtsAt(map, hole, { x, y, accuracy, answer });
  const metres = Math.hypot(x - hole.at[0], y - hole.at[1]);
  if (metres > farAway) doubts.push({ kind: "far_away", about: true });
  const lacks = doubts.some((one) => one.kind === "no_boundary");
  const areaOpen = doubts.some((one) => one.about);
  const area = AREAS[answer.ground];
  const colour = areaOpen ? colourWithinReach(map, hole, { x, y, accuracy, doubts }) : COLOURS[answer.ground];
  const reading = { hole, x, y, touch, area, colour, conditions, wrongGreen, doubts, lacks, areaOpen };
  return { ...reading, metres, words: lieWords(map, wrongGreen ? "wrong_green" : area, areaOpen), things: things(map, hole, x, y), facts: factsOf(reading) };
}

function lieWords(map, area, open) {
  const where = map.lies[area === "out" ? "none" : area];
  return open ? map.perhaps.replace("{where}", where) : where;
}

// What was decided, how far the nearest edge is behind which it would be otherwise, and the feature that decided.
function decided(hole, x, y, touch, reach) {
  const regions = hole.regions.map((one) => ({ ...one, distance: signed(one.at, x, y, reach) }));
  const touched = regions.filter((one) => one.distance <= touch).map((one) => one.ground);
  let ground = Math.min(GROUND.general, ...touched);
  if (ground === GROUND.red && touched.includes(GROUND.yellow)) ground = GROUND.twoColours;
  const edge = hole.bounds.in ? signed(hole.bounds.in, x, y, reach) : hole.bounds.out ? -signed(hole.bounds.out, x, y, reach) : null;
  if (edge !== null && edge > touch) ground = GROUND.out;
  const last = ground === GROUND.red ? GROUND.yellow : ground;
  const looked = regions.filter((one) => one.ground <= last);
  const distances = [...(edge === null ? [] : [edge]), ...looked.map((one) => one.distance)];
  const deciding = looked.find((one) => one.distance <= touch);
  const feature = deciding && ground !== GROUND.out ? holding(nearestArea(deciding.areas, x, y, reach), x, y) : null;
  return { ground, feature, edge: Math.min(Infinity, ...distances.map((one) => Math.abs(one - touch))), bounds: hole.bounds.in ? edge : null };
}

function nearestArea(areas, x, y, reach) {
  const away = areas.map((one) => Math.max(0, signed(one.at, x, y, reach)));
  return areas[away.indexOf(Math.min(...away))];
}

// The colour of every penalty area a ball may lie in where the area is open (marram/course/lies/colours.py).
function colourWithinReach(map, hole, { x, y, accuracy, doubts }) {
  const { touch, rounding, unmapped_edge: unmapped } = map.distances;
  const kinds = new Set(doubts.map((one) => one.kind));
  if (["not_covered", "wetland_without_status", "far_away"].some((kind) => kinds.has(kind))) return null;
  const rough = map.rough.filter(({ edges, off }) => edges.some((line) => fromLine(line, x, y) <= off + touch)).map((one) => one.off);
  const reach = touch + Math.max(accuracy, rounding, kinds.has("unmarked_water") ? unmapped : 0, ...rough);
  const near = hole.regions.filter((one) => one.ground in COLOURS && signed(one.at, x, y, reach) <= reach);
  return near.length === 1 ? COLOURS[near[0].ground] : null;
}

// Facts for the ruling, as answers are written in an address; none where the map is in doubt.
function factsOf({ hole, x, y, touch, area, colour, conditions, wrongGreen, doubts, lacks, areaOpen }) {
  const facts = {};
  if (!areaOpen && !lacks) facts.all_of_ball_out_of_bounds = area === "out" ? "yes" : "no";
  if (area !== "out" && !areaOpen) facts.area_of_ball = area;
  if (colour) facts.penalty_area_colour = colour;
  if (area === "general_area" && !areaOpen) facts.spot_behind_in_general_area = "yes";
  const unsure = new Set(doubts.filter((one) => !one.stands).map((one) => one.of));
  const sure = new Set(conditions.map((one) => one.kind).filter((kind) => !unsure.has(kind)));
  if (sure.delete("no_play_zone")) facts.no_play_zone_interference = "ball_inside";
  if (area !== "out" && area !== "penalty_area" && sure.size && !areaOpen) {
    facts.interference = "ball";
    const way = IN_THE_WAY.find(([kind]) => sure.has(kind));
    if (way) facts.in_the_way = way[1];
  }
  if (wrongGreen && !areaOpen) facts.wrong_green_interference = "ball_on_it";
  if (!areaOpen && zoneServes(hole, x, y, touch)) facts.dropping_zone_provided = "yes";
  return facts;
}

const everyArea = (hole) => [...hole.regions.flatMap((one) => one.areas), ...hole.wrongGreens, ...hole.conditions, ...hole.unsettled];

const zoneServes = (hole, x, y, touch) => within(everyArea(hole), x, y, touch).some((area) => area.zones.some((holes) => !holes.length || holes.includes(hole.number)));

// What the ball touches, in words, in the order it is said.
function things(map, hole, x, y) {
  const { touch } = map.distances;
  const touched = within(everyArea(hole), x, y, touch).flatMap((area) => touching(area, x, y, touch));
  const mapped = map.spoken.filter(({ at }) => signed(at.polygons, x, y, touch) <= touch || at.lines.some((line) => fromLine(line, x, y) <= touch));
  const found = [...new Set([...touched, ...mapped])].filter((one) => SPEAKING.includes(one.kind));
  return found.sort((a, b) => SPEAKING.indexOf(a.kind) - SPEAKING.indexOf(b.kind)).map((one) => one.words);
}
