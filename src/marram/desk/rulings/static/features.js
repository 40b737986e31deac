// What a sentence is weighed by: stems, stems side by side or near each other, and kinds of things.
// Done alike in marram/rules/finding/features.py.

const NEAR = 3; // two stems with fewer than so many words between them are near each other

export const DENIED = "!"; // what stands before the stem of a word that is denied

// Return what a sentence is weighed by, each once.
export function features(found) {
  const out = new Set();
  const stems = found.map((one) => one.stem);
  found.forEach((one, place) => {
    out.add(one.denied ? DENIED + one.stem : one.stem);
    for (const thing of one.things) out.add(`<${thing}>`);
    if (place + 1 < stems.length) out.add(`${one.stem} ${stems[place + 1]}`);
    for (let far = place + 2; far < Math.min(place + 1 + NEAR, stems.length); far += 1) out.add(`${one.stem}~${stems[far]}`);
    for (let near = Math.max(place - NEAR, 0); near < Math.min(place + 1 + NEAR, stems.length); near += 1) {
      if (near === place) continue;
      for (const thing of one.things) out.add(near > place ? `<${thing}>${stems[near]}` : `${stems[near]}<${thing}>`);
    }
  });
  return [...out];
}
