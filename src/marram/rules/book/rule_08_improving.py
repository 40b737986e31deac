"""Rule 8.1a: actions that improve the conditions affecting the player's stroke."""

from marram.rules.book.rule_08_allowed import (
    allowed_in_preparing,
    allowed_in_testing,
    allowed_on_green,
)
from marram.rules.book.rule_08_breach import breach
from marram.rules.book.rule_08_restoring import restored_by_original_object, restored_by_removing_object
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.conditions_affecting import (
    Alteration,
    AlteredPlace,
    DeliberateAct,
    FixedObject,
    Preparing,
    Purpose,
    alteration,
    altered_place,
    conditions_improved,
    fixed_object,
    meant_for_later_play,
    original_object_back,
    placed_object_removed,
    preparing_how,
)
from marram.rules.ruling import HandOver, Ruling, no_penalty

_BREACH_IN_BUNKER = (Preparing.GROUNDING_CLUB, Preparing.PRACTICE_SWING, Preparing.BACKSWING)
_OF_ALTERATION = {
    Alteration.SURFACE: "8.1a(3)",
    Alteration.SAND_OR_SOIL: "8.1a(4)",
    Alteration.DEW_FROST_WATER: "8.1a(5)",
}


@provision("8.1a")
def nothing_gained(_case: Case) -> Ruling:
    """Without a potential advantage nothing was improved, and there is no breach."""
    return no_penalty("8.1a").play_as_it_lies()


@provision("8.2a")
def not_for_this_stroke(case: Case, act: DeliberateAct) -> Ruling | HandOver:
    """What does not improve the conditions affecting the stroke may still be meant to affect play elsewhere."""
    if not case[meant_for_later_play]:
        return nothing_gained(case)
    told = (("deliberate_act", act.value), ("purpose_of_act", Purpose.AFFECT_PLAY.value))
    return HandOver("own_conditions_altered", "8.2a", told)


@provision("8.1a(1)")
def fixed_object_moved(case: Case) -> Ruling | HandOver:
    """Moving, bending or breaking what grows or is fixed must not improve the conditions."""
    if not case[conditions_improved]:
        return not_for_this_stroke(case, DeliberateAct.MOVED_FIXED_OBJECT)
    if case.is_one_of(fixed_object, FixedObject.GROWING_OR_ATTACHED):
        return growing_object_moved(case)
    if case[original_object_back]:
        return restored_by_original_object(case)
    allowed_by = allowed_in_preparing(case)
    return allowed_under(case, allowed_by) if allowed_by else breach(case, "8.1a(1)")


@provision("8.1a(1)")
def growing_object_moved(case: Case) -> Ruling:
    """What grows or is attached may also give way in the teeing area, and to see whether it is loose."""
    if case.is_one_of(altered_place, AlteredPlace.OWN_TEEING_AREA):
        return allowed_under(case, "8.1b(8)")
    if case.is_one_of(altered_place, AlteredPlace.BUNKER) and grounded_club_on_sand(case):
        return sand_touched_in_bunker(case)
    allowed_by = allowed_in_preparing(case) or allowed_in_testing(case)
    if allowed_by:
        return allowed_under(case, allowed_by)
    if case[original_object_back]:
        return restored_by_original_object(case)
    return breach(case, "8.1a(1)")


@provision("8.1a(2)")
def object_put_in_position(case: Case) -> Ruling | HandOver:
    """A loose impediment or movable obstruction must not be put where it improves the conditions."""
    if not case[conditions_improved]:
        return not_for_this_stroke(case, DeliberateAct.PUT_OBJECT_IN_POSITION)
    if case[placed_object_removed]:
        return restored_by_removing_object(case)
    return breach(case, "8.1a(2)")


@provision("8.1a")
def ground_altered(case: Case) -> Ruling | HandOver:
    """The surface, sand, soil, dew, frost and water stay as they are; restoring them undoes nothing."""
    if case.is_one_of(altered_place, AlteredPlace.BUNKER) and touched_sand_with_club(case):
        return sand_touched_in_bunker(case)
    if not case[conditions_improved]:
        return not_for_this_stroke(case, DeliberateAct.ALTERED_GROUND_SAND_OR_WATER)
    if case.is_one_of(altered_place, AlteredPlace.OWN_TEEING_AREA):
        return allowed_under(case, "8.1b(8)")
    if case.is_one_of(altered_place, AlteredPlace.PUTTING_GREEN) and allowed_on_green(case):
        return allowed_under(case, "8.1b(10)")
    if case.is_one_of(altered_place, AlteredPlace.BUNKER) and case.is_one_of(
        preparing_how, Preparing.BUNKER_CARE_AFTER_PLAY
    ):
        return allowed_under(case, "8.1b(9)")
    allowed_by = allowed_in_preparing(case) or allowed_in_testing(case)
    if allowed_by:
        return allowed_under(case, allowed_by)
    return breach(case, _OF_ALTERATION[case[alteration]], "8.1c")


@provision("12.2b(1)")
def touched_sand_with_club(case: Case) -> bool:
    """Sand touched by the ball, in a practice swing or in the backswing: a breach with the ball in the bunker."""
    return case.is_one_of(preparing_how, *_BREACH_IN_BUNKER) and case.is_one_of(area_of_ball, Area.BUNKER)


@provision("12.2b(1)")
def grounded_club_on_sand(case: Case) -> bool:
    """Whatever gave way beside it: a club grounded right by a ball in the bunker touches its sand; one that swings need not."""
    return case.is_one_of(preparing_how, Preparing.GROUNDING_CLUB) and case.is_one_of(
        area_of_ball, Area.BUNKER
    )


@provision("12.2b(1)")
def sand_touched_in_bunker(case: Case) -> Ruling:
    """In a bunker the club must not touch the sand right by the ball, in a practice swing or in the backswing."""
    return breach(case, "12.2b(1)", "8.1b(4)", "8.1b(7)")


@provision("8.1b")
def allowed_under(_case: Case, citation: str) -> Ruling:
    """What a player may do in preparing for a stroke costs nothing, even if it improves the conditions."""
    return no_penalty(citation).play_as_it_lies()
