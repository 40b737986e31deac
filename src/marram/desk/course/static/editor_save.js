// Saving: one version of all edits; both sides of a conflict; nothing lost when the desk cannot be reached.

import { busyWith } from "/static/shell/busy.js";
import { dayWords, text } from "/static/shell/words.js";
import { button, find, refuse, say } from "./editor_words.js";
import { signed } from "/static/shell/signed.js";

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
    window.addEventListener("online", () => say(text("connected")));
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
      refuse(text("otherwise", { day }), told.map((area) => text("yours_shown", { area })));
      say(text("this_is_map", { day }));
      return !clashes.length;
    } catch (error) {
      find("save-day").value = this.draft.day;
      refuse(text("day_unchanged"), [text("map_not_loaded", { day, fault: error.message })]);
      return false;
    }
  }

  send(prepared = "ask") {
    return busyWith(find("save-form"), () => this.sendNow(prepared));
  }

  async sendNow(prepared) {
    if (this.on.busy()) return refuse(text("not_saved"), [text("being_drawn")]);
    if (!(await this.changeDay())) return;
    const { draft } = this;
    const body = { base: draft.base, who: find("save-who").value, in_force_from: draft.day, note: find("save-note").value, prepared, edits: draft.edits() };
    find("save").disabled = true;
    refuse("", []);
    try {
      this.answered(await post(body), draft.day);
    } catch {
      refuse(text("not_saved"), [text(draft.keep() ? "no_desk.kept" : "no_desk.not_kept")]);
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
    else refuse(text("not_saved"), result?.error.faults ?? [text("desk_failed", { status })]);
  }

  both(result) {
    this.map.showTheirs(result.theirs);
    const theirs = result.their_versions.flatMap((one) => one.changes.map((change) => text("theirs", { version: one.number, who: one.who, change })));
    const yours = result.yours.map((edit) => text("yours", { change: text(edit.action, { area: this.on.titleOf(edit.ident, edit.feature ?? this.draft.original.get(edit.ident)) }) }));
    return [...theirs, ...yours];
  }

  // Others changed the same since: mine can be put on the newest version, looked at, and saved.
  conflict(result) {
    const onTop = button(text("put_mine", { version: result.latest }), "big-button", async () => {
      find("save").disabled = true; // until they stand on the newest version
      try {
        const fresh = await this.on.load(this.draft.day);
        if (!fresh) return;
        this.on.goTo(fresh);
        this.map.showTheirs([]);
        refuse("", []);
        say(text("on_newest", { version: fresh.base }));
        find("save").focus();
      } catch {
        refuse(text("not_changed"), [text("no_desk.again")], onTop);
        find("save").disabled = false;
      }
    });
    refuse(text("conflict"), this.both(result), onTop);
  }

  // A later day's map was prepared with other changes of the same: only the official can say which holds then.
  prepared(result) {
    const keep = button(text("mine_until", { day: dayWords(result.since) }), "big-button", () => this.send("keep"));
    const replace = button(text("mine_also", { day: dayWords(result.since) }), "quiet-button", () => this.send("replace"));
    refuse(text("prepared_conflict", { day: dayWords(result.since) }), this.both(result), keep, replace);
  }
}

// The answer of the desk; its result is null when it is not the desk's own.
async function post(body) {
  const answer = await fetch("/api/map", { method: "POST", headers: signed({ "Content-Type": "application/json" }), body: JSON.stringify(body) });
  return { status: answer.status, result: await answer.json().catch(() => null) };
}
