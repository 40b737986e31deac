// A card entered by keyboard: one digit moves on, down the player's figures and then the marker's. What is typed and not
// entered yet stays on this device, so that a reload loses nothing.

import { text } from "/static/shell/words.js";

const form = document.getElementById("figures-form");
const said = document.getElementById("differs");
const save = document.getElementById("save");
const fields = [...form.querySelectorAll("input[data-by]")];
const balls = [...new Set(fields.map((one) => one.dataset.ball))];
const order = balls.flatMap((ball) => ["player", "marker"].flatMap((by) => fields.filter((one) => one.dataset.by === by && one.dataset.ball === ball)));
const draft = `card ${form.dataset.card}`;
const asShown = new Map(fields.map((one) => [one.name, one.value]));
let last = order[0];

function goTo(field) {
  (field ?? save).focus();
  field?.select();
}

function beside(field, step) {
  return order[order.indexOf(field) + step];
}

function compare(row) {
  const [player, marker] = [...row.querySelectorAll("input[data-by]")].map((one) => one.value.trim());
  const differs = Boolean(player && marker && player !== marker);
  row.classList.toggle("differs", differs);
  return differs && { whose: row.dataset.whose, hole: row.dataset.hole, player, marker };
}

function tell() {
  const found = [...form.querySelectorAll("tr[data-hole]")].map(compare).filter(Boolean);
  const words = found.map((one) => (one.whose ? `${one.whose}: ` : "") + text("differs", one)).join(" ");
  if (said.textContent !== words) said.textContent = words;
  said.hidden = found.length === 0;
  for (const cell of form.querySelectorAll("[data-total]")) {
    const mine = order.filter((one) => one.dataset.by === cell.dataset.total && one.dataset.ball === cell.dataset.ball);
    const sum = mine.reduce((total, one) => total + (Number(one.value) || 0), 0);
    cell.textContent = sum || "";
  }
}

function keep() {
  const typed = Object.fromEntries(fields.filter((one) => one.value !== asShown.get(one.name)).map((one) => [one.name, one.value]));
  try {
    if (Object.keys(typed).length) localStorage.setItem(draft, JSON.stringify(typed));
    else localStorage.removeItem(draft);
  } catch {
    return; // a browser that keeps nothing: the figures are entered by the button as ever
  }
}

function whole(value) {
  return value === "-" || /^[2-9]$|^\d\d$/.test(value);
}

for (const field of order) {
  field.addEventListener("focus", () => {
    last = field;
    field.select();
  });
  field.addEventListener("input", () => {
    field.value = field.value.replace(/–/g, "-").replace(/[^\d-]/g, "").replace(/^0+/, "");
    tell();
    keep();
    if (whole(field.value)) goTo(beside(field, 1));
  });
  field.addEventListener("keydown", (event) => {
    const steps = { Enter: 1, ArrowDown: 1, ArrowUp: -1 };
    if (event.key in steps && !(event.key === "Enter" && event.ctrlKey)) {
      event.preventDefault();
      const next = beside(field, steps[event.key]);
      if (next || steps[event.key] > 0) goTo(next);
    } else if (event.key === "Backspace" && field.value === "" && beside(field, -1)) {
      event.preventDefault();
      goTo(beside(field, -1));
    }
  });
}

document.getElementById("no-score").addEventListener("click", () => {
  last.value = "-";
  tell();
  keep();
  goTo(beside(last, 1));
});

document.getElementById("same").addEventListener("click", () => {
  for (const field of order.filter((one) => one.dataset.by === "marker" && !one.value)) {
    field.value = form.elements[field.name.replace("marker", "player")].value;
  }
  tell();
  keep();
  save.focus();
});

form.addEventListener("submit", () => {
  try {
    localStorage.removeItem(draft);
  } catch {
    return;
  }
});

try {
  const typed = JSON.parse(localStorage.getItem(draft) ?? "{}");
  for (const [name, value] of Object.entries(typed)) {
    const field = form.elements[name];
    if (field && !field.value) field.value = value;
  }
  if (Object.keys(typed).length) save.insertAdjacentText("afterend", ` ${text("draft")}`);
} catch {
  // nothing was kept
}
tell();
// With a keyboard the next thing to do has the focus: a figure that is missing or differs, a ruling to settle, the return;
// on a phone what comes after the figures is in view.
const next =
  order.find((one) => !one.value) ??
  form.querySelector("tr.differs input[data-by=marker]") ??
  document.querySelector(".ruling-beside.unsettled button") ??
  document.querySelector("form.return input[type=radio]");
if (matchMedia("(pointer: fine)").matches) {
  next?.focus();
  if (order.includes(next)) next.select();
} else if (next && !order.includes(next)) {
  next.closest("section").scrollIntoView();
}
