"""Measure the finding, as it ships, on our own sentences that it was not trained on, and by which choices are made.

Run:  python -m training.measure_held_out [--show]
"""

import argparse
from pathlib import Path

from marram.rules.finding import MOST, find
from marram.rules.finding.acts import acts
from marram.rules.incidents import INCIDENTS
from training.material import NOTHING
from training.measure import Shares, shares

HELD_OUT = Path(__file__).parent / "held_out"
ONE_ACT = ("radio_talk.txt", "other_voices.txt", "fresh_voices.txt", "denied_and_rambling.txt")
SEVERAL = ("several_acts.txt", "several_denied.txt")


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
    read = [(name, sentence, meant[0]) for name in ONE_ACT for sentence, meant in held_out(name)]
    told = [(name, sentence, meant) for name, sentence, meant in read if NOTHING not in meant]
    offered = [[one.name for one in find(sentence).incidents] for _, sentence, _ in told]
    print("One act: ", shares(offered, [meant for *_, meant in told]))
    for file in ONE_ACT:
        chosen = [
            (names, meant) for names, (name, _, meant) in zip(offered, told, strict=True) if name == file
        ]
        print(f"   {file}: ", shares([names for names, _ in chosen], [meant for _, meant in chosen]))
    for (_, sentence, meant), names in zip(told, offered, strict=True):
        if show and names[:1] and names[0] not in meant:
            print("  ", ", ".join(sorted(meant)), "<-", names[:3], sentence)
    print(
        f"   said to be only near: {sum(not find(sentence).sure for _, sentence, _ in told)} of {len(told)}"
    )
    print(
        f"   told as several acts: {sum(bool(acts(sentence).acts) for _, sentence, _ in told)} of {len(told)}"
    )
    none = [find(sentence).sure for _, sentence, meant in read if NOTHING in meant]
    print(f"No incident in the book: {len(none)} sentences, said to be sure {sum(none)} times")
    for file in SEVERAL:
        print(f"Several, {file}: ", _of_several(held_out(file)))


def _of_several(told: list[tuple[str, list[frozenset[str]]]]) -> Shares:
    """Return the shares for acts: the best place that any part of its sentence gives each."""
    lists, meant_acts = [], []
    for sentence, every in told:
        found = acts(sentence)
        parts = [
            [one.name for one in part.incidents] for part in (found.whole, *(one.found for one in found.acts))
        ]
        for act in every:
            lists.append(min(parts, key=lambda one, act=act: _place(one, act)))
            meant_acts.append(act)
    return shares(lists, meant_acts)


def _place(offered: list[str], act: frozenset[str]) -> int:
    return next((at for at, name in enumerate(offered) if name in act), MOST)


if __name__ == "__main__":
    main()
