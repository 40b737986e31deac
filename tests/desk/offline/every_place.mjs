// Places on a map, read as a phone reads them: one line of JSON for each. Called with the folder of the scripts, the file of
// the map and a file of the places, each [hole, longitude, latitude, accuracy], and of the tables of what is likely.

import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

const [folder, mapFile, placesFile] = process.argv.slice(2);
const { readMap, toDegrees, toMetres } = await import(pathToFileURL(`${folder}/map_read.js`));
const { holeNear, lieAt } = await import(pathToFileURL(`${folder}/lie_here.js`));
const { likelyHere } = await import(pathToFileURL(`${folder}/likely_here.js`));
const { likely, places } = JSON.parse(readFileSync(placesFile, "utf8"));
const map = readMap(JSON.parse(readFileSync(mapFile, "utf8")));

for (const [hole, longitude, latitude, accuracy] of places) {
  const at = toMetres(map, longitude, latitude);
  const lie = lieAt(map, hole, ...at, accuracy);
  const told = lie && {
    area: lie.area,
    facts: Object.fromEntries(Object.entries(lie.facts).sort()),
    things: lie.things,
    doubts: [...new Set(lie.doubts.map((one) => one.kind))].sort(),
    words: lie.words,
    likely: likelyHere({ likely }, map, lie),
  };
  console.log(JSON.stringify({ told, metres: lie?.metres, at, back: toDegrees(map, ...at), near: holeNear(map, ...at).number }));
}
