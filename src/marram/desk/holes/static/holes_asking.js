// Asking the desk: an answer or the reasons why not, and one question at a time.

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
  constructor(fetchLook, settled, working) {
    this.fetchLook = fetchLook;
    this.settled = settled; // called with an error, or with nothing
    this.working = working; // told when asking begins and when all that was asked is taken in
    this.waiting = new Map();
    this.busy = false;
  }

  async ask(place, then) {
    this.waiting.set(place.hole, { place, then });
    if (this.busy) return;
    this.work(true);
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
    this.work(false);
  }

  work(busy) {
    this.busy = busy;
    this.working(busy);
  }
}
