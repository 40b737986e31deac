// Where does the ball lie? The map on this phone, tapped, or the phone's own position; and what the map knows of a case.

import { dayWords, text } from "/static/shell/words.js";
import { element, listed } from "./element.js";
import { likelyLinks } from "./finding_here.js";
import { holeNear } from "./lie_here.js";
import { likelyHere } from "./likely_here.js";
import { mapView } from "./map_view.js";
import { toMetres } from "./map_read.js";
import { placeOf, wherein } from "./place.js";
import { asking, factsHere, lieOf, readSpot, spotOf } from "./spot.js";

const MAP = "map"; // the address of this page; no incident is called so

// What the pages of the book need of a map: facts, what is told of the place on them, and the page of the map.
export function placesOn(map, book) {
  return {
    facts: (answers, incident) => factsHere(map, answers, shownBy(book, incident)),
    area: (answers) => lieOf(map, answers)?.facts.area_of_ball,
    likely: (answers) => likelyHere(book, map, lieOf(map, answers)),
    hole: (answers) => lieOf(map, answers)?.hole.number,
    link: (incident, answers) => whereLink(map, incident, answers),
    told: (reasons, incident, answers) => toldByMap(map, book, reasons, incident, answers),
    page: map && ((answers) => mapPage(map, book, answers)),
  };
}

// What showing the place of a ball says by itself of an incident (SHOWN of marram/services/cases/rulings.py).
const shownBy = ({ shown = {} }, incident) => shown[incident.name] ?? {};

// The way to the map, with what it says of the place that was shown.
function whereLink(map, incident, answers) {
  if (!map) return element("p", { className: "soft", textContent: text("map.not_held") });
  const lie = lieOf(map, answers);
  const href = placeOf(MAP, { ...answers, ...(incident ? { of: incident.name } : {}) });
  return element("section", { className: "where" }, lie ? lieShown(lie) : null, element("a", { className: "answer", href, textContent: text(lie ? "map.again" : "map.where") }));
}

// The facts a ruling or question took from the map, each with the way to say otherwise.
function toldByMap(map, book, reasons, incident, answers) {
  const facts = factsHere(map, answers, shownBy(book, incident));
  const own = reasons.filter((one) => one.fact in facts && !(one.fact in answers));
  if (!own.length) return null;
  const items = own.map(({ fact, question, answer }) => {
    const link = element("a", { href: placeOf(incident.name, asking(answers, fact)), "aria-label": text("map.otherwise", { question: `${question} ${answer}` }) });
    link.append(element("span", { className: "soft", textContent: question }), " ", element("strong", { textContent: answer }));
    return link;
  });
  return element("nav", { className: "answered", "aria-label": text("map.said") }, element("h2", { textContent: text("map.said") }), listed(items, "ol"));
}

function lieShown(lie) {
  const doubts = [...new Set(lie.doubts.map((one) => text(`doubt.${one.kind}`)))];
  return element(
    "div",
    { className: "lie", role: "status" },
    element("p", { className: "what", textContent: text("map.lies", { hole: lie.hole.number, where: lie.words }) }),
    element("p", { textContent: [...lie.things, text("map.to_hole", { metres: Math.round(lie.metres) })].join(" · ") }),
    doubts.length ? element("p", { textContent: text("map.look") }) : null,
    doubts.length ? listed(doubts) : null,
  );
}

function mapPage(map, book, answers) {
  const { of = "", ...given } = answers;
  const now = { ...given };
  const said = element("div");
  const likely = element("div", { className: "likely" });
  const on = element("a", { className: "answer onward" });
  const choice = element("select", { id: "map-hole" }, element("option", { value: "", textContent: text("map.all") }), ...[...map.holes.values()].map((one) => element("option", { value: one.number, textContent: one.number })));
  const view = mapView(map, text("map.label"), (x, y, off) => {
    if (!map.holes.has(now.hole)) now.hole = holeNear(map, x, y).number;
    now.ball = spotOf(map, x, y, off);
    tell();
  });
  const tell = () => {
    const lie = lieOf(map, now);
    const spot = readSpot(map, now.ball);
    choice.value = now.hole ?? "";
    view.mark(spot);
    history.replaceState(null, "", placeOf(MAP, { ...now, ...(of ? { of } : {}) }));
    said.replaceChildren(lie ? lieShown(lie) : element("p", { className: "soft", role: "status", textContent: text(spot ? "map.nowhere" : "map.tap") }));
    likely.replaceChildren(...(of ? [] : likelyLinks(book, likelyHere(book, map, lie), wherein(now))));
    on.href = placeOf(of, of ? now : wherein(now));
    on.textContent = text(of ? "map.back" : "map.on");
    on.hidden = !lie;
  };
  choice.addEventListener("change", () => {
    if (choice.value) now.hole = Number(choice.value);
    else delete now.hole;
    view.show(now.hole);
    tell();
  });
  if (now.hole) view.show(now.hole);
  tell();
  const closer = tool("+", text("map.closer"), () => view.zoom(0.6, view.ball?.x, view.ball?.y));
  const farther = tool("−", text("map.farther"), () => view.zoom(1.6, view.ball?.x, view.ball?.y));
  const parts = [
    element("h1", { textContent: text("map.title"), tabIndex: -1, id: "heading" }),
    element("div", { className: "map-tools" }, element("p", {}, element("label", { for: "map-hole", textContent: text("record.hole") }), choice), closer, farther, position(map, view, said)),
    view.svg,
    said,
    likely,
    on,
    element("p", { className: "soft", textContent: version(map) }),
  ];
  return { heading: text("map.title"), parts };
}

function tool(sign, label, work) {
  const button = element("button", { type: "button", textContent: sign, "aria-label": label });
  button.addEventListener("click", work);
  return button;
}

// The phone's own position, where it may give one: it needs a secure connection, and no network.
function position(map, view, said) {
  if (!navigator.geolocation || !isSecureContext) return null;
  const button = element("button", { type: "button", textContent: text("map.position") });
  button.addEventListener("click", () => {
    button.disabled = true;
    const done = () => (button.disabled = false);
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => {
        done();
        const [x, y] = toMetres(map, coords.longitude, coords.latitude);
        view.tapped(x, y, Math.max(map.distances.tap, coords.accuracy));
      },
      () => {
        done();
        said.replaceChildren(element("p", { role: "status", textContent: text("map.no_position") }));
      },
      { enableHighAccuracy: true, timeout: 20_000, maximumAge: 2000 },
    );
  });
  return button;
}

function version(map) {
  const day = dayWords(map.on);
  const which = map.map_version ? text("map.version", { number: map.map_version, day }) : text("map.of_day", { day });
  return [which, text(map.holes_version ? "map.holes_set" : "map.holes_mapped"), map.credit].filter(Boolean).join(" ");
}
