// The board as it stands: officials hear of each card as it comes, everybody else that something changed, and where that cannot be had asks.

import { listening } from "/static/live/listening.js";

const state = document.getElementById("live");
const board = () => document.getElementById("board");
const SOON = 400;
let waiting = 0;

async function again() {
  waiting = 0;
  try {
    const answer = await fetch(location.href, { headers: { Accept: "text/html" } });
    if (!answer.ok) throw new Error(String(answer.status));
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const fresh = page.getElementById("board");
    if (fresh) {
      const { activeElement } = document;
      const at = activeElement?.closest?.("#board") ? activeElement.getAttribute("href") : null;
      board().replaceWith(document.importNode(fresh, true));
      if (at) board().querySelector(`a[href="${CSS.escape(at)}"]`)?.focus();
    }
    state.textContent = "";
  } catch {
    state.textContent = state.dataset.cut;
  }
}

if (state.dataset.poll) {
  // Everybody: told that the board moved, each a little later than the other; where that cannot be had, asked from time to time.
  const SPREAD = 2000;
  let heard = false;
  listening(() => `/board/live?after=${board().dataset.upto}`, {
    board: () => {
      if (!waiting) waiting = setTimeout(again, SOON + Math.random() * SPREAD);
    },
    again,
    open: () => {
      heard = true;
      state.dataset.open = "yes";
    },
    error: () => {
      heard = false;
    },
  });
  setInterval(() => {
    if (!document.hidden && !heard) again();
  }, Number(state.dataset.poll) * 1000);
} else {
  const concerns = /^(card_|ruling$|withdrawn$|tie_|competition_)/;
  listening(() => `/api/live?after=${board().dataset.upto}`, {
    entry: (event) => {
      if (concerns.test(JSON.parse(event.data).kind) && !waiting) waiting = setTimeout(again, SOON);
    },
    again: () => location.reload(),
    error: () => {
      state.textContent = state.dataset.cut;
    },
    open: () => {
      state.textContent = "";
      state.dataset.open = "yes";
    },
  });
}
