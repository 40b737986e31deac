"""A ball in the teeing area needs no relief: it may be moved, and played from anywhere inside it (Rule 6.2b(6), both editions)."""

import pytest

from marram.rules.engine.request import rule
from marram.rules.ruling import Action, Ruling


@pytest.mark.parametrize("edition", [2019, 2023])
@pytest.mark.parametrize("near", ["dangerous", "harmless", "not_an_animal"])
def test_whatever_is_near_the_ball_it_is_played_from_the_teeing_area(near: str, edition: int) -> None:
    """A cactus or a harmless animal gives no relief under Rule 16.2, and takes nothing of Rule 6.2b(6) away."""
    facts = {"animal_near_ball": near, "area_of_ball": "teeing_area"}
    found = rule("dangerous_animal", facts, edition=edition)
    assert isinstance(found, Ruling)
    assert found.action is Action.PLAY_FROM_TEEING_AREA
    assert not found.penalties
    assert "6.2b(6)" in found.citations


def test_elsewhere_no_free_relief_is_given_from_a_cactus() -> None:
    """In the general area it lies as it lies, or is unplayable (Rule 16.2a)."""
    facts = {
        "animal_near_ball": "not_an_animal",
        "area_of_ball": "general_area",
        "last_stroke_from_penalty_area": "no",
    }
    found = rule("dangerous_animal", facts, edition=2023)
    assert isinstance(found, Ruling)
    assert found.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF
    assert all(option.penalty for option in found.relief)
