// The edited map: every step can be undone, and unsaved edits stay on this device until they are saved.

const PREFIX = "marram map edits";

export function identOf(feature, index) {
  return String(feature.id || feature.properties?.["@id"] || `feature ${index}`);
}

export class Draft {
  constructor(course, changed) {
    this.course = course;
    this.changed = changed;
    this.base = 0;
    this.pending = null; // edits kept from before, offered and not yet decided about: {base, edits}
  }

  start(told, base = told.version) {
    this.base = base;
    this.original = new Map(told.map.features.map((one, index) => [identOf(one, index), one]));
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
      if (before !== feature) found.push({ action: before ? "change" : "add", ident, feature });
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

  keep() {
    const edits = this.edits();
    if (this.pending?.base === this.base) edits.unshift(...this.untouched());
    try {
      if (edits.length) localStorage.setItem(this.key(this.base), JSON.stringify(edits));
      else localStorage.removeItem(this.key(this.base));
    } catch {
      // A browser that keeps nothing still edits and saves.
    }
  }

  // What is pending, but for what was edited anew since.
  untouched() {
    const anew = new Set(this.edits().map((one) => one.ident));
    return this.pending.edits.filter((one) => !anew.has(one.ident));
  }

  // Take up what is pending, beneath what was edited since. An older base lets the desk find what others changed.
  takeUp(told) {
    const { pending, base } = this;
    const [before, since] = [this.untouched(), this.edits()];
    this.pending = null;
    this.start(told, pending.base);
    this.apply([...before, ...since]);
    if (base !== pending.base) this.forget(base);
  }

  key(base) {
    return `${PREFIX} ${this.course} ${base}`;
  }

  // Edits kept on this device, those of the newest version first: {base, edits}, or null.
  kept() {
    const start = `${PREFIX} ${this.course} `;
    const bases = Object.keys(localStorage)
      .filter((key) => key.startsWith(start) && /^\d+$/.test(key.slice(start.length)))
      .map((key) => Number(key.slice(start.length)))
      .sort((one, other) => other - one);
    for (const base of bases) {
      try {
        return { base, edits: JSON.parse(localStorage.getItem(this.key(base))) };
      } catch {
        localStorage.removeItem(this.key(base));
      }
    }
    return null;
  }

  forget(base) {
    localStorage.removeItem(this.key(base));
  }
}
