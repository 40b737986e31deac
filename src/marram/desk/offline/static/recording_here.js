// Recording a ruling on this phone: the form under it, and the list of what waits.

import { text } from "/static/shell/words.js";
import { element } from "./element.js";
import { ROLES } from "./place.js";
import { add, send, takeOff, waiting } from "./waiting.js";

// The form under a ruling; nothing where it cannot be recorded.
export function recordForm(event, { incident, answers, sheet, reasons }, shown, holeOf = () => undefined) {
  if (!event?.records || !sheet || sheet.kind === "hand_over") return null;
  const hole = field("hole", text("record.hole"), element("input", { inputMode: "numeric", value: answers.hole ?? holeOf(answers) ?? "", autocomplete: "off" }));
  const player = field("player", text("record.player"), choice(event.groups.flatMap((one) => one.players)));
  const by = event.officials.length ? field("by", text("record.by"), choice(event.officials)) : null;
  const note = field("note", text("record.note"), element("textarea", { rows: 2, maxLength: 2000 }));
  const said = element("p", { role: "status" });
  const button = element("button", { textContent: text("record.do") });
  const form = element("form", { className: "number" }, element("h2", { textContent: text("record.title") }), hole.part, player.part, by?.part, note.part, button, said);
  const ident = crypto.randomUUID(); // one for each time the ruling is shown: two taps make one entry
  const givenAt = new Date().toISOString();
  form.addEventListener("submit", async (submitted) => {
    submitted.preventDefault();
    const facts = reasons.filter((one) => one.fact in answers).map((one) => [one.fact, String(answers[one.fact])]);
    const shownPlaces = ROLES.filter((role) => role in answers).map((role) => [role, String(answers[role])]);
    const pairs = [...Object.entries(event.conditions), ...(hole.value() ? [["hole", hole.value()]] : []), ...shownPlaces, ["what", incident.name], ...facts];
    const filled = { ident, given_at: givenAt, case: String(new URLSearchParams(pairs)), by: by?.value() ?? "", player: player.value(), note: note.value() };
    try {
      await add({ ident, state: "waiting", person: event.person, headline: sheet.headline, form: filled });
      said.textContent = text("record.kept");
      button.disabled = true;
      navigator.storage?.persist?.();
    } catch (error) {
      said.textContent = text("record.failed", { why: error.message });
      return;
    }
    await shown();
    await send();
    await shown();
  });
  return form;
}

function field(name, label, input) {
  input.id = `record-${name}`;
  return { part: element("p", {}, element("label", { for: input.id, textContent: label }), input), value: () => input.value.trim() };
}

function choice(people) {
  return element(
    "select",
    {},
    element("option", { value: "", textContent: text("record.not_said") }),
    ...people.map((one) => element("option", { value: one.id, textContent: one.name })),
  );
}

// What waits, each with what became of it; what the desk has otherwise stands beside what was said here.
export async function waitingList(place, event, shown) {
  const entries = await waiting();
  const title = entries.length ? text(`waits.${entries.length === 1 ? "one" : "several"}`, { count: entries.length }) : text("waits.none");
  place.replaceChildren(
    element("h2", { textContent: text("waits.title") }),
    element("p", { textContent: title, id: "waits" }),
    ...entries.map((one) => entryShown(one, event, shown)),
    ...(entries.some((one) => one.state === "waiting") ? [sendNow(shown)] : []),
  );
}

function sendNow(shown) {
  const button = element("button", { type: "button", textContent: text("waits.send") });
  button.addEventListener("click", () => send().then(shown));
  return button;
}

function entryShown(entry, event, shown) {
  const when = new Date(entry.form.given_at).toTimeString().slice(0, 5);
  const part = element("article", { className: "waiting" }, element("p", { textContent: text("waits.given", { when, headline: entry.headline }) }));
  const values = { why: entry.why, number: entry.number, headline: entry.there };
  const others = entry.state === "waiting" && event && entry.person !== event.person;
  part.append(element("p", { className: "soft", textContent: text(others ? "waits.other_person" : `waits.${entry.state}`, values) }));
  if (entry.state === "waiting") return part;
  const seen = element("button", { type: "button", textContent: text("waits.seen") });
  seen.addEventListener("click", () => takeOff(entry.ident).then(shown));
  part.append(seen);
  return part;
}
