// A briefing by keys, as a presenter's remote control sends them (first the ruling, then the next page, or one back), each page
// as large as the window holds, and all windows of it in step: the one somebody goes on in tells the others where it is, and they follow.

const ON = ["show", "next"];
const BACK = ["before"];
const KEYS = { ArrowRight: ON, PageDown: ON, ArrowLeft: BACK, PageUp: BACK };
const MOVED = "marram-briefing-moved";
const slide = document.querySelector(".slide");
const { briefing, number, shown } = slide.dataset;
const here = { briefing, number: Number(number), shown: Number(shown) };
const link = (name) => document.querySelector(`.slide a[data-key="${name}"]`);

addEventListener("keydown", (event) => {
  if (event.altKey || event.ctrlKey || event.metaKey || event.target.matches("input, select, textarea")) return;
  if (!KEYS[event.key]) return;
  event.preventDefault();
  KEYS[event.key].map(link).find(Boolean)?.click();
});

// A page that is too long for a wide window is set smaller, step by step, so that the room sees it whole down to its buttons; what
// is longer still in the last size scrolls.
const SMALLER = [1.4, 1.28, 1.16, 1.06]; // rem; on a phone a page scrolls as any other
const buttons = slide.querySelector(".row");
function fit() {
  slide.style.removeProperty("--read");
  if (!matchMedia("(min-width: 60rem)").matches) return;
  for (const size of SMALLER) {
    if (buttons.getBoundingClientRect().bottom + scrollY <= innerHeight) return;
    slide.style.setProperty("--read", `${size}rem`);
  }
}
fit();
document.fonts?.ready.then(fit);
addEventListener("resize", fit);

// Whoever goes on says so on the page that comes: others follow that one, and nobody follows a window that only followed.
for (const one of document.querySelectorAll(".slide a[data-key]")) {
  one.addEventListener("click", () => sessionStorage.setItem(MOVED, "1"));
}

const others = "BroadcastChannel" in window ? new BroadcastChannel("marram-briefing") : null;
const led = sessionStorage.getItem(MOVED) !== null;
sessionStorage.removeItem(MOVED);

function follow(there) {
  if (there.number === here.number && there.shown === here.shown) return;
  const address = new URL(location.href);
  address.searchParams.set("number", there.number);
  address.searchParams.set("shown", there.shown);
  location.replace(address);
}

others?.addEventListener("message", ({ data }) => {
  if (data.briefing !== here.briefing) return;
  if (data.asks) others.postMessage({ ...here, asked: true });
  else if (!data.asked || opened) follow(data);
});

// A window that is opened asks where the others are; only then does an answer move it.
let opened = !led;
others?.postMessage(led ? here : { briefing, asks: true });
setTimeout(() => (opened = false), 1000);
