// Distances on the ground of a map, in metres. A shape is a list of polygons, a polygon {rings, box}, a ring or line a flat
// list of coordinates. What lies beyond a reach is told as no nearer than it, so that only what is near is looked at.

export function boxOf(rings) {
  const box = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of rings)
    for (let at = 0; at < ring.length; at += 2) {
      box[0] = Math.min(box[0], ring[at]);
      box[1] = Math.min(box[1], ring[at + 1]);
      box[2] = Math.max(box[2], ring[at]);
      box[3] = Math.max(box[3], ring[at + 1]);
    }
  return box;
}

// How far a place is from a line of one corner or more.
export function fromLine(line, x, y) {
  let nearest = Math.hypot(x - line[0], y - line[1]);
  for (let at = 2; at < line.length; at += 2) nearest = Math.min(nearest, fromStretch(line[at - 2], line[at - 1], line[at], line[at + 1], x, y));
  return nearest;
}

function fromStretch(ax, ay, bx, by, x, y) {
  const [dx, dy] = [bx - ax, by - ay];
  const length = dx * dx + dy * dy;
  const along = length === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / length));
  return Math.hypot(x - ax - along * dx, y - ay - along * dy);
}

// Whether a place is inside a polygon: how often a ray from it meets the rings (even and odd).
export function inside({ rings, box }, x, y) {
  if (x < box[0] || x > box[2] || y < box[1] || y > box[3]) return false;
  let within = false;
  for (const ring of rings)
    for (let at = 2; at < ring.length; at += 2) {
      const [ax, ay, bx, by] = [ring[at - 2], ring[at - 1], ring[at], ring[at + 1]];
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) within = !within;
    }
  return within;
}

// From a place to the edge of a shape, negative inside; no less than `reach` where it is farther outside than that.
export function signed(shape, x, y, reach) {
  let edge = Infinity;
  let within = false;
  for (const polygon of shape) {
    if (away(polygon.box, x, y) > reach) continue;
    for (const ring of polygon.rings) edge = Math.min(edge, fromLine(ring, x, y));
    within ||= inside(polygon, x, y);
  }
  return within ? -edge : edge;
}

const away = (box, x, y) => Math.hypot(Math.max(box[0] - x, 0, x - box[2]), Math.max(box[1] - y, 0, y - box[3]));
