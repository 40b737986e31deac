"""The relief options that several Rules share, each built in one place."""

from dataclasses import replace

from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.penalty import general
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting
from marram.rules.ruling import Deadline, Ruling, WhichBall

_NEVER_NEARER_THAN = {
    Reference.LINE_THROUGH_BALL: Limit.NOT_NEARER_THAN_BALL,
    Reference.LINE_THROUGH_CROSSING_POINT: Limit.NOT_NEARER_THAN_CROSSING_POINT,
}

_SAID_WITH = {"17.2b": "measured_where_it_went_in", "E-1": "how_to_use_dropping_zone"}
"""Notes that belong to an option wherever it is listed, by the provision that gives it."""

CONTINUE_WITH_PROVISIONAL = ReliefOption(
    ReliefKind.PROVISIONAL, "18.3c(2)", Reference.PROVISIONAL_BALL, None, (), 1, Setting.PLAY
)
"""Going on with the provisional ball, which costs the stroke of stroke and distance."""


def stroke_and_distance(citation: str, penalty: int = 1) -> ReliefOption:
    """Play again from where the previous stroke was made (Rule 14.6), for ``penalty`` strokes."""
    return ReliefOption(
        ReliefKind.STROKE_AND_DISTANCE,
        citation,
        Reference.PREVIOUS_STROKE,
        1,
        (Limit.NOT_NEARER, Limit.SAME_AREA_AS_REFERENCE),
        penalty,
        Setting.AS_THE_SPOT_ALLOWS,
    )


def back_on_the_line(
    case: Case,
    citation: str,
    through: Reference = Reference.LINE_THROUGH_BALL,
    penalty: int = 1,
    extra_limits: tuple[Limit, ...] = (),
) -> ReliefOption:
    """Drop on the line from the hole back through a point, however far back.

    In 2019 the player chose a reference point on the line, and the relief area lay within one
    club-length of it, not nearer the hole than the chosen point. Since 2023 the ball is dropped on the
    line, and the spot it first touches sets a relief area of one club-length in any direction, not
    nearer the hole than the point the line goes through (Rules 14.3b(3), 16.1c(2), 17.1d(2), 19.2b).

    Args:
        case: the case, read for the date of play only.
        citation: the provision that gives the option.
        through: the line, by the point it goes through.
        penalty: what the option costs, in strokes.
        extra_limits: further limits of the relief area.
    """
    dropped_on_line = case.played_since(EDITION_2023)
    return ReliefOption(
        ReliefKind.BACK_ON_THE_LINE,
        citation,
        through,
        1,
        (
            _NEVER_NEARER_THAN[through] if dropped_on_line else Limit.NOT_NEARER,
            Limit.SAME_AREA_AS_FIRST_TOUCHED,
            *extra_limits,
        ),
        penalty,
        dropped_on_line=dropped_on_line,
    )


def lateral(
    citation: str,
    reference: Reference,
    penalty: int = 1,
    extra_limits: tuple[Limit, ...] = (),
) -> ReliefOption:
    """Drop within two club-lengths of a point, not nearer the hole than it (Rules 17.1d(3), 19.2c)."""
    return ReliefOption(
        ReliefKind.LATERAL,
        citation,
        reference,
        2,
        (Limit.NOT_NEARER, Limit.SAME_AREA_AS_FIRST_TOUCHED, *extra_limits),
        penalty,
    )


def free_option(
    citation: str,
    reference: Reference,
    limits: tuple[Limit, ...],
    club_lengths: float = 1,
    setting: Setting = Setting.DROP,
) -> ReliefOption:
    """Relief without penalty, in the relief area that ``reference`` and ``limits`` describe."""
    return ReliefOption(ReliefKind.FREE, citation, reference, club_lengths, limits, 0, setting)


def offer(ruling: Ruling, *options: ReliefOption, may_play_as_it_lies: bool = True) -> Ruling:
    """List relief options in ``ruling``: either ball may be used (Rule 14.3a).

    A ball put down in a wrong way or place may be put right until it is played (Rule 14.5); a stroke from
    a wrong place gets the general penalty (Rule 14.7a).
    """
    listed = ruling.with_options(*options, may_play_as_it_lies=may_play_as_it_lies)
    listed = listed.note(*(_SAID_WITH[one.citation] for one in options if one.citation in _SAID_WITH))
    return replace(listed, which_ball=WhichBall.ORIGINAL_OR_ANOTHER).correct(
        "put_relief_right", Deadline.BEFORE_STROKE, general("14.7a")
    )
