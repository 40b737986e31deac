"""The register of Model Local Rules, area F: abnormal course conditions and integral objects."""

from marram.rules.local_rules.local_rule import Basis, LocalRule

_NOT_FOUND = (
    "What this code is about could not be found on any published page at hand, in ten languages; "
    "consult the Committee Procedures."
)
_PERHAPS_NONE = f"Whether the list holds this code at all is not known here. {_NOT_FOUND}"


def _not_described(code: str, reason: str = _NOT_FOUND) -> LocalRule:
    return LocalRule(code, "Not described here", subject="conditions and objects of a course", reason=reason)


LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "F-1",
        "What is ground under repair, an obstruction or an integral object",
        definitions=("abnormal course condition", "integral object"),
        reason="It only says what a thing is; the question what is in the way covers that.",
        defines=True,
        basis=Basis.PUBLISHED,
        remark="The list gives no text for it, only examples.",
    ),
    LocalRule(
        "F-2.1",
        "Embedded ball relief only at fairway height or less",
        ("16.3",),
        not_with=("F-2.2",),
        why_not_with="are two forms of one Local Rule, each of which says where there is no relief",
        citation="F-2.1",
        remark="Its text has an optional sentence on stacked turf faces, which makes F-2.2 needless.",
    ),
    LocalRule(
        "F-2.2",
        "No relief for a ball embedded in a stacked turf face above a bunker",
        ("16.3",),
        not_with=("F-2.1",),
        why_not_with="are two forms of one Local Rule, each of which says where there is no relief",
        citation="F-2.2",
        basis=Basis.SECOND_HAND,
        remark="Known from rules forums and from the Local Rule of before 2019.",
    ),
    LocalRule(
        "F-3",
        "Ground under repair beside an obstruction is one condition with it",
        ("16.1",),
        citation="F-3",
        basis=Basis.SECOND_HAND,
        remark="Known from notices of competitions and clubs that quote it.",
    ),
    LocalRule(
        "F-4",
        "Unusual damage by traffic and wet ground, when a referee declares it",
        ("16.1",),
        citation="F-4",
        basis=Basis.PUBLISHED,
    ),
    LocalRule("F-5", "Immovable obstructions close to the putting green", ("16.1",), citation="F-5"),
    LocalRule(
        "F-6", "No relief when a condition interferes with the stance only", ("16.1a",), citation="F-6"
    ),
    LocalRule("F-7", "Seams of laid turf", ("16.1",), citation="F-7"),
    LocalRule("F-8", "Cracks in the ground", ("16.1",), citation="F-8"),
    LocalRule("F-9", "Tree roots in or near the fairway", ("16.1",), citation="F-9"),
    LocalRule("F-10", "Damage by animals", ("16.1",), citation="F-10"),
    LocalRule(
        "F-11",
        "Ant hills may be removed or treated as ground under repair",
        ("15.1", "16.1"),
        citation="F-11",
        basis=Basis.MEMORY,
    ),
    LocalRule(
        "F-12",
        "Animal dung may be removed or treated as ground under repair",
        ("15.1", "16.1"),
        citation="F-12",
        basis=Basis.SECOND_HAND,
        remark="Known from notices of clubs that name its code.",
    ),
    LocalRule(
        "F-13",
        "Damage by hooves",
        ("16.1",),
        citation="F-13",
        basis=Basis.MEMORY,
    ),
    LocalRule(
        "F-14",
        "Accumulations of loose impediments, such as leaves",
        ("16.1",),
        discouraged=(
            "It is meant for single holes, is withdrawn as soon as conditions allow, and may not be used for "
            "penalty areas."
        ),
        citation="F-14",
        basis=Basis.PUBLISHED,
        remark="Its text and purpose were read where the press quotes them.",
    ),
    _not_described("F-15"),
    LocalRule(
        "F-16",
        "Flooded bunkers as ground under repair",
        ("12", "16.1c"),
        discouraged="It takes out single bunkers that are named, never all bunkers at once.",
        citation="F-16",
    ),
    LocalRule("F-17", "All roads and paths as obstructions", definitions=("obstruction",), citation="F-17"),
    LocalRule(
        "F-18",
        "Movable obstructions treated as immovable",
        ("15.2", "16.1"),
        discouraged="Some national unions advise against it, since what can be moved is better moved.",
        citation="F-18",
    ),
    _not_described("F-19"),
    _not_described("F-20"),
    LocalRule(
        "F-21",
        "Painted lines or dots as ground under repair",
        ("16.1",),
        citation="F-21",
        basis=Basis.MEMORY,
    ),
    LocalRule(
        "F-22",
        "Temporary power lines and cables",
        ("11.1", "15.2", "16.1", "17.1"),
        citation="F-22",
        basis=Basis.MEMORY,
        remark=(
            "What follows if the stroke is not replayed is taken from E-11, relief in a penalty area and from "
            "trenches from the Local Rule of before 2019."
        ),
    ),
    LocalRule(
        "F-23",
        "Temporary immovable obstructions",
        ("16.1", "17.1"),
        citation="F-23",
        basis=Basis.MEMORY,
        remark=(
            "Relief in a bunker or penalty area follows the Local Rule of before 2019. Its text may also offer "
            "relief on the other side of the obstruction."
        ),
    ),
    _not_described("F-24", _PERHAPS_NONE),
    _not_described("F-25", _PERHAPS_NONE),
    _not_described("F-26", _PERHAPS_NONE),
)
