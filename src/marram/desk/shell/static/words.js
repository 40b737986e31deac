// The words of a page's scripts, in the reader's language: the page hands them over as JSON, by key.

const told = JSON.parse(document.getElementById("words")?.textContent ?? "{}");

// The text of a key, values set into its places.
export function text(key, values = {}) {
  if (!(key in told)) throw new Error(`The page has no words for ${key}.`);
  return told[key].replace(/\{(\w+)\}/g, (place, name) => (name in values ? String(values[name]) : place));
}

// The text of a key that fits a number, which {count} stands for in it.
export function countText(key, count, values = {}) {
  return text(`${key}.${count === 1 ? "one" : "several"}`, { count, ...values });
}

// A day as it is spoken: "21 June 2025".
export function dayWords(day) {
  const { lang } = document.documentElement;
  const spoken = new Intl.DateTimeFormat(lang === "en" ? "en-GB" : lang, { dateStyle: "long", timeZone: "UTC" });
  return day ? spoken.format(new Date(`${day}T00:00:00Z`)) : "";
}

// Words with a capital at their start.
export function capital(words) {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
