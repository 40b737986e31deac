"""Words of single rulings that said too much, too little, or the same thing twice.

Sources: Rules of Golf 2019 and 2023, Rules 4.1c, 6.3c(2), 15.2b, 17.1c, 18.2a(1), 18.3c(2), 22.3 and 24.2 with
Clarification 24.2/1.
"""

from datetime import date

import pytest

from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.ruling import Ruling
from marram.words.headline import headline, tell_the_player
from marram.words.sheet import sheet

DAYS = [date(2021, 6, 1), date(2024, 6, 1)]


def ruling_on(day: date, what: str, form: FormOfPlay = FormOfPlay.STROKE_PLAY, /, **facts: object) -> Ruling:
    """Return the ruling on an incident without Local Rules."""
    result = rule(what, facts, played_on=day, form_of_play=form, local_rules=[])
    assert isinstance(result, Ruling), result
    return result


@pytest.mark.parametrize("day", DAYS)
@pytest.mark.parametrize(
    ("what", "facts"),
    [
        ("ball_played_by_another_player", {"played_by_another_known": "no"}),
        ("ball_in_or_on_movable_obstruction", {"found_in_obstruction": "no", "known_in_obstruction": "no"}),
    ],
)
def test_a_ball_still_searched_for_is_not_said_to_be_lost(
    day: date, what: str, facts: dict[str, str]
) -> None:
    """Rule 18.2a(1): it is lost when it is not found within three minutes, which these incidents do not ask."""
    ruling = ruling_on(day, what, **facts)
    for words in (headline(ruling, FormOfPlay.STROKE_PLAY), tell_the_player(ruling, FormOfPlay.STROKE_PLAY)):
        assert words.startswith("Lost unless found within three minutes of search:"), words
        assert "one penalty stroke" in words


@pytest.mark.parametrize("day", DAYS)
def test_a_club_too_many_before_the_round_is_left_behind(day: date) -> None:
    """Rule 4.1c(2): before starting it is left behind or taken out of play; nothing is played on with it."""
    ruling = ruling_on(day, "too_many_clubs", excess_noticed="before_round")
    for words in (headline(ruling, FormOfPlay.STROKE_PLAY), tell_the_player(ruling, FormOfPlay.STROKE_PLAY)):
        assert "before starting, leave the excess club behind, or take it out of play" in words
        assert "play on" not in words


@pytest.mark.parametrize("day", DAYS)
@pytest.mark.parametrize("form", [FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY, FormOfPlay.STABLEFORD])
def test_a_club_too_many_during_the_round_is_taken_out_of_play(day: date, form: FormOfPlay) -> None:
    """Rule 4.1c(1): the next stroke made with it still in play disqualifies, so that is what the player is told first."""
    ruling = ruling_on(day, "too_many_clubs", form, excess_noticed="during_round", holes_with_breach=1)
    for words in (headline(ruling, form), tell_the_player(ruling, form)):
        assert "take the club out of play at once" in words
        assert "play on" not in words


@pytest.mark.parametrize("day", DAYS)
def test_a_team_member_is_disqualified_for_the_round_only(day: date) -> None:
    """Rule 24.2: where not all scores count, the player is out of this round, and may play in the others."""
    ruling = ruling_on(
        day, "team_player_disqualified", all_team_scores_count="no", team_disqualified_for_conduct="no"
    )
    assert headline(ruling, FormOfPlay.STROKE_PLAY) == "For this round only: disqualification."
    assert tell_the_player(ruling, FormOfPlay.STROKE_PLAY) == "You are disqualified for this round only."


@pytest.mark.parametrize("day", DAYS)
def test_a_side_is_told_once_that_it_loses_the_hole(day: date) -> None:
    """Rule 22.3 in a match: the penalty is the loss of the hole, and nothing more is to be said of it."""
    ruling = ruling_on(day, "foursomes_wrong_order", FormOfPlay.MATCH_PLAY)
    assert headline(ruling, FormOfPlay.MATCH_PLAY) == "Loss of hole (the general penalty) for the side."
    assert tell_the_player(ruling, FormOfPlay.MATCH_PLAY) == "Your side loses the hole (the general penalty)."


@pytest.mark.parametrize("day", DAYS)
def test_after_penalty_area_relief_the_ball_dropped_is_in_play(day: date) -> None:
    """Rule 17.1c: the headline tells of the ball that is in play, not of where the original lies."""
    ruling = ruling_on(day, "found_after_penalty_area_relief", certain_when_relief_taken="yes")
    assert headline(ruling, FormOfPlay.STROKE_PLAY) == (
        "The other ball is in play: one penalty stroke; go on with the other ball."
    )


@pytest.mark.parametrize("day", DAYS)
@pytest.mark.parametrize("form", [FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY])
def test_holed_is_said_once(day: date, form: FormOfPlay) -> None:
    """Rule 18.3c(2): a provisional ball holed that counts is said to be holed once, on the page and to the player."""
    ruling = ruling_on(
        day, "provisional_ball_holed", form, original_ball="not_found_yet", lifted_from_hole_first="yes"
    )
    words = sheet(ruling, form_of_play=form)
    assert words.headline.lower().count("holed") == 1
    assert words.tell.lower().count("holed") == 1
    assert "The ball is holed." not in words.further


@pytest.mark.parametrize("day", DAYS)
def test_of_two_provisional_balls_the_second_is_named(day: date) -> None:
    """Clarification 18.3a/3: with the original and the first gone, it is the second that is in play, for two strokes."""
    ruling = ruling_on(day, "ball_not_found", whereabouts="not_known", provisional_state="second_found")
    for words in (headline(ruling, FormOfPlay.STROKE_PLAY), tell_the_player(ruling, FormOfPlay.STROKE_PLAY)):
        assert "two penalty strokes" in words
        assert words.endswith("go on with the second provisional ball.")
