// What happened, found while it is typed: ranked here, by the weights that the desk also has, so that it works without a
// network once they have arrived. The desk's own answer, with the acts of a sentence, takes its place when it comes.

import { byPlace } from "./by_place.js";
import { readModel } from "./finding_model.js";
import { rank } from "./ranking.js";

const MOST = 12; // how many are offered
const SURE = 0.7; // how likely the first three must be together for the list to be called likely
const KNOWN = 0.6; // which part of the words must be known for that
const FAR = 0.00001; // what is less likely is not offered
const A_SENTENCE = 3; // words from which what was typed is kept with the case

let loading = null;

async function fetched(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
}

async function load() {
  const [model, { incidents }] = await Promise.all([fetched("/api/finding/model"), fetched("/api/finding/incidents")]);
  return { model: readModel(model), incidents: new Map(incidents.map((one) => [one.name, one])) };
}

// Fetch the weights, once; a fetch that failed is tried again at the next letter.
export function prepare() {
  loading ??= load().catch(() => (loading = null));
  return loading;
}

// Show what words point to, if the weights are here; the desk answers in any case.
export async function find(field) {
  const held = await prepare();
  const list = document.getElementById("incidents");
  const words = field.value;
  if (!held || !list?.dataset.choose || !/[a-z0-9]/i.test(words) || chosen() || list.matches(":active")) return;
  const local = list.dataset.local;
  const context = {
    words: list.dataset.context,
    localRules: local === "unknown" ? null : local.split(" ").filter(Boolean),
  };
  const { incidents, known, unknown, short } = rank(held.model, held.incidents, words, context);
  const near = incidents.slice(0, MOST).filter((one, at) => at === 0 || one.likelihood >= FAR || one.closest > 0);
  if (!known) return;
  const first = incidents.slice(0, 3).reduce((sum, one) => sum + one.likelihood, 0);
  const sure = known >= KNOWN && !short && first >= SURE;
  const said = words.trim().split(/\s+/).length >= A_SENTENCE ? words : "";
  const ordered = byPlace(near, (list.dataset.likely ?? "").split(" "));
  const not = unknown.length ? [element("p", { className: "soft", textContent: list.dataset.unknown.replace("{words}", unknown.join(", ")) })] : [];
  list.replaceChildren(...not, shown(ordered, held.incidents, list.dataset, sure, said));
  window.htmx?.process(list); // these links lead on within the page, as those of the desk do
}

// Whether an incident was tapped and its page is on the way: the list it stood in, or that a finger is on, is left as it is.
const chosen = () => document.getElementById("panel")?.getAttribute("aria-busy") === "true";

function shown(near, incidents, words, sure, said) {
  const theme = element("details", { className: "theme", open: true });
  const summary = element("summary");
  summary.append(
    element("span", { textContent: sure ? words.likeliest : words.near }), " ",
    element("span", { className: "count", textContent: near.length }),
  );
  const list = element("ul");
  for (const { name, later } of near) {
    const one = incidents.get(name);
    const cite = [(/^[A-Z]-\d/.test(one.rule) ? words.localRule : words.rule).replace("{rule}", one.rule)];
    if (one.former) cite.push(words.teaching);
    if (later) cite.push(words.notInForce);
    const href = words.choose.replace("what=WHAT", `what=${name}`);
    const link = element("a", {
      href: said ? href.replace("said=SAID", `said=${encodeURIComponent(said)}`) : href.replace(/&?said=SAID/, ""),
    });
    link.append(
      element("span", { textContent: one.title }), " ",
      element("span", { className: "cite", textContent: cite.join(" · ") }),
    );
    const item = element("li");
    item.append(link);
    list.append(item);
  }
  theme.append(summary, list);
  return theme;
}

const element = (name, properties = {}) => Object.assign(document.createElement(name), properties);
