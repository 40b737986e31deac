// A part of the page that awaits an answer of the desk says so, to whoever listens to it or measures it.

const awaited = new WeakMap(); // how many answers each part awaits

export async function busyWith(part, work) {
  awaited.set(part, (awaited.get(part) ?? 0) + 1);
  part.setAttribute("aria-busy", "true");
  try {
    return await work();
  } finally {
    awaited.set(part, awaited.get(part) - 1);
    if (!awaited.get(part)) part.removeAttribute("aria-busy");
  }
}
