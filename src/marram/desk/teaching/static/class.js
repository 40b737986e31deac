// A page of a class shows itself anew where the class has gone on, and the teacher's also where somebody answered. Where the
// network is gone, the page stays as it is, what was answered waits, and both go on once the desk is back.

import { listening } from "/static/live/listening.js";

const page = document.getElementById("class");
const { live, state, answered, away, waits } = page.dataset;
const AGAIN = 3000;
let going = false;
let waiting = null;

function say(words) {
  const told = document.getElementById("class-reach");
  if (told.textContent !== words) told.textContent = words;
}

// Show the page anew, but only what the desk has answered: a page that cannot be had would be lost with its question.
async function anew() {
  if (going) return;
  going = true;
  const answer = await fetch(location.href, { cache: "no-store" }).catch(() => null);
  going = false;
  if (answer?.ok) return location.reload();
  say(away);
  setTimeout(anew, AGAIN);
}

function heard({ data }) {
  const now = JSON.parse(data);
  const more = answered !== undefined && String(now.answered) !== answered;
  if (now.state !== state || more) anew();
}

// A connection that the browser gave up is asked for anew.
const listen = listening(() => live, {
  class: heard,
  error: ({ target }) => target.readyState === EventSource.CLOSED && setTimeout(listen, AGAIN),
});

// The last choice counts; it is sent until the desk has it.
async function send() {
  const { to, body } = waiting;
  const answer = await fetch(to, { method: "POST", body }).catch(() => null);
  if (answer && answer.status < 500) return location.reload();
  say(waits);
  setTimeout(send, AGAIN);
}

document.querySelector("form.answers")?.addEventListener("submit", (event) => {
  event.preventDefault();
  const first = waiting === null;
  waiting = { to: event.target.action, body: new URLSearchParams(new FormData(event.target, event.submitter)) };
  for (const one of event.target.querySelectorAll("button")) one.toggleAttribute("data-chosen", one === event.submitter);
  if (first) send();
});

addEventListener("online", listen);
