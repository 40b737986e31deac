// Rule numbers and codes of Local Rules in what was typed. Done alike in marram/rules/finding/citations.py.

const RULE = /(?<![\w.])([0-9]{1,2}\.[0-9][0-9]?[a-z]?(?:\([0-9]\))?)(?![\w.]*[0-9a-z%])/gi;
const WHOLE_RULE = /(?:\brules?\s+([0-9]{1,2})|^\s*([0-9]{1,2})\s*$)(?![\w.(]*[0-9a-z])/gi;
const CODE = /(?<![\w-])([a-m]-[0-9]{1,2})(?![\w-])/gi;
const AMOUNT =
  /^\s*(?:m|metres?|meters?|yards?|yds?|feet|foot|ft|inch(?:es)?|cm|club|seconds?|minutes?|miles?|strokes?|handicap)\b/i;

export function citations(sentence) {
  const found = [];
  for (const pattern of [RULE, CODE]) {
    for (const match of sentence.matchAll(pattern)) {
      if (!AMOUNT.test(sentence.slice(match.index + match[0].length))) found.push(match[1]);
    }
  }
  for (const match of sentence.matchAll(WHOLE_RULE)) found.push(match[1] ?? match[2]);
  return [...new Set(found.map((one) => one.toLowerCase()))];
}

// A sentence without the Rules cited in it, and without the word before them.
export function without(sentence, cited) {
  return cited.reduce((rest, one) => {
    const exact = one.replace(/[.()-]/g, "\\$&");
    return rest.replace(new RegExp(`(?:\\brules?\\s*)?${exact}(?![0-9a-z])`, "gi"), " ");
  }, sentence);
}

// How near an incident begins to what is cited: 3 there, 2 in a part of it, 1 in what it is a part of, 0 elsewhere.
export function closeness(given, cited) {
  const rule = given.toLowerCase();
  if (rule === cited) return 3;
  if (partOf(rule, cited)) return 2;
  return partOf(cited, rule) ? 1 : 0;
}

function partOf(fine, coarse) {
  if (!fine.startsWith(coarse) || fine === coarse) return false;
  return !(/[0-9]/.test(fine[coarse.length]) && /[0-9]$/.test(coarse));
}
