"""Model Local Rules, area I: practice before, between and during rounds."""

from marram.rules.book.plain_outcomes import free, in_breach, out
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_conduct import practised_at_last_green, within_practice_limits
from marram.rules.facts.practice import PracticeBefore, practice_breach_again, practised_before
from marram.rules.ruling import Ruling


@provision("I-1.1")
def practised_before_match(case: Case) -> Ruling:
    """Where adopted, players in a match practise on the course before or between rounds only as it allows."""
    if not case.local_rule("I-1.1"):
        return free("5.2a")
    if case.is_one_of(practised_before, PracticeBefore.EXEMPT):
        return free("5.2a").under("I-1.1")
    if case[within_practice_limits]:
        return free("I-1.1").under("5.2a")
    if case[practice_breach_again]:
        return out("I-1.1")
    return in_breach("I-1.1").note("on_first_hole")


@provision("I-1.2")
def practice_allowed_before_stroke_play(case: Case) -> bool:
    """Where adopted, practice on the course before or between rounds of stroke play is allowed, with its limits."""
    return case.local_rule("I-1.2") and case[within_practice_limits]


@provision("I-2")
def forbidden_at_last_green(case: Case) -> bool:
    """Where adopted, nobody practises at the green of the hole just completed, nor tests it."""
    return case.local_rule("I-2") and case[practised_at_last_green]
