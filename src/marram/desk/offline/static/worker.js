// The service worker: pages come from the desk while it is in reach; out of reach a case goes on with the book on the phone.
// The desk puts `HELD` before this script: its version, the files that hold nothing of anybody, and what is kept for
// whoever is signed in. Beside it a candidate's paper is kept while it is being sat. Nothing else is ever kept.

const FILES = `marram-files-${HELD.version}`;
const OF_SOMEBODY = "marram-of-";
const PATIENCE = 8000; // milliseconds that a page of the desk may take before the phone helps itself
const NO_FACTS = new Set(["on", "edition", "form", "sides", "local", "handed", "club", "what", "said", "ask", "number"]);
const WALK = /^\/walk(\/\d+\/\d+)?$/; // what a walking scorer opens again out of reach: kept once it was opened
const ROOM = /^\/(entries|draw|ready|officials|holes|cards|results|board|matches|papers|published|suspension|log)(\/|$)/; // the book is no room of the Committee, nor what was recorded or how play is stopped: such a page may take its time
const PAPER = /^\/examination\/[^/]+$/; // a candidate's paper: kept while it is being sat, whoever is signed in or nobody
const PAPERS = "marram-papers";
const DOORS = /^\/(sign-out|sign-in|join\/)/;

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(FILES).then((cache) => cache.addAll(HELD.files)).then(() => self.skipWaiting()));
});

// A case stands in the address of its page, so that another version takes over without breaking one that is open.
self.addEventListener("activate", (event) => {
  event.waitUntil(forget((name) => name.startsWith("marram-files-") && name !== FILES).then(() => self.clients.claim()));
});

self.addEventListener("message", (event) => {
  if (event.data === "fill") event.waitUntil(fill().catch(() => {}));
  if (WALK.test(event.data?.keep)) event.waitUntil(keepPage(event.data.keep).catch(() => {}));
  if (PAPER.test(event.data?.keep)) event.waitUntil(keepPaper(event.data.keep).catch(() => {}));
  if (event.data === "collected") event.waitUntil(caches.delete(PAPERS));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (address.origin !== location.origin) return;
  if (request.method !== "GET") {
    if (DOORS.test(address.pathname)) event.respondWith(atTheDoor(request));
  } else if (HELD.files.includes(address.pathname)) event.respondWith(fromFiles(request));
  else if (request.mode === "navigate") event.respondWith(page(request, address));
  else if (HELD.data.includes(address.pathname)) event.respondWith(data(request, address));
  else if (address.pathname.startsWith("/static/")) event.respondWith(fromDesk(request));
});

const forget = async (which) => Promise.all((await caches.keys()).filter(which).map((name) => caches.delete(name)));

// Whoever comes or goes: what was kept of somebody is gone before the answer is shown.
async function atTheDoor(request) {
  const answer = await fetch(request);
  await forget((name) => name.startsWith(OF_SOMEBODY) || name === PAPERS);
  return answer;
}

async function fromFiles(request) {
  return (await (await caches.open(FILES)).match(request)) ?? fetch(request);
}

// A style or script of a page that is kept comes from the phone only where the desk is out of reach.
async function fromDesk(request) {
  try {
    return await fetch(request);
  } catch (error) {
    const kept = (await keptOf(request.url)) ?? (await paperOf(request.url));
    if (kept) return kept;
    throw error;
  }
}

// A paper that is being sat opens again out of reach, and never the book in its place.
async function paper(request, address) {
  const kept = await paperOf(address.pathname);
  if (!kept) return fetch(request);
  const late = new Promise((_, fail) => setTimeout(fail, PATIENCE));
  return Promise.race([fetch(request), late]).catch(() => kept);
}

async function page(request, address) {
  if (PAPER.test(address.pathname)) return paper(request, address);
  const kept = (WALK.test(address.pathname) && (await keptOf(address.pathname))) || (await keptOf("/offline"));
  if (!kept) return fetch(request);
  const late = () => new Promise((_, fail) => setTimeout(fail, PATIENCE));
  try {
    return await (ROOM.test(address.pathname) ? fetch(request) : Promise.race([fetch(request), late()]));
  } catch {
    const sat = await paperSat();
    if (sat) return Response.redirect(sat, 302);
    if (WALK.test(address.pathname) && (await keptOf(address.pathname))) return kept;
    if (HELD.data.includes(address.pathname)) return (await keptOf(address.pathname)) ?? kept;
    return Response.redirect(`/offline#${placeIn(address)}`, 302);
  }
}

// The same case in the book on the phone: the incident and what was answered.
function placeIn(address) {
  const what = address.searchParams.get("what");
  if (!what) return "/";
  const answers = new URLSearchParams([...address.searchParams].filter(([name]) => !NO_FACTS.has(name)));
  return `/${encodeURIComponent(what)}${String(answers) ? `?${answers}` : ""}`;
}

async function data(request, address) {
  try {
    const answer = await fetch(request);
    if (answer.status < 500) return answer;
    throw new Error(String(answer.status));
  } catch (error) {
    const kept = await keptOf(address.pathname);
    if (kept) return kept;
    throw error;
  }
}

async function keptOf(path) {
  const name = (await caches.keys()).find((one) => one.startsWith(OF_SOMEBODY));
  return name && (await caches.open(name)).match(path);
}

const paperOf = async (path) => (await caches.has(PAPERS)) && (await caches.open(PAPERS)).match(path);

// The address of a paper that is being sat without the book, and whose time is not over.
async function paperSat() {
  if (!(await caches.has(PAPERS))) return null;
  const cache = await caches.open(PAPERS);
  for (const { url } of await cache.keys()) {
    if (!PAPER.test(new URL(url).pathname)) continue;
    const ends = (await (await cache.match(url)).text()).match(/data-alone="([^"]+)"/)?.[1];
    if (Date.parse(ends) > Date.now()) return url;
  }
  return null;
}

// Return the store of whoever is signed in now; of anybody else nothing stays. Nobody signed in: nothing is kept.
async function ownStore() {
  const me = await (await fetch("/api/me")).json();
  const own = `${OF_SOMEBODY}${me.open ? "open" : `${me.person}-${me.role}`}`;
  const somebody = me.open || me.person;
  await forget((name) => name.startsWith(OF_SOMEBODY) && (name !== own || !somebody));
  return somebody ? caches.open(own) : null;
}

async function fill() {
  const cache = await ownStore();
  if (!cache) return;
  for (const path of HELD.data) {
    const answer = await fetch(path, { redirect: "error" });
    if (answer.ok) await cache.put(path, answer);
  }
  for (const client of await self.clients.matchAll()) client.postMessage("filled");
}

// Keep a page of a walking scorer as it now is, with the styles and scripts it stands on.
async function keepPage(path) {
  const cache = await ownStore();
  if (cache) await keepWhole(cache, path);
}

// Keep the paper that is being sat, and no other.
async function keepPaper(path) {
  await caches.delete(PAPERS);
  await keepWhole(await caches.open(PAPERS), path);
}

async function keepWhole(cache, path) {
  const answer = await fetch(path, { redirect: "error" });
  if (!answer.ok) return;
  const parts = (await answer.clone().text()).matchAll(/(?:href|src)="(\/static\/[^"]+)"/g);
  await cache.addAll([...new Set([...parts].map((one) => one[1]))]);
  await cache.put(path, answer);
  for (const client of await self.clients.matchAll({ includeUncontrolled: true })) client.postMessage("kept");
}
