// The hole locations being set: every step can be undone, and what is not saved stays on this device.

export class HoleDraft {
  constructor(course, day) {
    this.key = `marram hole locations ${course} ${day}`;
    this.restored = false; // whether moves of before a reload were taken up
  }

  start(told) {
    this.base = told.base;
    this.saved = new Map(Object.values(told.saved).map((one) => [one.hole, one]));
    const proposed = told.base ? [] : Object.values(told.proposed).map((one) => [one.hole, one]);
    this.begun = new Map([...proposed, ...this.saved]);
    this.now = new Map(this.begun);
    this.past = [];
    this.future = [];
    const kept = this.kept();
    if (!kept) return;
    this.base = Math.min(kept.base, told.base);
    for (const one of kept.moved) this.now.set(one.hole, one);
    this.restored = this.moved().size > 0;
  }

  isMoved(hole) {
    const [one, other] = [this.now.get(hole), this.begun.get(hole)];
    return one !== other && !(one && other && one.longitude === other.longitude && one.latitude === other.latitude);
  }

  moved() {
    return new Map([...this.now].filter(([hole]) => this.isMoved(hole)));
  }

  set(hole, look) {
    this.step(new Map(this.now).set(hole, look), hole);
  }

  setAll(looks) {
    const next = new Map(this.now);
    for (const look of looks) next.set(look.hole, look);
    this.step(next, null);
  }

  step(next, hole) {
    this.past.push({ now: this.now, hole });
    this.future = [];
    this.now = next;
    this.keep();
  }

  undo() {
    return this.back(this.past, this.future);
  }

  redo() {
    return this.back(this.future, this.past);
  }

  back(from, to) {
    const last = from.pop();
    if (!last) return null;
    to.push({ now: this.now, hole: last.hole });
    this.now = last.now;
    this.keep();
    return last.hole;
  }

  // Put what was moved on the newest version. The holes in doubt keep our place until somebody decides.
  rebase(told, doubtful) {
    const mine = told.base ? this.moved() : new Map(this.now);
    for (const hole of doubtful) if (!mine.has(hole)) mine.set(hole, this.now.get(hole));
    const fresh = this.base === 0 && told.base > 0;
    this.base = told.base;
    this.saved = new Map(Object.values(told.saved).map((one) => [one.hole, one]));
    this.begun = new Map(this.saved);
    this.now = new Map(this.saved);
    for (const [hole, look] of mine) if (!fresh || doubtful.includes(hole) || !this.saved.has(hole)) this.now.set(hole, look);
    this.past = [];
    this.future = [];
    this.keep();
  }

  throwAway() {
    this.now = new Map(this.begun);
    this.past = [];
    this.future = [];
    this.restored = false;
    this.forget();
  }

  keep() {
    try {
      const moved = [...this.moved().values()];
      if (moved.length) localStorage.setItem(this.key, JSON.stringify({ base: this.base, moved }));
      else localStorage.removeItem(this.key);
    } catch {
      // A browser that keeps nothing still sets and saves.
    }
  }

  kept() {
    try {
      const found = JSON.parse(localStorage.getItem(this.key));
      return Array.isArray(found?.moved) ? found : null;
    } catch {
      return null;
    }
  }

  forget() {
    try {
      localStorage.removeItem(this.key);
    } catch {
      // Nothing was kept.
    }
  }
}
