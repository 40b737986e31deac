"""The register of Model Local Rules, area E: special or required relief procedures."""

from marram.rules.local_rules.local_rule import Basis, LocalRule

_NOT_FOUND = (
    "What this code is about could not be found on any published page at hand, in ten languages; "
    "consult the Committee Procedures."
)
LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "E-1",
        "Dropping zones as one more way to take relief",
        ("13.1f", "16.1", "16.2", "17.1", "19"),
        beside=("E-5", "F-23"),
        citation="E-1",
        forms=("E-1.1", "E-1.2"),
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "E-1.3",
        "A dropping zone as the only relief, beside stroke and distance",
        ("13.1f", "16.1", "16.2", "17.1", "19"),
        beside=("E-5", "F-23"),
        discouraged=(
            "It is meant for where no usual relief is practical; generally a dropping zone is one more option."
        ),
        citation="E-1.3",
        basis=Basis.SECOND_HAND,
        remark="Both may be in force, for different holes; then the notice says which is meant.",
    ),
    LocalRule("E-2", "Lifting a ball to clean it", ("9.1a", "14.1"), citation="E-2"),
    LocalRule(
        "E-3",
        "Preferred lies",
        ("9.1a", "14.2"),
        discouraged="It is meant for poor ground over a time, and is withdrawn as soon as conditions allow.",
        citation="E-3",
    ),
    LocalRule("E-4", "Relief from aeration holes", ("16.1",), citation="E-4"),
    LocalRule(
        "E-5",
        "An alternative to stroke and distance for two strokes",
        ("18.1", "18.2"),
        discouraged="It is meant for general play, not for competitions of highly skilled players.",
        citation="E-5",
    ),
    LocalRule("E-6", "Not described here", subject="special relief procedures", reason=_NOT_FOUND),
    LocalRule("E-7", "Not described here", subject="special relief procedures", reason=_NOT_FOUND),
    LocalRule("E-8", "No play zones", ("2.4", "16.1f", "17.1e"), citation="2.4", defines=True),
    LocalRule(
        "E-9",
        "An area out of bounds that is a no play zone",
        ("2.4", "16.1f", "17.1e"),
        citation="E-9",
        basis=Basis.MEMORY,
    ),
    LocalRule("E-10", "Young trees as no play zones", ("2.4", "16.1f", "17.1e"), citation="E-10"),
    LocalRule(
        "E-11",
        "A stroke whose ball hits a power line is replayed",
        ("11.1",),
        discouraged=(
            "It is meant for permanent lines that interfere with the play of a hole, not for others; for lines "
            "put up for a competition there is F-22."
        ),
        citation="E-11",
    ),
    LocalRule(
        "E-12",
        "Mats required on the fairway; until 2022: a ball dropped back on the line played from outside the relief area",
        ("9.1a", "14.3c", "14.7"),
        discouraged=(
            "The mats are meant for cold months in which grass does not grow; the Local Rule of this code until 2022 "
            "was made for professional events, and some national unions advised clubs against it."
        ),
        citation="E-12",
        remark="The code was given anew: until 2022 it stood for something else.",
    ),
)
