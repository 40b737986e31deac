"""Rule 15.3: a ball or ball-marker helping or interfering with play."""

from marram.rules.book.rule_09_natural_forces import lying_in_teeing_area
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.conduct import knew_it_applied
from marram.rules.facts.helping_ball import (
    BallMarkerMove,
    HelpingBall,
    InterferingBall,
    helping_ball,
    interfering_ball,
    marker_in_the_way,
    stroke_with_helping_ball,
)
from marram.rules.facts.lifting import Marking, cleaned_when_lifted, spot_marking
from marram.rules.penalty import Who, general
from marram.rules.ruling import (
    Action,
    Deadline,
    Ruling,
    disqualification,
    general_penalty,
    no_penalty,
    penalty,
)


@provision("15.3a")
def helping_ball_at_rest(case: Case) -> Ruling:
    """A ball at rest might help somebody's play: only on the putting green may it be lifted for that."""
    if not case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return helping_ball_off_the_green(case)
    done = case[helping_ball]
    if done is HelpingBall.LIFTED:
        return _lifted(no_penalty("15.3a").under("13.1b"))
    if done is HelpingBall.OWNER_PLAYS_FIRST:
        return owner_plays_first(case, "15.3a")
    if done is HelpingBall.LEFT_BY_AGREEMENT:
        return left_by_agreement(case)
    if done is HelpingBall.LEFT_WITHOUT_AGREEMENT:
        return no_penalty("15.3a").next(Action.PLAY_ON)
    if done is HelpingBall.STROKE_WITHOUT_WAITING:
        return stroke_without_waiting(case)
    return refused_to_lift(case)


@provision("15.3a")
def helping_ball_off_the_green(_case: Case) -> Ruling:
    """Anywhere else a ball stays where it lies, even if it might help."""
    return no_penalty("15.3a").play_as_it_lies().note("helping_ball_stays_off_green")


@provision("15.3a")
def left_by_agreement(case: Case) -> Ruling:
    """In stroke play each player who agreed gets the general penalty once the stroke is made."""
    if case.match_play:
        return helping_ball_left_in_match(case)
    if not case[stroke_with_helping_ball]:
        return (
            no_penalty("15.3a")
            .next(Action.LIFT)
            .note("lift_helping_ball_now")
            .correct("lift_before_that_stroke", Deadline.BEFORE_STROKE, general("15.3a", Who.EACH_PLAYER))
        )
    if case[knew_it_applied]:
        return agreed_to_ignore_rule(case)
    return (
        general_penalty("15.3a", Who.EACH_PLAYER)
        .under("Clarification 15.3a/1")
        .play_as_it_lies()
        .stroke_counts()
    )


@provision("15.3a")
def helping_ball_left_in_match(_case: Case) -> Ruling:
    """In match play a ball may be left to help, since only the two sides are concerned."""
    return no_penalty("15.3a").play_as_it_lies().stroke_counts().note("only_stroke_play_forbids_agreement")


@provision("1.3b(1)")
def agreed_to_ignore_rule(_case: Case) -> Ruling:
    """Players who agree to ignore a Rule that they know applies are disqualified."""
    return disqualification("1.3b(1)", Who.EACH_PLAYER).under("15.3a").next(Action.HOLE_OVER)


@provision("15.3")
def stroke_without_waiting(case: Case) -> Ruling:
    """The general penalty for playing without waiting for a helping ball or ball-marker to be moved."""
    return _general(case)


@provision("15.3")
def refused_to_lift(case: Case) -> Ruling:
    """The general penalty for refusing to lift or move it, once the other player has made the stroke."""
    return _general(case)


def _general(case: Case) -> Ruling:
    ruling = general_penalty("15.3")
    return ruling.next(Action.HOLE_OVER if case.match_play else Action.PLAY_ON)


@provision("15.3")
def owner_plays_first(case: Case, citation: str) -> Ruling:
    """Only in stroke play may a player asked to lift the ball play first instead."""
    if case.match_play:
        return no_penalty(citation).next(Action.LIFT).note("lift_when_asked_in_match")
    return no_penalty(citation).play_as_it_lies().note("may_play_first")


def _lifted(ruling: Ruling) -> Ruling:
    return ruling.replace_ball().note("replace_after_other_stroke")


@provision("15.3b(2)")
def interfering_ball_at_rest(case: Case) -> Ruling:
    """The player's ball might interfere with another player's play, anywhere on the course."""
    done = case[interfering_ball]
    if done in (InterferingBall.LIFTED_ON_REQUEST, InterferingBall.LIFTED_UNASKED):
        if case.is_one_of(area_of_ball, Area.TEEING_AREA):
            return lying_in_teeing_area(case)
        return lifted_on_request(case) if done is InterferingBall.LIFTED_ON_REQUEST else lifted_unasked(case)
    if done is InterferingBall.OWNER_PLAYS_FIRST:
        return owner_plays_first(case, "15.3b(2)")
    return refused_to_lift(case)


@provision("15.3b(2)")
def lifted_on_request(case: Case) -> Ruling:
    """Marked, not cleaned off the green, and replaced afterwards; one stroke for a fault in that."""
    if not case.is_one_of(spot_marking, Marking.RIGHT):
        return _lifted(penalty(1, "15.3b(2)").under("14.1a"))
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return _lifted(no_penalty("15.3b(2)").under("13.1b"))
    if case[cleaned_when_lifted]:
        return _lifted(penalty(1, "15.3b(2)").under("14.1c"))
    return _lifted(no_penalty("15.3b(2)"))


@provision("15.3b(2)")
def lifted_unasked(case: Case) -> Ruling:
    """Off the putting green one stroke for lifting one's own ball only because it might interfere."""
    if not case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return _lifted(penalty(1, "15.3b(2)"))
    if case.is_one_of(spot_marking, Marking.RIGHT):
        return _lifted(no_penalty("13.1b"))
    return _lifted(penalty(1, "14.1a"))


@provision("15.3c")
def ball_marker_in_the_way(case: Case) -> Ruling:
    """A ball-marker might help or interfere: it is moved aside by measuring, and moved back."""
    done = case[marker_in_the_way]
    if done is BallMarkerMove.MOVED_AND_BACK:
        return no_penalty("15.3c").replace_ball().note("move_marker_by_clubheads")
    if done is BallMarkerMove.NOT_MOVED_BACK:
        return played_from_wrong_place(case).under("15.3c")
    if done is BallMarkerMove.STROKE_WITHOUT_WAITING:
        return stroke_without_waiting(case)
    return refused_to_lift(case)
