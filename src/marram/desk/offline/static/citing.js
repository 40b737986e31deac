// A citation as it is spoken, as the desk says it (rule_words of marram/desk/shell/wording.py).

import { text } from "/static/shell/words.js";

const CODE = /^[A-M]-\d/;
const DEFINITIONS = [["Definitions: ", "definition"], ["former Definitions: ", "former_definition"]];

// "Rule 17.1d", "Local Rule E-5", "Definition: stroke"; what is cited otherwise as it stands.
export function ruleWords(citation) {
  if (/^\d/.test(citation)) return text("rule", { rule: citation });
  return CODE.test(citation) ? text("local_rule", { rule: citation }) : named(citation);
}

// A citation as it stands in a list: "17.1d", "E-5", "Definition: stroke".
export function named(citation) {
  const [chapter, key] = DEFINITIONS.find(([start]) => citation.startsWith(start)) ?? [];
  return key ? text(key, { name: text(`definition.${citation.slice(chapter.length).replace(/[ -]/g, "_")}`) }) : citation;
}
