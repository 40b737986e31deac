// The interview without a network: the next question, or the sheet it ends in, for what has been answered so far.

import { sheetOf } from "./book.js";
import { Graph, way } from "./graph.js";

const FORM = "form_of_play";
const SIDES = "sides";
const ALONE = "individual";
const FIRST = 1; // the first fact that tells what is found decides it; else the last

// What the Rules say of an incident with the answers given: {question}, or {end, sheet}; both with the reasons.
//
// answers: by the name of a fact, its token, or a number. Answers that the way does not meet change nothing.
export function walk(book, name, answers) {
  const incident = book.byName.get(name);
  const known = knownOf(book, { ...book.answered, ...answers });
  const form = answers[FORM] ?? book.form_of_play;
  const other = ratherAnother(book, incident, known, form);
  if (other) return other;
  const graph = new Graph(book);
  const read = new Map(); // one reason for each fact: its narrowest answer, where it was narrowed last
  let here = rootOf(book, incident, answers, known, read);
  while (here >= 0) {
    const [fact, citation, ways, ...children] = graph.question(here);
    if (!known.has(fact)) {
      const left = graph.restrict(here, known);
      if (left < 0 || graph.question(left)[0] !== fact) {
        here = children[0]; // whatever the answer, it ends alike
        continue;
      }
      const branches = children.map((child) => graph.restrict(child, known));
      return { question: asked(book, graph, left, fact, citation, ways, branches, form), reasons: [...read.values()] };
    }
    const at = way(book.ways[ways], known.get(fact));
    read.delete(fact);
    read.set(fact, { ...reason(book, fact, citation, known.get(fact)), way: book.ways[ways][at] });
    here = children[at];
  }
  const end = -1 - here;
  const reasons = [...read.values()];
  const sheets = sheetsOf(book, book.ends[end], reasons);
  return { end, sheet: sheetOf(book, sheets[sheets.length === 1 ? 0 : formPlace(book, form)]), reasons };
}

// The end of an incident that is rather another one by what is known unasked, from the map; null where it is not.
function ratherAnother(book, { rather }, known, form) {
  if (!rather || known.get(rather[0]) !== rather[1]) return null;
  const [fact, token, end, citation] = rather;
  const [sheets] = book.ends[end];
  const why = { ...reason(book, fact, citation, token), way: [token] };
  return { end, sheet: sheetOf(book, sheets[sheets.length === 1 ? 0 : formPlace(book, form)]), reasons: [why] };
}

// The sheets of an end by form of play; where the way to it tells what is found, those that say so.
function sheetsOf(book, [sheets, , , mode, variants], reasons) {
  if (!mode) return sheets;
  const found = reasons.map(({ fact, way: answers }) => tells(book.tells[mode][fact], answers)).filter(Boolean);
  return variants[mode === FIRST ? found[0] : found.at(-1)] ?? sheets;
}

// What a way of answering tells: nothing where its answers tell different things.
function tells(table, answers) {
  if (!table) return null;
  const found = new Set((Array.isArray(answers) ? answers : [""]).map((one) => table[one] ?? null));
  return found.size === 1 ? [...found][0] : null;
}

function knownOf(book, answers) {
  const known = new Map();
  for (const [name, answer] of Object.entries(answers)) {
    const number = book.factNumbers.get(name);
    if (number !== undefined) known.set(number, answer);
  }
  return known;
}

// Where the incident begins: with partners it goes on in the tree of their sides.
function rootOf(book, incident, answers, known, read) {
  const sides = answers[SIDES];
  if (!incident.among || sides === undefined || sides === ALONE) return incident.root;
  const number = book.factNumbers.get(SIDES);
  read.set(number, { ...reason(book, number, 0, sides), citation: "", way: [sides] });
  const form = book.factNumbers.get(FORM);
  if (sides === "three_ball" && form !== undefined && !known.has(form)) known.set(form, "match_play");
  return incident.among[sides];
}

const formPlace = (book, form) => Math.max(0, book.forms.indexOf(form ?? null));

// A question as it is put to an official, with what each answer would leave open, and what holds whatever the answer.
function asked(book, graph, left, fact, citation, ways, branches, form) {
  const place = formPlace(book, form);
  const stakes = branches.map((branch) => stakeWords(book, costsOf(book, graph.ends(branch)), place));
  const telling = new Set(stakes).size > 1;
  const words = book.facts[fact];
  const possible = book.ways[ways];
  const tokens = new Map();
  possible.forEach((one, at) => Array.isArray(one) && one.forEach((token) => tokens.set(token, at)));
  const answers = (words.answers ?? [])
    .filter(([token]) => tokens.has(token))
    .map(([token, said]) => ({
      token,
      words: said,
      stake: telling ? stakes[tokens.get(token)] : "",
    }));
  const [cite, statement] = book.citations[citation];
  return { ...words, answers, ways: possible, fact: words.name, why: { citation: cite, statement }, settled: settled(book, graph.ends(left), place) };
}

// The different costs that ends come to, as numbers of the book's list.
function costsOf(book, ends) {
  return [...new Set(ends.map((end) => book.ends[end]).filter((end) => end.length > 1).map((end) => end[1]))];
}

function stakeWords(book, stake, place) {
  const rows = stake.map((one) => book.costs[one]);
  const numbers = (at) => [...new Set(rows.flatMap((row) => row[at]))].sort((a, b) => a - b);
  const certain = numbers(3);
  const chosen = numbers(4).filter((one) => !certain.includes(one));
  const parts = certain[0] === 0 ? [book.strokes[0]] : [];
  if (certain.some(Boolean)) parts.push(strokesWords(book, certain.filter(Boolean)));
  if (chosen.length) parts.push(book.if_taken.replace("{strokes}", strokesWords(book, chosen)));
  const others = stake.filter((one) => !book.costs[one][3].length && !book.costs[one][4].length);
  parts.push(...others.sort((a, b) => book.costs[a][0] - book.costs[b][0]).map((one) => costWords(book, one, place)));
  return listed(book, [...new Set(parts.map((one) => one.toLowerCase()))]);
}

// A list as it is spoken: `a, b or c`; where a part has a comma in it: `a, b; or c`.
function listed(book, said) {
  if (said.length < 2) return said.join("");
  const apart = said.some((part) => part.includes(","));
  return said.slice(0, -1).join(apart ? "; " : ", ") + (apart ? ";" : "") + book.or + said.at(-1);
}

// One, two or three penalty strokes.
function strokesWords(book, numbers) {
  if (numbers.length === 1 && numbers[0] < 2) return book.strokes[numbers[0]];
  return book.strokes[2].replace("{count}", listed(book, numbers.map((one) => book.counts[one])));
}

const costWords = (book, number, place) => book.sentences[book.costs[number][2][place]];

function settled(book, ends, place) {
  const rulings = ends.map((end) => book.ends[end]);
  if (!rulings.every((end) => end.length > 1)) return [];
  const common = (at) => (rulings.every((end) => end[at] === rulings[0][at]) ? rulings[0][at] : null);
  const cost = common(1);
  let action = common(2);
  if (action === -1) action = null;
  const playOn = action !== null && book.actions[action][2];
  if (playOn && cost === null && rulings.every((end) => book.costs[end[1]][0])) action = null;
  const said = [];
  if (cost !== null) said.push(book.settled.replace("{penalties}", costWords(book, cost, place)));
  const lost = cost !== null && book.costs[cost][1] && book.forms[place] === "match_play";
  if (action !== null && !(lost && book.actions[action][1])) said.push(book.sentences[book.actions[action][0]]);
  return said;
}

function reason(book, fact, citation, answer) {
  const words = book.facts[fact];
  return { fact: words.name, question: words.question, answer: answerWords(words, answer), citation: book.citations[citation][0] };
}

// An answer in words: of a choice its own, of a number the number with its unit.
export function answerWords(fact, answer) {
  if (fact.answers) return fact.answers.find(([token]) => token === answer)?.[1] ?? String(answer ?? "");
  return answer === 1 ? fact.one : `${answer} ${fact.unit_words}`.trim();
}
