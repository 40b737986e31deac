// The map: the course's own polygons, no tiles. What it shows is read from the page's #map-state.

import { flagAt } from "./course.js";
import { Ground } from "./ground.js";
import { Legend } from "./legend.js";
import { outLabels } from "./out_labels.js";
import { Picker } from "./picker.js";
import { Relief } from "./relief.js";
import { text } from "./words.js";

const L = window.L;
const AROUND_BALL = 70; // metres shown to each side of the ball

const VIEW = "view"; // the key of what is remembered of the map

const here = () => `${location.pathname}${location.search}`;
const remembered = () => JSON.parse(sessionStorage.getItem(VIEW) ?? "null");

export function startMap() {
  const map = L.map("map", {
    attributionControl: false,
    zoomControl: false,
    zoomSnap: 0.1,
    zoomDelta: 0.75,
    minZoom: 13,
    maxZoom: 24,
    keyboardPanDelta: 60,
  });
  L.control.zoom({ position: "bottomright", zoomInTitle: text("zoom_in"), zoomOutTitle: text("zoom_out") }).addTo(map);
  L.control.scale({ position: "bottomleft", imperial: false, maxWidth: 120 }).addTo(map);
  const marks = L.layerGroup().addTo(map);
  const relief = new Relief(map);
  const picker = new Picker(map);
  new Legend(map);
  outLabels(map);
  const course = new Ground(map);
  const left = remembered(); // the view and the option of this page, when it was left for another one
  let shown = null;
  let picking = null; // the option that a place is being picked for

  async function sync() {
    const source = document.getElementById("map-state");
    if (!source) return;
    const state = JSON.parse(source.textContent);
    relief.chosen = picking; // a place picked for an option leads back to it
    picking = null;
    picker.offer(state); // at once: its tools take room, and nothing is to move under a finger when the course arrives
    listen();
    await course.show(state.course);
    if (document.getElementById("map-state") !== source) return; // another page stands here by now
    picker.ready(course.bounds);
    map.invalidateSize({ animate: false });
    frame(state);
    course.choose(state.hole);
    marks.clearLayers();
    for (const mark of state.marks) {
      if (mark.accuracy) marks.addLayer(L.circle(mark.at, { radius: mark.accuracy, interactive: false, className: "accuracy" }));
      if (mark.moved) movedMark(mark).forEach((one) => marks.addLayer(one));
      marks.addLayer(markFor(mark));
    }
    relief.labels.moved = state.marks.filter((mark) => mark.moved).map((mark) => ({ words: mark.moved, at: L.latLng(mark.shown) }));
    relief.show(state.options);
    if (state.edges.length) showEdges(state, marks, relief.labels);
    document.getElementById("map").dataset.ready = "yes";
    if (left?.at === here()) {
      if (left.option) relief.highlight(left.option, false);
      map.setView(left.centre, left.zoom, { animate: false });
      left.at = null;
    }
  }

  // What leads from the panel to the map answers from the first, though the course may still be on its way.
  function listen() {
    for (const button of document.querySelectorAll("[data-pick]")) {
      button.addEventListener("click", () => {
        picking = button.closest(".option")?.dataset.letter ?? null;
        picker.start(button.dataset.pick);
      });
    }
    for (const button of document.querySelectorAll(".show-option")) {
      button.addEventListener("click", () => relief.highlight(button.dataset.letter));
    }
    for (const card of document.querySelectorAll(".option")) {
      card.addEventListener("click", (event) => {
        if (!event.target.closest("a, button, summary")) relief.highlight(card.dataset.letter, false);
      });
    }
  }

  // Keep the view while the official works on one hole; move it only when the subject changes.
  function frame(state) {
    const ball = state.marks.find((mark) => mark.role === "ball");
    const subject = `${state.hole} ${ball?.at}`;
    if (subject === shown) return;
    const here = ball && shown !== null && map.getZoom() > 16.5 && map.getBounds().contains(ball.at);
    shown = subject;
    if (here) return;
    let bounds = course.bounds;
    if (ball) bounds = L.latLng(ball.at).toBounds(2 * AROUND_BALL);
    else if (state.frame) bounds = L.geoJSON({ type: "Polygon", coordinates: state.frame }).getBounds();
    map.fitBounds(bounds, { paddingTopLeft: [6, 6], paddingBottomRight: [6, 56], animate: false });
  }

  window.addEventListener("pagehide", () => {
    if (!shown) return;
    const now = { at: here(), centre: map.getCenter(), zoom: map.getZoom(), option: relief.chosen };
    sessionStorage.setItem(VIEW, JSON.stringify(now));
  });
  window.marramMap = map; // for whoever looks from outside, such as the tests
  window.addEventListener("resize", () => map.invalidateSize({ animate: false }));
  return { sync };
}

// The way from the ball to the edges that decide, each with how far it is.
function showEdges(state, marks, labels) {
  const ball = state.marks.find((mark) => mark.role === "ball").at;
  for (const edge of state.edges) marks.addLayer(L.polyline([ball, edge.at], { interactive: false, className: "edge-way", weight: 2 }));
  labels.beside(state.edges, ball);
}

// A place that was moved onto its edge: where it was tapped, and the way it went.
function movedMark(mark) {
  const way = L.polyline([mark.shown, mark.at], { interactive: false, className: "moved-way", weight: 2 });
  return [way, L.circleMarker(mark.shown, { radius: 4, interactive: false, className: "moved-from" })];
}

function markFor(mark) {
  if (mark.role === "flag") return flagAt(mark.at, "flag shown"); // seen from afar too
  const letters = { ball: "", entry: "X", previous: "P", provisional: "V", outside: "L", boundary: "B", estimated: "S", left_marker: "T", right_marker: "T" };
  const icon = L.divIcon({
    className: `mark-${mark.role}`,
    html: `<span aria-hidden="true">${letters[mark.role] ?? ""}</span>`,
    iconSize: mark.role === "ball" ? [22, 22] : [26, 26],
  });
  return L.marker(mark.at, { icon, interactive: false, keyboard: false, alt: mark.words, zIndexOffset: 500 });
}
