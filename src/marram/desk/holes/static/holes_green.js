// The picture of one green, front at the bottom: a hole to drag, recent holes, the slope.

import { text } from "/static/shell/words.js";

const SVG = "http://www.w3.org/2000/svg";
const SIZE = 240;

export class GreenPicture {
  constructor(svg, on) {
    this.svg = svg;
    this.on = on;
    this.drag = null;
    svg.addEventListener("click", (event) => {
      if (event.target.closest("#cup")) return;
      const at = this.at(event);
      this.on.dropped(at.x, at.y);
    });
  }

  draw(green, look, theirs) {
    this.later = this.drag ? [green, look, theirs] : null;
    if (this.drag) return; // an answer that comes during a drag must not take the hole out of the hand
    const hadFocus = document.activeElement?.id === "cup";
    const around = green.around.map((one) => element("path", { d: one.path, class: `a-${one.kind}` }));
    const edge = element("path", { d: green.outline, class: "edge" });
    const slope = element("g", {});
    slope.innerHTML = green.slope;
    const recent = green.recent.flatMap((one) => [
      element("circle", { cx: one.x, cy: one.y, r: 4, class: "recent" }),
      element("text", { x: one.x + 6, y: one.y + 3, class: "recent-day" }, one.day.slice(5)),
    ]);
    const front = [
      element("path", { d: `M${SIZE / 2} ${SIZE - 3}v-12m-4 5l4 -5l4 5`, class: "front-mark" }),
      element("text", { x: SIZE / 2 + 8, y: SIZE - 5, class: "front-word" }, text("line_of_play")),
    ];
    this.guides = element("g", {});
    const parts = [...around, edge, slope, ...recent, ...front, this.guides];
    if (theirs) parts.push(element("circle", { cx: theirs.x, cy: theirs.y, r: 7, class: "theirs" }));
    if (look) parts.push(this.cup(green.hole, look, green));
    this.svg.replaceChildren(...parts);
    if (look) this.guide(look, green);
    if (hadFocus) this.svg.querySelector("#cup")?.focus();
  }

  // Dotted lines carry the numbers of the sheet.
  guide(look, green) {
    if (!look.on_green) return this.guides.replaceChildren();
    const unit = green.pace / 0.9144;
    const front = look.y + look.from_front * unit;
    const side = look.x + look.from_side * unit * (look.side === "right" ? 1 : -1);
    this.guides.replaceChildren(
      element("path", { d: `M${look.x} ${front}V${look.y}H${side}`, class: "guide" }),
      element("text", { x: look.x + 5, y: (front + look.y) / 2 + 4, class: "number" }, String(look.paces_from_front)),
      element("text", { x: (side + look.x) / 2, y: look.y - 7, class: "number", "text-anchor": "middle" }, String(look.paces_from_side)),
    );
  }

  cup(hole, look) {
    const cup = element("g", { id: "cup", tabindex: 0, role: "button", "aria-label": text("cup", { hole }), transform: `translate(${look.x} ${look.y})` });
    if (look.warnings.length) cup.classList.add("warned");
    cup.append(element("circle", { r: 18, class: "grip" }), element("circle", { r: 5, class: "cup" }));
    // A finger on the hole moves it and does not scroll the page; touch-action does not reach into a drawing.
    cup.addEventListener("touchstart", (event) => event.preventDefault(), { passive: false });
    cup.addEventListener("pointerdown", (event) => {
      event.preventDefault();
      cup.focus({ preventScroll: true });
      cup.setPointerCapture(event.pointerId);
      const at = this.at(event);
      this.drag = { right: look.x - at.x, down: look.y - at.y, moved: false };
    });
    cup.addEventListener("pointermove", (event) => {
      if (!this.drag) return;
      const at = this.here(event);
      this.drag.moved = true;
      this.guides.replaceChildren();
      cup.setAttribute("transform", `translate(${at.x} ${at.y})`);
      this.on.dragged(at.x, at.y);
    });
    cup.addEventListener("pointerup", (event) => {
      if (!this.drag) return;
      const { moved } = this.drag;
      const at = this.here(event);
      this.letGo();
      if (moved) this.on.dropped(at.x, at.y);
    });
    cup.addEventListener("pointercancel", () => {
      this.letGo();
      this.on.cancelled();
    });
    cup.addEventListener("keydown", (event) => {
      const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
      if (!way) return;
      event.preventDefault();
      this.on.nudged(...way, event.shiftKey);
    });
    return cup;
  }

  letGo() {
    this.drag = null;
    if (this.later) this.draw(...this.later);
  }

  here(event) {
    const at = this.at(event);
    return { x: at.x + this.drag.right, y: at.y + this.drag.down };
  }

  at(event) {
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(this.svg.getScreenCTM().inverse());
    return { x: Math.round(point.x * 100) / 100, y: Math.round(point.y * 100) / 100 };
  }
}

function element(name, attributes, text) {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text !== undefined) made.textContent = text;
  return made;
}
