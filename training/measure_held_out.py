"""Measure the finding, as it ships, on our own sentences that it was not trained on, and by which choices are made.

Run:  python -m training.measure_held_out [--show]
"""

import argparse
from pathlib import Path

from marram.rules.finding import MOST, find
from marram.rules.finding.acts import acts
from marram.rules.incidents import INCIDENTS
from training.material import NOTHING
from training.measure import shares

HELD_OUT = Path(__file__).parent / "held_out"


def held_out(name: str) -> list[tuple[str, list[frozenset[str]]]]:
    """Return the sentences of a file, each with the incidents that each of its acts may be ruled under.

    Raises:
        ValueError: a line names an incident that is not in the book.
    """
    known, read = {NOTHING, *(one.name for one in INCIDENTS)}, []
    for line in (HELD_OUT / name).read_text(encoding="utf-8").splitlines():
        if line and not line.startswith("#"):
            meant, _, sentence = line.partition(" | ")
            several = [frozenset(act.split(",")) for act in meant.split(";")]
            if unknown := set().union(*several) - known:
                raise ValueError(f"{name}: there is no incident {', '.join(sorted(unknown))}: {line}")
            read.append((sentence, several))
    return read


def main() -> None:
    """Print the shares, and with ``--show`` each sentence whose incident is not first."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--show", action="store_true", help="list the sentences whose incident is not first")
    show = parser.parse_args().show
    radio = [
        (sentence, meant[0])
        for name in ("radio_talk.txt", "other_voices.txt", "fresh_voices.txt")
        for sentence, meant in held_out(name)
    ]
    told = [(sentence, meant) for sentence, meant in radio if NOTHING not in meant]
    offered = [[one.name for one in find(sentence).incidents] for sentence, _ in told]
    print("One act: ", shares(offered, [meant for _, meant in told]))
    for (sentence, meant), names in zip(told, offered, strict=True):
        if show and names[:1] and names[0] not in meant:
            print("  ", ", ".join(sorted(meant)), "<-", names[:3], sentence)
    print(f"   said to be only near: {sum(not find(sentence).sure for sentence, _ in told)} of {len(told)}")
    print(f"   told as several acts: {sum(bool(acts(sentence).acts) for sentence, _ in told)} of {len(told)}")
    none = [find(sentence).sure for sentence, meant in radio if NOTHING in meant]
    print(f"No incident in the book: {len(none)} sentences, said to be sure {sum(none)} times")
    several = held_out("several_acts.txt")
    lists, meant_acts = [], []
    for sentence, every in several:
        found = acts(sentence)
        parts = [
            [one.name for one in part.incidents] for part in (found.whole, *(one.found for one in found.acts))
        ]
        for act in every:
            lists.append(min(parts, key=lambda one, act=act: _place(one, act)))
            meant_acts.append(act)
    print("Several: ", shares(lists, meant_acts))


def _place(offered: list[str], act: frozenset[str]) -> int:
    return next((at for at, name in enumerate(offered) if name in act), MOST)


if __name__ == "__main__":
    main()
