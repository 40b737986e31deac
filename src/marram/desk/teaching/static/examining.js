// The examiner's page: who has come how far is shown anew as answers arrive; the whole page where the examination goes on.

import { listening } from "/static/live/listening.js";

const page = document.getElementById("examining");
const { live, state } = page.dataset;
const CALM = 2000; // milliseconds between two looks (own choice)
let waiting = null;

async function look() {
  waiting = null;
  const answer = await fetch(location.href).catch(() => null);
  if (!answer?.ok || document.activeElement?.closest("#progress form")) return;
  const now = new DOMParser().parseFromString(await answer.text(), "text/html");
  const fresh = now.getElementById("progress");
  if (fresh) document.getElementById("progress").replaceChildren(...fresh.childNodes);
}

function heard({ data }) {
  const now = JSON.parse(data);
  if (now.state !== state) location.reload();
  else if (String(now.arrived) !== page.dataset.arrived) {
    page.dataset.arrived = String(now.arrived);
    waiting ??= setTimeout(look, CALM);
  }
}

listening(() => live, { examination: heard });
