"""Rule 25: modifications for players with disabilities."""

from collections.abc import Callable
from dataclasses import replace

from marram.rules.book.hole_by_hole import hole_by_hole
from marram.rules.book.plain_outcomes import free, in_breach, one_stroke
from marram.rules.book.relief_options import back_on_the_line, lateral, offer
from marram.rules.book.rule_04_ball_and_equipment import equipment_breach
from marram.rules.book.rule_09_player import moved_by_player
from marram.rules.book.rule_10_other_help import object_set_down
from marram.rules.book.rule_14_dropping import dropped_but_wrongly
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.disability import (
    AideAct,
    AmputeeAct,
    BlindHelp,
    DeviceAct,
    WheeledRelief,
    aide_act,
    amputee_act,
    behind_helped_during_stroke,
    blind_help,
    cannot_swing_without_anchoring,
    device_accepted,
    device_act,
    drop_effort_reasonable,
    handled_clubs_as_courtesy,
    modifications_adopted,
    player_eligible,
    sand_tested_or_improved,
    supervisor_gave_advice,
    wheeled_relief,
)
from marram.rules.relief_option import Limit, Reference
from marram.rules.ruling import Judgement, NotCovered, Ruling, general_penalty, no_penalty

_UNMODIFIED = NotCovered("unmodified_rules_apply", "25.1")


@provision("25.1")
def modifications_apply(case: Case) -> bool:
    """Since 2023 the modifications apply everywhere; before, only where the Committee adopted them."""
    if not case.played_since(EDITION_2023) and not case[modifications_adopted]:
        return False
    return case[player_eligible]


def as_modified(case: Case, modified: Callable[[Case], Ruling | NotCovered]) -> Ruling | NotCovered:
    """Rule by the modification where it applies to the player; elsewhere the Rules apply unmodified.

    Until 2022 the modifications stood in rules of their own, numbered differently; a note says so.
    """
    if not modifications_apply(case):
        return _UNMODIFIED
    outcome = modified(case)
    if isinstance(outcome, NotCovered) or case.played_since(EDITION_2023):
        return outcome
    return outcome.note("numbers_are_of_2023")


@provision("25.2")
def blind_player(case: Case) -> Ruling | NotCovered:
    """A player who is blind may have help from an aide, aiming, in bunkers and with the ball."""
    return as_modified(case, help_for_blind_player)


@provision("25.2")
def help_for_blind_player(case: Case) -> Ruling | NotCovered:
    """Each act in turn: what the modification allows, and what it does not."""
    act = case[blind_help]
    if act is BlindHelp.OBJECT_LEFT:
        return in_breach("10.2b(3)").under("25.2c")
    if act is BlindHelp.AIDE_BEHIND:
        return in_breach("10.2b(4)").under("25.2d") if case[behind_helped_during_stroke] else free("25.2d")
    if act is BlindHelp.SAND_TOUCHED:
        return in_breach("12.2b(1)").under("25.2f") if case[sand_tested_or_improved] else free("25.2f")
    if act is BlindHelp.HELD_DURING_STROKE:
        return held_during_stroke(case, "25.2a")
    if act is BlindHelp.SECOND_AIDE:
        return second_aide(case, "25.2b")
    if act is BlindHelp.AIDE_CARRIED_CLUBS:
        return aide_carried_clubs(case, "25.2e")
    return free(
        {
            BlindHelp.AIM_STANCE_ADVICE: "25.2a",
            BlindHelp.OBJECT_REMOVED: "25.2c",
            BlindHelp.LIFTED_ON_GREEN: "25.2g",
            BlindHelp.DROPPED_BY_OTHER: "25.2h",
        }[act]
    )


@provision("25.3")
def amputee_player(case: Case) -> Ruling | NotCovered:
    """A player who is an amputee may use a prosthesis, anchor if need be, and have the ball put down."""
    return as_modified(case, act_of_amputee)


@provision("25.3")
def act_of_amputee(case: Case) -> Ruling | NotCovered:
    """Each act in turn: what the modification allows, and what it does not."""
    act = case[amputee_act]
    if act is AmputeeAct.PROSTHESIS:
        return device_use(case, "25.3a")
    if act is AmputeeAct.ANCHORED:
        return free("25.3b") if case[cannot_swing_without_anchoring] else in_breach("10.1b").under("25.3b")
    if act is AmputeeAct.REPLACED_WITH_EQUIPMENT:
        return replaced_with_equipment(case, "25.3d")
    return free("25.3c")


@provision("25.4")
def mobility_device(case: Case) -> Ruling | NotCovered:
    """A player who uses an assistive mobility device may use it for stance and stroke, and have help."""
    return as_modified(case, act_with_mobility_device)


@provision("25.4")
def act_with_mobility_device(case: Case) -> Ruling | NotCovered:
    """Each act in turn: what the modification allows, and what it does not."""
    act = case[device_act]
    if act is DeviceAct.DEVICE_ITSELF:
        return device_use(case, "25.4f")
    if act is DeviceAct.HELD_DURING_STROKE:
        return held_during_stroke(case, "25.4a")
    if act is DeviceAct.SECOND_AIDE:
        return second_aide(case, "25.4c")
    if act is DeviceAct.AIDE_CARRIED_CLUBS:
        return aide_carried_clubs(case, "25.4j")
    if act is DeviceAct.ANCHORED:
        return free("25.4h") if case[cannot_swing_without_anchoring] else in_breach("10.1b").under("25.4h")
    if act is DeviceAct.REPLACED_WITH_EQUIPMENT:
        return replaced_with_equipment(case, "25.4e")
    if act is DeviceAct.BALL_MOVED_BY_DEVICE:
        return moved_by_player(case).under("25.4")
    breaches = {
        DeviceAct.STANCE_BUILT: ("8.1a", "25.4g"),
        DeviceAct.DEVICE_ON_LINE: ("10.1c", "25.4i"),
        DeviceAct.SAND_TESTED: ("12.2b(1)", "25.4l"),
    }
    if act in breaches:
        deciding, modified = breaches[act]
        return general_penalty(deciding).under(modified).play_as_it_lies()
    return free(
        {
            DeviceAct.HELP_WITH_POSITION: "25.4a",
            DeviceAct.LIFTED_ON_GREEN: "25.4a",
            DeviceAct.DROPPED_BY_OTHER: "25.4a",
            DeviceAct.STANCE_WITH_DEVICE: "25.4g",
            DeviceAct.SAND_TOUCHED: "25.4l",
        }[act]
    )


@provision("25.4")
def wheeled_device_relief(case: Case) -> Ruling:
    """With a wheeled device lateral relief is four club-lengths, and leaving a bunker costs one stroke."""
    modified = modifications_apply(case)
    wanted = case[wheeled_relief]
    if wanted is WheeledRelief.OUT_OF_BUNKER:
        return out_of_bunker(case, modified)
    reference, plain = (
        (Reference.CROSSING_POINT, "17.1d(3)")
        if wanted is WheeledRelief.LATERAL_RED_PENALTY_AREA
        else (Reference.BALL, "19.2c")
    )
    extra = (Limit.OUTSIDE_PENALTY_AREA,) if wanted is WheeledRelief.LATERAL_RED_PENALTY_AREA else ()
    return lateral_with_device(modified, reference, plain, extra)


def lateral_with_device(modified: bool, reference: Reference, plain: str, extra: tuple[Limit, ...]) -> Ruling:
    """Lateral relief of four club-lengths where the modification applies, else of two."""
    option = lateral("25.4m" if modified else plain, reference, extra_limits=extra)
    if modified:
        option = replace(option, club_lengths=4)
    citation = "25.4m" if modified else plain
    return offer(no_penalty(citation).under(plain), option)


@provision("19.3b")
def out_of_bunker(case: Case, modified: bool) -> Ruling:
    """Back on the line out of the bunker: two strokes, or one for this player."""
    option = back_on_the_line(
        case,
        "25.4n" if modified else "19.3b",
        penalty=1 if modified else 2,
        extra_limits=(Limit.OUTSIDE_BUNKER,),
    )
    return offer(no_penalty("25.4n" if modified else "19.3b").under("19.3b"), option)


@provision("25.5")
def intellectual_disability(case: Case) -> Ruling | NotCovered:
    """A player with an intellectual disability may have an aide; a supervisor is for several players."""
    return as_modified(case, help_with_intellectual_disability)


@provision("25.5")
def help_with_intellectual_disability(case: Case) -> Ruling | NotCovered:
    """Each act in turn: what the modification allows, and what it does not."""
    act = case[aide_act]
    if act is AideAct.SECOND_AIDE:
        return second_aide(case, "25.5b")
    if act is AideAct.AIDE_CARRIED_CLUBS:
        return aide_carried_clubs(case, "25.5c")
    if act is AideAct.OBJECT_SET_DOWN:
        return aide_set_object_down(case)
    if act is AideAct.SUPERVISOR_HELPED:
        return in_breach("10.2a").under("25.5a") if case[supervisor_gave_advice] else free("25.5a")
    return free("25.5a" if act is AideAct.ADVICE_AND_HELP else "25.5d")


def replaced_with_equipment(case: Case, citation: str) -> Ruling | NotCovered:
    """Since 2023 a ball may be replaced by rolling it with a club; the modifications of 2019 are not known to say so."""
    if not case.played_since(EDITION_2023):
        return NotCovered("replacing_before_2023", "14.2b(2)")
    return free(citation)


@provision("25.6")
def second_aide(case: Case, citation: str) -> Ruling:
    """More than one aide at a time: the general penalty for each hole, as for a second caddie."""
    return hole_by_hole(case, citation).under("10.3a(1)")


@provision("25.6")
def aide_carried_clubs(case: Case, citation: str) -> Ruling:
    """Beside a caddie, an aide who carries or handles clubs counts as a second caddie."""
    if case[handled_clubs_as_courtesy]:
        return free(citation)
    return hole_by_hole(case, "10.3a(1)").under(citation)


@provision("4.3b")
def device_use(case: Case, citation: str) -> Ruling:
    """A prosthesis or a mobility device stands under the same test as other medical equipment."""
    if case[device_accepted]:
        return free(citation).under("4.3b")
    return equipment_breach(case, "4.3a").under(citation)


@provision("10.2b(5)")
def held_during_stroke(_case: Case, citation: str) -> Ruling:
    """Help ends where the stroke begins: physical help in making it is not allowed to anybody."""
    return general_penalty("10.2b(5)").under(citation).play_as_it_lies().stroke_counts()


@provision("25.5c")
def aide_set_object_down(case: Case) -> Ruling | NotCovered:
    """Setting down an object to help with aim stays forbidden here, unlike for a player who is blind."""
    outcome = object_set_down(case)
    return outcome.under("25.5c") if isinstance(outcome, Ruling) else outcome


@provision("25.6b")
def dropped_with_disability(case: Case) -> Ruling | NotCovered:
    """The player's reasonable judgement of knee height is accepted, and so is every reasonable effort."""
    if not case.played_since(EDITION_2023):
        return NotCovered("dropping_before_2023", "14.3b")
    if not modifications_apply(case):
        return _UNMODIFIED
    if case[drop_effort_reasonable]:
        return free("25.6b").under("14.3b").note("drop_stands_see_where_it_stays")
    return dropped_but_wrongly(case).under("25.6b")


@provision("25.6a")
def delay_with_disability(case: Case) -> Judgement | NotCovered:
    """The Committee sets reasonable standards for delay, and may well be less strict."""
    if not modifications_apply(case):
        return _UNMODIFIED
    return Judgement(
        "25.6a",
        "committee",
        ("delay_course_and_weather", "delay_kind_of_competition", "delay_extent_of_disability"),
        (free("25.6a"), one_stroke("5.6a")),
    )
