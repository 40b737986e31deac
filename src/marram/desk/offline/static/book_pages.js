// The pages of the book: what happened, the question, the ruling. Each is drawn from the address alone.

import { text } from "/static/shell/words.js";
import { answeredSoFar, questionPage } from "./asking.js";
import { element } from "./element.js";
import { startPage } from "./finding_here.js";
import { guardTaps } from "./one_tap.js";
import { placeOf, readPlace, wherein } from "./place.js";
import { rulingPage } from "./ruling_page.js";
import { walk } from "./walker.js";

const NOWHERE = { facts: () => ({}), area: () => null, likely: () => [], link: () => null, told: () => null, page: null }; // without a map

// Draw where one is, now and whenever the address changes; `after` may add to a page what belongs to it there, and `places`
// is what a map knows of the place of the case.
export function openBook({ book, model, panel, title, after = () => null, places = NOWHERE }) {
  let before = null;
  const came = guardTaps(panel);
  const elsewhere = (name, answers) => {
    if (name === "map" && places.page) return places.page(answers);
    const [heading, ...rest] = startPage(book, model, { kept: wherein(answers), context: knownOf(book, places.area(answers)), likely: places.likely(answers) });
    return { parts: [heading, places.link(null, answers), ...rest], heading: text("what") };
  };
  const draw = () => {
    const { incident: name, answers } = readPlace();
    const incident = book.byName.get(name);
    const said = incident ? walked(book, places, incident, answers) : elsewhere(name, answers);
    panel.replaceChildren(...said.parts.filter(Boolean), ...[after({ incident, answers, ...said })].filter(Boolean));
    document.title = `${said.heading} · ${title}`;
    came();
    if (before !== null) {
      scrollTo(0, 0);
      panel.querySelector("h1")?.focus();
    }
    before = name;
  };
  addEventListener("hashchange", draw);
  draw();
}

// What is known without having been said, in the words by which it is found: where the ball lies, the form of play.
const knownOf = ({ said_of: said = {} }, area) => [said[area], said.competition].filter(Boolean).join(" ");

function walked(book, places, incident, answers) {
  try {
    const step = walk(book, incident.name, { ...places.facts(answers, incident), ...answers });
    const { question, sheet, reasons } = step;
    const parts = question ? questionPage(question, incident, answers) : rulingPage(sheet, reasons, incident, answers);
    return { ...step, heading: question?.question ?? sheet.headline, parts: [...parts, places.told(reasons, incident, answers), places.link(incident, answers), answeredSoFar(reasons, incident, answers), steps(reasons, incident, answers)] };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return walked(book, places, incident, {}); // an address that somebody wrote: begin anew
  }
}

function steps(reasons, incident, answers) {
  const last = reasons.filter((one) => one.fact in answers).at(-1);
  const { [last?.fact]: _, ...rest } = answers;
  return element(
    "nav",
    { className: "steps" },
    element("a", { href: last ? placeOf(incident.name, rest) : placeOf("", wherein(answers)), textContent: text("back") }),
    element("a", { href: placeOf(), textContent: text("start") }),
  );
}
