"""The conditions of the competition as given on the command line."""

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING

from marram.errors import InputError
from marram.rules.editions import EDITIONS, FORMER_RULES
from marram.rules.facts.conditions import date_of_play

if TYPE_CHECKING:
    from marram.rules.local_rules.adoption import Adopted


def day_of_play(played_on: str | None, edition: str | None) -> date:
    """Return the day of play: the one given, the first of an edition (2016: the former Rules), or today.

    Raises:
        InputError: both are given, or one cannot be read.
    """
    if played_on is not None and edition is not None:
        raise InputError("--played-on and --edition both name a day; give one of them.")
    if edition is not None:
        by_year = {str(day.year): day for day in (FORMER_RULES, *EDITIONS)}
        if edition not in by_year:
            raise InputError(
                f"--edition {edition!r}: there is no such edition. "
                f"Give {' or '.join(str(day.year) for day in EDITIONS)}; for teaching also {FORMER_RULES.year}."
            )
        return by_year[edition]
    if played_on is None:
        return date.today()  # noqa: DTZ011 - the official's own calendar day
    day: date = date_of_play.parse(played_on)
    return day


def local_rules_in_force(
    codes: Sequence[str] | None, day: date, where: str = "--local-rule"
) -> "Adopted | None":
    """Return the Local Rules in force; none of them for ``none``; ``None`` when nothing was said.

    Args:
        codes: the codes given.
        day: the day of play.
        where: what they were given with, for the faults.

    Raises:
        InputError: ``none`` stands beside a code, or they cannot be adopted so; every fault is listed.
    """
    if codes is None:
        return None
    if "none" in codes and len(codes) > 1:
        raise InputError(f"{where}: none stands beside another Local Rule; leave one of them out.")
    from marram.rules.local_rules.adoption import adopt

    found = adopt([code for code in codes if code != "none"], day)
    if found.faults:
        raise InputError(*(f"{where}: {fault}" for fault in found.faults))
    return found


def facts_given(pairs: Sequence[str]) -> dict[str, str]:
    """Return the facts given as ``NAME=VALUE``.

    Raises:
        InputError: one has no ``=``, or a fact is given twice with different answers; all faults are listed.
    """
    facts: dict[str, str] = {}
    faults = []
    for pair in pairs:
        name, sign, value = (part.strip() for part in pair.partition("="))
        if not (name and sign and value):
            faults.append(f"--fact {pair!r} is not NAME=VALUE; write for example area_of_ball=bunker.")
        elif facts.get(name, value) != value:
            faults.append(f"--fact {name} is given twice: {facts[name]!r} and {value!r}; leave one out.")
        else:
            facts[name] = value
    if faults:
        raise InputError(*faults)
    return facts
