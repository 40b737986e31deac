"""The register of Model Local Rules, area G: equipment."""

from datetime import date

from marram.rules.local_rules.local_rule import Basis, LocalRule

_SKILLED_ONLY = "Except in competitions limited to highly skilled players."

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "G-1",
        "Only driver heads on the list",
        ("4.1a",),
        discouraged=_SKILLED_ONLY,
        citation="G-1",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "G-2",
        "Only clubs that meet the groove and punch mark specifications of 2010",
        ("4.1a",),
        discouraged=_SKILLED_ONLY,
        citation="G-2",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "G-3",
        "Only balls on the list",
        ("4.2a",),
        citation="G-3",
        basis=Basis.SECOND_HAND,
    ),
    LocalRule(
        "G-4",
        "One brand and model of ball throughout the round",
        ("4.2a",),
        discouraged=_SKILLED_ONLY,
        citation="G-4",
        basis=Basis.SECOND_HAND,
    ),
    LocalRule(
        "G-5",
        "Distance-measuring devices forbidden",
        ("4.3a(1)",),
        citation="G-5",
        basis=Basis.MEMORY,
    ),
    LocalRule(
        "G-6",
        "No riding during the round",
        ("4.3",),
        citation="G-6",
        basis=Basis.SECOND_HAND,
    ),
    LocalRule(
        "G-7",
        "Certain shoes forbidden",
        ("4.3a",),
        citation="G-7",
        basis=Basis.MEMORY,
    ),
    LocalRule(
        "G-8",
        "Audio and video devices forbidden",
        ("4.3a(4)",),
        citation="G-8",
        basis=Basis.SECOND_HAND,
    ),
    LocalRule(
        "G-9",
        "A damaged club replaced only if broken or significantly damaged",
        ("4.1a(2)", "4.1b(4)"),
        discouraged=_SKILLED_ONLY,
        citation="G-9",
        remark=(
            "For 2019 it allows what Rule 4.1a(2) did not; since 2023 it limits what the Rule allows. "
            "Its text changed: since 2025 a visible crack is enough, since 2026 parts carried on the course may be "
            "used. What it says since 2025 is known from the press."
        ),
        since=date(2019, 4, 9),
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "G-10",
        "No club but a putter longer than 46 inches",
        ("4.1a(1)",),
        discouraged=_SKILLED_ONLY,
        citation="G-10",
        since=date(2022, 1, 1),
        basis=Basis.SECOND_HAND,
    ),
    LocalRule(
        "G-11",
        "Only yardage books and maps approved for the competition, few notes on greens",
        ("4.3a",),
        discouraged=_SKILLED_ONLY,
        citation="G-11",
        since=date(2022, 1, 1),
        basis=Basis.PUBLISHED,
    ),
)
