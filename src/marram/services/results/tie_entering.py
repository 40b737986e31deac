"""A tie decided on the course, or by lot: the order that it gave, for desk, shell and Python alike."""

from collections.abc import Sequence

from marram.competition.conditions.choices import TieMethod
from marram.errors import InputError
from marram.records.entry import Entry
from marram.said import said
from marram.services.log.tap import Tap
from marram.services.results.event_results import TIE
from marram.services.results.scored import Scored

METHODS = (TieMethod.PLAY_OFF, TieMethod.LOT)
"""The methods whose outcome somebody has to tell."""


def decide_tie(here: Scored, method: TieMethod, order: Sequence[str], tap: Tap) -> None:
    """Enter the order that a play-off or a lot gave, the winner first, sides by identifier.

    Raises:
        InputError: the competition is closed, cards decide by this method, or fewer than two sides are named, or one twice.
    """
    here.refuse_closed()
    if method not in METHODS:
        raise InputError(
            said("{method} is worked out from the cards; nobody enters it.", method=method.value)
        )
    if len(order) < 2 or len(set(order)) != len(order):
        raise InputError(said("Name those who were tied, the winner first, each once."))
    here.add(Entry(TIE, tap.at, tap.ident, by=tap.by, content={"method": method.value, "order": list(order)}))
