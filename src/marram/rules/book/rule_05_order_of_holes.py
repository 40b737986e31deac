"""Rules 5.1 and 5.3a: beginning the round where the Committee has set, and playing the holes in its order."""

from dataclasses import replace

from marram.rules.book.plain_outcomes import free, out
from marram.rules.book.rule_05_start_and_pace import off_by_five_minutes_at_most
from marram.rules.book.rule_06_teeing_area import began_outside_teeing_area
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.order_of_holes import order_set_by_committee, sent_there_by_committee
from marram.rules.facts.round import exceptional_circumstances, minutes_off
from marram.rules.ruling import Ruling

_OF_ANOTHER_HOLE = {"strokes_from_outside_do_not_count": "strokes_on_wrong_hole_do_not_count"}
"""What is said of a stroke from outside the teeing area, said of one on a hole whose turn it was not."""


@provision("5.3a")
def started_at_wrong_place(case: Case) -> Ruling:
    """Who begins elsewhere is not at the starting point set by the Committee: late, until ready there.

    That the strokes made elsewhere do not count, and that no second penalty is added for them, follows from
    Rule 6.1b and from the one penalty of Rule 5.3a as we read them; no published ruling was found.
    """
    if case[sent_there_by_committee]:
        return free("5.3a").note("committee_decides_how_round_goes_on")
    if case[exceptional_circumstances]:
        return free("5.3a Exception 3").note("start_at_right_place_now")
    if case.at_most(minutes_off, 5):
        return off_by_five_minutes_at_most(case, "5.3a Exception 1").note("start_at_right_place_now")
    return out("5.3a")


@provision("5.1")
def holes_out_of_order(case: Case) -> Ruling:
    """A hole begun before its turn is begun from outside the teeing area: at other tee-markers (Rule 6.1b)."""
    if case[order_set_by_committee]:
        return free("5.1")
    ruling = began_outside_teeing_area(case).under("5.1")
    return replace(ruling, notes=tuple(_OF_ANOTHER_HOLE.get(note, note) for note in ruling.notes))
