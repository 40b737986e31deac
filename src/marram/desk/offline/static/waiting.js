// Entries that wait on this phone: on its disk before anything is sent, away only when the desk has acknowledged them. Each
// has the identifier it was given when it was recorded, so that it arrives once however often it is sent.

import { signed } from "/static/shell/signed.js";

const STORE = "entries";

function opened() {
  return new Promise((done, fail) => {
    const asked = indexedDB.open("marram-waiting", 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(STORE, { keyPath: "ident" });
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => fail(asked.error);
  });
}

// Do something with the store; what comes back is there once the disk has it.
async function within(mode, work) {
  const database = await opened();
  try {
    return await new Promise((done, fail) => {
      const transaction = database.transaction(STORE, mode, { durability: "strict" });
      const asked = work(transaction.objectStore(STORE));
      transaction.oncomplete = () => done(asked.result);
      transaction.onabort = () => fail(transaction.error);
    });
  } finally {
    database.close();
  }
}

export const keep = (entry) => within("readwrite", (store) => store.put(entry));
export const takeOff = (ident) => within("readwrite", (store) => store.delete(ident));

// What waits, in the order it was recorded in: the clock of a phone may be set back meanwhile, so it is counted.
export async function waiting() {
  const entries = await within("readonly", (store) => store.getAll());
  return entries.sort((one, other) => (one.place ?? 0) - (other.place ?? 0));
}

// Keep a new entry, after all that wait; its place is found in the same transaction, so that no two pages give one twice.
export function add(entry) {
  return within("readwrite", (store) => {
    const asked = store.getAll();
    asked.onsuccess = () => store.put({ ...entry, place: 1 + Math.max(0, ...asked.result.map((one) => one.place ?? 0)) });
    return asked;
  });
}

// Send what waits for whoever is signed in here, one after the other; only one page of the phone does so at a time.
export function send() {
  return navigator.locks.request("marram-waiting", { ifAvailable: true }, async (lock) => {
    const entries = lock ? (await waiting()).filter((one) => one.state === "waiting") : [];
    if (!entries.length) return;
    const me = await (await fetch("/api/me", { cache: "no-store" })).json();
    for (const entry of entries) {
      if (!me.open && entry.person !== me.person) continue;
      if (!(await sent(entry, me))) return;
    }
  }).catch((error) => {
    if (!(error instanceof TypeError)) throw error; // out of reach: it waits on
  });
}

// Whether the desk answered; what it did not take, or rules otherwise, stays to be seen.
async function sent(entry, me) {
  const answer = await fetch("/api/offline/entry", {
    method: "POST",
    headers: { ...signed({ "Content-Type": "application/json" }), ...(me.csrf ? { "X-CSRF-Token": me.csrf } : {}) },
    body: JSON.stringify({ ...entry.form, sent_at: new Date().toISOString() }),
  });
  if (answer.status >= 500 || [401, 403, 429].includes(answer.status)) return false;
  const told = await answer.json().catch(() => ({}));
  if (answer.ok && told.headline === entry.headline) await takeOff(entry.ident);
  else if (answer.ok) await keep({ ...entry, state: "different", number: told.number, there: told.headline });
  else if (answer.status === 409) await keep({ ...entry, state: "conflict", number: told.number, there: told.headline });
  else await keep({ ...entry, state: "refused", why: faults(told) || String(answer.status) });
  return true;
}

const faults = (told) => (told.error?.faults ?? []).join(" ");
