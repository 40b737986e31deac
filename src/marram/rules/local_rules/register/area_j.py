"""The register of Model Local Rules, area J: bad weather and suspensions of play."""

from marram.rules.local_rules.local_rule import Basis, LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "J-1",
        "The signals for stopping and resuming play",
        ("5.7b",),
        defines=True,
        reason="It sets the signals; what follows from them is Rule 5.7b itself.",
        basis=Basis.PUBLISHED,
        remark="The usual signals: one long note, stop at once; three notes, stop; two short notes, resume.",
    ),
    LocalRule(
        "J-2",
        "Temporary water swept off the putting green",
        ("16.1d", "8.1a"),
        citation="J-2",
        basis=Basis.PUBLISHED,
    ),
)
