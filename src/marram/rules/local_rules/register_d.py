"""The register of Model Local Rules, area D: putting greens."""

from marram.rules.local_rules.local_rule import LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "D-1",
        "Where the edge of a putting green runs",
        ("Definitions: putting green",),
        reason="It says what is a putting green; the question where the ball lies covers that.",
    ),
    LocalRule(
        "D-2",
        "A temporary green in play; the green it replaces is a wrong green",
        ("13.1f",),
        citation="13.1f",
    ),
    LocalRule(
        "D-3",
        "No relief when a wrong green interferes with the stance only",
        ("13.1f",),
        citation="D-3",
    ),
    LocalRule(
        "D-4.1",
        "Relief from a wrong green clear of its fringe (D-4 in the 2019 list)",
        ("13.1f",),
        citation="D-4.1",
    ),
    LocalRule(
        "D-4.2",
        "The fringe belongs to the wrong green",
        ("13.1f",),
        (2023,),
        citation="D-4.2",
    ),
    LocalRule(
        "D-5",
        "Practice greens, and temporary greens not in use, that are no wrong greens",
        ("13.1f", "Definitions: wrong green"),
        citation="D-5",
    ),
    LocalRule(
        "D-6",
        "A double green divided into two; the other half is a wrong green",
        ("13.1f", "Definitions: wrong green"),
        citation="13.1f",
    ),
    LocalRule(
        "D-7",
        "No replay when a putt hits the player, the club or an insect",
        ("11.1b",),
        (2019,),
        citation="D-7",
    ),
)
