"""The provisions that rulings rest on, in the order of the book, and the themes in which things happen."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from marram.rules.contents import exceptions
from marram.rules.incidents import INCIDENTS
from marram.rules.incidents.incident import Incident
from marram.teach.situations.reaching import met_in, reached
from marram.words.provisions import cited

_RULE = re.compile(r"(?:Clarification )?(\d+)\.")
_NUMBERS = re.compile(r"\d+|\D+")
RULES = tuple(range(1, 26))


@dataclass(frozen=True, slots=True)
class Entry:
    """One provision.

    Attributes:
        citation: as rulings cite it.
        slug: how it stands in an address.
    """

    citation: str
    slug: str

    @property
    def statement(self) -> str:
        """What it says, in our own words and the reader's language."""
        return cited(self.citation).statement

    @property
    def rule(self) -> int:
        """The number of its Rule; 0 for Definitions and Local Rules."""
        found = _RULE.match(self.citation)
        return int(found[1]) if found else 0

    @property
    def local(self) -> bool:
        """Whether it is a Model Local Rule."""
        return bool(re.match(r"[A-M]-\d", self.citation))


def slug_of(citation: str) -> str:
    """Return how a provision stands in an address: ``9.4b-Exception-1``."""
    return re.sub(r"[^\w.()-]+", "-", citation)


@cache
def entries() -> Mapping[str, Entry]:
    """Return every provision that some ruling rests on or offers relief under, by its slug, in the order of the book."""
    found = [Entry(one, slug_of(one)) for one in met_in()]
    return {one.slug: one for one in sorted(found, key=_order)}


def _order(one: Entry) -> tuple[object, ...]:
    group = 0 if one.rule else 1 if one.citation.startswith("Definitions") else 3 if one.local else 2
    number = one.citation.removeprefix("Clarification ")
    parts = [(int(part), "") if part.isdigit() else (-1, part) for part in _NUMBERS.findall(number)]
    return group, one.rule, one.citation.startswith("Clarification"), parts


def of_rule(rule: int) -> list[Entry]:
    """Return the provisions of a Rule, its Clarifications last."""
    return [one for one in entries().values() if one.rule == rule]


def definitions() -> list[Entry]:
    """Return the Definitions, and the Clarifications of Definitions, that rulings rest on."""
    return [one for one in entries().values() if not one.rule and not one.local]


def local_rules() -> list[Entry]:
    """Return the Model Local Rules that rulings rest on."""
    return [one for one in entries().values() if one.local]


def themes() -> Mapping[str, list[Incident]]:
    """Return what can have happened, by theme, in the order of the book; only what ends in rulings."""
    found: dict[str, list[Incident]] = {}
    for one in INCIDENTS:
        if reached().get(one.name):
            found.setdefault(one.theme, []).append(one)
    return found


def exceptions_of(entry: Entry) -> list[Entry]:
    """Return the Exceptions and Clarifications of a provision, as far as rulings rest on them."""
    own = entry.citation
    return [
        one
        for one in entries().values()
        if one is not entry
        and (
            one.citation.startswith((f"{own} Exception", f"Clarification {own}/"))
            or (own.startswith("Definitions: ") and one.citation.startswith(_clarified(own)))
        )
    ]


def _clarified(definition: str) -> str:
    return f"Clarification {definition.removeprefix('Definitions: ').title()}/"


def part_of(entry: Entry) -> Entry | None:
    """Return the provision that an Exception or Clarification belongs to, where rulings rest on it too."""
    own = entry.citation
    base = own.split(" Exception")[0] if " Exception" in own else ""
    if own.startswith("Clarification "):
        base = own.removeprefix("Clarification ").split("/")[0]
    found = entries().get(slug_of(base)) if base else None
    return found or entries().get(slug_of(f"Definitions: {base.lower()}")) if base else None


def editions_of(entry: Entry) -> tuple[int, ...]:
    """Return the years of the editions that hold an Exception; empty where the table tells nothing of a provision."""
    known = exceptions().get(entry.citation)
    return tuple(sorted(known.editions)) if known else ()
