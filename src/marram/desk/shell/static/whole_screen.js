// The drawing of an option over the whole screen: the very figure of its card, which stays sharp however far it is magnified.

import { drawn } from "./drawings.js";

const dialog = document.createElement("dialog");
dialog.className = "whole-screen";
dialog.innerHTML = '<form method="dialog"><button class="quiet-button"></button></form><div tabindex="0" role="group"></div>';
const [form, room] = dialog.children;
let home = null; // where the figure came from

export function wholeScreen() {
  document.body.append(dialog);
  document.addEventListener("click", async ({ target }) => {
    const button = target.closest?.("[data-whole-screen]");
    if (!button) return;
    const shown = button.closest(".option").querySelector("figure");
    await drawn();
    const figure = shown?.querySelector("svg");
    if (dialog.open) return;
    if (!figure) {
      shown?.closest("details")?.setAttribute("open", ""); // there it says what became of it
      return;
    }
    home = figure.parentElement;
    form.firstChild.textContent = button.dataset.close;
    room.setAttribute("aria-label", figure.querySelector("title").textContent);
    room.replaceChildren(figure);
    dialog.showModal();
    room.scrollTop = 0;
  });
  dialog.addEventListener("close", () => home?.append(...room.childNodes));
}
