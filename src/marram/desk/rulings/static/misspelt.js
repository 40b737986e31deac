// What a word that nobody taught was meant for: a slip of the thumb, a fault of dictation.
// Done alike in marram/rules/finding/misspelt.py; both must take the same word.

const SHORTEST = 5; // letters: a shorter stem is taken as it stands
const LONG = 8; // letters from which a stem may have two slips

// Return the known stem that an unknown one was meant for, or null. known: by first letter, lists of [stem, rarity].
export function meant(stem, known) {
  if (stem.length < SHORTEST || !/^[a-z]+$/.test(stem)) return null;
  const most = stem.length >= LONG ? 2 : 1;
  let found = null;
  for (const [other, rarity] of known.get(stem[0]) ?? []) {
    if (Math.abs(other.length - stem.length) > most || other.length < SHORTEST - 1) continue;
    const slips = distance(stem, other, most);
    if (slips > most) continue;
    const nearer = found === null || slips - found.slips || rarity - found.rarity || (other < found.other ? -1 : 1);
    if (nearer === true || nearer < 0) found = { slips, rarity, other };
  }
  return found?.other ?? null;
}

// How many letters are missing, added, changed or exchanged with the next; most + 1 where they are more.
function distance(one, other, most) {
  let before = [];
  let last = Array.from({ length: other.length + 1 }, (_, at) => at);
  for (let row = 1; row <= one.length; row += 1) {
    const now = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1];
      let least = Math.min(last[column] + 1, now[column - 1] + 1, last[column - 1] + (same ? 0 : 1));
      if (row > 1 && column > 1 && one[row - 1] === other[column - 2] && other[column - 1] === one[row - 2]) {
        least = Math.min(least, before[column - 2] + 1);
      }
      now.push(least);
    }
    if (Math.min(...now) > most) return most + 1;
    [before, last] = [last, now];
  }
  return last.at(-1);
}
