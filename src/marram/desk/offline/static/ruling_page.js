// A sheet as an official reads it: the answer first, then what to do, then what it rests on.

import { text } from "/static/shell/words.js";
import { named } from "./citing.js";
import { element, listed, section } from "./element.js";
import { placeOf } from "./place.js";

export function rulingPage(sheet, reasons, incident, answers) {
  const lines = (of, name = "ul") => (of.length ? listed(of, name) : null);
  return [
    element("p", { className: "kicker", textContent: incident.title }),
    element("h1", { textContent: sheet.headline, tabIndex: -1, id: "heading", className: sheet.kind === "ruling" ? (sheet.free ? "free" : "costs") : "" }),
    sheet.tell ? element("p", { className: "tell" }, element("span", { className: "soft", textContent: `${text("tell")}: ` }), sheet.tell) : null,
    sheet.rather ? rather(sheet, answers) : null,
    sheet.penalty_said ? null : section(text("penalty"), lines(sheet.penalties)),
    section(text("do"), lines(sheet.kind === "ruling" ? sheet.further : sheet.steps, "ol")),
    section(text("weigh"), lines(sheet.criteria), sheet.decided_by ? element("p", { textContent: text("who_decides", { who: sheet.decided_by }) }) : null),
    section(text("ends"), lines(sheet.outcomes)),
    section(text("options"), ...sheet.options.map((one) => option(one))),
    section(text("cautions"), lines(sheet.cautions)),
    section(text("if_wrong"), lines(sheet.if_wrong)),
    folded(text("why"), reasons.map((one) => `${one.question} ${one.answer}${one.citation ? ` (${named(one.citation)})` : ""}`)),
    folded(text("provisions"), sheet.provisions.map((one) => `${named(one.citation)}: ${one.statement}`)),
    element("p", { className: "reminder", textContent: sheet.reminder }),
  ];
}

function rather({ rather: other }, answers) {
  const href = placeOf(other.incident, { ...answers, ...other.facts });
  return element("p", {}, element("a", { className: "answer", href, textContent: text("rather", { title: other.title }) }));
}

function option(one) {
  const title = element("h3", {}, one.title, " ", element("span", { className: "cost", textContent: one.free ? text("free") : one.cost }));
  return element("article", { className: "option" }, title, element("p", { textContent: one.area }), one.limits.length ? listed(one.limits) : null, element("p", { className: "soft", textContent: `${one.how} (${one.citation})` }));
}

function folded(title, lines) {
  if (!lines.length) return null;
  return element("details", {}, element("summary", { textContent: title }), listed(lines));
}
