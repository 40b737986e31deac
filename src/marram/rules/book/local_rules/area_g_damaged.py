"""Model Local Rule G-9: replacing a broken or significantly damaged club, by the text of the day of play."""

from datetime import date

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.clubs import ClubSource, club_source, significantly_damaged
from marram.rules.facts.local_equipment import cracked_or_loose, same_kind_of_club

CRACKS_COUNT = date(2025, 1, 1)
"""From this day a visible crack is enough, and the new club must do what the damaged one did."""

PARTS_ALLOWED = date(2026, 1, 1)
"""From this day the club may be put together from parts carried on the course."""


@provision("G-9")
def damage_lets_club_be_replaced(case: Case) -> bool:
    """Where adopted, only a broken or significantly damaged club is replaced; since 2025 by one of its kind."""
    if not case.played_since(CRACKS_COUNT):
        return case[significantly_damaged]
    return (case[significantly_damaged] or case[cracked_or_loose]) and case[same_kind_of_club]


@provision("G-9")
def built_from_parts_as_allowed(case: Case) -> bool:
    """Where adopted, since 2026, parts carried by the player or by another person may be used."""
    return (
        case.played_since(PARTS_ALLOWED)
        and case.local_rule("G-9")
        and case.is_one_of(club_source, ClubSource.BUILT_FROM_PARTS)
    )
