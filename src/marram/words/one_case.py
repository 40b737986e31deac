"""Which of the things that a fact covers a made-up situation tells, so that nobody reads "the one or the other"."""

from collections.abc import Mapping
from functools import cache
from typing import Any

from marram.rules.facts.conditions import FormOfPlay
from marram.words.english.cases import CASES

OPENING = "opening"
"""What stands in a key for how the telling begins."""


def one_case(incident: str, facts: Mapping[str, Any], form: FormOfPlay) -> dict[str, str]:
    """Return the sentences that are told instead of the general ones, by fact; an empty one where nothing is said.

    Args:
        incident: the incident.
        facts: what is told, by fact name, answers as tokens.
        form: the form of play.
    """
    known = {OPENING: "", **facts, "form": form.value}
    found: dict[str, str] = {}
    for of_incident, name, needed, sentence in _cases():
        if name not in found and of_incident in {"", incident} and all(_holds(one, known) for one in needed):
            found[name] = sentence
    return found


@cache
def _cases() -> tuple[tuple[str, str, tuple[tuple[str, str], ...], str], ...]:
    """Return each case: its incident or none, the fact it tells, what has to be told for it, and the sentence."""
    read = []
    for key, sentence in CASES.items():
        of_incident, _, conditions = key.rpartition("/")
        needed = tuple((one.partition(".")[0], one.partition(".")[2]) for one in conditions.split("+"))
        read.append((of_incident, needed[0][0], needed, sentence))
    return tuple(read)


def _holds(needed: tuple[str, str], known: Mapping[str, Any]) -> bool:
    name, token = needed
    return name in known and (not token or str(known[name]) == token)
