// A spot on the course as an address writes it, "latitude,longitude" with ";u=6" where it is known to 6 m only, and the hole.

import { lieAt, holeNear } from "./lie_here.js";
import { toDegrees, toMetres } from "./map_read.js";

const OPEN = "open"; // facts that the official answers rather than the map, in the address

export function spotOf(map, x, y, off) {
  const [longitude, latitude] = toDegrees(map, x, y);
  const known = off > map.distances.tap ? `;u=${Number(off.toFixed(1))}` : "";
  return `${latitude.toFixed(7)},${longitude.toFixed(7)}${known}`;
}

// Metres and accuracy of a spot in degrees; null where it is none.
export function readSpot(map, spot) {
  const [place, known] = String(spot ?? "").split(";u=");
  const [latitude, longitude] = place.split(",").map(Number);
  if (!Number.isFinite(latitude) || !Number.isFinite(longitude) || Math.abs(latitude) > 90) return null;
  const [x, y] = toMetres(map, longitude, latitude);
  return { x, y, off: known === undefined ? map.distances.tap : Math.max(0, Number(known)) || 0 };
}

// What the map knows of the ball of a case; null where none was shown, or it is nowhere near the course.
export function lieOf(map, answers) {
  const spot = map && answers.ball ? readSpot(map, answers.ball) : null;
  if (!spot) return null;
  const number = map.holes.has(answers.hole) ? answers.hole : holeNear(map, spot.x, spot.y).number;
  return lieAt(map, number, spot.x, spot.y, spot.off);
}

// Facts that the map hands over, but for those the official wants to answer; shown: what the place says by itself.
export function factsHere(map, answers, shown = {}) {
  const left = new Set(String(answers[OPEN] ?? "").split(" "));
  const lie = lieOf(map, answers);
  return Object.fromEntries(Object.entries(lie ? { ...shown, ...lie.facts } : {}).filter(([name]) => !left.has(name)));
}

// The address of a case in which a fact of the map is asked instead.
export const asking = (answers, fact) => ({ ...answers, [OPEN]: [answers[OPEN], fact].filter(Boolean).join(" ") });
