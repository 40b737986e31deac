"""The headline of every leaf agrees with its ruling: what was found, the strokes in all, the next thing to do.

The expectations are worked out anew from the ruling's data, not by the functions that make the words. Sources: Rules of
Golf 2019 and 2023, Rules 1.3c, 14.5, 14.7, 17.1d, 18.2b and 19.2; the rest is what the book's own provisions end in.
"""

from collections.abc import Iterator
from datetime import date
from enum import Enum

import pytest

from marram.rules.done_wrong import BY_NOTE as WRONG_BY_NOTE
from marram.rules.done_wrong import corrections_of
from marram.rules.editions import EDITIONS
from marram.rules.engine.request import book, rule
from marram.rules.engine.tree import leaves_on
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.finding_of import BY_FACT, BY_NOTE, finding_of
from marram.rules.findings import WITH_THE_TOTAL, Finding
from marram.rules.free_findings import FREE_BY_FACT, FREE_STROKE_BY_FACT
from marram.rules.incidents import INCIDENTS
from marram.rules.penalty import PenaltyKind, Who
from marram.rules.ruling import Action, Ruling
from marram.words.english import catalogue
from marram.words.headline import headline, tell_the_player
from marram.words.messages import say, term
from marram.words.sheet import sheet
from tests.rules.pinned import EVERY

NOTHING_TO_DO_WRONG = (None, Action.PLAY_ON, Action.HOLED, Action.HOLE_OVER, Action.PLAY_AS_IT_LIES)
"""After these nothing has to be done with a ball but to play it as it lies, or nothing at all."""

FORCED = (
    Action.TAKE_RELIEF,
    Action.PLAY_PROVISIONAL,
    Action.DROP,
    Action.PLACE,
    Action.PLAY_FROM_TEEING_AREA,
)
SAID_BY_NOTE = {
    "play_out_both_balls": "play out both balls",
    "embedded_on_green": "repair the damage, and replace it",
    "replace_on_lip": "replace it on the lip of the hole",
    "put_back_where_it_had_come_to_rest": "put it back where it had come to rest",
    "shape_the_lie_in_sand": "shape the lie in the sand, and replace the ball in it",
    "put_ball_in_play_first": "lift it, and put a ball in play",
    "go_on_with_right_ball": "go on with the right ball",
    "correct_the_ruling": "correct the ruling",
    "nothing_conceded_in_stroke_play": "hole out",
    "lift_ball_dropped_by_mistake": "play the original",
}
"""Steps that a note says better than the step's own name (Rules 13.2c, 14.2d(1), 14.4, 14.5 and 14.7b)."""

NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
IN_STROKES = (PenaltyKind.STROKES, PenaltyKind.GENERAL)


def rulings(name: str, day: date) -> Iterator[Ruling]:
    """Yield every ruling an incident can end in, in the edition of a day."""
    return (leaf for leaf in leaves_on(book(name).root, day) if isinstance(leaf, Ruling))


def number(count: int) -> str:
    """Return a number of strokes as it is said."""
    return NUMBERS[count] if count < len(NUMBERS) else str(count)


def own_totals(ruling: Ruling) -> set[int]:
    """Return the strokes in stroke play that the player cannot avoid, over the options that remain."""
    own = sum(one.strokes for one in ruling.penalties if one.who is Who.PLAYER and one.kind in IN_STROKES)
    costs = {option.penalty for option in ruling.relief} if ruling.action in FORCED else set()
    return {own + cost for cost in costs or {0}}


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_the_headline_counts_every_stroke(name: str, day: date) -> None:
    """The strokes in all, relief that must be taken included, stand in the headline; it never says fewer."""
    for ruling in rulings(name, day):
        line = headline(ruling, FormOfPlay.STROKE_PLAY).lower()
        totals = own_totals(ruling)
        if min(totals) > 0:
            assert "no penalty" not in line, (line, ruling)
            assert " or ".join(number(one) for one in sorted(totals)) + " penalty stroke" in line, (
                line,
                ruling,
            )
        if not ruling.penalties and totals == {0}:
            assert "you get no penalty" in tell_the_player(ruling).lower() or finding_of(ruling), ruling
        for whom in {one.who for one in ruling.penalties} - {Who.PLAYER}:
            assert term(whom) in line, (line, ruling)
        if any(one.kind is PenaltyKind.DISQUALIFICATION for one in ruling.penalties):
            assert "disqualification" in line, (line, ruling)


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_the_headline_says_what_was_found_and_what_comes_next(name: str, day: date) -> None:
    """What the notes, the facts and the stroke find stands first; a step that is still to be done is named."""
    for ruling in rulings(name, day):
        line = headline(ruling, FormOfPlay.STROKE_PLAY)
        told = tell_the_player(ruling, FormOfPlay.STROKE_PLAY)
        noted = {BY_NOTE[note] for note in ruling.notes if note in BY_NOTE}
        finding = finding_of(ruling)
        assert line not in ("No penalty: play on.", "No penalty."), (
            f"{name} can end in {line!r}, which says nothing of what was found. Enter what its outcome finds in "
            f"rules/noted_findings.py (by a note), rules/free_findings.py (by the fact that decides) or BY_PROVISION of "
            f"rules/finding_of.py; a new finding gets its words in words/english/findings.py. Ruling: {ruling}"
        )
        if finding is not None:
            assert line.startswith(term(finding)), (line, ruling)
        if ruling.action is Action.HOLED:
            assert finding is not Finding.ORIGINAL_IN_PLAY, (line, ruling)
        elif noted and "18.2b" not in ruling.citations:
            assert finding in noted, (line, ruling)
        if any(one.kind is PenaltyKind.DISQUALIFICATION for one in ruling.penalties):
            continue
        undone = {
            Action.PLAY_AS_IT_LIES: "play it as it lies",
            Action.REPLACE: "replace the ball",
            Action.PLACE: "place the ball",
            Action.DROP_AGAIN: "drop again",
            Action.LIFT: "lift the ball",
            Action.PLAY_FROM_TEEING_AREA: "play from the teeing area",
            Action.PLAY_PROVISIONAL: "provisional ball",
        }
        if ruling.action is Action.CORRECT_MISTAKE:
            assert ruling.corrections or set(ruling.notes) & SAID_BY_NOTE.keys(), ruling
            what = [say("NOTES", one.what).rstrip(".").lower() for one in ruling.corrections]
            what += [SAID_BY_NOTE[note] for note in ruling.notes if note in SAID_BY_NOTE]
            assert any(one in line.lower() and one in told.lower() for one in what), (line, ruling)
        noted_step = [SAID_BY_NOTE[note] for note in ruling.notes if note in SAID_BY_NOTE]
        if noted_step and ruling.action in (Action.REPLACE, Action.LIFT, Action.PLAY_ON):
            assert noted_step[0] in line.lower() or ruling.action is Action.PLAY_ON, (line, ruling)
        elif ruling.action in undone and not noted_step:
            assert undone[ruling.action] in line.lower(), (line, ruling)
            assert undone[ruling.action] in told.lower(), (told, ruling)
        if ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
            assert ("free relief" in line.lower()) or not any(not one.penalty for one in ruling.relief) or (
                "relief" in line or "place it" in line
            ), (line, ruling)  # fmt: skip
        if ruling.action is Action.HOLE_OVER and finding is not None and finding not in WITH_THE_TOTAL:
            assert "play on" not in line, (line, ruling)


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_a_page_says_each_thing_once_and_what_follows_if_it_is_done_wrong(name: str, day: date) -> None:
    """Rules 14.2d(2), 14.5 and 14.7: for every procedure the mistake that fits it is told; no step repeats the headline."""
    for ruling in rulings(name, day):
        words = sheet(ruling, form_of_play=FormOfPlay.STROKE_PLAY)
        if ruling.action not in NOTHING_TO_DO_WRONG:
            assert words.if_wrong, ruling
        if ruling.action is Action.PLACE:
            assert "replace_before_stroke" not in {one.what for one in corrections_of(ruling)}, ruling
        assert len(set(words.further)) == len(words.further), words.further
        for step in words.further:
            assert step.rstrip(".").lower() not in words.headline.lower(), (words.headline, step)


@pytest.mark.parametrize("name", [one.name for one in INCIDENTS])
def test_the_red_box_never_speaks_of_no_penalty(name: str) -> None:
    """A ruling that costs something lists what costs it, relief that must be taken included, and nothing else."""
    for ruling in rulings(name, EDITIONS[-1]):
        words = sheet(ruling, form_of_play=FormOfPlay.STROKE_PLAY)
        assert words.free == (words.penalties == ("No penalty.",)), ruling


def said(what: str, **facts: object) -> tuple[str, str]:
    """Return the headline of an incident in stroke play of 2024 without Local Rules, and what the player is told."""
    result = rule(
        what, facts, played_on=date(2024, 6, 1), form_of_play=FormOfPlay.STROKE_PLAY, local_rules=[]
    )
    assert isinstance(result, Ruling), result
    return headline(result, FormOfPlay.STROKE_PLAY), tell_the_player(result, FormOfPlay.STROKE_PLAY)


def test_out_of_bounds_says_the_stroke() -> None:
    """Rule 18.2b: out of bounds costs one stroke, and the next stroke is from where the previous one was made."""
    line, told = said(
        "ball_near_boundary",
        all_of_ball_out_of_bounds="yes",
        provisional_state="not_played",
        last_stroke_from_penalty_area="no",
    )
    assert line == "Out of bounds: one penalty stroke; play again from where the previous stroke was made."
    assert told == (
        "Out of bounds: you get one penalty stroke; play again from where the previous stroke was made."
    )


def test_a_ball_in_bounds_is_said_to_be_so() -> None:
    """Rule 18.2a(2): with any part of it in bounds the ball is in bounds, without penalty."""
    assert said("ball_near_boundary", all_of_ball_out_of_bounds="no")[0] == (
        "In bounds: no penalty; play it as it lies."
    )


def test_a_lost_ball_is_said_to_be_lost() -> None:
    """Rule 18.2a(1): not found in three minutes; and the provisional ball is then in play (18.3c(2)), for one stroke."""
    lost = {"whereabouts": "not_known", "last_stroke_from_penalty_area": "no"}
    assert said("ball_not_found", **lost, provisional_state="not_played")[0].startswith(
        "The ball is lost: one penalty stroke;"
    )
    assert said("ball_not_found", **lost, provisional_state="lost_or_out")[0].startswith(
        "The ball is lost: two penalty strokes;"
    )
    assert said("ball_not_found", **lost, provisional_state="found")[0] == (
        "The provisional ball is in play: one penalty stroke; go on with the provisional ball."
    )


def test_a_ball_not_identified_or_not_found_after_it_was_moved_is_lost() -> None:
    """Rule 18.2a(1): neither identified in time nor found at all: lost, and never said to be found in time."""
    for what, facts in (
        ("identifying_ball", {"how_identified": "not_at_all"}),
        ("ball_moved_by_outside_influence", {"outside_cause_known": "no", "found_after_moving": "no"}),
    ):
        assert said(what, **facts)[0].startswith("The ball is lost: one penalty stroke;")


def test_every_finding_has_words_and_comes_from_somewhere() -> None:
    """No finding is a key left bare, and none is idle: some ruling of the book finds it."""
    assert all(term(one) != f"Finding.{one.name}" for one in Finding)
    found = {finding_of(ruling) for one in INCIDENTS for day in EDITIONS for ruling in rulings(one.name, day)}
    assert set(Finding) - found == set()


def test_the_keys_findings_are_read_from_exist() -> None:
    """Each note a finding is read from is a note of the catalogue, each fact one of the vocabulary."""
    from marram.rules.facts import vocabulary

    assert BY_NOTE.keys() <= catalogue("NOTES").keys()
    assert BY_FACT.keys() <= vocabulary().keys()
    assert WRONG_BY_NOTE.keys() <= catalogue("NOTES").keys()


def test_each_answer_a_finding_is_read_from_is_an_answer_of_its_fact() -> None:
    """No answer is spelled as the vocabulary does not spell it: such a finding would never be found."""
    from marram.rules.facts import vocabulary

    for name, findings in (*FREE_BY_FACT.items(), *FREE_STROKE_BY_FACT.items()):
        if name.startswith("local_rule_"):
            continue
        fact = vocabulary()[name]
        known = {str(one.value if isinstance(one, Enum) else one) for one in fact.answers} or {""}
        if name not in (
            "blind_help",
            "device_act",
            "aide_act",
            "amputee_act",
        ):  # one list for the four of them
            assert findings.keys() <= known, (name, findings.keys() - known)


@pytest.mark.parametrize("day", [date(2021, 6, 1), date(2024, 6, 1)])
def test_a_stroke_made_as_allowed_is_no_breach(day: date) -> None:
    """Asked about a stance across the line to spare another's, the answer is that nothing was breached (Rule 10.1c)."""
    facts = {"foot_on_line": "yes", "stance_to_spare_other_line": "yes"}
    result = rule("stood_across_line", facts, played_on=day, form_of_play="stroke_play", local_rules=[])
    assert isinstance(result, Ruling)
    assert finding_of(result) is Finding.NO_BREACH
    assert headline(result, FormOfPlay.STROKE_PLAY).startswith("No breach: no penalty")


def test_what_each_of_several_players_gets_is_said_of_each() -> None:
    """Rule 6.4b(1): an agreement to gain an advantage by the order costs each of them, not "you ... for each"."""
    line, told = said("played_out_of_turn", agreed_out_of_turn="yes", agreed_for_advantage="yes")
    assert "for each player involved" in line
    assert told == (
        "The stroke counts: each of you gets two penalty strokes (the general penalty); play it as it lies."
    )
