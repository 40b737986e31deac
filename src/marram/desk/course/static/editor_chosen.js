// The area chosen: its kind, name, holes, what a dropping zone serves, its corners; moved, deleted.

import { text } from "/static/shell/words.js";
import { crossing } from "./editor_crossing.js";
import { nearestHole } from "./editor_geometry.js";
import { rings, shifted, withoutCorner } from "./editor_shape.js";
import { Corners, find, refuse, say } from "./editor_words.js";

const HOLES = /^[1-9]\d?(;[1-9]\d?)*$/;

export class Chosen {
  constructor(draft, map, on) {
    this.draft = draft;
    this.map = map;
    this.on = on;
    this.ident = null;
    find("chosen-kind").addEventListener("change", (event) => this.changeKind(event.target.selectedOptions[0]));
    find("chosen-name").addEventListener("change", (event) => this.tag("name", event.target.value.trim()));
    find("chosen-hole").addEventListener("change", (event) => this.changeHoles(event.target));
    find("chosen-serves").addEventListener("change", (event) => this.tag("serves", event.target.value));
    find("chosen-evacuation").addEventListener("change", (event) => this.tag("evacuation", event.target.value));
    find("chosen-exact").addEventListener("click", () => this.tag("accuracy", ""));
    find("chosen-done").addEventListener("click", () => on.done());
    find("chosen-delete").addEventListener("click", () => this.remove());
    find("corner-delete").addEventListener("click", () => draft.set(this.ident, withoutCorner(this.feature, map.corner)));
    find("corners-use").addEventListener("click", () => this.useCorners());
    for (const one of document.querySelectorAll("[data-move]")) one.addEventListener("click", () => this.move(one.dataset.move));
  }

  get feature() {
    return this.draft.now.get(this.ident);
  }

  get kind() {
    return this.on.kindOf(this.ident, this.feature);
  }

  get holeKey() {
    return this.kind === "teeing_area" ? "ref" : "holes";
  }

  fill() {
    const { feature, kind } = this;
    find("chosen-title").textContent = text("chosen_title", { area: this.on.titleOf(this.ident, feature) });
    find("chosen-name").value = feature.properties.name ?? "";
    find("chosen-hole").value = feature.properties[this.holeKey] ?? "";
    find("chosen-accuracy").hidden = !feature.properties.accuracy;
    find("accuracy-words").textContent = text("accuracy", { metres: feature.properties.accuracy });
    const select = find("chosen-kind");
    select.parentElement.hidden = ![...select.options].some((one) => one.value === kind);
    select.value = kind;
    const zone = kind === "dropping_zone";
    find("chosen-serves").parentElement.hidden = !zone;
    if (zone) this.fillServes();
    find("chosen-evacuation").parentElement.hidden = kind !== "evacuation_point";
    find("chosen-evacuation").value = feature.properties.evacuation ?? "";
    this.tellCrossing();
    const simple = rings(feature).length === 1;
    find("chosen-corners-fold").hidden = !simple;
    if (simple) find("chosen-corners").value = Corners.write(rings(feature)[0]);
  }

  // An edge that crosses itself is said at once, beside the map and in the panel; the desk keeps no such area.
  tellCrossing() {
    const at = crossing(this.feature);
    find("chosen-crosses").hidden = !at;
    this.map.warn(at);
    if (at) say(text("crosses"));
    else if (this.crossed) say(text("crosses_no_more"));
    this.crossed = !!at;
  }

  // What the zone can serve: the things of its hole first, then those of other holes, and what was just drawn.
  fillServes() {
    const { feature, draft } = this;
    const features = [...draft.now.values()];
    const named = feature.properties.holes?.split(";") ?? [nearestHole(features, rings(feature)[0][0])];
    const told = this.on.told().servable.filter((one) => draft.now.has(one.ident));
    const here = (one) => one.holes.some((hole) => named.includes(String(hole)));
    const kinds = new Set([...find("draw-kind").options].filter((one) => "servable" in one.dataset).map((one) => one.value));
    const drawn = [...draft.now]
      .filter(([ident, one]) => !draft.original.has(ident) && kinds.has(this.on.kindOf(ident, one)))
      .map(([ident, one]) => ({ value: ident, words: text("new", { area: this.on.titleOf(ident, one) }) }));
    const groups = [[text("hole", { hole: named.join(text("and")) }), [...drawn, ...told.filter(here)]], [text("other_holes"), told.filter((one) => !here(one))]];
    const select = find("chosen-serves");
    select.replaceChildren(new Option(text("serves_choose"), ""));
    for (const [label, some] of groups) {
      const group = document.createElement("optgroup");
      group.label = label;
      group.append(...some.map((one) => new Option(one.words, one.value)));
      if (some.length) select.append(group);
    }
    const value = feature.properties.serves ?? "";
    if (![...select.options].some((one) => one.value === value)) select.append(new Option(value, value));
    select.value = value;
  }

  tag(key, value) {
    this.change((tags) => {
      if (value) tags[key] = value;
      else delete tags[key];
    });
  }

  change(make) {
    const feature = structuredClone(this.feature);
    make(feature.properties);
    this.draft.set(this.ident, feature);
  }

  changeKind(option) {
    const holes = this.feature.properties[this.holeKey];
    this.change((tags) => {
      for (const key of ["golf", "marram", "serves", "evacuation", "holes", "ref"]) delete tags[key];
      tags[option.dataset.key] = option.dataset.value;
      if (holes) tags[option.value === "teeing_area" ? "ref" : "holes"] = holes;
    });
  }

  changeHoles(field) {
    const holes = field.value.trim().replace(/[\s,;]+/g, ";");
    const wrong = holes && !HOLES.test(holes);
    refuse(text("holes_unchanged"), wrong ? [text("no_hole", { given: field.value })] : []);
    if (!wrong) this.tag(this.holeKey, holes);
  }

  remove() {
    const gone = this.on.titleOf(this.ident, this.feature);
    this.draft.set(this.ident, null);
    say(text("deleted", { area: gone }));
    find("undo").focus();
  }

  move(direction) {
    const step = Number(find("move-step").value);
    const [east, north] = { north: [0, step], east: [step, 0], south: [0, -step], west: [-step, 0] }[direction];
    this.draft.set(this.ident, shifted(this.feature, east, north));
    say(text(`moved.${direction}`, { metres: step }));
  }

  useCorners() {
    const corners = Corners.read(find("chosen-corners").value);
    if (!corners) return;
    const feature = structuredClone(this.feature);
    rings(feature)[0].splice(0, Infinity, ...corners, corners[0]);
    say(text("as_typed")); // unless the edge crosses itself now
    this.draft.set(this.ident, feature);
  }
}
