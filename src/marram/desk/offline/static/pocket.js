// The whole book on one page that asks nothing of any network: book, weights and words stand in it, compressed.

import { text } from "/static/shell/words.js";
import { readModel } from "/static/rulings/finding_model.js";
import { readBook } from "./book.js";
import { openBook } from "./book_pages.js";

const panel = document.getElementById("panel");

async function held(name) {
  const bytes = Uint8Array.from(atob(document.getElementById(name).textContent.trim()), (one) => one.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"))).json();
}

async function open() {
  if (!("DecompressionStream" in window)) {
    panel.textContent = text("too_old");
    return;
  }
  const [book, model] = await Promise.all([held("book"), held("model")]);
  openBook({ book: readBook(book), model: readModel(model), panel, title: document.title });
  panel.removeAttribute("aria-busy");
}

open();
