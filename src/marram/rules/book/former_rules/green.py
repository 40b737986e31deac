"""Before and after 2019: the putting green, the flagstick, the caddie behind the player, the wrong green."""

from marram.rules.book.former_rules.options import as_it_lies, former_drop, in_breach, with_the_same_ball
from marram.rules.book.rule_08_breach import breach
from marram.rules.book.rule_08_improving import nothing_gained
from marram.rules.book.rule_10_other_help import caddie_behind_ball, line_shown_on_green, set_down_for_stance
from marram.rules.book.rule_13_flagstick import ball_against_flagstick, ball_hit_flagstick
from marram.rules.book.rule_13_putting_greens import damage_repaired, wrong_green
from marram.rules.editions import EDITION_2019
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.deflection import played_from_green
from marram.rules.facts.flagstick import FlagstickState, attendance_authorised, flagstick_state
from marram.rules.facts.former import (
    RepairedMark,
    attended_unasked,
    club_lay_in_stroke,
    fell_in_when_drawn,
    line_touch_listed,
    repair_might_help,
    repaired_mark,
)
from marram.rules.facts.green import (
    WrongGreenInterference,
    green_improved,
    repair_delayed_play,
    repair_within_limits,
    wrong_green_interference,
)
from marram.rules.facts.help import (
    LineShownBy,
    attending_flagstick,
    left_before_stroke,
    line_shown_by,
    shown_by_own_side,
    still_there_in_stroke,
    stood_there_deliberately,
)
from marram.rules.penalty import Who
from marram.rules.relief_option import Limit, Reference, ReliefKind
from marram.rules.ruling import Action, NotCovered, Ruling, WhichBall, general_penalty, no_penalty


@provision("13.2")
def ball_hit_the_flagstick(case: Case) -> Ruling:
    """Since 2019 a putt may hit the flagstick by accident; before, it cost the general penalty."""
    if not case.played_since(EDITION_2019):
        return former_hit_flagstick(case)
    return ball_hit_flagstick(case)


@provision("former 17-3")
def former_hit_flagstick(case: Case) -> Ruling:
    """A ball must not hit an attended or removed flagstick, nor, played from the green, one left in the hole."""
    if case.is_one_of(flagstick_state, FlagstickState.LEFT_IN_HOLE):
        return former_hit_unattended_flagstick(case)
    if case[attendance_authorised]:
        return in_breach("former 17-3").stroke_counts()
    return former_hit_flagstick_unasked(case)


@provision("former 17-3")
def former_hit_unattended_flagstick(case: Case) -> Ruling:
    """Only a stroke from the putting green was penalised."""
    if case[played_from_green]:
        return in_breach("former 17-3").stroke_counts()
    return as_it_lies("former 17-3")


@provision("former 17-2")
def former_hit_flagstick_unasked(case: Case) -> Ruling:
    """Not attended or removed on the player's authority: the player is free, another player who did it is not."""
    if not case[attended_unasked]:
        return as_it_lies("former 17-3").under("former 17-2")
    if case.match_play:
        return general_penalty("former 17-2", Who.OPPONENT).stroke_counts().next(Action.HOLE_OVER)
    ruling = general_penalty("former 17-2", Who.OTHER_PLAYER)
    if case[played_from_green]:
        return ruling.stroke_does_not_count().next(Action.REPLAY)
    return ruling.stroke_counts().play_as_it_lies()


@provision("13.2c")
def ball_rests_against_flagstick(case: Case) -> Ruling:
    """Since 2019 a ball partly in the hole against the flagstick is holed; before, it had to drop."""
    if not case.played_since(EDITION_2019):
        return former_against_flagstick(case)
    return ball_against_flagstick(case)


@provision("former 17-4")
def former_against_flagstick(case: Case) -> Ruling:
    """The flagstick was moved: a ball that fell in was holed, any other was placed on the lip without penalty."""
    if case[fell_in_when_drawn]:
        return no_penalty("former 17-4").next(Action.HOLED)
    return no_penalty("former 17-4").next(Action.PLACE, WhichBall.ORIGINAL).note("former_place_on_lip")


@provision("13.1c(2)")
def mark_repaired_on_green(case: Case) -> Ruling:
    """Since 2019 damage by shoes may be repaired too; before, only ball-marks and old hole plugs."""
    if not case.played_since(EDITION_2019):
        return former_repair(case)
    return damage_repaired(case)


@provision("former 16-1c")
def former_repair(case: Case) -> Ruling:
    """Any other damage had to be left if repairing it might help the player on that hole."""
    if case.is_one_of(repaired_mark, RepairedMark.SHOE_DAMAGE) and case[repair_might_help]:
        return in_breach("former 16-1c")
    if not case[repair_within_limits] and case[green_improved]:
        return in_breach("former 16-1a")
    if case[repair_delayed_play]:
        return in_breach("former 6-7")
    return no_penalty("former 16-1c").play_as_it_lies()


@provision("8.1a")
def line_on_green_touched(case: Case) -> Ruling:
    """Since 2019 touching the line is a breach only if it improves it; before, the touch itself was."""
    if not case.played_since(EDITION_2019):
        return former_line_touched(case)
    return breach(case, "8.1a") if case[green_improved] else nothing_gained(case)


@provision("former 16-1a")
def former_line_touched(case: Case) -> Ruling:
    """The line of putt was not to be touched, except in a few listed ways."""
    if case[line_touch_listed] and not case[green_improved]:
        return no_penalty("former 16-1a").play_as_it_lies()
    return in_breach("former 16-1a")


@provision("10.2b(2)")
def line_on_green_shown(case: Case) -> Ruling | NotCovered:
    """Since 2019 the green may be touched in showing the line; before, it was not to be touched."""
    if not case.played_since(EDITION_2019):
        return former_line_shown(case)
    return line_shown_on_green(case)


@provision("former 8-2b")
def former_line_shown(case: Case) -> Ruling | NotCovered:
    """Before the stroke only, by the player's side only, without touching the green or setting a mark."""
    if not case[shown_by_own_side]:
        return NotCovered("former_line_shown_by_others", "former 8-2b")
    if not case.is_one_of(line_shown_by, LineShownBy.PERSON):
        return in_breach("former 8-2b")
    if case[still_there_in_stroke] and not case[attending_flagstick]:
        return in_breach("former 8-2b")
    return as_it_lies("former 8-2b")


@provision("10.2b(4)")
def caddie_lined_player_up(case: Case) -> Ruling:
    """Since 2019 the caddie must be away before the stance is begun; before, before the stroke was made."""
    if not case.played_since(EDITION_2019):
        return former_caddie_behind(case)
    return caddie_behind_ball(case)


@provision("former 14-2b")
def former_caddie_behind(case: Case) -> Ruling:
    """Only the stroke itself must not be made with the caddie on the line behind the ball."""
    if case[left_before_stroke]:
        return as_it_lies("former 14-2b")
    if not case[stood_there_deliberately]:
        return as_it_lies("former 14-2 Exception")
    return in_breach("former 14-2b").stroke_counts()


@provision("10.2b(3)")
def club_laid_down_for_aim(case: Case) -> Ruling:
    """Since 2019 no stance may be taken with the club there; before, it had to be gone before the stroke."""
    if not case.played_since(EDITION_2019):
        return former_club_laid_down(case)
    return set_down_for_stance(case)


@provision("former 8-2a")
def former_club_laid_down(case: Case) -> Ruling:
    """A mark for the line was free until the stroke; on the putting green none was allowed."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return in_breach("former 8-2b")
    return in_breach("former 8-2a") if case[club_lay_in_stroke] else as_it_lies("former 8-2a")


@provision("13.1f")
def interference_by_wrong_green(case: Case) -> Ruling:
    """Since 2019 stance and swing count as interference too; before, only a ball on the wrong green."""
    if not case.played_since(EDITION_2019):
        return former_wrong_green(case)
    return wrong_green(case)


@provision("former 25-3")
def former_wrong_green(case: Case) -> Ruling:
    """A ball on a wrong green had to be dropped within a club-length of the nearest point of relief."""
    if not case.is_one_of(wrong_green_interference, WrongGreenInterference.BALL_ON_IT):
        return no_penalty("former 25-3").play_as_it_lies()
    option = former_drop(
        ReliefKind.FREE,
        "former 25-3",
        Reference.NEAREST_POINT,
        (Limit.NOT_NEARER, Limit.GENERAL_AREA, Limit.COMPLETE_RELIEF),
        club_lengths=1,
    )
    return with_the_same_ball(no_penalty("former 25-3").with_options(option, may_play_as_it_lies=False))
