// The key of the map: what is drawn in the part that is shown, each with its own pattern and outline, and nothing else.

import { inView } from "./outlines.js";
import { text } from "./words.js";

const L = window.L;

export class Legend {
  constructor(map) {
    this.map = map;
    const control = new (L.Control.extend({ onAdd: () => this.made() }))({ position: "topright" });
    control.addTo(map);
    map.on("moveend layeradd layerremove resize", () => this.open && this.soon());
  }

  made() {
    const box = L.DomUtil.create("div", "map-key");
    box.innerHTML = '<button type="button" class="tool" aria-expanded="false"></button><ul hidden></ul>';
    [this.button, this.list] = box.children;
    this.button.textContent = text("key");
    this.button.addEventListener("click", () => this.turn(!this.open));
    this.list.setAttribute("aria-label", text("key"));
    L.DomEvent.disableClickPropagation(box);
    L.DomEvent.disableScrollPropagation(box);
    return box;
  }

  get open() {
    return this.button.getAttribute("aria-expanded") === "true";
  }

  turn(open) {
    this.button.setAttribute("aria-expanded", String(open));
    this.list.hidden = !open;
    if (open) this.fill();
  }

  soon() {
    cancelAnimationFrame(this.waiting);
    this.waiting = requestAnimationFrame(() => this.fill());
  }

  fill() {
    this.list.replaceChildren(...this.present().map((kind) => entry(kind)));
  }

  // The kinds of ground that have anything in view, in drawing order.
  present() {
    const kinds = new Set();
    this.map.eachLayer((layer) => layer.kind && !kinds.has(layer.kind) && inView(this.map, layer) && kinds.add(layer.kind));
    return [...kinds];
  }
}

function entry(kind) {
  const line = document.createElement("li");
  const swatch = kind === "line_of_play" ? "M0 11h34" : "M2 2h30v18h-30z";
  line.innerHTML = `<svg viewBox="0 0 34 22" width="34" height="22" aria-hidden="true"><path class="ground k-${kind}" d="${swatch}"/></svg><span></span>`;
  line.lastChild.textContent = text(`key.${kind}`);
  return line;
}
