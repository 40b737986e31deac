"""The register of Model Local Rules, area K: pace of play.

The codes moved: the other scale of penalties was K-5 in the list of 2019 and has been K-3 since 2023.
"""

from marram.rules.local_rules.local_rule import Basis, LocalRule

_ONE_POLICY = "each is a policy for groups, and a breach of one would be penalised twice"

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "K-1",
        "A maximum time for a round or a number of holes",
        ("5.6b(3)",),
        not_with=("K-3", "K-4"),
        why_not_with=_ONE_POLICY,
        not_with_in=(2019,),
        citation="K-1",
        basis=Basis.PUBLISHED,
        remark="Published with one penalty stroke, or as the Committee specifies: what it costs is asked.",
    ),
    LocalRule(
        "K-2",
        "Times for holes, and for strokes when out of position",
        ("5.6b(3)",),
        citation="K-2",
        basis=Basis.SECOND_HAND,
        remark="An example for stroke play that needs officials on the course. Its procedure was found; its scale of "
        "penalties (one stroke, general penalty, disqualification) is from memory.",
    ),
    LocalRule(
        "K-3",
        "2019 list: times for each hole; since 2023: another scale of penalties, with a warning first",
        ("5.6b(3)",),
        beside=("K-2",),
        not_with=("K-1", "K-4"),
        why_not_with=_ONE_POLICY,
        not_with_in=(2019,),
        citation="K-3",
        basis=Basis.SECOND_HAND,
        remark="One code, two subjects. The scale (warning, one stroke, general penalty, disqualification) is from memory.",
    ),
    LocalRule(
        "K-4",
        "Times at checkpoints",
        ("5.6b(3)",),
        not_with=("K-1", "K-3"),
        why_not_with=_ONE_POLICY,
        not_with_in=(2019,),
        citation="K-4",
        basis=Basis.MEMORY,
        remark="What it costs is asked. Whether the list of 2023 still holds it under this code was not found.",
    ),
    LocalRule(
        "K-5",
        "Another scale of penalties, with a warning first (K-3 since 2023)",
        ("5.6b(3)",),
        beside=("K-2",),
        editions=(2019,),
        citation="K-5",
        basis=Basis.SECOND_HAND,
        remark="It changes what a bad time under K-2 costs. The scale (warning, one stroke, general penalty, "
        "disqualification) is from memory.",
    ),
)
