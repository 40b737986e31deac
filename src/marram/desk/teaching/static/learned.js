// What was learned, kept on this device alone: a card for each incident, and answers whose next day is not worked out yet.

const KEY = "marram-learned";

export function learned() {
  try {
    const { cards = {}, waiting = [] } = JSON.parse(localStorage.getItem(KEY) ?? "{}");
    return { cards, waiting };
  } catch {
    return { cards: {}, waiting: [] };
  }
}

const keep = (state) => localStorage.setItem(KEY, JSON.stringify(state));

export const forget = () => localStorage.removeItem(KEY);

// Note an answer; when the incident comes again is asked of the desk, now or later.
export function answered(unit, right) {
  const state = learned();
  keep({ ...state, waiting: [...state.waiting, { unit, right, at: new Date().toISOString() }] });
}

// Have the desk work out what waits, in the order it was answered; stops where the desk is out of reach.
export async function workOut() {
  for (let [first] = learned().waiting; first; [first] = learned().waiting) {
    const before = learned().cards[first.unit];
    const asked = new URLSearchParams({ right: first.right, at: first.at, ...(before && { card: JSON.stringify(before) }) });
    const answer = await fetch(`/api/quiz/reviewed?${asked}`).catch(() => null);
    if (!answer || answer.status >= 500 || !answer.headers.get("content-type")?.includes("json")) return;
    const { cards, waiting } = learned();
    if (answer.ok) cards[first.unit] = await answer.json();
    else delete cards[first.unit]; // a card that the desk cannot read: the incident is learned anew
    keep({ cards, waiting: waiting.slice(1) });
  }
}

// Which incident to ask next: one answered wrong lately, then what is due, then the next new one, of those that can be asked.
export function nextUnit(units, now = Date.now(), not = "") {
  const { cards, waiting } = learned();
  const last = new Map(waiting.map(({ unit, right }) => [unit, right]));
  const open = units.filter((unit) => unit !== not);
  const due = open.filter((unit) => !last.has(unit) && cards[unit] && Date.parse(cards[unit].due) <= now);
  due.sort((a, b) => Date.parse(cards[a].due) - Date.parse(cards[b].due));
  return due[0] ?? open.find((unit) => !last.has(unit) && !cards[unit]) ?? open.find((unit) => last.get(unit) === false) ?? open[0];
}

export function progress(units, now = Date.now()) {
  const { cards } = learned();
  const known = units.filter((unit) => cards[unit]);
  return { due: known.filter((unit) => Date.parse(cards[unit].due) <= now).length, learned: known.length, all: units.length };
}
