// The strip of a case begun, on the page where its official waits: an answer of the chief referee, and that somebody else
// has the case in hand or recorded it, stands there as it happens.

const ABOUT = new Set(["opinion_asked", "opinion_given", "handed_over", "ruling"]);

export async function caseMoved({ kind }) {
  const address = location.href;
  if (!ABOUT.has(kind) || !document.querySelector(".begun")) return;
  const answer = await fetch(address, { redirect: "error" }).catch(() => null);
  if (!answer?.ok) return; // the next page tells it
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const [stands, told] = [document, page].map((one) => one.querySelector(".begun"));
  if (location.href !== address || !stands || !told || stands.textContent === told.textContent) return;
  stands.replaceChildren(...told.childNodes);
  document.dispatchEvent(new Event("moved")); // what stood under a finger may stand elsewhere now
}
