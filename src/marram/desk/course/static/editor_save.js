// Saving: one version of all edits; both sides of a conflict; nothing lost when the desk cannot be reached.

import { DONE, button, find, refuse, say } from "./editor_words.js";

export class Save {
  constructor(draft, map, on) {
    this.draft = draft;
    this.map = map;
    this.on = on;
    find("save-form").addEventListener("submit", (event) => {
      event.preventDefault();
      this.send();
    });
    find("save-day").addEventListener("change", () => this.changeDay());
    for (const id of ["save-who", "save-note"]) find(id).addEventListener("input", () => this.keep());
    window.addEventListener("online", () => say("This device is connected again. Your edits can be saved."));
  }

  // What was typed before a reload.
  fill() {
    const kept = this.draft.held("form");
    if (kept?.who) find("save-who").value = kept.who;
    if (kept?.note) find("save-note").value = kept.note;
  }

  keep() {
    this.draft.hold("form", { who: find("save-who").value, note: find("save-note").value });
  }

  // The map in force on the day from which the edits are to be in force is the one that they change.
  async changeDay() {
    const day = find("save-day").value;
    if (!day || day === this.draft.day) return true;
    try {
      const fresh = await this.on.load(day);
      if (!fresh) return false;
      const clashes = this.on.goTo(fresh);
      const told = clashes.map((one) => this.on.titleOf(one.ident, one.feature ?? this.draft.original.get(one.ident)));
      refuse(`On the map of ${day} this is otherwise`, told.map((one) => `${one}: yours is shown now. Look at it before you save.`));
      say(`This is the map of ${day}.`);
      return !clashes.length;
    } catch (error) {
      find("save-day").value = this.draft.day;
      refuse("The day was not changed", [`The map of ${day} cannot be loaded (${error.message}). Your edits stay on this device.`]);
      return false;
    }
  }

  async send(prepared = "ask") {
    if (this.on.busy()) return refuse("Nothing was saved", ["An area is being drawn. Finish or cancel it first."]);
    if (!(await this.changeDay())) return;
    const { draft } = this;
    const body = { base: draft.base, who: find("save-who").value, in_force_from: draft.day, note: find("save-note").value, prepared, edits: draft.edits() };
    find("save").disabled = true;
    refuse("", []);
    try {
      this.answered(await post(body), draft.day);
    } catch {
      const kept = draft.keep() ? "Your edits stay on this device, also when this page is closed" : "This browser keeps nothing: leave this page open";
      refuse("Nothing was saved", [`The desk cannot be reached. ${kept}; save again when it can.`]);
    }
    find("save").disabled = !draft.edits().length;
  }

  answered({ status, result }, day) {
    if (status === 201) {
      this.draft.forget(this.draft.base, this.draft.day);
      this.draft.hold("form", null);
      location.assign(`/map?saved=${result.version.number}&on=${day}`);
    } else if (status === 409 && result.error.code === "prepared_conflict") this.prepared(result);
    else if (status === 409) this.conflict(result);
    else refuse("Nothing was saved", result?.error.faults ?? [`The desk failed (${status}). Your edits stay on this device; save again.`]);
  }

  both(result) {
    this.map.showTheirs(result.theirs);
    const theirs = result.their_versions.flatMap((one) => one.changes.map((change) => `Version ${one.number}, ${one.who}: ${change}.`));
    const yours = result.yours.map((edit) => `Yours: ${DONE[edit.action]} ${this.on.titleOf(edit.ident, edit.feature ?? this.draft.original.get(edit.ident))}.`);
    return [...theirs, ...yours];
  }

  // Others changed the same since: mine can be put on the newest version, looked at, and saved.
  conflict(result) {
    const onTop = button(`Put mine on version ${result.latest}`, "big-button", async () => {
      find("save").disabled = true; // until they stand on the newest version
      try {
        const fresh = await this.on.load(this.draft.day);
        if (!fresh) return;
        this.on.goTo(fresh);
        this.map.showTheirs([]);
        refuse("", []);
        say(`Your edits now stand on version ${fresh.base}. Look at them, then save.`);
        find("save").focus();
      } catch {
        refuse("Nothing was changed", ["The desk cannot be reached. Your edits stay on this device; try again."], onTop);
        find("save").disabled = false;
      }
    });
    refuse("Somebody else changed the same; nothing was saved", this.both(result), onTop);
  }

  // A later day's map was prepared with other changes of the same: only the official can say which holds then.
  prepared(result) {
    const keep = button(`Mine until ${result.since}, then what is prepared`, "big-button", () => this.send("keep"));
    const replace = button(`Mine also from ${result.since} on`, "quiet-button", () => this.send("replace"));
    refuse(`Another change is prepared from ${result.since}; nothing was saved yet`, this.both(result), keep, replace);
  }
}

// The answer of the desk; its result is null when it is not the desk's own.
async function post(body) {
  const answer = await fetch("/api/map", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) });
  return { status: answer.status, result: await answer.json().catch(() => null) };
}
