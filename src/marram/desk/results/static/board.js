// The board as it stands: officials hear of each card as it comes, everybody else that something changed, and where that cannot be had asks.

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
  const source = new EventSource(`/board/live?after=${board().dataset.upto}`);
  source.addEventListener("board", () => {
    if (!waiting) waiting = setTimeout(again, SOON + Math.random() * SPREAD);
  });
  source.addEventListener("again", again);
  source.addEventListener("open", () => {
    state.dataset.open = "yes";
  });
  setInterval(() => {
    if (!document.hidden && source.readyState !== EventSource.OPEN) again();
  }, Number(state.dataset.poll) * 1000);
  window.addEventListener("pagehide", () => source.close());
} else {
  const source = new EventSource(`/api/live?after=${board().dataset.upto}`);
  const concerns = /^(card_|ruling$|withdrawn$|tie_|competition_)/;
  source.addEventListener("entry", (event) => {
    if (concerns.test(JSON.parse(event.data).kind) && !waiting) waiting = setTimeout(again, SOON);
  });
  source.addEventListener("again", () => location.reload());
  source.addEventListener("error", () => {
    state.textContent = state.dataset.cut;
  });
  source.addEventListener("open", () => {
    state.textContent = "";
    state.dataset.open = "yes";
  });
  window.addEventListener("pagehide", () => source.close());
}
