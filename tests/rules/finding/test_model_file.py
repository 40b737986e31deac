"""The weights that ship are those of the sentences in the repository."""

from collections import Counter

import pytest

from marram.rules.finding.model import model
from marram.rules.incidents import INCIDENTS
from training.material import NOTHING, digest, sentences

FEWEST = 25
ROUNDING = 2
"""Steps by which a weight may differ on another processor."""


def test_the_weights_are_of_these_sentences() -> None:
    """Whoever changes a sentence or a table of words, or adds an incident, fits anew (make fit)."""
    assert model().made_from == digest(), "the sentences or tables have changed since: make fit"
    assert {*model().incidents} ^ {one.name for one in INCIDENTS} == set(), (
        "incidents not learned, or gone: make fit"
    )


def test_every_incident_has_enough_sentences() -> None:
    """Each incident is learned from at least 25 sentences of our own."""
    counted = Counter(one.incident for one in sentences())
    assert [one.name for one in INCIDENTS if counted[one.name] < FEWEST] == []


def test_no_sentence_stands_twice_for_two_incidents() -> None:
    """What cannot be told apart cannot be learned apart."""
    meant: dict[str, set[str]] = {}
    for one in sentences():
        meant.setdefault(one.text.lower(), set()).add(one.incident)
    assert {text: found for text, found in meant.items() if len(found) > 1} == {}


@pytest.mark.refit
@pytest.mark.long
def test_the_script_gives_the_file_that_ships() -> None:
    """Fitting anew gives the same weights, but for the last steps of rounding on another processor."""
    fitting = pytest.importorskip(
        "training.fitting", reason="scikit-learn is not installed: pip install -e .[training]"
    )

    from training.fit_finding import STEPS
    from training.material import halves, tables, weak

    anew = fitting.rounded(fitting.fit([*(told := sentences()), *weak()], tables(), halves(told)), STEPS)
    weights = {
        one: dict(zip(anew.incidents, row.tolist(), strict=True))
        for one, row in zip(anew.features, anew.weights, strict=True)
    }
    shipped = model()
    named = (*shipped.incidents, NOTHING)
    differing = [
        (one, named[at])
        for one, place in shipped.places.items()
        for at, weight in shipped.row(place)
        if abs(weight - weights.get(one, {}).get(named[at], 0)) > ROUNDING
    ]
    assert differing == []
