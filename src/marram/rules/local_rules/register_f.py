"""The register of Model Local Rules, area F: abnormal course conditions and integral objects."""

from marram.rules.local_rules.local_rule import LocalRule

_NOT_READ = (
    "Its published text was not at hand when this register was made; consult the Committee Procedures."
)


def _not_described(code: str) -> LocalRule:
    return LocalRule(code, "Not described here", ("conditions and objects of a course",), reason=_NOT_READ)


LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "F-1",
        "What is ground under repair, an obstruction or an integral object",
        ("Definitions: abnormal course condition", "Definitions: integral object"),
        reason="It only says what a thing is; the question what is in the way covers that.",
    ),
    LocalRule(
        "F-2.1",
        "Embedded ball relief only at fairway height or less",
        ("16.3",),
        citation="F-2.1",
    ),
    LocalRule("F-2.2", "Not described here", ("16.3",), reason=_NOT_READ),
    LocalRule(
        "F-3",
        "Ground under repair beside an obstruction is one condition with it",
        ("16.1",),
        reason="It only joins two conditions into one; relief from the whole is that of Rule 16.1.",
    ),
    LocalRule(
        "F-4",
        "Extensive damage by heavy rain and traffic, when a referee declares it",
        ("16.1",),
        reason="A referee or Committee member decides on the spot what is ground under repair; Rule 16.1 follows.",
    ),
    LocalRule("F-5", "Immovable obstructions close to the putting green", ("16.1",), citation="F-5"),
    LocalRule(
        "F-6", "No relief when a condition interferes with the stance only", ("16.1a",), citation="F-6"
    ),
    LocalRule("F-7", "Seams of laid turf", ("16.1",), citation="F-7"),
    LocalRule("F-8", "Cracks in the ground", ("16.1",), citation="F-8"),
    LocalRule("F-9", "Tree roots in or near the fairway", ("16.1",), citation="F-9"),
    LocalRule("F-10", "Damage by animals", ("16.1",), citation="F-10"),
    _not_described("F-11"),
    _not_described("F-12"),
    _not_described("F-13"),
    _not_described("F-14"),
    _not_described("F-15"),
    LocalRule(
        "F-16",
        "Flooded bunkers as ground under repair",
        ("12", "16.1c"),
        discouraged="It takes out single bunkers that are named, never all bunkers at once.",
        citation="F-16",
    ),
    LocalRule("F-17", "All roads and paths as obstructions", ("Definitions: obstruction",), citation="F-17"),
    LocalRule(
        "F-18",
        "Movable obstructions treated as immovable",
        ("15.2", "16.1"),
        discouraged="Some national unions advise against it, since what can be moved is better moved.",
        citation="F-18",
    ),
    _not_described("F-19"),
    _not_described("F-20"),
    _not_described("F-21"),
    _not_described("F-22"),
    LocalRule("F-23", "Temporary immovable obstructions", ("16.1",), citation="F-23"),
)
