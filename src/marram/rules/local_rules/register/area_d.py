"""The register of Model Local Rules, area D: putting greens."""

from datetime import date

from marram.rules.local_rules.local_rule import Basis, LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "D-1",
        "Where the edge of a putting green runs",
        definitions=("putting green",),
        defines=True,
        reason="It says what is a putting green; the question where the ball lies covers that.",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "D-2",
        "A temporary green in play; the green it replaces is a wrong green",
        ("13.1f",),
        defines=True,
        reason="It says which green is that of the hole; the question about a wrong green covers that.",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "D-3",
        "No relief when a wrong green interferes with the stance only",
        ("13.1f",),
        forms=("D-3.1", "D-3.2"),
        citation="D-3",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "D-4.1",
        "Relief from a wrong green clear of its fringe (D-4 in the 2019 list)",
        ("13.1f",),
        not_with=("D-4.2",),
        why_not_with="they are two forms of one Local Rule, and the second does more",
        forms=("D-4",),
        citation="D-4.1",
        basis=Basis.SECOND_HAND,
    ),
    LocalRule(
        "D-4.2",
        "The fringe belongs to the wrong green",
        ("13.1f",),
        editions=(2023,),
        not_with=("D-4.1",),
        why_not_with="they are two forms of one Local Rule, and the second does more",
        citation="D-4.2",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "D-5",
        "Practice greens, and temporary greens not in use, that are no wrong greens",
        ("13.1f",),
        definitions=("wrong green",),
        forms=("D-5.1", "D-5.2", "D-5.3"),
        discouraged="It is for greens that balls seldom reach; play from a green damages it.",
        citation="D-5",
        basis=Basis.MEMORY,
    ),
    LocalRule(
        "D-6",
        "A double green divided into two; the other half is a wrong green",
        ("13.1f",),
        definitions=("wrong green",),
        defines=True,
        reason="It says which part is the green of the hole; the question about a wrong green covers that.",
        basis=Basis.MEMORY,
    ),
    LocalRule(
        "D-7",
        "No replay when a putt hits the player, the club or an insect",
        ("11.1b",),
        editions=(2019,),
        citation="D-7",
        remark="Since 2023 it is the Rule itself.",
        since=date(2021, 1, 1),
        basis=Basis.PUBLISHED,
    ),
)
