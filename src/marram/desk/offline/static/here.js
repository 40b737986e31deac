// On every page of the desk: the service worker, and what waits on this phone.

import { send, waiting } from "./waiting.js";

async function tell() {
  const place = document.getElementById("waiting");
  if (!place?.dataset.words) return;
  const count = (await waiting()).length;
  const link = Object.assign(document.createElement("a"), { href: "/offline" });
  link.textContent = place.dataset.words.replace("{count}", count);
  place.replaceChildren(...(count ? [link] : []));
  place.hidden = !count;
}

async function start() {
  if (!("serviceWorker" in navigator)) return; // no secure connection: the desk works, a phone out of its reach does not
  document.head.append(Object.assign(document.createElement("link"), { rel: "manifest", href: "/manifest.webmanifest" })); // once all else is there
  const worker = await navigator.serviceWorker.register("/service-worker.js");
  navigator.serviceWorker.ready.then(({ active }) => active.postMessage("fill"));
  await tell();
  if (navigator.onLine) await send().then(tell);
  return worker;
}

addEventListener("online", () => send().then(tell).catch(() => {}));
start().catch(() => {});
