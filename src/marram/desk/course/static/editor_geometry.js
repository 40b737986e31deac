// Places in degrees and lengths in metres: shapes around a point, moves, and the nearest hole.

const RADIUS = 6378137; // WGS 84, metres
const ECCENTRICITY = 0.00669437999014; // squared
const CORNERS = 36; // of a circle: its edge is at most 0.4 % of the radius inside

// Metres of one degree of longitude and of latitude (radii of curvature of the WGS 84 ellipsoid).
export function metresOfDegree(latitude) {
  const sine = Math.sin((latitude * Math.PI) / 180);
  const flat = 1 - ECCENTRICITY * sine * sine;
  const across = RADIUS / Math.sqrt(flat);
  const along = (RADIUS * (1 - ECCENTRICITY)) / flat ** 1.5;
  return { east: (across * Math.cos((latitude * Math.PI) / 180) * Math.PI) / 180, north: (along * Math.PI) / 180 };
}

export function round(degrees) {
  return Math.round(degrees * 1e8) / 1e8; // about a millimetre
}

// The place some metres away, as [longitude, latitude].
export function away(place, east, north) {
  const degree = metresOfDegree(place.lat);
  return [round(place.lng + east / degree.east), round(place.lat + north / degree.north)];
}

export function circle(middle, radius) {
  return Array.from({ length: CORNERS }, (_, index) => {
    const angle = (2 * Math.PI * index) / CORNERS;
    return away(middle, radius * Math.cos(angle), radius * Math.sin(angle));
  });
}

// A rectangle whose length runs in a direction, in degrees clockwise from north.
export function rectangle(middle, length, width, direction) {
  const angle = (direction * Math.PI) / 180;
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  return [[1, 1], [1, -1], [-1, -1], [-1, 1]].map(([ahead, aside]) => {
    const [forth, right] = [(ahead * length) / 2, (aside * width) / 2];
    return away(middle, forth * sine + right * cosine, forth * cosine - right * sine);
  });
}

// The number of the hole whose line of play is nearest, or null when none is within `most` metres.
export function nearestHole(features, [longitude, latitude], most = 100) {
  const degree = metresOfDegree(latitude);
  let best = null;
  let least = most;
  for (const one of features) {
    if (one.properties?.golf !== "hole" || one.geometry?.type !== "LineString") continue;
    const at = one.geometry.coordinates.map(([x, y]) => [(x - longitude) * degree.east, (y - latitude) * degree.north]);
    for (let index = 1; index < at.length; index += 1) {
      const distance = fromOrigin(at[index - 1], at[index]);
      if (distance < least) [least, best] = [distance, one.properties.ref ?? null];
    }
  }
  return best;
}

function fromOrigin([x, y], [toX, toY]) {
  const [alongX, alongY] = [toX - x, toY - y];
  const length = alongX * alongX + alongY * alongY;
  const share = length ? Math.min(1, Math.max(0, -(x * alongX + y * alongY) / length)) : 0;
  return Math.hypot(x + share * alongX, y + share * alongY);
}
