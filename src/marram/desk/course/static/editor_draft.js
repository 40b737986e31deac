// The edited map: every step can be undone, and unsaved edits stay on this device until they are saved.

const PREFIX = "marram map edits";

export function identOf(feature, index) {
  return String(feature.id || feature.properties?.["@id"] || `feature ${index}`);
}

export function byIdent(told) {
  return new Map(told.map.features.map((one, index) => [identOf(one, index), one]));
}

export function same(one, other) {
  return JSON.stringify(one) === JSON.stringify(other);
}

export class Draft {
  constructor(course, changed) {
    this.course = course;
    this.changed = changed;
    this.base = 0; // the newest version taken into account
    this.day = ""; // the day whose map is edited
    this.pending = null; // edits kept from before, offered and not yet decided about: {base, day, edits}
  }

  start(told) {
    this.base = told.base;
    this.day = told.on;
    this.original = byIdent(told);
    this.now = new Map(this.original);
    this.past = [];
    this.future = [];
    this.changed();
  }

  // One step: set a feature, or remove it with null.
  set(ident, feature) {
    this.past.push(this.now);
    this.future = [];
    this.now = new Map(this.now);
    if (feature === null) this.now.delete(ident);
    else this.now.set(ident, feature);
    this.keep();
    this.changed();
  }

  undo() {
    this.step(this.past, this.future);
  }

  redo() {
    this.step(this.future, this.past);
  }

  step(from, to) {
    if (!from.length) return;
    to.push(this.now);
    this.now = from.pop();
    this.keep();
    this.changed();
  }

  edits() {
    const found = [];
    for (const [ident, feature] of this.now) {
      const before = this.original.get(ident);
      if (before !== feature && !same(before, feature)) found.push({ action: before ? "change" : "add", ident, feature });
    }
    for (const ident of this.original.keys()) {
      if (!this.now.has(ident)) found.push({ action: "remove", ident, feature: null });
    }
    return found;
  }

  // Make edits of another time on the map as it is now; what is gone or there already is taken into account.
  apply(edits) {
    for (const edit of edits) {
      if (edit.action !== "remove" || this.now.has(edit.ident)) this.set(edit.ident, edit.feature);
    }
  }

  // Whether the browser keeps what is drawn: it may not, in a private window or when it is full.
  keep() {
    const edits = this.edits();
    if (this.pending?.base === this.base && this.pending.day === this.day) edits.unshift(...this.untouched());
    return store(this.key(this.base, this.day), edits.length ? edits : null);
  }

  // What is pending, but for what was edited anew since.
  untouched() {
    const anew = new Set(this.edits().map((one) => one.ident));
    return this.pending.edits.filter((one) => !anew.has(one.ident));
  }

  // Take up what is pending, beneath what was edited since, on the map that was just fetched for it.
  takeUp(told) {
    const { pending, base, day } = this;
    const edits = [...this.untouched(), ...this.edits()];
    this.pending = null;
    this.start(told);
    this.apply(edits);
    for (const [oldBase, oldDay] of [[base, day], [pending.base, pending.day]]) {
      if (oldBase !== this.base || oldDay !== this.day) this.forget(oldBase, oldDay);
    }
  }

  // Go over to another map, of another day or a newer version, with all edits.
  moveTo(told) {
    const { base, day } = this;
    const edits = this.edits();
    const clashes = edits.filter((one) => !same(this.original.get(one.ident), byIdent(told).get(one.ident)));
    this.start(told);
    this.apply(edits);
    if (base !== this.base || day !== this.day) this.forget(base, day);
    return clashes;
  }

  key(base, day) {
    return `${PREFIX} ${this.course} ${base} ${day}`;
  }

  // Edits kept on this device, those of the newest version first: {base, day, edits}, or null.
  kept() {
    const start = `${PREFIX} ${this.course} `;
    const found = Object.keys(localStorage)
      .filter((key) => key.startsWith(start))
      .map((key) => [key, /^(\d+) (\d{4}-\d\d-\d\d)$/.exec(key.slice(start.length))])
      .filter(([, parts]) => parts)
      .sort(([, one], [, other]) => Number(other[1]) - Number(one[1]));
    for (const [key, [, base, day]] of found) {
      const edits = stored(key);
      if (edits) return { base: Number(base), day, edits };
    }
    return null;
  }

  forget(base, day) {
    store(this.key(base, day), null);
  }

  // What is under way beside the edits (a sketch, a form), by name.
  hold(name, value) {
    store(`${PREFIX} ${this.course} ${name}`, value);
  }

  held(name) {
    return stored(`${PREFIX} ${this.course} ${name}`);
  }
}

function store(key, value) {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(value));
    return true;
  } catch {
    return false; // a browser that keeps nothing still edits and saves
  }
}

function stored(key) {
  try {
    return JSON.parse(localStorage.getItem(key));
  } catch {
    localStorage.removeItem(key);
    return null;
  }
}
