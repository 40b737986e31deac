"""Rule numbers and codes of Local Rules in what was typed: they are exact, nothing about them is learned."""

import re
from collections.abc import Iterable

from marram.rules.incidents.incident import Incident

RULE = re.compile(
    r"(?<![\w.])([0-9]{1,2}\.[0-9][0-9]?[a-z]?(?:\([0-9]\))?)(?![\w.]*[0-9a-z%])", re.IGNORECASE
)
"""A sub-rule such as 9.4b or 18.3c(2)."""
WHOLE_RULE = re.compile(r"(?:\brules?\s+([0-9]{1,2})|^\s*([0-9]{1,2})\s*$)(?![\w.(]*[0-9a-z])", re.IGNORECASE)
"""A whole Rule: a number after the word, or alone."""
CODE = re.compile(r"(?<![\w-])([a-m]-[0-9]{1,2})(?![\w-])", re.IGNORECASE)
"""The code of a Model Local Rule such as E-5."""
AMOUNT = re.compile(
    r"\s*(?:m|metres?|meters?|yards?|yds?|feet|foot|ft|inch(?:es)?|cm|club|seconds?|minutes?|miles?|strokes?|handicap)\b",
    re.IGNORECASE,
)
"""What makes a number an amount."""


def citations(sentence: str) -> tuple[str, ...]:
    """Return the Rules cited in a sentence, in lower case."""
    found = [
        match[1]
        for pattern in (RULE, CODE)
        for match in pattern.finditer(sentence)
        if not AMOUNT.match(sentence, match.end())
    ]
    found += [match[1] or match[2] for match in WHOLE_RULE.finditer(sentence)]
    return tuple(dict.fromkeys(one.lower() for one in found))


def without(sentence: str, cited: Iterable[str]) -> str:
    """Return a sentence without the Rules cited in it, and without the word before them."""
    for one in cited:
        sentence = re.sub(
            rf"(?:\brules?\s*)?{re.escape(one)}(?![0-9a-z])", " ", sentence, flags=re.IGNORECASE
        )
    return sentence


def closeness(one: Incident, cited: str) -> int:
    """Return how near an incident begins to what is cited: 3 there, 2 in a part of it, 1 in what it is a part of, 0 elsewhere."""
    rule = one.rule.lower()
    if rule == cited:
        return 3
    if _part_of(rule, cited):
        return 2
    return 1 if _part_of(cited, rule) else 0


def _part_of(fine: str, coarse: str) -> bool:
    """Tell whether one number is a part of another: 9.4b of 9.4, 16.1 of 16, but 14.1 not of 1."""
    rest = fine.removeprefix(coarse)
    return rest not in (fine, "") and not (rest[0].isdigit() and coarse[-1].isdigit())
