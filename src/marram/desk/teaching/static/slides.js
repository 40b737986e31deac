// A briefing by keys, as a presenter's remote control sends them: first the ruling, then the next page, or one back.

const ON = ["show", "next"];
const BACK = ["before"];
const KEYS = { ArrowRight: ON, PageDown: ON, ArrowLeft: BACK, PageUp: BACK };
const link = (name) => document.querySelector(`.slide a[data-key="${name}"]`);

addEventListener("keydown", (event) => {
  if (event.altKey || event.ctrlKey || event.metaKey || event.target.matches("input, select, textarea")) return;
  if (!KEYS[event.key]) return;
  event.preventDefault();
  KEYS[event.key].map(link).find(Boolean)?.click();
});
