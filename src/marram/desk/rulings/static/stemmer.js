// English words without their endings: the Snowball project's English stemmer, as of its release 3.1.
//
// Written afresh from the algorithm's description (snowballstem.org, 3-Clause BSD Licence; Copyright (c) 2001, Dr Martin
// Porter, and (c) 2004, 2005, Richard Boulton). Tests compare it with the Python library that marram uses, word by word.

const VOWEL = "aeiouy";
const EXCEPTIONS = {
  andes: "andes", atlas: "atlas", bias: "bias", cosmos: "cosmos", early: "earli", gently: "gentl", howe: "howe",
  idly: "idl", news: "news", only: "onli", singly: "singl", skies: "sky", skis: "ski", sky: "sky", ugly: "ugli",
};
const BEGINNINGS = ["arsen", "commun", "emerg", "gener", "inter", "later", "organ", "past", "univers"];
const STEP_2 = {
  ization: "ize", ational: "ate", fulness: "ful", ousness: "ous", iveness: "ive", tional: "tion", biliti: "ble",
  lessli: "less", entli: "ent", ation: "ate", alism: "al", aliti: "al", ousli: "ous", iviti: "ive", fulli: "ful",
  ogist: "og", enci: "ence", anci: "ance", abli: "able", izer: "ize", ator: "ate", alli: "al", bli: "ble", ogi: "og",
  li: "",
};
const STEP_3 = {
  ational: "ate", tional: "tion", alize: "al", icate: "ic", iciti: "ic", ative: "", ical: "ic", ness: "", ful: "",
};
const STEP_4 = [
  "ement", "ance", "ence", "able", "ible", "ment", "ant", "ent", "ism", "ate", "iti", "ous", "ive", "ize", "ion",
  "al", "er", "ic",
];

const isVowel = (letter) => letter !== undefined && VOWEL.includes(letter);

// A y that stands first or after a vowel is a consonant: it is written Y meanwhile.
function consonantY(word) {
  let out = "";
  for (const letter of word) out += letter === "y" && (out === "" || isVowel(out.at(-1))) ? "Y" : letter;
  return out;
}

// Where the region after the first consonant that follows a vowel begins, from a place on.
function region(word, from) {
  let at = from;
  while (at < word.length && !isVowel(word[at])) at += 1;
  while (at < word.length && isVowel(word[at])) at += 1;
  return at < word.length ? at + 1 : word.length;
}

function endsShort(word) {
  if (word.endsWith("past")) return true;
  const [a, b, c] = [word.at(-3), word.at(-2), word.at(-1)];
  if (word.length >= 3 && !isVowel(c) && !"wxY".includes(c) && isVowel(b) && !isVowel(a)) return true;
  return word.length === 2 && isVowel(word[0]) && !isVowel(word[1]);
}

const longest = (word, endings) => endings.find((one) => word.endsWith(one));
const cut = (word, count) => word.slice(0, word.length - count);

function step1a(word) {
  if (word.endsWith("sses")) return cut(word, 2);
  if (word.endsWith("ied") || word.endsWith("ies")) return cut(word, word.length > 4 ? 2 : 1);
  if (word.endsWith("us") || word.endsWith("ss") || !word.endsWith("s")) return word;
  for (const letter of cut(word, 2)) if (isVowel(letter)) return cut(word, 1);
  return word;
}

function step1b(word, r1) {
  const ending = longest(word, ["eedly", "ingly", "edly", "eed", "ing", "ed"]);
  if (ending === undefined) return word;
  const before = cut(word, ending.length);
  if (ending.startsWith("eed")) {
    const inRegion = before.length >= r1 && !["succ", "proc", "exc"].includes(before);
    return inRegion ? `${before}ee` : word;
  }
  if (ending === "ing") {
    if (before.length === 2 && before[1] === "y" && !isVowel(before[0])) return `${before[0]}ie`;
    if (["even", "cann", "inn", "earr", "herr", "out"].includes(before)) return word;
  }
  if (![...before].some(isVowel)) return word;
  if (/(?:at|bl|iz)$/.test(before)) return `${before}e`;
  if (/(?:bb|dd|ff|gg|mm|nn|pp|rr|tt)$/.test(before)) {
    return before.length === 3 && "aeo".includes(before[0]) ? before : cut(before, 1);
  }
  return before.length === r1 && endsShort(before) ? `${before}e` : before;
}

function step1c(word) {
  return /[yY]$/.test(word) && word.length > 2 && !isVowel(word.at(-2)) ? `${cut(word, 1)}i` : word;
}

function step2(word, r1) {
  const ending = longest(word, Object.keys(STEP_2));
  if (ending === undefined || word.length - ending.length < r1) return word;
  const before = cut(word, ending.length);
  if (ending === "ogi" && !before.endsWith("l")) return word;
  if (ending === "li" && !"cdeghkmnrt".includes(before.at(-1) ?? " ")) return word;
  return before + STEP_2[ending];
}

function step3(word, r1, r2) {
  const ending = longest(word, Object.keys(STEP_3));
  if (ending === undefined || word.length - ending.length < (ending === "ative" ? r2 : r1)) return word;
  if (ending === "ative" && word.length - ending.length < r1) return word;
  return cut(word, ending.length) + STEP_3[ending];
}

function step4(word, r2) {
  const ending = longest(word, STEP_4);
  if (ending === undefined || word.length - ending.length < r2) return word;
  const before = cut(word, ending.length);
  return ending === "ion" && !/[st]$/.test(before) ? word : before;
}

function step5(word, r1, r2) {
  const before = cut(word, 1);
  if (word.endsWith("e")) {
    return before.length >= r2 || (before.length >= r1 && !endsShort(before)) ? before : word;
  }
  return word.endsWith("l") && before.length >= r2 && before.endsWith("l") ? before : word;
}

// Return the stem of an English word in lower case; what holds a digit is its own stem.
export function stem(given) {
  if (!/^[a-z]+$/.test(given) || given.length < 3) return given;
  if (Object.hasOwn(EXCEPTIONS, given)) return EXCEPTIONS[given];
  let word = consonantY(given);
  const beginning = BEGINNINGS.find((one) => word.startsWith(one));
  const r1 = beginning === undefined ? region(word, 0) : beginning.length;
  const r2 = region(word, r1);
  word = step1c(step1b(step1a(word), r1));
  word = step5(step4(step3(step2(word, r1), r1, r2), r2), r1, r2);
  return word.replaceAll("Y", "y");
}
