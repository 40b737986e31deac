// Every way through every incident of a book, walked as a phone walks it: one line for each question and each end.
// Called with the folder of the scripts and the file of the book; what it prints is compared with the desk's own answers.

import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

const [folder, file] = process.argv.slice(2);
const { readBook } = await import(pathToFileURL(`${folder}/book.js`));
const { walk } = await import(pathToFileURL(`${folder}/walker.js`));
const book = readBook(JSON.parse(readFileSync(file, "utf8")));
const lines = [];

const sorted = (what) => {
  if (Array.isArray(what)) return what.map(sorted);
  if (what === null || typeof what !== "object") return what;
  return Object.fromEntries(Object.keys(what).sort().map((key) => [key, sorted(what[key])]));
};

function say(path, kind, what) {
  const digest = createHash("sha256").update(JSON.stringify(sorted(what))).digest("hex");
  lines.push(`${path}\t${kind}\t${digest.slice(0, 16)}`);
}

function go(name, path, answers) {
  const { question, sheet, reasons } = walk(book, name, answers);
  const why = reasons.filter((one) => one.fact in answers).map(({ fact, question, answer }) => [fact, question, answer]);
  why.sort(([a], [b]) => (b === "sides") - (a === "sides")); // a tree of its own, whose place among the reasons is its own
  if (!question) return say(path, "end", { sheet, why });
  const { fact, kind, help, source, decided_by, settled } = question;
  const told = { kind, question: question.question, help, source, decided_by, settled, answers: question.answers };
  say(path, fact, { told, why });
  for (const way of question.ways) {
    const answer = Array.isArray(way) ? way[0] : (way.at_most ?? way.above + 1);
    go(name, `${path}/${answer}`, { ...answers, [fact]: answer });
  }
}

for (const { name, rather } of book.incidents) {
  go(name, name, {});
  if (rather) go(name, `${name}/unasked`, { [book.facts[rather[0]].name]: rather[1] }); // told by the map, and asked by nothing
}
process.stdout.write(lines.join("\n"));
