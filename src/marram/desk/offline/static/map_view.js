// The course drawn on this phone: moved with one finger or the mouse, drawn larger with two, the wheel or the keys; a tap
// says where something lies. Metres of the map's plane, north upwards.

const SVG = "http://www.w3.org/2000/svg";
const STILL = 8; // points: a finger that moves less has tapped
const CLOSEST = 12; // metres across at the closest
const BESIDE = 25; // metres shown beside a line of play
const KEYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

// Draw a map; `tapped(x, y, off)` is told each place that is tapped, and how far off it may be (metres).
export function mapView(map, label, tapped) {
  const svg = part("svg", { id: "course-map", role: "application", "aria-label": label, tabindex: 0 });
  svg.append(...runs(map.drawn).map(({ kind, d, line }) => part("path", { class: `g-${kind}${line ? " line" : ""}`, d })));
  const marks = part("g");
  for (const hole of map.holes.values()) svg.append(part("path", { class: "play", d: hole.line.map((line) => drawn(line)).join("") }));
  svg.append(marks);
  const view = new View(svg, marks, map, tapped);
  return view;
}

class View {
  constructor(svg, marks, map, tapped) {
    Object.assign(this, { svg, marks, map, tapped, ball: null, fingers: new Map(), moved: 0 });
    this.show(null);
    svg.addEventListener("pointerdown", (event) => this.down(event));
    svg.addEventListener("pointermove", (event) => this.move(event));
    for (const name of ["pointerup", "pointercancel"]) svg.addEventListener(name, (event) => this.up(event, name === "pointerup"));
    svg.addEventListener("wheel", (event) => {
      event.preventDefault();
      this.zoom(event.deltaY > 0 ? 1.25 : 0.8, ...this.at(event));
    }, { passive: false });
    svg.addEventListener("keydown", (event) => this.key(event));
    new ResizeObserver(() => this.draw()).observe(svg);
  }

  // Metres for one point of the screen.
  get scale() {
    const shown = this.svg.getBoundingClientRect();
    return Math.max(this.across / (shown.width || 1), this.height / (shown.height || 1));
  }

  // Show a hole, or the whole course.
  show(number) {
    const hole = this.map.holes.get(number);
    const lines = hole ? hole.line : [...this.map.holes.values()].flatMap((one) => one.line);
    const [west, south, east, north] = extent(lines);
    this.frame(west - BESIDE, south - BESIDE, east + BESIDE, north + BESIDE);
  }

  frame(west, south, east, north) {
    Object.assign(this, { x: (west + east) / 2, y: (south + north) / 2, across: east - west, height: north - south });
    this.draw();
  }

  zoom(by, x = this.x, y = this.y) {
    const factor = Math.max(by, CLOSEST / Math.max(this.across, this.height));
    Object.assign(this, { x: x + (this.x - x) * factor, y: y + (this.y - y) * factor, across: this.across * factor, height: this.height * factor });
    this.draw();
  }

  // Set the ball, or take it away; where it lies outside what is shown, it is moved there.
  mark(ball) {
    this.ball = ball;
    if (ball && (Math.abs(ball.x - this.x) > this.across / 2 || Math.abs(ball.y - this.y) > this.height / 2)) Object.assign(this, { x: ball.x, y: ball.y });
    this.draw();
  }

  draw() {
    this.svg.setAttribute("viewBox", [this.x - this.across / 2, -this.y - this.height / 2, this.across, this.height].join(" "));
    const point = this.scale;
    const size = 15 * point;
    const holes = [...this.map.holes.values()].flatMap((hole) => {
      const [x, y] = hole.line[0];
      const number = part("text", { x, y: -y, "font-size": size, "stroke-width": 3 * point });
      number.textContent = hole.number;
      return [part("circle", { class: "pin", cx: hole.at[0], cy: -hole.at[1], r: 4 * point }), number];
    });
    const { ball } = this;
    const own = ball ? [part("circle", { class: "off", cx: ball.x, cy: -ball.y, r: ball.off }), part("circle", { class: "ball", cx: ball.x, cy: -ball.y, r: 6 * point })] : [];
    this.marks.replaceChildren(...holes, ...own);
  }

  // Where an event is, in metres.
  at(event) {
    const { left, top, width, height } = this.svg.getBoundingClientRect();
    const point = this.scale;
    return [this.x + (event.clientX - left - width / 2) * point, this.y - (event.clientY - top - height / 2) * point];
  }

  down(event) {
    this.svg.setPointerCapture(event.pointerId);
    if (!this.fingers.size) this.moved = 0;
    this.fingers.set(event.pointerId, [event.clientX, event.clientY]);
  }

  move(event) {
    const before = this.fingers.get(event.pointerId);
    if (!before) return;
    const now = [event.clientX, event.clientY];
    this.moved += Math.hypot(now[0] - before[0], now[1] - before[1]);
    if (this.moved < STILL) return;
    const other = [...this.fingers].find(([ident]) => ident !== event.pointerId)?.[1];
    this.fingers.set(event.pointerId, now);
    if (other) {
      const apart = (one) => Math.hypot(one[0] - other[0], one[1] - other[1]) || 1;
      this.moved = Infinity;
      this.zoom(apart(before) / apart(now), ...this.at({ clientX: (now[0] + other[0]) / 2, clientY: (now[1] + other[1]) / 2 }));
      return;
    }
    const point = this.scale;
    Object.assign(this, { x: this.x - (now[0] - before[0]) * point, y: this.y + (now[1] - before[1]) * point });
    this.draw();
  }

  up(event, lifted) {
    const alone = this.fingers.delete(event.pointerId) && !this.fingers.size;
    if (alone && lifted && this.moved < STILL) this.tapped(...this.at(event), this.off);
  }

  // How far off a tap may be: two points of the screen, and no less than the map allows for.
  get off() {
    return Math.max(this.map.distances.tap, Math.ceil(20 * this.scale) / 10);
  }

  key(event) {
    const step = KEYS[event.key];
    if (step) {
      const far = (event.shiftKey ? 20 : 2) * this.scale;
      const from = this.ball ?? this;
      this.tapped(from.x + step[0] * far, from.y + step[1] * far, this.off);
    } else if (event.key === "+" || event.key === "-") this.zoom(event.key === "+" ? 0.7 : 1.4, this.ball?.x, this.ball?.y);
    else return;
    event.preventDefault();
  }
}

function part(name, attributes = {}) {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

// Ground of one kind that follows each other is one path, which a phone draws faster.
function runs(ground) {
  const found = [];
  const add = (kind, line, d) => {
    if (found.at(-1)?.kind === kind && found.at(-1).line === line) found.at(-1).d += d;
    else found.push({ kind, line, d });
  };
  for (const { kind, polygons, lines } of ground) {
    for (const { rings } of polygons) add(kind, false, rings.map((ring) => `${drawn(ring)}Z`).join(""));
    for (const line of lines) add(kind, true, line.length > 2 ? drawn(line) : spot(line));
  }
  return found;
}

const drawn = (line) => `M${Array.from(line, (number, at) => (at % 2 ? -number : number).toFixed(2)).join(" ")}`;
const spot = ([x, y]) => `M${x - 1} ${-y}h2`;

function extent(lines) {
  const box = [Infinity, Infinity, -Infinity, -Infinity];
  for (const line of lines) line.forEach((number, at) => {
    box[at % 2] = Math.min(box[at % 2], number);
    box[2 + (at % 2)] = Math.max(box[2 + (at % 2)], number);
  });
  return box;
}
