// Incidents in the order in which a sentence speaks for them. Done alike in marram/rules/finding/ranking.py: the scores
// are sums of the same integers, so that both agree to the last one.

import { citations, closeness, without } from "./citations.js";
import { features } from "./features.js";
import { meant } from "./misspelt.js";
import { words } from "./sentence.js";

const SAID = 4; // what a feature of the sentence counts,
const KNOWN = 1; // beside one of what is known without having been said
const CODE = /^[A-M]-[0-9]+$/;

// Return all incidents, the likeliest first, as {name, score, likelihood}.
//
// rules: the Rule each incident begins from, by name, as a Map.
// context: {words: what is known, as it would be said; localRules: the codes in force, or null where not known}.
export function rank(model, rules, sentence, context = { words: "", localRules: null }) {
  const cited = citations(sentence);
  const said = corrected(words(without(sentence, cited), model.tables), model);
  const { scores, length } = score(model, said, words(context.words, model.tables));
  const likely = likelihoods(model, scores, length);
  const rows = model.incidents.map((name, at) => ({
    name,
    at,
    score: scores[at],
    likelihood: likely[at],
    closest: Math.max(0, ...cited.map((one) => closeness(rules.get(name), one))),
    later: CODE.test(rules.get(name)) && context.localRules !== null && !context.localRules.includes(rules.get(name)),
  }));
  rows.sort((a, b) => b.closest - a.closest || a.later - b.later || b.score - a.score || a.at - b.at);
  return { incidents: rows, known: rows[0].closest > 0 ? 1 : knownPart(said, model) };
}

// Words with misspelt ones read as what they were meant for.
function corrected(said, model) {
  return said.map((one) => {
    const near = model.places.has(one.stem) ? null : meant(one.stem, model.stems);
    return near === null ? one : { stem: near, things: one.things };
  });
}

function knownPart(said, model) {
  return said.filter((one) => model.places.has(one.stem) || one.things.length).length / (said.length || 1);
}

function score(model, said, known) {
  const scores = new Int32Array(model.incidents.length);
  let length = 0;
  for (const [share, told] of [[SAID, said], [KNOWN, known]]) {
    for (const feature of features(told)) {
      const place = model.places.get(feature);
      if (place === undefined) continue;
      if (share === SAID) length += model.values[place];
      model.row(place, (at, weight) => (scores[at] += share * weight));
    }
  }
  return { scores, length };
}

function likelihoods(model, scores, length) {
  const sharpness = model.sharpness / SAID / Math.sqrt(length || 1);
  const best = Math.max(...scores);
  const odds = Array.from(scores, (one) => Math.exp(sharpness * (one - best)));
  const every = odds.reduce((sum, one) => sum + one, 0);
  return odds.map((one) => one / every);
}
