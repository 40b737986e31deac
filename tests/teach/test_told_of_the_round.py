"""The round is told as a person tells it: one thing that happened, and nothing that speaks against the rest."""

from datetime import date

import pytest

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.penalty import Who, disqualified, general
from marram.rules.ruling import Action, Ruling
from marram.teach.quizzes.apart import is_allowed_too
from marram.teach.quizzes.saying import said_as_answer
from marram.teach.situations.situation import Situation, ruled
from marram.words.telling import telling

MATCH, STROKE = FormOfPlay.MATCH_PLAY, FormOfPlay.STROKE_PLAY


@pytest.mark.parametrize(
    ("incident", "facts", "form", "told"),
    [
        ("no_play_zone", {"played_despite_zone": "no", "no_play_zone_interference": "ball_inside"}, STROKE, ("Ada's ball came to rest in a no play zone.", "The ball had not been played from there.")),
        ("started_off_time", {"off_time": "early", "minutes_off": 4}, STROKE, ("Ada started the round too early.", "Ada made the first stroke 4 minutes before the starting time.")),
        ("ignored_a_rule", {"knew_it_applied": "yes", "who_ignored": "by_agreement", "someone_had_started": "no"}, STROKE, ("Ada and another player agreed not to count one of the penalties of the Rules.", "Both knew that the Rules do not allow such an agreement.", "Neither of them has started the round yet.")),
        ("concession", {"who_conceded": "clearly", "conceded_in_time": "no"}, MATCH, ("In a match Ada conceded a hole.", "Ada said so in words that left no doubt.", "The concession came only after both players had holed out there.")),
        ("practised_before_round", {"practised_before": "on_other_day"}, STROKE, ("Ada practised on the course on the day before a round.", "Ada had no round to play on that day.")),
        ("club_lost", {"had_fourteen_clubs": "yes", "holes_with_breach": 1}, MATCH, ("Ada replaced a lost club.", "Ada had 14 clubs, counting that one.", "The breach ended on the hole on which it had begun.")),
    ],
)  # fmt: skip
def test_one_thing_is_told_and_no_list(
    incident: str, facts: dict[str, object], form: FormOfPlay, told: tuple[str, ...]
) -> None:
    """What the opening names is not said again, nor is a number that the answer would repeat."""
    assert telling(incident, facts, "Ada", form) == told


def test_a_hole_out_of_turn_is_corrected_from_the_right_teeing_area() -> None:
    """Rule 6.1b(2): it was begun from a teeing area, so that "from the teeing area" would not say which."""
    facts = {"order_set_by_committee": "no", "next_hole_started": "no"}
    day = date(2026, 6, 1)
    found = ruled("holes_out_of_order", facts, STROKE, day)
    assert isinstance(found, Ruling)
    one = Situation("holes_out_of_order", facts, STROKE, day, "Ada", None, found)

    assert said_as_answer(one, found, STROKE, by_finding=False).endswith("play from the right teeing area")


def test_what_each_side_gets_is_no_wrong_answer_for_one_side() -> None:
    """Rule 5.3a with Rule 22.2: the side loses the hole, and so does the other; saying it of one of them is not wrong."""
    both = Ruling().also(general("5.3a", Who.EACH_SIDE)).next(Action.PLAY_ON)

    assert is_allowed_too(both, Ruling().also(general("5.3a", Who.SIDE)).next(Action.PLAY_ON))
    assert not is_allowed_too(both, Ruling().also(disqualified("5.3a", Who.SIDE)).next(Action.PLAY_ON))
