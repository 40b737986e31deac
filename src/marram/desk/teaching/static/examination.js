// A candidate's paper: each choice is kept on this device before it is sent, and sent until the desk has it.

import { listening } from "/static/live/listening.js";
import { countText, text } from "/static/shell/words.js";
import { signed } from "/static/shell/signed.js";

const page = document.getElementById("examination");
const paper = document.getElementById("paper");
const status = document.getElementById("kept");
const { live, send, code, state } = page.dataset;
const KEY = `marram-examination-${code}`;
const ALL = `${KEY}-all`; // every choice on this device, also those that arrived: a paper opened again out of reach is an old one
const CLOCK = `${KEY}-clock`;
const AGAIN = 4000; // milliseconds until what waits is sent again (own choice)
const made = stored(ALL);
let held = stored(KEY); // what the desk has not acknowledged: item → [place, turn]
let ends = Date.parse(page.dataset.ends);
const ahead = aheadOfHere(); // how far the desk's clock is ahead of this device's
let sending = false;
let kept = true;
let wantsIn = false; // handed in while the desk was out of reach

function stored(key) {
  try {
    return JSON.parse(localStorage.getItem(key) ?? "{}");
  } catch {
    return {};
  }
}

function store() {
  try {
    localStorage.setItem(KEY, JSON.stringify(held));
    localStorage.setItem(ALL, JSON.stringify(made));
    kept = true;
  } catch {
    kept = false;
  }
}

// A paper opened again out of reach tells the hour of when it was kept: what was worked out then still holds.
function aheadOfHere() {
  const { now } = page.dataset;
  const known = stored(CLOCK);
  if (known.now === now) return known.ahead;
  const found = Date.parse(now) - Date.now();
  try {
    localStorage.setItem(CLOCK, JSON.stringify({ now, ahead: found }));
  } catch {
    // Not kept: only a paper opened again out of reach would need it.
  }
  return found;
}

const items = () => (paper ? [...paper.querySelectorAll(".item")] : []);
const numberOf = (item) => item.id.slice("item-".length);

function chosen(item) {
  const number = numberOf(item);
  const latest = Math.max(...items().map((one) => Number(one.dataset.turn)), ...Object.values({ ...made, ...held }).map(([, turn]) => turn));
  const turn = latest + 1;
  item.dataset.turn = turn;
  held[number] = made[number] = [Number(item.querySelector(":checked").value), turn];
  store();
  show();
  arrive();
}

// What was chosen on this device and does not stand in the page is shown as it was chosen.
function restore() {
  for (const item of items()) {
    const [place, turn] = held[numberOf(item)] ?? made[numberOf(item)] ?? [];
    if (turn > Number(item.dataset.turn)) {
      item.dataset.turn = turn;
      item.querySelector(`[value="${place}"]`).checked = true;
    }
  }
}

async function arrive() {
  const waiting = Object.entries(held);
  if (sending || !waiting.length) return;
  sending = true;
  const answers = waiting.map(([item, [place, turn]]) => ({ item: Number(item), place, turn }));
  try {
    const answer = await fetch(send, { method: "POST", headers: signed({ "Content-Type": "application/json" }), body: JSON.stringify({ answers }) });
    const told = answer.ok ? await answer.json() : null;
    if (told?.taken) {
      for (const [item, [, turn]] of waiting) if (held[item]?.[1] === turn && told.held[item]?.[1] >= turn) delete held[item];
      store();
    } else if (told && told.state !== state) location.reload();
  } catch {
    // Out of reach: it waits on.
  } finally {
    sending = false;
    show();
  }
}

function show() {
  for (const item of items()) {
    const link = document.querySelector(`[data-item="${numberOf(item)}"]`);
    if (!item.querySelector(":checked")) continue;
    link.dataset.answered = "yes";
    link.querySelector("span").textContent = ` ${text("answered")}`;
  }
  const many = Object.keys(held).length;
  wantsIn &&= !navigator.onLine;
  const words = wantsIn ? text("out_of_reach") : kept ? (many ? countText("waiting", many) : text("arrived")) : text("not_kept");
  if (status && status.textContent !== words) status.textContent = words;
  const never = document.getElementById("never-sent");
  if (never) never.hidden = !many;
}

function tick() {
  const left = document.getElementById("left");
  if (!left || !ends) return;
  const seconds = Math.floor((ends - Date.now() - ahead) / 1000);
  const over = seconds <= 0;
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  const time = `${hours}:${String(minutes).padStart(2, "0")}:${String(seconds % 60).padStart(2, "0")}`;
  left.textContent = over ? text("over") : text("left", { time });
  for (const one of paper?.querySelectorAll("input[type=radio]") ?? []) one.disabled = over;
}

function heard({ data }) {
  const now = JSON.parse(data);
  if (now.state !== state) location.reload();
  else if (now.ends) ends = Date.parse(now.ends);
  tick();
}

// The paper stays on the device until it is handed in or collected.
async function keepHere() {
  if (!("serviceWorker" in navigator)) return;
  navigator.serviceWorker.addEventListener("message", ({ data }) => {
    if (data === "kept") page.dataset.here = "yes";
  });
  if (paper) await navigator.serviceWorker.register("/service-worker.js").catch(() => {});
  const { active } = (await navigator.serviceWorker.getRegistration()) ? await navigator.serviceWorker.ready : {};
  if (!paper) {
    for (const key of [ALL, CLOCK]) localStorage.removeItem(key);
    active?.postMessage("collected");
  } else if (navigator.onLine) active?.postMessage({ keep: location.pathname });
}

paper?.addEventListener("change", ({ target }) => {
  if (target.type === "radio") chosen(target.closest(".item"));
});
// Handed in out of reach, the paper would give way to the browser's own page: it stays, and says that it waits.
addEventListener("submit", (event) => {
  if (navigator.onLine) return;
  event.preventDefault();
  wantsIn = true;
  show();
  status.scrollIntoView({ block: "center" });
});
addEventListener("online", arrive);
restore();
show();
tick();
arrive();
listening(() => live, { examination: heard });
setInterval(tick, 1000);
setInterval(arrive, AGAIN);
keepHere().catch(() => {});
