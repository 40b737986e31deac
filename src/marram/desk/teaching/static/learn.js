// Learning by questions: from the desk while it is in reach, else from those this phone keeps.

import { element, listed } from "/static/offline/element.js";
import { dayWords, text } from "/static/shell/words.js";
import { answered, forget, learned, nextUnit, progress, workOut } from "./learned.js";

const panel = document.getElementById("panel");
const SEEDS = 1000000;
let kept = { units: [], questions: [] };
let before = "";

async function fetched(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
}

function showProgress() {
  document.getElementById("progress").textContent = text("due", progress(kept.units));
}

async function drawn() {
  const unit = nextUnit(kept.units, Date.now(), before);
  const asked = new URLSearchParams({ unit, seed: Math.floor(Math.random() * SEEDS) });
  try {
    return { question: await fetched(`/api/quiz/question?${asked}`), here: false };
  } catch {
    const held = kept.questions.map((one) => one.unit);
    const wanted = nextUnit(held, Date.now(), before);
    const about = kept.questions.filter((one) => one.unit === wanted);
    return { question: about[Math.floor(Math.random() * about.length)], here: true };
  }
}

async function ask() {
  panel.setAttribute("aria-busy", "true");
  panel.replaceChildren(element("h1", { textContent: text("loading"), tabIndex: -1 }));
  const { question, here } = await drawn();
  panel.removeAttribute("aria-busy");
  if (!question) {
    panel.replaceChildren(element("h1", { textContent: text("none"), tabIndex: -1 }));
    return;
  }
  before = question.unit;
  const buttons = question.answers.map((one) => {
    const button = element("button", { type: "button", className: "answer", textContent: `${one.letter}. ${one.words}` });
    button.addEventListener("click", () => judge(question, one));
    return button;
  });
  panel.replaceChildren(
    element("p", { className: "kicker", textContent: question.level }),
    element("h1", { textContent: question.ask, tabIndex: -1 }),
    element("p", { className: "tell", textContent: question.told.join(" ") }),
    ...(question.whole ? [element("p", { className: "soft", textContent: question.whole })] : []),
    ...buttons,
    ...(here ? [element("p", { className: "soft", textContent: text("here") })] : []),
  );
  panel.querySelector("h1").focus();
}

async function judge(question, chosen) {
  answered(question.unit, chosen.right);
  const again = element("p", { className: "soft", role: "status" });
  const next = element("button", { type: "button", className: "answer", textContent: text("next") });
  next.addEventListener("click", ask);
  panel.replaceChildren(
    element("h1", { className: chosen.right ? "free" : "costs", tabIndex: -1, textContent: `${text(chosen.right ? "right" : "wrong")} ${question.headline}` }),
    again,
    element("p", { className: "tell", textContent: question.told.join(" ") }),
    element("h2", { textContent: text("why") }),
    listed(question.answers.map((one) => reason(one, chosen))),
    element("p", { className: "soft", textContent: text("rests_on", { citations: question.citations.join(", ") }) }),
    next,
  );
  panel.querySelector("h1").focus();
  await workOut();
  const { cards, waiting } = learned();
  const open = waiting.some((one) => one.unit === question.unit);
  again.textContent = open ? text("later") : comesAgain(cards[question.unit]);
  showProgress();
}

function comesAgain(card) {
  if (!card) return "";
  const today = new Date().toISOString().slice(0, 10);
  const day = card.due.slice(0, 10);
  return day <= today ? text("soon") : text("again", { day: dayWords(day) });
}

function reason(one, chosen) {
  const words = `${one.letter}. ${one.words}${one === chosen ? ` (${text("chosen")})` : ""}`;
  return element("div", {}, element(one.right ? "strong" : "span", { textContent: words }), element("span", { className: "soft", textContent: ` ${one.why}` }));
}

async function open() {
  if ("serviceWorker" in navigator) {
    navigator.serviceWorker.addEventListener("message", ({ data }) => {
      if (data === "filled") document.getElementById("held").textContent = text("held");
    });
    await navigator.serviceWorker.register("/service-worker.js").catch(() => {});
    navigator.serviceWorker.ready.then(({ active }) => navigator.onLine && active.postMessage("fill"));
  }
  document.getElementById("forget").addEventListener("click", () => {
    forget();
    document.getElementById("forgotten").textContent = text("forgotten");
    showProgress();
  });
  kept = await fetched("/api/quiz/kept").catch(() => kept);
  addEventListener("online", () => workOut().then(showProgress));
  await workOut();
  showProgress();
  await ask();
}

open();
