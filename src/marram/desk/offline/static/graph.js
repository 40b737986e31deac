// The graph of an incident with what is known put in: equal parts stay one, idle questions go. Done alike in
// marram/rules/engine/graph.py, so that a phone asks what the desk asks, in the same order.

// A vertex is a number: an end below 0 (number -1 - vertex), else a question of the book, or one added here.
export class Graph {
  constructor(book) {
    this.book = book;
    this.added = [];
    this.places = new Map();
  }

  question(vertex) {
    const { questions } = this.book;
    return vertex < questions.length ? questions[vertex] : this.added[vertex - questions.length];
  }

  // What is left of a vertex once the answers in `known`, by number of the fact, are established.
  restrict(vertex, known, seen = new Map()) {
    if (vertex < 0) return vertex;
    const found = seen.get(vertex);
    if (found !== undefined) return found;
    const [fact, citation, ways, ...children] = this.question(vertex);
    const left = known.has(fact)
      ? this.restrict(children[way(this.book.ways[ways], known.get(fact))], known, seen)
      : this.share(fact, citation, ways, children.map((child) => this.restrict(child, known, seen)));
    seen.set(vertex, left);
    return left;
  }

  share(fact, citation, ways, children) {
    if (children.every((child) => child === children[0])) return children[0];
    const key = [fact, ways, ...children].join();
    const shared = this.book.places.get(key) ?? this.places.get(key);
    if (shared !== undefined) return shared;
    const place = this.book.questions.length + this.added.length;
    this.added.push([fact, citation, ways, ...children]);
    this.places.set(key, place);
    return place;
  }

  // The different ends that can be reached, the last child's first.
  ends(root) {
    const pending = [root];
    const seen = new Set(pending);
    const found = [];
    while (pending.length) {
      const here = pending.pop();
      if (here < 0) {
        found.push(-1 - here);
        continue;
      }
      for (const child of this.question(here).slice(3)) {
        if (seen.has(child)) continue;
        seen.add(child);
        pending.push(child);
      }
    }
    return found;
  }
}

// Which way an answer goes: the number of the child it leads to.
export function way(ways, answer) {
  const found = ways.findIndex((one) =>
    Array.isArray(one) ? one.includes(answer) : "at_most" in one ? answer <= one.at_most : answer > one.above,
  );
  if (found < 0) throw new RangeError(`${answer} is no answer to this question.`);
  return found;
}
