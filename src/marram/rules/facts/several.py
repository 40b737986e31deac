"""Facts about several breaches in one situation (Rule 1.3c(4))."""

from marram.rules.engine.fact import yes_no

MOST_INCIDENTS = 6
"""How many incidents of one situation can be combined at once."""

intervening_event = tuple(
    yes_no(
        f"intervening_event_{gap}",
        f"Between incidents {gap} and {gap + 1}: was a stroke completed, or did the player become aware of a breach?",
        help="Being told of a breach, knowing of it or being unsure about it all count as being aware.",
        source="1.3c(4) (2023)",
    )
    for gap in range(1, MOST_INCIDENTS)
)
"""Edition 2023: whether an intervening event separates an incident from the next."""

moved_ball_not_replaced_before = tuple(
    yes_no(
        f"moved_ball_not_replaced_{gap}",
        f"Was the wrong place of incident {gap + 1} that the ball moved in incident {gap} was not replaced?",
        help="If so, not replacing it and moving it cost one general penalty in total.",
        source="1.3c(4) Exception",
    )
    for gap in range(1, MOST_INCIDENTS)
)
"""Whether playing from a wrong place was the failure to replace the ball moved just before."""

acts_related = tuple(
    yes_no(
        f"acts_related_{gap}",
        f"Do incidents {gap} and {gap + 1} come from a single act or from related acts?",
        help="Look at how close the acts are in purpose, time and place, and at whether they breach the same Rule.",
        source="1.3c(4) (2019)",
    )
    for gap in range(1, MOST_INCIDENTS)
)
"""Edition 2019: whether an incident and the next come from a single act or related acts."""
