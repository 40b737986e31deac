// The ground of the course on its way to the map: first the part that the page shows, then the whole, drawn finely.
// A fetch that fails is said, and tried again by itself; the rest of the page works meanwhile.

import { drawCourse } from "./course.js";

const AGAIN = 2000; // ms until a fetch that failed is tried again; doubled each time
const AGAIN_AT_MOST = 30_000;
const QUIET = 3000; // ms within which a busy page fetches the rest in any case

export class Ground {
  constructor(map) {
    this.map = map;
    this.fault = document.getElementById("map-fault");
    this.course = null; // what is drawn
    this.from = null; // the address it came from
    this.wanted = null; // the addresses of the page
    this.coming = null; // what the page waits for
    this.retry = null;
    window.addEventListener("online", () => this.retry?.());
  }

  // Resolve once something of the page's map is drawn: a coarse drawing is replaced when the fine one comes.
  async show(addresses) {
    const same = this.from !== null && mapOf(this.from) === mapOf(addresses.first);
    this.wanted = addresses;
    if (same && [addresses.first, addresses.whole].includes(this.from)) return;
    const drawn = this.fetched(addresses.first).then((drawing) => {
      if (this.wanted.first !== addresses.first || this.from === addresses.whole) return;
      if (this.from !== addresses.first) this.draw(drawing, addresses.first); // the page before may have waited for the same
      idle(() => this.rest(addresses.whole));
    });
    if (!same) await drawn;
  }

  async rest(address) {
    if (this.wanted.whole !== address || this.from === address) return;
    try {
      const drawing = await asked(address);
      if (this.wanted.whole === address) this.draw(drawing, address);
    } catch {
      // what is drawn is good enough; the next page asks again
    }
  }

  draw(drawing, address) {
    const before = this.course;
    this.course = drawCourse(this.map, drawing);
    before?.remove();
    if (before) this.map.whenReady(() => this.course.toBack()); // until it shows a place, nothing of a layer is there to be moved
    this.course.choose(this.hole ?? null);
    this.from = address;
  }

  get bounds() {
    return this.course.bounds;
  }

  choose(hole) {
    this.hole = hole;
    this.course.choose(hole);
  }

  // Fetch a part, however long it takes: out of reach that is said, with a button for who cannot wait.
  async fetched(address) {
    for (let wait = AGAIN; ; wait = Math.min(2 * wait, AGAIN_AT_MOST)) {
      try {
        const drawing = await asked(address);
        this.fault.replaceChildren();
        return drawing;
      } catch {
        this.say();
        await new Promise((resolve) => {
          const timer = setTimeout(resolve, wait);
          this.retry = () => {
            clearTimeout(timer);
            resolve();
          };
        });
      }
    }
  }

  say() {
    if (this.fault.childElementCount) return;
    const { words, again } = this.fault.dataset;
    const button = Object.assign(document.createElement("button"), { type: "button", className: "tool", textContent: again });
    button.addEventListener("click", () => this.retry?.());
    this.fault.append(Object.assign(document.createElement("p"), { textContent: words }), button);
  }
}

async function asked(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
}

// The map of an address, whichever of its parts is asked for.
const mapOf = (address) => address.split("/")[3];

function idle(work) {
  if (window.requestIdleCallback) window.requestIdleCallback(work, { timeout: QUIET });
  else setTimeout(work, QUIET);
}
