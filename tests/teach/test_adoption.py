"""What a Local Rule changes: found in the book, told with a situation ruled without it and with it, drawn."""

import json

import pytest

from marram.course.loading import load
from marram.demo import COURSE
from marram.errors import InputError
from marram.rules.editions import EDITION_2019, EDITION_2023, as_clarified
from marram.rules.engine.changes import substance
from marram.rules.engine.request import rule
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.result import NeedFacts
from marram.teach.what_changed.adopted import FILE, adopted, asking, found_for, moved
from marram.teach.what_changed.adoption import adoption, codes_on
from marram.teach.what_changed.drawing import on_ground

TODAY = as_clarified(EDITION_2023)
UNTIL_2022 = as_clarified(EDITION_2019)
FEW_INCIDENTS = ("A-4", "D-4.1", "E-3", "E-5", "E-12", "F-3", "G-9", "K-3", "L-2")


@pytest.mark.parametrize("day", [UNTIL_2022, TODAY])
def test_every_local_rule_that_can_be_adopted_moves_a_ruling(day) -> None:
    """And in the situation shown the two rulings are not the same: adopted, it says something."""
    codes = codes_on(day)
    assert len(codes) > 60
    for code in codes:
        found = adopted(code, day)
        assert found, code
        fact = LOCAL_RULES[code].name
        without, with_it = (
            rule(found[0].incident, {**found[0].facts, fact: told}, played_on=day) for told in ("no", "yes")
        )
        assert not isinstance(without, NeedFacts), code
        assert not isinstance(with_it, NeedFacts), code
        assert without != with_it, code


@pytest.mark.parametrize("code", FEW_INCIDENTS)
def test_what_the_package_keeps_is_what_the_book_says(code) -> None:
    """`make changes` writes it; nobody edits it by hand. (Those of few incidents: a walk of E-1 takes seconds.)"""
    kept = json.loads(FILE.read_text(encoding="utf-8"))["days"][-1]["codes"].get(code)
    found = [
        {"incident": one.incident, "situations": one.situations, "facts": dict(one.facts)}
        for one in found_for(code, TODAY)
    ]

    assert kept == found


@pytest.mark.parametrize("day", [UNTIL_2022, TODAY])
def test_of_every_local_rule_what_is_kept_holds_in_one_incident(day) -> None:
    """Walked where it moves fewest situations, each code gives what is kept, in incidents that ask for it and no others."""
    document = json.loads(FILE.read_text(encoding="utf-8"))["days"]
    kept = next(one["codes"] for one in document if one["day"] == day.isoformat())
    assert len(kept) > 60
    for code, every in kept.items():
        fact = LOCAL_RULES[code]
        assert {one["incident"] for one in every} <= set(asking(fact)), code
        fewest = min(every, key=lambda one: (one["situations"], one["incident"]))
        found = moved(fewest["incident"], day, fact)
        assert found is not None, code
        assert {**fewest} == {
            "incident": found.incident,
            "situations": found.situations,
            "facts": dict(found.facts),
        }, code


def test_the_alternative_to_stroke_and_distance_is_told_by_what_players_meet() -> None:
    """Model Local Rule E-5: for two strokes near where the ball was lost; first of all for a ball not found."""
    found = adoption("E-5", TODAY)

    first = found.met[0].example
    assert first.incident == "ball_not_found"
    assert "one penalty stroke" in first.before
    assert "one or two penalty strokes" in first.after
    assert adoption("E-5", TODAY, rare_first=True).met == found.met[::-1]


def test_a_numbered_form_stands_for_its_local_rule_and_others_are_refused() -> None:
    """Nothing is made up for a code that is none, cannot be adopted on that day, or moves no ruling."""
    assert adoption("b-2.1", TODAY).code == "B-2"
    for code, day in (("Z-9", TODAY), ("M-1", UNTIL_2022), ("A-1", TODAY)):
        with pytest.raises(InputError):
            adoption(code, day)


def test_only_the_relief_that_differs_is_drawn() -> None:
    """E-5 adds a way: stroke and distance, offered without it as well, is drawn in neither; the way it adds is."""
    course = load(COURSE)
    fact = LOCAL_RULES["E-5"].name
    shown = adoption("E-5", TODAY).met[0].example
    drawn = on_ground(shown, (TODAY, TODAY), course, ({fact: "no"}, {fact: "yes"}))

    assert drawn is not None
    assert drawn.before == ()
    assert len(drawn.after) == 1
    assert [end for end, _ in drawn.named()] == ["", "-after-1"]


def test_a_local_rule_without_ground_has_no_drawing() -> None:
    """Distance-measuring devices (G-5) are nowhere on a map."""
    fact = LOCAL_RULES["G-5"].name
    shown = adoption("G-5", TODAY).met[0].example

    assert on_ground(shown, (TODAY, TODAY), load(COURSE), ({fact: "no"}, {fact: "yes"})) is None


def test_the_rulings_shown_differ_in_substance_but_where_only_the_place_does() -> None:
    """D-4.1 and F-3 say from where relief is measured: the notes tell it, the strokes and options are the same."""
    alike = set()
    for code in codes_on(TODAY):
        one = adopted(code, TODAY)[0]
        fact = LOCAL_RULES[code].name
        both = [rule(one.incident, {**one.facts, fact: told}, played_on=TODAY) for told in ("no", "yes")]
        if substance(both[0]) == substance(both[1]):
            alike.add(code)

    assert alike == {"D-4.1", "F-3"}
