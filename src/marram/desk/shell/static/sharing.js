// Handing on what a page shows: printed, copied as text, or shared where the browser can.

import { drawn, drawnAtOnce } from "./drawings.js";

const shared = () => document.getElementById("as-text")?.textContent.trim() ?? "";

function say(button, done) {
  const status = document.getElementById("shared-words");
  if (status) status.textContent = button.dataset[done] ?? "";
}

// A page without a secure context has no clipboard; a field that is selected is copied all the same.
async function copied(words) {
  if (navigator.clipboard) {
    await navigator.clipboard.writeText(words);
    return true;
  }
  const field = Object.assign(document.createElement("textarea"), { value: words, readOnly: true });
  field.className = "hidden";
  document.body.append(field);
  field.select();
  const done = document.execCommand("copy");
  field.remove();
  return done;
}

document.addEventListener("click", async ({ target }) => {
  const button = target.closest?.("[data-print], [data-copy], [data-share]");
  if (!button) return;
  if ("print" in button.dataset) {
    await drawn();
    window.print();
  } else if ("copy" in button.dataset) {
    say(button, (await copied(shared()).catch(() => false)) ? "done" : "failed");
    button.focus();
  } else {
    const what = { title: document.title, text: shared(), url: location.href };
    await navigator.share(what).catch((error) => error.name === "AbortError" || say(button, "failed"));
  }
});

// A ruling is one page: where its words and drawings need more, all of it is set smaller, down to what can be read.
const PAGE = { width: "188mm", height: "259mm" }; // what A4 and Letter both hold within the margins of paper.css
const SMALLEST = 0.6;

function fitOnePage() {
  const panel = document.querySelector("main:has(.ruling) .panel");
  const paper = document.getElementById("paper-style");
  if (!panel) return;
  const root = document.documentElement;
  const page = Object.assign(document.createElement("div"), { style: `position: absolute; visibility: hidden; height: ${PAGE.height}` });
  document.body.append(page);
  const room = page.getBoundingClientRect().height;
  page.remove();
  const scroll = window.scrollY;
  paper.media = "all";
  document.body.style.width = PAGE.width;
  let fit = 1;
  root.style.setProperty("--fit", fit);
  while (panel.getBoundingClientRect().height > room && fit > SMALLEST) {
    fit -= 0.02;
    root.style.setProperty("--fit", fit);
  }
  document.body.style.removeProperty("width");
  paper.media = "print";
  window.scrollTo(0, scroll);
}

// What is folded away is printed open, and folded again afterwards.
addEventListener("beforeprint", () => {
  drawnAtOnce();
  for (const fold of document.querySelectorAll("main details:not([open])")) {
    fold.open = true;
    fold.dataset.forPrint = "";
  }
  fitOnePage();
});
addEventListener("afterprint", () => {
  document.documentElement.style.removeProperty("--fit");
  for (const fold of document.querySelectorAll("[data-for-print]")) {
    fold.open = false;
    delete fold.dataset.forPrint;
  }
});

if (!navigator.share) document.documentElement.classList.add("no-share");
