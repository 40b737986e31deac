// Asking the desk: an answer or the reasons why not, and one question at a time.

import { busyWith } from "/static/shell/busy.js";

export class Refused extends Error {
  constructor(faults, status, body) {
    super(faults.join(" "));
    Object.assign(this, { faults, status, body });
  }
}

export async function answered(request) {
  const answer = await request;
  const body = await answer.json();
  if (!answer.ok) throw new Refused(body.error.faults, answer.status, body);
  return body;
}

// One request under way; of those asked for meanwhile only the last of each hole is sent.
export class LookQueue {
  constructor(picture, fetchLook, settled) {
    this.picture = picture; // shows what is answered
    this.fetchLook = fetchLook;
    this.settled = settled; // called with an error, or with nothing
    this.waiting = new Map();
    this.busy = false;
  }

  ask(place, then) {
    this.waiting.set(place.hole, { place, then });
    if (!this.busy) busyWith(this.picture, () => this.empty());
  }

  async empty() {
    this.busy = true;
    try {
      await this.askAll();
    } finally {
      this.busy = false;
    }
  }

  async askAll() {
    while (this.waiting.size) {
      const [hole, next] = this.waiting.entries().next().value;
      this.waiting.delete(hole);
      try {
        const found = await this.fetchLook(next.place);
        this.settled(null);
        if (!this.waiting.has(hole)) next.then(found);
      } catch (error) {
        if (this.waiting.has(hole)) continue;
        next.then(null);
        this.settled(error);
      }
    }
  }
}
