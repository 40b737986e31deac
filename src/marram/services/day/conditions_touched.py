"""What stands already that a change of the conditions touches: groups, cards, rulings, published lists; and what players are told."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from marram.services.cards.card_log import FIGURES
from marram.services.day.conditions_changing import CHANGED
from marram.services.log.log import RULING
from marram.services.matches.matches_kept import HOLE
from marram.services.publishing.documents import PUBLISHED
from marram.services.results.scored import Scored
from marram.words.texts import count_text, text


@dataclass(frozen=True, slots=True)
class ChangeTold:
    """A change of the conditions after something was published, as everybody is told it.

    Attributes:
        at: when it was made.
        about: which conditions, in words.
        local_rules: the codes of the Local Rules from then on; ``None`` where they did not change.
    """

    at: datetime
    about: tuple[str, ...]
    local_rules: tuple[str, ...] | None


def touched(scored: Scored) -> Iterator[str]:
    """Yield what stands already and what a change means for it, in sentences; nothing stands: that is said."""
    log, event = scored.results.log, scored.event
    groups = sum(len(known) for known in scored.groups.values())
    cards = {
        (one.told.get("player"), one.told.get("round"))
        for kind in (FIGURES, HOLE)
        for one in log.entries(event, kind=kind)
    }
    counted = (
        ("conditions_kept.draw", groups),
        ("conditions_kept.cards", len(cards)),
        ("conditions_kept.rulings", len(log.entries(event, kind=RULING))),
        ("conditions_kept.published", len(log.entries(event, kind=PUBLISHED))),
    )
    if cards:
        yield text("conditions_kept.begun")
    yield from (count_text(name, number) for name, number in counted if number)
    if not any(number for _, number in counted):
        yield text("conditions_kept.nothing")


def changes_told(scored: Scored) -> list[ChangeTold]:
    """Return what changed since the first list was published, the latest first."""
    log = scored.results.log
    first = next((one.number for one in log.entries(scored.event, kind=PUBLISHED)), None)
    found: list[ChangeTold] = []
    for one in reversed(log.entries(scored.event, kind=CHANGED)):
        if first is None or one.number < first:
            break
        was, now = one.content["was"], one.content["now"]
        about = tuple(text(f"conditions_kept.key.{key}") for key in sorted({*was, *now}))
        local = tuple(now.get("local_rules", ())) if "local_rules" in {*was, *now} else None
        found.append(ChangeTold(datetime.fromisoformat(one.told["given_at"]), about, local))
    return found
