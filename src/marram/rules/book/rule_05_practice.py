"""Rules 5.2 and 5.5: practice before, between and during rounds."""

from marram.rules.book.local_rules.area_i import (
    forbidden_at_last_green,
    practice_allowed_before_stroke_play,
    practised_before_match,
)
from marram.rules.book.plain_outcomes import free, in_breach, out
from marram.rules.book.rule_05_start_and_pace import delayed_unreasonably
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.practice import (
    PracticeBefore,
    Struck,
    WhenPractised,
    day_of_play_over,
    match_stopped_until_another_day,
    practice_allowed_when_stopped,
    practice_breach_again,
    practice_delayed_play,
    practised_before,
    practised_from_bunker,
    putt_or_chip_nearby,
    struck,
    when_practised,
)
from marram.rules.ruling import Ruling


@provision("5.2")
def practised_before_round(case: Case) -> Ruling:
    """Before a match practice on the course is free; on a day of stroke play it is restricted."""
    if case.match_play:
        return practised_before_match(case)
    return practised_before_stroke_play(case)


@provision("5.2b")
def practised_before_stroke_play(case: Case) -> Ruling:
    """Practice on the course before the day's last round ends: general penalty, then disqualification."""
    what = case[practised_before]
    if what is PracticeBefore.ON_OTHER_DAY:
        return free("5.2b").under("Clarification 5.2b/2")
    if what is PracticeBefore.EXEMPT or case[day_of_play_over]:
        return free("5.2b")
    if practice_allowed_before_stroke_play(case):
        return free("I-1.2").under("5.2b")
    if case[practice_breach_again]:
        return out("5.2b")
    ruling = in_breach("5.2b").note("on_first_hole")
    return ruling.under("Clarification 5.2b/3") if _tested_since_2023(case, what) else ruling


def _tested_since_2023(case: Case, what: PracticeBefore) -> bool:
    """Since 2023 a Clarification says that testing a green is penalised like a stroke."""
    return what is PracticeBefore.GREEN_TESTED and case.played_since(EDITION_2023)


@provision("5.5")
def practised_during_round(case: Case) -> Ruling:
    """What is no practice stroke is free; the rest depends on when it is made."""
    if not case.is_one_of(struck, Struck.BALL_FOR_PRACTICE):
        return free("5.5a").note("not_a_practice_stroke")
    when = case[when_practised]
    if when is WhenPractised.PLAYING_HOLE:
        return in_breach("5.5a")
    if when is WhenPractised.BETWEEN_HOLES:
        return practised_between_holes(case)
    return practised_while_stopped(case)


@provision("5.5b")
def practised_between_holes(case: Case) -> Ruling:
    """Between holes: putts and chips near the green just played or the next tee, never from a bunker."""
    if not case[putt_or_chip_nearby] or case[practised_from_bunker]:
        return in_breach("5.5b").note("on_next_hole")
    if forbidden_at_last_green(case):
        return in_breach("I-2").under("5.5b").note("on_next_hole")
    if case[practice_delayed_play]:
        return delayed_unreasonably(case).under("5.5b")
    return free("5.5b")


@provision("5.5c")
def practised_while_stopped(case: Case) -> Ruling:
    """While play is stopped: off the course, as between holes, or where the Committee allows."""
    if case[practice_allowed_when_stopped]:
        return free("5.5c")
    if case.match_play and case[match_stopped_until_another_day]:
        return free("5.5c").note("practise_until_match_resumes")
    return in_breach("5.5c").note("on_next_hole_if_between")
