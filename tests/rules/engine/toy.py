"""A small book of its own, so that the engine is tested without any Rule."""

from enum import Enum

from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.fact import choice, number, yes_no
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.ruling import Ruling, general_penalty, no_penalty, penalty


class Colour(Enum):
    """Three answers."""

    RED = "red"
    GREEN = "green"
    BLUE = "blue"


colour = choice("toy_colour", "Which colour?", {one: one.value for one in Colour}, help="Look.", source="toy")
wet = yes_no("toy_wet", "Is it wet?", help="Touch.", source="toy")
idle = yes_no("toy_idle", "Does this matter?", help="It does not.", source="toy")
late = number("toy_late", "How late?", help="Look at the clock.", source="toy", unit="minutes")


@provision("toy 1")
def entry(case: Case) -> Ruling:
    """Red leads to the clock, green to an idle question, blue to the edition and the form of play."""
    if case.is_one_of(colour, Colour.RED):
        return by_clock(case)
    if case.is_one_of(colour, Colour.GREEN):
        return after_idle(case)
    if case.played_since(EDITION_2023):
        return penalty(1, "toy 1").play_as_it_lies()
    if case.is_one_of(form_of_play, FormOfPlay.MATCH_PLAY):
        return penalty(2, "toy 1").play_as_it_lies()
    return penalty(3, "toy 1").play_as_it_lies()


@provision("toy 2")
def by_clock(case: Case) -> Ruling:
    """Up to five minutes one stroke, up to ten the general penalty, then none."""
    if case.at_most(late, 5):
        return penalty(1, "toy 2").play_as_it_lies()
    if case.at_most(late, 10):
        return general_penalty("toy 2").play_as_it_lies()
    assert not case.at_most(late, 5)
    return no_penalty("toy 2").play_as_it_lies()


@provision("toy 3")
def after_idle(case: Case) -> Ruling:
    """An idle question stands before the one that matters."""
    if case[idle]:
        return by_wetness(case)
    return by_wetness(case)


@provision("toy 4")
def by_wetness(case: Case) -> Ruling:
    """Wet costs a stroke."""
    return (penalty(1, "toy 4") if case[wet] else no_penalty("toy 4")).play_as_it_lies()
