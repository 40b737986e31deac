// The weights by which incidents are found, as marram/rules/finding/model.py reads them from the same file.

const bytes = (base64) => Uint8Array.from(atob(base64), (one) => one.charCodeAt(0));

export function readModel(plain) {
  const { forms, compounds, things, little } = plain.tables;
  const starts = [0];
  for (const size of plain.sizes) starts.push(starts.at(-1) + size);
  const gaps = bytes(plain.gaps);
  const weights = new Int8Array(bytes(plain.weights).buffer);
  const values = bytes(plain.values);
  const features = plain.features.split("\n");
  return {
    incidents: plain.incidents,
    tables: {
      forms: new Map(Object.entries(forms)),
      compounds: new Map(Object.entries(compounds)),
      things: new Map(Object.entries(things)),
      little: new Set(little),
    },
    places: new Map(features.map((one, place) => [one, place])),
    values,
    stems: byFirstLetter(features, values),
    sharpness: plain.sharpness,
    // Calls each(incident, weight) for every incident that a feature speaks for or against.
    row(place, each) {
      let at = 0;
      for (let step = starts[place]; step < starts[place + 1]; step += 1) {
        at += gaps[step];
        if (weights[step]) each(at, weights[step]);
      }
    },
  };
}

// The stems among the features by their first letter, each with how rare it is.
function byFirstLetter(features, values) {
  const found = new Map();
  features.forEach((one, place) => {
    if (!/^[a-z]+$/.test(one)) return;
    if (!found.has(one[0])) found.set(one[0], []);
    found.get(one[0]).push([one, values[place]]);
  });
  return found;
}
