"""Fit the weights by which incidents are found, and write the file that ships with marram.

Run:  make fit    (python -m training.fit_finding)

First to four fifths of the sentences, to measure on the rest and to learn how sure a score is; then to all.
"""

import argparse
import gzip
from collections.abc import Sequence
from pathlib import Path

import numpy as np

from marram.rules.finding.sentence import Tables
from training.fitting import Rounded, fit, rounded, taken_apart
from training.material import Told, halves, sentences, tables, weak
from training.measure import orders, shares, sharpness
from training.model_file import document

HERE = Path(__file__).parent
FILE = HERE.parent / "src" / "marram" / "rules" / "finding" / "model.json"
HELD_OUT, OF = 3, 5
"""The sentences held out for measuring: of each five of an incident the fourth."""
STEPS = 20.0
"""How finely weights are told; by size and the held-out sentences."""


def main() -> None:
    """Fit, say how well it does on held-out sentences, and write the file."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--measure", action="store_true", help="only measure on the held-out sentences")
    only_measure = parser.parse_args().measure
    told, held = sentences(), tables()
    learned = [one for one in told if one.number is None or one.number % OF != HELD_OUT]
    kept_out = [one for one in told if one.number is not None and one.number % OF == HELD_OUT]
    trial = rounded(fit([*learned, *weak()], held, halves(learned)), STEPS)
    sure = _measured(trial, kept_out, held)
    if only_measure:
        return
    final = rounded(fit([*told, *weak()], held, halves(told)), STEPS)
    written = document(final, held, sure * final.unit / trial.unit)
    FILE.write_text(written, encoding="utf-8")
    size = len(gzip.compress(written.encode(), 9))
    print(
        f"{FILE.name}: {len(final.features)} features, {np.count_nonzero(final.weights)} weights, {len(written) // 1000} kB, {size // 1000} kB compressed"
    )


def _measured(trial: Rounded, kept_out: Sequence[Told], held: Tables) -> float:
    texts = taken_apart((one.text for one in kept_out), held)
    scores = trial.scores(texts)
    print(
        "Held out,", shares(orders(scores, trial.incidents), [frozenset([one.incident]) for one in kept_out])
    )
    values = dict(zip(trial.features, trial.values, strict=True))
    lengths = np.sqrt([sum(int(values.get(one, 0)) for one in text) or 1 for text in texts])
    return sharpness(scores, lengths, [trial.incidents.index(one.incident) for one in kept_out])


if __name__ == "__main__":
    main()
