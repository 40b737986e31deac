"""Finding an incident in a sentence beside a general-purpose search over the same titles and keywords.

Run:  python bench/finding.py [--sentences 300]

The peer is rapidfuzz, compiled: the twelve texts most alike to a sentence by its weighted ratio. It knows nothing of what
people say; what is compared is time only.
"""

import argparse
import json
from collections.abc import Callable
from pathlib import Path
from time import process_time

from rapidfuzz import fuzz, process

from marram.rules.finding import find
from marram.rules.incidents import INCIDENTS

UNSEEN = Path(__file__).parent.parent / "tests" / "rules" / "finding" / "unseen_sentences.json"


def milliseconds(ask: Callable[[str], object], sentences: list[str], rounds: int = 3) -> float:
    def once() -> float:
        begun = process_time()
        for sentence in sentences:
            ask(sentence)
        return (process_time() - begun) / len(sentences) * 1000

    return min(once() for _ in range(rounds))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--sentences", type=int, default=300)
    wanted = parser.parse_args().sentences
    sentences = [one["sentence"] for one in json.loads(UNSEEN.read_text(encoding="utf-8"))["sentences"]][
        :wanted
    ]
    texts = [f"{one.title} {one.keywords}" for one in INCIDENTS]
    begun = process_time()
    find(sentences[0])
    first = (process_time() - begun) * 1000
    ours = milliseconds(find, sentences)
    peer = milliseconds(lambda one: process.extract(one, texts, scorer=fuzz.WRatio, limit=12), sentences)
    print(f"the first sentence, with the weights read: {first:.0f} ms of processor time")
    print(
        f"each further one: {ours:.2f} ms; rapidfuzz over {len(texts)} texts: {peer:.2f} ms; ratio {ours / peer:.2f}"
    )


if __name__ == "__main__":
    main()
