// What the editor says, and corners as people type them.

import { text as words } from "/static/shell/words.js";

export const find = (id) => document.getElementById(id);

export function say(text) {
  find("editor-words").textContent = text;
}

export function item(text) {
  const one = document.createElement("li");
  one.textContent = text;
  return one;
}

// What an area is called: its kind, its name, its hole.
export function called(feature, kind) {
  if (!feature) return words("an_area");
  const { name, holes, ref } = feature.properties ?? {};
  const hole = holes ?? (kind === "teeing_area" ? ref : undefined);
  const ground = kind ? words(`ground.${kind}`) : "";
  const area = name ? words("named", { kind: ground, name }) : ground;
  return hole ? words("of_hole", { area, hole }) : area;
}

// Show faults with a heading and whatever can be done about them; without faults, hide them.
export function refuse(title, faults, ...more) {
  const box = find("editor-faults");
  box.hidden = !faults.length;
  if (!faults.length) return;
  const heading = document.createElement("h2");
  heading.textContent = title;
  const list = document.createElement("ul");
  list.append(...faults.map(item));
  const row = document.createElement("p");
  row.className = "row";
  row.append(...more);
  box.replaceChildren(heading, list, ...(more.length ? [row] : []));
  box.focus();
}

export function button(text, name, pressed) {
  const one = document.createElement("button");
  one.type = "button";
  one.className = name;
  one.textContent = text;
  one.addEventListener("click", pressed);
  return one;
}

export const Corners = {
  // Corners as typed, as [longitude, latitude]; null after saying what is wrong.
  read(text) {
    const faults = [];
    const corners = text.split("\n").flatMap((given, index) => {
      const line = given.trim();
      if (!line) return [];
      const parts = line.split(/[,;\s]+/).map(Number);
      const [latitude, longitude] = parts;
      if (parts.length === 2 && Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) return [[longitude, latitude]];
      faults.push(words("no_corner", { line: index + 1, given: line }));
      return [];
    });
    if (corners.length > 1 && String(corners[0]) === String(corners.at(-1))) corners.pop();
    if (!faults.length && corners.length < 3) faults.push(words("few_corners", { count: corners.length }));
    refuse(words("bad_corners"), faults);
    return faults.length ? null : corners;
  },

  write(ring) {
    return ring.slice(0, -1).map(([longitude, latitude]) => `${latitude},${longitude}`).join("\n");
  },
};
