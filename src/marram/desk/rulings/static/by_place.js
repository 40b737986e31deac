// What a sentence points to, in the order that the place of the ball gives it. Done alike in marram/services/cases/likely.py.

const FACTOR = 4; // how many times likelier an incident is where the place speaks for it

// What only tells of the former Rules stands last, unless the sentence speaks of them.
//
// rows: as rank() of ranking.js gives them, the likeliest first. likely: the names of the incidents the place speaks for.
export function byPlace(rows, likely) {
  if (!rows.length || rows[0].closest > 0) return [...rows].sort((a, b) => a.taught - b.taught);
  const speaks = new Set(likely);
  const odds = ({ name, likelihood }) => likelihood * (speaks.has(name) ? FACTOR : 1);
  return [...rows].sort((a, b) => a.taught - b.taught || a.later - b.later || odds(b) - odds(a));
}
