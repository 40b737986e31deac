// On every page of an official: that play is stopped, or when it goes on, as soon as somebody says so.

import { caseMoved } from "./begun.js";
import { listening } from "./listening.js";

const place = document.getElementById("play");
let over = 0;

export function showPlay({ words, until }) {
  clearTimeout(over);
  place.dataset.until = until;
  say(place, words);
  if (words && until) over = setTimeout(() => (place.hidden = true), Math.max(0, new Date(until) - Date.now()));
}

// Whoever gives second opinions is told on every page that somebody waits for one.
export function showAsked({ words }) {
  const asked = document.getElementById("asked");
  if (!asked) return;
  say(asked, words);
}

// Who got a case handed over is told on every page: the page itself knows in which words.
export async function showHanded({ kind, to }) {
  const handed = document.getElementById("handed");
  if (kind !== "handed_over" || !handed || handed.dataset.to !== to) return;
  const answer = await fetch(location.href, { redirect: "error" }).catch(() => null);
  if (!answer?.ok) return; // the next page tells it
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  say(handed, page.querySelector("#handed a")?.textContent ?? "");
}

function say(strip, words) {
  const moves = strip.hidden === Boolean(words); // what stands below it moves under the finger
  strip.querySelector("a").textContent = words;
  strip.hidden = !words;
  if (moves) document.dispatchEvent(new Event("moved"));
}

// The first screen listens by itself, to more than this.
if (!document.getElementById("live")) {
  listening(() => "/api/live", {
    play: (event) => showPlay(JSON.parse(event.data)),
    asked: (event) => showAsked(JSON.parse(event.data)),
    entry: (event) => {
      caseMoved(JSON.parse(event.data));
      showHanded(JSON.parse(event.data));
    },
  });
}
