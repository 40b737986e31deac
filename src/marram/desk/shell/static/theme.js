// The look chosen on this device, before the first paint: colours (as the device, light, dark, sun) and the size of the type.
// A block of themes.css is turned on or off by the words of its media query; nothing is set where nothing was chosen.

(() => {
  const root = document.documentElement;
  const ON = "screen";
  const OFF = "not all";
  const BLOCKS = {
    light: { dark: OFF, more: OFF, both: OFF },
    dark: { dark: ON, more: OFF, both: OFF },
    sun: { dark: OFF, more: ON, both: OFF },
  };
  const kept = (name) => {
    try {
      return localStorage.getItem(`look ${name}`);
    } catch {
      return null; // a browser that keeps nothing has the look of the device
    }
  };
  const blocks = [];

  function found() {
    for (const rule of [...document.styleSheets].flatMap((one) => [...one.cssRules])) {
      const words = rule.media?.mediaText ?? "";
      const [dark, more] = [words.includes("prefers-color-scheme: dark"), words.includes("prefers-contrast: more")];
      if (dark || more) blocks.push({ rule, words, name: dark && more ? "both" : dark ? "dark" : "more" });
    }
  }

  function apply() {
    if (!blocks.length) found();
    const chosen = BLOCKS[kept("colours")];
    for (const { rule, words, name } of blocks) rule.media.mediaText = chosen?.[name] ?? words;
    const type = kept("type");
    if (type) root.dataset.type = type;
    else delete root.dataset.type;
  }

  apply();
  document.addEventListener("change", ({ target }) => {
    if (!target.matches?.("[data-look]")) return;
    try {
      if (target.value) localStorage.setItem(`look ${target.dataset.look}`, target.value);
      else localStorage.removeItem(`look ${target.dataset.look}`);
    } catch {
      return;
    }
    apply();
    window.dispatchEvent(new Event("resize")); // the map measures its room anew
  });
  document.addEventListener("DOMContentLoaded", () => {
    for (const field of document.querySelectorAll("[data-look]")) field.value = kept(field.dataset.look) ?? "";
  });
})();
