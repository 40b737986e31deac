// A sentence as it was told, taken apart: words in one spelling, without their endings, and what kind of thing each
// names. Done alike in marram/rules/finding/sentence.py, by the tables of the same model file.

import { stem } from "./stemmer.js";

const LONGEST = 400; // words: what is said beyond them is not read

export function plain(sentence) {
  const letters = sentence.normalize("NFKD").replaceAll("\u2019", "'").toLowerCase();
  return letters.replace(/[\u0300-\u036f]/g, "").replace(/n't\b/g, " not");
}

// Return the words of a sentence that say something, as {stem, written, things}.
export function words(sentence, tables) {
  const spelled = plain(sentence).replace(/'[a-z]*/g, " ").match(/[a-z]+|[0-9]+(?:\.[0-9]+)?/g) ?? [];
  const joined = [...inCompounds(spelled.slice(0, LONGEST), tables.compounds)];
  return joined.flatMap((one, place) => {
    const things = thingsNamed(joined, place, tables.things);
    const parts = (tables.forms.get(one) ?? one).split(" ");
    return parts
      .map((part, number) => ({ word: part, written: one, things: number === 0 ? things : [] }))
      .filter(({ word }) => !tables.little.has(word))
      .map((part) => ({ stem: stem(part.word), written: part.written, things: part.things }));
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
