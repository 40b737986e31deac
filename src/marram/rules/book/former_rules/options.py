"""The former Rules (until 2018): relief options and endings that several of them share."""

from marram.rules.penalty import general
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting
from marram.rules.ruling import Action, Deadline, Ruling, WhichBall, general_penalty, no_penalty, penalty


def former_stroke_and_distance(citation: str) -> ReliefOption:
    """Play again from where the previous stroke was made (former Rules 20-5 and 27-1), for one stroke."""
    return ReliefOption(
        ReliefKind.STROKE_AND_DISTANCE,
        citation,
        Reference.PREVIOUS_STROKE,
        0,
        (Limit.NOT_NEARER, Limit.SAME_AREA_AS_REFERENCE),
        1,
        Setting.AS_THE_SPOT_ALLOWED_BEFORE_2019,
    )


def former_drop(
    kind: ReliefKind,
    citation: str,
    reference: Reference,
    limits: tuple[Limit, ...],
    *,
    club_lengths: float = 0,
    penalty: int = 0,
) -> ReliefOption:
    """Drop from shoulder height; the ball could roll up to two club-lengths (former Rule 20-2)."""
    return ReliefOption(kind, citation, reference, club_lengths, limits, penalty, Setting.DROP_FROM_SHOULDER)


def as_it_lies(citation: str) -> Ruling:
    """No penalty; a stroke made counts and the ball is played as it lies."""
    return no_penalty(citation).stroke_counts().play_as_it_lies()


def in_breach(citation: str) -> Ruling:
    """The general penalty of the former Rules: loss of hole, or two strokes in stroke play."""
    return general_penalty(citation).play_as_it_lies()


def one_stroke_and_replace(citation: str) -> Ruling:
    """One stroke, and the ball goes back; played from elsewhere it is the general penalty in all."""
    return replaced(penalty(1, citation), citation)


def free_and_replace(citation: str) -> Ruling:
    """No penalty, and the ball goes back."""
    return replaced(no_penalty(citation), citation)


def replaced(ruling: Ruling, citation: str) -> Ruling:
    """The ball is replaced before the next stroke."""
    return ruling.replace_ball().correct("replace_before_stroke", Deadline.BEFORE_STROKE, general(citation))


def with_any_ball(ruling: Ruling) -> Ruling:
    """Relief for a penalty stroke let the player use another ball."""
    return ruling.next(ruling.action or Action.TAKE_RELIEF, WhichBall.ORIGINAL_OR_ANOTHER)


def with_the_same_ball(ruling: Ruling) -> Ruling:
    """Free relief kept the player to the same ball, if it could be got back at once."""
    return ruling.next(ruling.action or Action.TAKE_RELIEF, WhichBall.ORIGINAL)
