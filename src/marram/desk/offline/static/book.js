// The book of an edition as services/offline/book.py writes it, made ready to be walked.

const FORMAT = 2;

export function readBook(plain) {
  if (plain.marram !== FORMAT || plain.kind !== "offline_book") throw new TypeError(`${plain.kind} ${plain.marram}`);
  const places = new Map();
  plain.questions.forEach(([fact, , ways, ...children], place) => {
    const key = [fact, ways, ...children].join();
    if (!places.has(key)) places.set(key, place);
  });
  return {
    ...plain,
    places,
    factNumbers: new Map(plain.facts.map((fact, number) => [fact.name, number])),
    byName: new Map(plain.incidents.map((one) => [one.name, one])),
  };
}

const LINES = ["penalties", "steps", "further", "if_wrong", "cautions", "criteria", "outcomes"];
const TEXT = ["kind", "headline", "tell", "finding", "decided_by"];

// A sheet in words, with the keys of marram.words.sheet.Sheet.
export function sheetOf(book, place) {
  const written = book.sheets[place];
  const say = (at) => book.sentences[at];
  const sheet = { reminder: book.reminder, free: Boolean(written.free), penalty_said: Boolean(written.penalty_said) };
  for (const name of TEXT) sheet[name] = written[name] === undefined ? "" : say(written[name]);
  for (const name of LINES) sheet[name] = (written[name] ?? []).map(say);
  sheet.options = (written.options ?? []).map((at) => optionOf(book.options[at], say));
  sheet.provisions = (written.provisions ?? []).map(([citation, statement]) => ({
    citation: say(citation),
    statement: say(statement),
  }));
  sheet.rather = written.rather ?? null;
  return sheet;
}

function optionOf({ limits, free, ...words }, say) {
  const said = Object.fromEntries(Object.entries(words).map(([name, at]) => [name, say(at)]));
  return { ...said, limits: limits.map(say), free: Boolean(free) };
}
