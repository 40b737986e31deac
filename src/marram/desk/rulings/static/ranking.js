// Incidents in the order in which a sentence speaks for them. Done alike in marram/rules/finding/ranking.py: the scores
// are sums of the same integers, so that both agree to the last one.

import { citations, closeness, without } from "./citations.js";
import { DENIED, features } from "./features.js";
import { meant } from "./misspelt.js";
import { plain, words } from "./sentence.js";

const SAID = 4; // what a feature of the sentence counts,
const KNOWN = 2; // beside one of what is known without having been said
const SHORT = 5; // words: where one is not known, a sentence of fewer is only near
const CODE = /^[A-M]-[0-9]+$/;
const FORMER =
  /\b(former|formerly|old|older|previous|previously|earlier|until|prior to|used to|back then|back in|those days|ago|decades?|before 19|before 2019|before the|history|rewrite|reform|new rules|in 2019|19[0-9][0-9]|200[0-9]|201[0-8]|eighties|nineties)\b/;
const NOT_FORMER = 6.0; // by what an incident of the former Rules falls behind where nothing is said of them,
const NOT_KNOWN = 0.7; // one of a Local Rule where it is not known which are in force,
const NOT_IN_FORCE = 12.0; // and one whose Local Rule is not in force: logarithms of odds

// Return all incidents, the likeliest first, as {name, score, likelihood}; taught: only of the former Rules, which are not spoken of.
//
// unknown: the words that say nothing here; short: whether they may be what matters.
//
// incidents: by name, as a Map, {rule: the Rule it begins from, former: whether it is only of the former Rules}.
// context: {words: what is known, as it would be said; localRules: the codes in force, or null where not known}.
export function rank(model, incidents, sentence, context = { words: "", localRules: null }) {
  const cited = citations(sentence);
  const said = corrected(words(without(sentence, cited), model.tables), model);
  const { scores, length } = score(model, said, words(context.words, model.tables));
  const former = tellsOfFormer(sentence);
  putBack(scores, model, incidents, length, former, context);
  const likely = likelihoods(model, scores, length);
  const rows = model.incidents.map((name, at) => ({
    name,
    at,
    score: scores[at],
    likelihood: likely[at],
    closest: Math.max(0, ...cited.map((one) => closeness(incidents.get(name).rule, one))),
    taught: incidents.get(name).former && !former,
    later: outOfForce(incidents.get(name).rule, context),
  }));
  rows.sort((a, b) => b.closest - a.closest || a.later - b.later || b.score - a.score || a.at - b.at);
  const unknown = [...new Set(said.filter((one) => !isKnown(one, model)).map((one) => one.written))];
  const part = said.filter((one) => isKnown(one, model)).length / (said.length || 1);
  return { incidents: rows, known: rows[0].closest > 0 ? 1 : part, unknown, short: unknown.length > 0 && said.length < SHORT };
}

export const tellsOfFormer = (sentence) => FORMER.test(plain(sentence));

const outOfForce = (rule, { localRules }) => CODE.test(rule) && localRules !== null && !localRules.includes(rule);

// Lower the scores of what is unlikely by what is known, whatever the words.
function putBack(scores, model, incidents, length, former, context) {
  const unit = (SAID * Math.sqrt(length || 1)) / model.sharpness;
  model.incidents.forEach((name, at) => {
    const one = incidents.get(name);
    if (one.former && !former) scores[at] -= Math.floor(NOT_FORMER * unit);
    if (context.localRules === null && CODE.test(one.rule)) scores[at] -= Math.floor(NOT_KNOWN * unit);
    if (outOfForce(one.rule, context)) scores[at] -= Math.floor(NOT_IN_FORCE * unit);
  });
}

// Words with misspelt ones read as what they were meant for.
export function corrected(said, model) {
  return said.map((one) => {
    const near = hasStem(one, model) ? null : meant(one.stem, model.stems);
    if (near === null) return one;
    return { ...one, stem: near, things: one.things.length ? one.things : (model.tables.things.get(near)?.split(" ") ?? []) };
  });
}

const hasStem = (one, model) => model.places.has(one.stem) || model.places.has(DENIED + one.stem);

const isKnown = (one, model) => hasStem(one, model) || one.things.length > 0;

function score(model, said, known) {
  const scores = new Int32Array(model.incidents.length + 1); // the last: that it is none of them
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
