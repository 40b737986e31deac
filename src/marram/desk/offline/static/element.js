// Parts of a page, made by a script: never from text that could be read as markup.

export function element(name, properties = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(properties)) {
    if (key.includes("-") || key === "role" || key === "for") made.setAttribute(key, value);
    else made[key] = value;
  }
  made.append(...children.filter((one) => one !== null && one !== undefined));
  return made;
}

export const listed = (lines, name = "ul", properties = {}) =>
  element(name, properties, ...lines.map((line) => (line instanceof Node ? element("li", {}, line) : element("li", { textContent: line }))));

// A heading with what stands under it; nothing where there is nothing.
export const section = (title, ...parts) =>
  parts.some(Boolean) ? element("section", {}, element("h2", { textContent: title }), ...parts) : null;

