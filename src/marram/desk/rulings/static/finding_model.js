// The weights by which incidents are found, as marram/rules/finding/model.py reads them from the same file.

const ZERO = 35; // the sign "#" is 0
const MOST = 91; // the largest number of one sign, "~"
const BELOW = 20; // what is added to a weight in the file

const numbers = (signs) => Uint8Array.from(signs, (one) => one.charCodeAt(0) - ZERO);

export function readModel(plain) {
  const { forms, compounds, things, little } = plain.tables;
  const alone = plain.alone.split(" ");
  const features = [...alone, ...Object.entries(plain.joined).flatMap(([joint, told]) => joined(joint, told))];
  const starts = startsOf(numbers(plain.sizes));
  const gaps = numbers(plain.gaps);
  const weights = numbers(plain.weights);
  const values = numbers(plain.values);
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
    stems: byFirstLetter(alone, values),
    sharpness: plain.sharpness,
    // Calls each(incident, weight) for every incident that a feature speaks for or against.
    row(place, each) {
      let at = 0;
      for (let step = starts[place]; step < starts[place + 1]; step += 1) {
        at += gaps[step];
        const weight = weights[step] - BELOW;
        if (weight) each(at++, weight);
      }
    },
  };
}

// Features of two parts: by what joins them, a line for each first part with all its second ones.
function joined(joint, told) {
  return told.split("\n").flatMap((line) => {
    const [first, ...seconds] = line.split(" ");
    return seconds.map((second) => first + joint + second);
  });
}

// Where each row starts: the sums of their sizes, where the largest sign goes on in the next.
function startsOf(sizes) {
  const starts = [0];
  let begun = 0;
  for (const size of sizes) {
    begun += size;
    if (size === MOST) continue;
    starts.push(starts.at(-1) + begun);
    begun = 0;
  }
  return starts;
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
