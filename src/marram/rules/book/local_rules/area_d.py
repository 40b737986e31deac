"""Model Local Rules, area D: which ground counts as a wrong green, and how far relief goes."""

from marram.rules.book.relief_options import offer
from marram.rules.book.rule_16_options import in_general_area
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.green import WrongGreenInterference
from marram.rules.facts.local_course import (
    ExcludedGreen,
    excluded_green,
    fringe_interference,
    fringe_stance_counts,
)
from marram.rules.ruling import Ruling, no_penalty


@provision("D-4.2")
def fringe_of_wrong_green(case: Case) -> WrongGreenInterference:
    """Where adopted, since 2023, the fringe belongs to the wrong green."""
    if not fringe_belongs_to_green(case):
        return WrongGreenInterference.NONE
    how = case[fringe_interference]
    if how is WrongGreenInterference.STANCE_ONLY and not case[fringe_stance_counts]:
        return WrongGreenInterference.NONE
    return how


def fringe_belongs_to_green(case: Case) -> bool:
    """Whether the Local Rule that enlarges wrong greens is in force."""
    return case.played_since(EDITION_2023) and case.local_rule("D-4.2")


@provision("D-5")
def green_taken_out(case: Case) -> Ruling | None:
    """A practice green, or a temporary one not in use, that the Local Rule takes out of the wrong greens."""
    if not case.local_rule("D-5"):
        return None
    how = case[excluded_green]
    if how is ExcludedGreen.PLAYED_AS_IT_LIES:
        return no_penalty("D-5").play_as_it_lies()
    if how is ExcludedGreen.UNDER_REPAIR:
        return offer(no_penalty("D-5").under("16.1b"), in_general_area())
    return None


@provision("D-4")
def clear_of_fringe(case: Case, ruling: Ruling) -> Ruling:
    """Where adopted, relief from a wrong green must be clear of its fringe too."""
    if fringe_belongs_to_green(case):
        return ruling.under("D-4.2").note("clear_of_fringe_too")
    if case.local_rule("D-4.1"):
        return ruling.under("D-4.1").note("clear_of_fringe_too")
    return ruling
