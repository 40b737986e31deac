"""The table of contents of the Rules, and what of it is computed."""

import re
from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import Enum
from importlib.resources import files

from marram.rules.engine.request import book, book_among
from marram.rules.engine.tree import leaves
from marram.rules.facts.conditions import Sides
from marram.rules.incidents import INCIDENTS
from marram.rules.ruling import Judgement, NotCovered, Outcome, Ruling


class Coverage(Enum):
    """How far a sub-rule is computed."""

    COMPUTED = "computed"
    """Some ruling rests on it."""
    JUDGEMENT = "judgement"
    """It is left to judgement, with its criteria."""
    NOT_COVERED = "not covered"
    """Its situations are named, and answered with "not covered" and where to look."""
    NO_OUTCOME = "no outcome"
    """It has no outcome of its own; the reason is given."""
    MISSING = "missing"
    """It should be computed and is not."""


@dataclass(frozen=True, slots=True)
class SubRule:
    """One sub-rule of the table of contents.

    Attributes:
        number: as the book numbers it.
        title: what it is about, in our own words.
        reason: why it has no outcome of its own; empty where a ruling must exist.
    """

    number: str
    title: str
    reason: str

    def holds(self, citation: str) -> bool:
        """Tell whether a citation is of this sub-rule or of a part of it."""
        if not citation.startswith(self.number):
            return False
        rest = citation[len(self.number) :]
        return not rest or rest[0] in " (" or (rest[0].isalpha() and self.number[-1].isdigit())


def contents() -> tuple[SubRule, ...]:
    """Return every sub-rule, in the order of the book."""
    return tuple(SubRule(number, title, reason) for number, title, reason in _rows("contents.txt"))


def clarifications() -> dict[str, str]:
    """Return what is known of each Clarification that may be cited: by its number, what the entry rests on."""
    return dict(_rows("clarifications.txt"))


@dataclass(frozen=True, slots=True)
class RuleException:
    """One Exception of a sub-rule.

    Attributes:
        editions: the years of the editions that hold it.
        basis: what the entry rests on: read, compared, second-hand or memory.
        title: what it is about, in our own words.
    """

    editions: frozenset[int]
    basis: str
    title: str


def exceptions() -> dict[str, RuleException]:
    """Return the Exceptions that may be cited, by their numbers as the book gives them ("9.4b Exception 1")."""
    return {
        number: RuleException(frozenset(map(int, editions.split())), basis, title)
        for number, editions, basis, title in _rows("exceptions.txt")
    }


def exceptions_named(text: str) -> list[str]:
    """Return the Exceptions of numbered sub-rules that a text names, as the table writes them."""
    return re.findall(r"\d+\.\d+[a-z]?(?:\(\d\))* Exceptions?(?: \d+)?", text)


ONLY_AMONG_SIDES = (
    ("did_not_hole_out", Sides.FOUR_BALL),
    ("hole_score_wrong", Sides.FOUR_BALL),
    ("played_out_of_turn", Sides.FOUR_BALL),
    ("started_off_time", Sides.FOUR_BALL),
    ("whose_turn", Sides.FOUR_BALL),
    ("ball_marker_moved", Sides.THREE_BALL),
    ("too_many_clubs", Sides.FOURSOMES),
    ("played_out_of_turn", Sides.FOURSOMES),
    ("unplayable_ball", Sides.FOURSOMES),
)
"""Incidents that show what is reached only where players compete as sides."""


def citations_reached() -> dict[str, set[type]]:
    """Return every citation that some path reaches, with the kinds of outcome it is reached in."""
    reached: dict[str, set[type]] = defaultdict(set)
    roots = [book(one.name).root for one in INCIDENTS]
    roots += [book_among(name, who).root for name, who in ONLY_AMONG_SIDES]
    for root in roots:
        for leaf in leaves(root):
            for citation in citations(leaf):
                reached[citation].add(type(leaf))
    return reached


def coverage(sub_rule: SubRule, reached: dict[str, set[type]]) -> Coverage:
    """Return how far a sub-rule is computed, given the citations that paths reach."""
    kinds = {kind for citation, found in reached.items() if sub_rule.holds(citation) for kind in found}
    if Ruling in kinds:
        return Coverage.COMPUTED
    if Judgement in kinds:
        return Coverage.JUDGEMENT
    if sub_rule.reason:
        return Coverage.NO_OUTCOME
    return Coverage.NOT_COVERED if NotCovered in kinds else Coverage.MISSING


def outside_contents(reached: Iterable[str]) -> list[str]:
    """Return the citations of sub-rules, Clarifications and Exceptions that the tables do not hold.

    Citations of anything else (Local Rules, Definitions, "former 18-2") are left out.
    """
    every, known, excepted = contents(), clarifications(), exceptions()
    made_up = [
        citation
        for citation in reached
        if citation.startswith("Clarification ") and citation.removeprefix("Clarification ") not in known
    ]
    numbered = [citation for citation in reached if re.match(r"\d", citation)]
    return made_up + [
        citation
        for citation in numbered
        if not any(one.holds(citation) or one.number.startswith(citation.split(" ")[0]) for one in every)
        or ("Exception" in citation and citation not in excepted)
    ]


def citations(leaf: Outcome) -> Iterator[str]:
    """Yield every citation of an outcome: of its reasons, penalties, relief and corrections."""
    for reason in leaf.reasons:
        yield reason.citation
    if isinstance(leaf, Ruling):
        yield from leaf.citations
        yield from (one.citation for one in leaf.penalties)
        yield from (one.citation for one in leaf.relief)
        yield from (one.otherwise.citation for one in leaf.corrections if one.otherwise)
    else:
        yield leaf.citation


def _rows(name: str) -> list[list[str]]:
    """Return the rows of a table of this package, without its remarks."""
    text = (files("marram.rules") / name).read_text(encoding="utf-8")
    return [line.split("|") for line in text.splitlines() if line and not line.startswith("#")]
