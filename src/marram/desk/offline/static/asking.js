// A question as it is put to an official: one large button for each answer, or a field for a number.

import { text } from "/static/shell/words.js";
import { ruleWords } from "./citing.js";
import { element, listed, section } from "./element.js";
import { placeOf } from "./place.js";

export function questionPage(question, incident, answers) {
  const hint = [
    question.help,
    text("decides", { who: question.decided_by }),
    question.why.citation ? text("because", { citation: ruleWords(question.why.citation) }) : "",
  ].filter(Boolean);
  return [
    element("p", { className: "kicker", textContent: incident.title }),
    element("h1", { textContent: question.question, tabIndex: -1, id: "heading" }),
    ...hint.map((line) => element("p", { className: "soft", textContent: line })),
    question.answers.length ? choices(question, incident, answers) : number(question, incident, answers),
    section(text("already"), question.settled.length ? listed(question.settled) : null),
  ];
}

function choices(question, incident, answers) {
  const links = question.answers.map(({ token, words: said, stake }) => {
    const href = placeOf(incident.name, { ...answers, [question.fact]: token });
    const link = element("a", { href, className: "answer" }, element("span", { textContent: said }));
    if (stake) link.append(" ", element("span", { className: "stake", textContent: stake }));
    return element("li", {}, link);
  });
  return element("ul", { className: "answers", "aria-labelledby": "heading" }, ...links);
}

function number(question, incident, answers) {
  const field = element("input", { id: "number", inputMode: question.whole ? "numeric" : "decimal", autocomplete: "off" });
  const fault = element("p", { id: "fault", className: "fault", role: "alert" });
  field.setAttribute("aria-describedby", "fault");
  const label = element("label", { for: "number", textContent: question.unit_words || text("give_number") });
  const form = element("form", { className: "number" }, label, field, element("button", { textContent: text("next") }), fault);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const given = Number(field.value.trim().replace(",", "."));
    const usable = field.value.trim() !== "" && Number.isFinite(given) && (!question.whole || Number.isInteger(given));
    if (usable && given >= question.minimum && given <= (question.maximum ?? Infinity)) {
      location.hash = placeOf(incident.name, { ...answers, [question.fact]: given });
      return;
    }
    const kind = question.whole ? text("whole") : text("number");
    fault.textContent = text("number_wrong", { kind, minimum: question.minimum });
    field.setAttribute("aria-invalid", "true");
    field.focus();
  });
  return form;
}

// What was answered so far: one tap opens an answer again, and what came after it stays.
export function answeredSoFar(reasons, incident, answers) {
  const own = reasons.filter((one) => one.fact in answers);
  if (!own.length) return null;
  const items = own.map(({ fact, question, answer }) => {
    const { [fact]: _, ...rest } = answers;
    const link = element("a", { href: placeOf(incident.name, rest), "aria-label": text("change", { question: `${question} ${answer}` }) });
    link.append(element("span", { className: "soft", textContent: question }), " ", element("strong", { textContent: answer }));
    return link;
  });
  return element("nav", { className: "answered", "aria-label": text("answered") }, element("h2", { textContent: text("answered") }), listed(items, "ol"));
}
