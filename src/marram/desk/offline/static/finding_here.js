// What happened, found by words with the weights that were brought along; and the list of all, by theme or by Rule.

import { text } from "/static/shell/words.js";
import { byPlace } from "/static/rulings/by_place.js";
import { rank } from "/static/rulings/ranking.js";
import { ruleWords } from "./citing.js";
import { element } from "./element.js";
import { placeOf } from "./place.js";

const MOST = 12; // how many are offered, as at the desk
const SURE = 0.7;
const KNOWN = 0.6;
const FAR = 0.00001;
const CODE = /^[A-M]-\d/;

// The page that asks what happened; `kept` says where, and goes on with whatever is chosen.
//
// context: what is known without having been said, as it would be said; likely: what is likely where the ball lies, by name.
export function startPage(book, model, { kept = {}, context = "", likely = [] } = {}) {
  const field = element("input", { id: "q", type: "search", autocomplete: "off", enterKeyHint: "search" });
  const found = element("div", { id: "incidents", "aria-live": "polite" });
  const look = () => found.replaceChildren(...(field.value.trim() ? findings(book, model, field.value, { kept, context, likely }) : everything(book, kept, likely)));
  field.addEventListener("input", look);
  look();
  const form = element("form", { role: "search", className: "finding" }, element("label", { for: "q", textContent: text("search") }), field);
  form.addEventListener("submit", (event) => event.preventDefault());
  return [element("h1", { textContent: text("what"), tabIndex: -1 }), form, found];
}

function findings(book, model, said, { kept, context, likely }) {
  if (!/[a-z0-9]/i.test(said)) return [element("p", { textContent: text("none") })];
  const { incidents, known, unknown, short } = rank(model, book.byName, said, { words: context, localRules: book.local_rules });
  const near = incidents.slice(0, MOST).filter((one, at) => at === 0 || one.likelihood >= FAR || one.closest > 0);
  if (!known) return [element("p", { textContent: text("none") })];
  const first = incidents.slice(0, 3).reduce((sum, one) => sum + one.likelihood, 0);
  const title = known >= KNOWN && !short && first >= SURE ? text("likeliest") : text("near");
  const links = byPlace(near, likely).map(({ name, later }) => incidentLink(book.byName.get(name), later ? text("not_in_force") : "", kept));
  const not = unknown.length ? element("p", { className: "soft", textContent: text("unknown", { words: unknown.join(", ") }) }) : null;
  return [...[not].filter(Boolean), element("h2", { textContent: title }), element("ul", { className: "choices" }, ...links)];
}

// What is likely where the ball lies, each leading on; nothing where that is not known.
export function likelyLinks(book, likely, kept) {
  if (!likely.length) return [];
  const links = likely.map((name) => incidentLink(book.byName.get(name), "", kept));
  return [element("h2", { textContent: text("likely_here") }), element("ul", { className: "choices" }, ...links)];
}

function everything(book, kept, likely) {
  const present = book.incidents;
  return [
    ...likelyLinks(book, likely, kept),
    element("h2", { textContent: text("by_theme") }),
    ...grouped(present, (one) => one.theme, kept),
    element("h2", { textContent: text("by_rule") }),
    ...grouped([...present].sort(byRule), (one) => ruleWords(one.rule.split(/[.(]/)[0]), kept),
  ];
}

const byRule = (a, b) => {
  const [one, other] = [a, b].map(({ rule }) => (CODE.test(rule) ? 100 + rule.charCodeAt(0) : 0) + Number(rule.match(/\d+/)?.[0] ?? 0) / (CODE.test(rule) ? 100 : 1));
  return one - other || a.rule.localeCompare(b.rule, "en", { numeric: true });
};

function grouped(incidents, key, kept) {
  const groups = new Map();
  for (const one of incidents) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return [...groups].map(([title, own]) =>
    element(
      "details",
      {},
      element("summary", {}, element("span", { textContent: title }), " ", element("span", { className: "count", textContent: own.length })),
      element("ul", { className: "choices" }, ...own.map((one) => incidentLink(one, "", kept))),
    ),
  );
}

function incidentLink(one, remark, kept) {
  const cite = [ruleWords(one.rule), one.former ? text("teaching") : "", remark].filter(Boolean).join(" · ");
  const link = element("a", { href: placeOf(one.name, kept) }, element("span", { textContent: one.title }), " ", element("span", { className: "cite", textContent: cite }));
  return element("li", {}, link);
}
