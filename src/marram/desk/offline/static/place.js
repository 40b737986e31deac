// Where one is in the book: the incident and the answers, in the part of the address behind "#", so that the browser's
// own way back works, a reload loses nothing, and no file or desk is asked.

export function readPlace(hash = location.hash) {
  const [incident, query = ""] = hash.replace(/^#\/?/, "").split("?");
  const answers = {};
  for (const [name, answer] of new URLSearchParams(query)) answers[name] = /^-?\d+(\.\d+)?$/.test(answer) ? Number(answer) : answer;
  return { incident: decodeURIComponent(incident), answers };
}

export const ROLES = ["ball", "entry", "boundary", "previous", "outside", "estimated", "provisional", "left_marker", "right_marker"];

// What of an address is no answer: where the case is, by hole and by the places shown (services/cases/places.py).
export const wherein = (answers) => Object.fromEntries(Object.entries(answers).filter(([name]) => name === "hole" || ROLES.includes(name)));

export function placeOf(incident, answers = {}) {
  const query = new URLSearchParams(Object.entries(answers).map(([name, answer]) => [name, String(answer)])).toString();
  return `#/${encodeURIComponent(incident ?? "")}${query ? `?${query}` : ""}`;
}
