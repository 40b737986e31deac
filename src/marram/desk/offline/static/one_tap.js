// One tap, one answer, on the pages of the book as on those of the desk (shell/static/taps.js): a page that a tap led to
// takes none before it can have been seen, and beside that tap none until a double tap would be over. What a finger is on
// shows it as the finger goes down: the next page is made when it is lifted, which takes a slow phone longer.

import { controlsNear } from "/static/shell/not_taken.js";

const SEEN = 350; // ms a new page stands there before a tap on it can be meant for it (own choice)
const APART = 750; // ms: taps nearer to each other than this are one double tap (slowest seen: 700)
const NEAR = 64; // CSS pixels: the second tap of one hand falls no farther from the first (own choice: a thumb's breadth)
const CHOICES = "a[href], button, summary, label, input, select, svg";

// Return what to call when another page has come.
export function guardTaps(panel) {
  let last = null; // where and when the last tap was; null after a key, which meets what has the focus
  let free = 0;
  let under = null; // what a finger went down on
  const letGo = () => under?.classList.remove("taken");
  panel.addEventListener("pointerdown", ({ target }) => {
    letGo();
    under = target.closest("a[href], button");
    under?.classList.add("taken");
  }, true);
  panel.addEventListener("pointercancel", letGo, true); // it moves the page instead
  panel.addEventListener("pointerup", ({ target }) => !under?.contains(target) && letGo(), true);
  panel.addEventListener("click", ({ detail, clientX, clientY }) => {
    last = detail > 0 ? { at: Date.now(), x: clientX, y: clientY } : null;
  }, true);
  return () => {
    const now = Date.now();
    const tapped = last !== null && last.at <= now && now < last.at + APART; // otherwise it came by itself, or the clock was set back
    clearTimeout(free);
    panel.classList.toggle("fresh", tapped);
    if (!tapped) return;
    free = setTimeout(() => panel.classList.remove("fresh"), SEEN);
    const near = controlsNear(panel, CHOICES, last, NEAR);
    for (const one of near) one.classList.add("held");
    setTimeout(() => near.forEach((one) => one.classList.remove("held")), Math.max(SEEN, last.at + APART - now));
  };
}
