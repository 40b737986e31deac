"""Measure the finding, as it ships, on sentences by writers who saw nothing of it.

Run:  python -m training.measure_unseen

Only shares are printed, never a sentence: a sentence that was looked at is no longer unseen.
"""

import json
from pathlib import Path
from time import process_time

from marram.rules.finding import MOST, find
from marram.rules.finding.acts import acts
from training.measure import Shares, shares

FILE = Path(__file__).parent.parent / "tests" / "rules" / "finding" / "unseen_sentences.json"


def unseen() -> list[tuple[str, list[frozenset[str]]]]:
    """Return each sentence with the incidents that each of its acts may be ruled under."""
    plain = json.loads(FILE.read_text(encoding="utf-8"))["sentences"]
    return [(one["sentence"], [frozenset(act) for act in one["acts"]]) for one in plain]


def of_one_act() -> Shares:
    """Return the shares for the sentences that hold one act."""
    told = [(sentence, meant[0]) for sentence, meant in unseen() if len(meant) == 1]
    return shares([_offered(sentence) for sentence, _ in told], [meant for _, meant in told])


def of_several_acts() -> Shares:
    """Return the shares for the acts of the sentences that hold several: the best place that any part gives each act."""
    offered, meant = [], []
    for sentence, several in unseen():
        if len(several) > 1:
            found = acts(sentence)
            lists = [
                _names(found.whole.incidents),
                *(_names(one.found.incidents) for one in found.acts),
            ]
            for act in several:
                offered.append(min(lists, key=lambda one, act=act: _place(one, act)))
                meant.append(act)
    return shares(offered, meant)


def main() -> None:
    """Print the shares and the time of a sentence."""
    sentences = [sentence for sentence, _ in unseen()]
    _offered(sentences[0])
    begun = process_time()
    for sentence in sentences:
        _offered(sentence)
    each = (process_time() - begun) / len(sentences) * 1000
    print("One act: ", of_one_act())
    print("Several: ", of_several_acts())
    none = [find(sentence).sure for sentence, meant in unseen() if not meant]
    print(f"No incident in the book: {len(none)} sentences, said to be sure {sum(none)} times")
    print(f"{each:.2f} ms of processor time a sentence")


def _offered(sentence: str) -> list[str]:
    return _names(find(sentence).incidents)


def _names(incidents: object) -> list[str]:
    return [one.name for one in incidents]  # type: ignore[attr-defined]


def _place(offered: list[str], act: frozenset[str]) -> int:
    return next((at for at, name in enumerate(offered) if name in act), MOST)


if __name__ == "__main__":
    main()
