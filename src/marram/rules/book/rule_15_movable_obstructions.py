"""Rule 15.2: movable obstructions."""

from marram.rules.book.relief_options import offer, stroke_and_distance
from marram.rules.book.rule_08_breach import breach
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.book.rule_16_options import under_the_ball
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.deflection import meant_to_affect_ball
from marram.rules.facts.loose_things import (
    ArtificialThing,
    artificial_thing,
    found_in_obstruction,
    known_in_obstruction,
    motion_during_removal,
    obstruction_on_green,
    obstruction_removal_moved_ball,
)
from marram.rules.ruling import HandOver, NotCovered, Ruling, no_penalty


@provision("15.2a(1)")
def artificial_thing_removed(case: Case) -> Ruling | NotCovered | HandOver:
    """An artificial object was removed: a movable obstruction may be, anywhere and in any way."""
    thing = case[artificial_thing]
    if thing is ArtificialThing.NO_MOVABLE_OBSTRUCTION:
        return HandOver("fixed_object_moved", "8.1a", (("fixed_object", "immovable_or_boundary"),))
    if thing is ArtificialThing.TEE_MARKER:
        return tee_marker_removed(case)
    if thing is ArtificialThing.MOVABLE_OBSTRUCTION and case[motion_during_removal]:
        return removed_while_ball_in_motion(case)
    return movable_obstruction_removed(case)


@provision("15.2a(1)")
def movable_obstruction_removed(case: Case) -> Ruling:
    """If the ball moves meanwhile there is no penalty, and it is replaced."""
    if case[obstruction_removal_moved_ball]:
        return must_go_back(no_penalty("15.2a(1)"))
    return no_penalty("15.2a(1)").play_as_it_lies()


@provision("15.2a(1) Exception 1")
def tee_marker_removed(_case: Case) -> HandOver:
    """Tee-markers stay where they are while a ball is to be played from that teeing area: Rule 6.2b(4) decides."""
    return HandOver("tee_marker_moved", "15.2a(1) Exception 1", (("about_to_play_from_tee", "yes"),))


@provision("15.2a(1) Exception 2")
def removed_while_ball_in_motion(case: Case) -> Ruling:
    """While a ball is in motion it may not be removed on purpose to affect where the ball comes to rest."""
    if not case[meant_to_affect_ball]:
        return movable_obstruction_removed(case)
    return breach(case, "11.3", "15.2a(1) Exception 2")


@provision("15.2")
def ball_in_or_on_movable_obstruction(case: Case) -> Ruling:
    """The ball lies, or is thought to lie, in or on a movable obstruction."""
    if case[found_in_obstruction]:
        return relief_from_movable_obstruction(case, no_penalty("15.2a"), found=True)
    if case[known_in_obstruction]:
        return ball_not_found_in_obstruction(case)
    return not_known_to_be_in_obstruction(case)


@provision("15.2a")
def relief_from_movable_obstruction(case: Case, ruling: Ruling, *, found: bool) -> Ruling:
    """Lift the ball, remove the obstruction; drop a ball, or on the putting green place it, right underneath."""
    option = under_the_ball(on_green=case[obstruction_on_green], found=found)
    return offer(ruling, option, may_play_as_it_lies=found).note("remove_obstruction_first")


@provision("15.2b")
def ball_not_found_in_obstruction(case: Case) -> Ruling:
    """Known or virtually certain to be there, an unfound ball may be given up for the same free relief."""
    ruling = relief_from_movable_obstruction(case, no_penalty("15.2b"), found=False)
    return ruling.note(
        "reference_where_it_entered", "do_not_play_original_again", "stroke_and_distance_always_open"
    )


@provision("18.2b")
def not_known_to_be_in_obstruction(_case: Case) -> Ruling:
    """Short of virtual certainty a ball that is not found in time is lost."""
    ruling = offer(no_penalty("18.2b"), stroke_and_distance("18.2b"), may_play_as_it_lies=False)
    return ruling.under("15.2b").note("search_time_goes_on")
