// A sentence as it was told, taken apart: words in one spelling, without their endings, and what kind of thing each
// names. Done alike in marram/rules/finding/sentence.py, by the tables of the same model file.

import { stem } from "./stemmer.js";

const LONGEST = 400; // words: what is said beyond them is not read

export function plain(sentence) {
  const letters = sentence.normalize("NFKD").replaceAll("\u2019", "'").toLowerCase();
  return letters.replace(/[\u0300-\u036f]/g, "").replace(/n't\b/g, " not");
}

const PIECE = /[a-z]+|[0-9]+(?:\.[0-9]+)?|[.,;:!?]/g; // a word or a sign between clauses
const DENIES = new Set(["not", "never", "without", "no", "nor", "neither", "nobody", "none"]);
const FURTHER = new Set( // where another clause begins: what was denied ends there
  "and but so then because when while before after until although though which where he she i we they . , ; : ! ?".split(" "),
);
const REACH = 4; // how many words that say something are denied, at most

// Return the words of a sentence that say something, as {stem, written, things, denied}.
export function words(sentence, tables) {
  const spelled = plain(sentence).replace(/'[a-z]*/g, " ").match(PIECE) ?? [];
  const joined = [...inCompounds(spelled.slice(0, LONGEST), tables.compounds)];
  let reach = 0;
  return joined.flatMap((written, place) => {
    const things = thingsNamed(joined, place, tables.things);
    if (FURTHER.has(written)) reach = 0;
    return (tables.forms.get(written) ?? written).split(" ").flatMap((part, number) => {
      if (tables.little.has(part) || !/^[a-z0-9]/.test(part)) return [];
      const denied = reach > 0;
      reach = DENIES.has(part) ? REACH : Math.max(reach - 1, 0);
      return [{ stem: stem(part), written, things: number === 0 ? things : [], denied }];
    });
  });
}

function* inCompounds(spelled, compounds) {
  for (let place = 0; place < spelled.length; place += 1) {
    const one = compounds.get(`${spelled[place]} ${spelled[place + 1] ?? ""}`);
    if (one !== undefined) place += 1;
    yield one ?? spelled[place];
  }
}

const without = (word, ending) => (word.endsWith(ending) ? word.slice(0, word.length - ending.length) : word);

// The kinds of thing that a word, or it with the next one, names; a plural names what its singular does.
function thingsNamed(spelled, place, things) {
  for (const said of [spelled.slice(place, place + 2).join(" "), spelled[place]]) {
    for (const form of [said, without(said, "s"), without(said, "es")]) {
      if (things.has(form)) return things.get(form).split(" ");
    }
  }
  return [];
}
