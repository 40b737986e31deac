"""The address of a page about a case, and the addresses that lead on from it."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any
from urllib.parse import quote_plus

from marram.desk.competition.conditions import conditions_of
from marram.rules.facts.conditions import LOCAL_RULES, date_of_play, form_of_play, sides
from marram.services.cases.address import BETWEEN, Address
from marram.services.cases.address_reading import read_address as read
from marram.services.cases.event import Event
from marram.words.sheet import Why


@dataclass(frozen=True)
class CaseAddress(Address):
    """What an address says of a case, and where its links lead."""

    def url(self, path: str, **changes: Any) -> str:
        """Return the address of ``path`` for this case with ``changes`` made."""
        changed = replace(self, **changes) if changes else self
        return f"{path}?{_query(changed.pairs())}"

    def fresh(self) -> str:
        """Return the address of a new case under the same conditions."""
        return CaseAddress(self.conditions.of_competition()).url("/")

    def with_handed(self, side: str) -> str:
        """Return the address of this case for a player who swings ``right`` or ``left``."""
        return self.url("/case", conditions=replace(self.conditions, handed=side))

    def set_by_conditions(self, fact: str) -> bool:
        """Tell whether ``fact`` is settled by the conditions of the competition, rather than answered for this case."""
        if fact == date_of_play.name:
            return True
        of_competition = fact in (form_of_play.name, sides.name) or fact.startswith("local_rule_")
        return of_competition and fact not in self.facts

    def parted(self, why: Sequence[Why]) -> tuple[list[Why], list[Why]]:
        """Return reasons in two: those that speak of this case, and those that hold throughout the competition.

        A Local Rule in force decides here, and stands with the first; one that is not, the day, the form of play and the
        sides stand with the second.
        """
        in_force = {LOCAL_RULES[code].name for code in self.conditions.local or () if code in LOCAL_RULES}
        held = [one for one in why if self.set_by_conditions(one.fact) and one.fact not in in_force]
        return [one for one in why if one not in held], held

    def asking(self, fact: str) -> str:
        """Return the address that asks ``fact`` again."""
        return self.url("/together" if fact in BETWEEN else "/case", ask=fact)

    def forgetting(self, fact: str) -> str:
        """Return the address without the answer to ``fact``."""
        rest = {name: answer for name, answer in self.facts.items() if name != fact}
        between = {name: answer for name, answer in self.between.items() if name != fact}
        path = "/together" if fact in BETWEEN else "/case"
        return self.url(path, facts=rest, between=between, ask=None)

    def pick_url(self, path: str, role: str) -> str:
        """Return the address that picking a place on the map leads to; ``{at}`` stands for the place."""
        pairs = [(key, value) for key, value in self.pairs(without=(role, "ask"))]
        return f"{path}?{role}={{at}}&{_query(pairs)}"


def _query(pairs: Iterable[tuple[str, str]]) -> str:
    return "&".join(f"{_quoted(key)}={_quoted(value)}" for key, value in pairs)


@lru_cache(maxsize=4096)
def _quoted(word: str) -> str:
    """Return a word of an address as it is written; a page writes the same few hundreds of times."""
    return quote_plus(word, safe=",;=")


def read_address(items: Iterable[tuple[str, str]], cookie: str, event: Event) -> CaseAddress:
    """Read the query of an address.

    Raises:
        InputError: something in it cannot be used; every fault is listed.
    """
    return read(CaseAddress, items, lambda own: conditions_of(own, cookie, event))
