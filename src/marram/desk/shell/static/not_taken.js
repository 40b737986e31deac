// A tap that is not taken says so: the control it fell on is marked, and why stands in words above the page.

const SHOWN = 2500; // ms; the time to read six words and look again (own choice)
const MARKED = 700;

let timer = 0;

// The control at a place, also while taps pass through the page that is being left.
export function controlAt(part, controls, { clientX, clientY }) {
  return [...(part?.querySelectorAll(controls) ?? [])].find((one) => {
    const box = one.getBoundingClientRect();
    return box.left <= clientX && clientX <= box.right && box.top <= clientY && clientY <= box.bottom;
  });
}

// The controls no farther from a place than so many CSS pixels.
export function controlsNear(part, controls, { x, y }, near) {
  return [...(part?.querySelectorAll(controls) ?? [])].filter((one) => {
    const box = one.getBoundingClientRect();
    return Math.hypot(x - Math.min(Math.max(x, box.left), box.right), y - Math.min(Math.max(y, box.top), box.bottom)) < near;
  });
}

// why: "answering" (the tap before is on its way), "new" (the page has just come), "changed" (the list has just changed), "again" (the second tap of
// one hand: no words).
export function tellNotTaken(control, why) {
  if (control?.classList.contains("taken")) return; // it was: by the tap before
  control?.classList.add("not-taken");
  setTimeout(() => control?.classList.remove("not-taken"), MARKED);
  const said = document.getElementById("not-taken");
  if (!said?.dataset[why]) return;
  said.textContent = said.dataset[why];
  clearTimeout(timer);
  timer = setTimeout(() => (said.textContent = ""), SHOWN);
}
