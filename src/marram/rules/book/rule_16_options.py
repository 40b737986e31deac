"""Rule 16: the relief options from an abnormal course condition, by the area of the course."""

from marram.rules.book.relief_options import back_on_the_line, free_option
from marram.rules.engine.case import Case
from marram.rules.facts.relief import nearest_point_exists
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting


def in_general_area(citation: str = "16.1b") -> ReliefOption:
    """Free relief within one club-length of the nearest point of complete relief in the general area."""
    return free_option(
        citation,
        Reference.NEAREST_POINT,
        (Limit.NOT_NEARER, Limit.GENERAL_AREA, Limit.COMPLETE_RELIEF),
    )


def in_bunker(case: Case) -> tuple[ReliefOption, ReliefOption]:
    """Relief in the bunker without penalty, or outside it on the line for one stroke."""
    inside = (
        free_option(
            "16.1c(1)",
            Reference.NEAREST_POINT,
            (Limit.NOT_NEARER, Limit.IN_BUNKER, Limit.COMPLETE_RELIEF),
        )
        if case[nearest_point_exists]
        else ReliefOption(
            ReliefKind.MAXIMUM_AVAILABLE,
            "16.1c(1)",
            Reference.MAXIMUM_POINT,
            1,
            (Limit.NOT_NEARER, Limit.IN_BUNKER),
        )
    )
    return inside, outside_bunker(case)


def outside_bunker(case: Case) -> ReliefOption:
    """Back on the line outside the bunker, for one penalty stroke."""
    return back_on_the_line(case, "16.1c(2)", extra_limits=(Limit.OUTSIDE_BUNKER,))


def on_putting_green(case: Case) -> ReliefOption:
    """The ball is placed on the nearest point of complete relief, or of maximum available relief."""
    if case[nearest_point_exists]:
        return free_option(
            "16.1d",
            Reference.NEAREST_POINT,
            (Limit.NOT_NEARER, Limit.ON_GREEN_OR_GENERAL_AREA, Limit.COMPLETE_RELIEF),
            0,
            Setting.PLACE,
        )
    return ReliefOption(
        ReliefKind.MAXIMUM_AVAILABLE,
        "16.1d",
        Reference.MAXIMUM_POINT,
        0,
        (Limit.NOT_NEARER, Limit.ON_GREEN_OR_GENERAL_AREA),
        0,
        Setting.PLACE,
    )


def in_penalty_area(citation: str) -> ReliefOption:
    """Free relief that must stay inside the penalty area (dangerous animal, no play zone)."""
    return free_option(
        citation,
        Reference.NEAREST_POINT,
        (Limit.NOT_NEARER, Limit.IN_PENALTY_AREA, Limit.COMPLETE_RELIEF),
    )


def under_the_ball(*, on_green: bool, found: bool = True) -> ReliefOption:
    """Free relief for a ball in or on a movable obstruction: drop, or place on the putting green (Rule 15.2).

    Of a ball not found, the point counts where it last crossed the edge of the obstruction (Rule 15.2b).
    """
    return ReliefOption(
        ReliefKind.UNDER_WHERE_IT_CAME_TO_REST,
        "15.2a(3)" if on_green else "15.2a(2)",
        Reference.UNDER_BALL if found else Reference.UNDER_EDGE_CROSSED,
        0 if on_green else 1,
        (Limit.SAME_AREA_AS_REFERENCE,) if on_green else (Limit.NOT_NEARER, Limit.SAME_AREA_AS_REFERENCE),
        0,
        Setting.PLACE if on_green else Setting.DROP,
    )
