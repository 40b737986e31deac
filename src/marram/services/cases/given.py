"""The conditions of the competition as an official gives them one by one: by an option, or by a key of a file."""

from collections.abc import Callable, Sequence
from datetime import date
from typing import Any, NamedTuple

from marram.errors import InputError
from marram.rules import editions
from marram.rules.editions import EDITIONS, FORMER_RULES
from marram.rules.engine.fact import Fact
from marram.rules.facts.conditions import FormOfPlay, Sides, date_of_play, form_of_play, sides
from marram.said import joined, one_of, said


def _as_option(name: str) -> str:
    return f"--{name.replace('_', '-')}"


class InForce(NamedTuple):
    """The Local Rules in force: every code meant, and those of them that can change a ruling."""

    codes: tuple[str, ...] = ()
    in_rulings: tuple[str, ...] = ()


def day_of_play(played_on: object, edition: object, where: Callable[[str], str] = _as_option) -> date:
    """Return the day of play: the one given, that of an edition (2016: the former Rules), or today.

    An edition means the edition as clarified up to its last day; a day of play decides otherwise.

    Args:
        played_on: the day, as year-month-day.
        edition: the year of an edition.
        where: how the faults call what was given: the option, or the place in a file.

    Raises:
        InputError: both are given, or one cannot be read.
    """
    if played_on is not None and edition is not None:
        raise InputError(
            said(
                "{one} and {other} both name a day; give one of them.",
                one=where("played_on"),
                other=where("edition"),
            )
        )
    if edition is not None:
        return day_of_edition(str(edition), where("edition"))
    if played_on is None:
        return date.today()  # noqa: DTZ011 - the official's own calendar day
    day: date = _read(date_of_play, played_on, where("played_on"))
    return day


def day_of_edition(year: str, where: str) -> date:
    """Return the day an edition named by its year stands for: its last, or that of its newest change known.

    Args:
        year: the year as given.
        where: what it was given with, for the fault.

    Raises:
        InputError: there is no such edition.
    """
    day = editions.day_of_edition(year)
    if day is None:
        raise InputError(
            said(
                "{where} {year!r}: there is no such edition. Give {editions}; for teaching also {former}.",
                where=where,
                year=year,
                editions=one_of((EDITIONS[0].year, EDITIONS[-1].year)),
                former=FORMER_RULES.year,
            )
        )
    return day


def day_or_edition(given: str, where: str) -> date:
    """Return a day given as year-month-day, or the day that an edition named by its year stands for.

    Args:
        given: what was given.
        where: what it was given with, for the fault.

    Raises:
        InputError: it is neither.
    """
    if "-" not in given:
        return day_of_edition(given, where)
    day: date = _read(date_of_play, given, where)
    return day


def form_given(form: object, where: str = "--form") -> FormOfPlay | None:
    """Return the form of play; ``None`` when nothing was said.

    Args:
        form: the form as given.
        where: what it was given with, for the fault.

    Raises:
        BadAnswer: there is no such form of play.
    """
    return None if form is None else _read(form_of_play, form, where)


def sides_given(given: object, where: str = "--sides") -> Sides | None:
    """Return who plays together; ``None`` when nothing was said.

    Args:
        given: the answer as given.
        where: what it was given with, for the fault.

    Raises:
        BadAnswer: there is no such answer.
    """
    return None if given is None else _read(sides, given, where)


def _read(fact: Fact[Any], given: object, where: str) -> Any:
    """Return the answer that was given, its fault named by what it was given with."""
    return fact.parse(given, where)


def local_rules_in_force(
    codes: Sequence[str] | None, day: date, where: str = "--local-rule"
) -> InForce | None:
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
    if set(codes) <= {"none"}:  # said plainly, so that the register need not be read
        return InForce()
    if "none" in codes:
        raise InputError(
            said("{where}: 'none' stands beside another Local Rule; leave one of them out.", where=where)
        )
    from marram.rules.local_rules.adoption import adopt  # noqa: PLC0415 - the register is large, and not always needed

    found = adopt(codes, day)
    if found.faults:
        raise InputError(*(joined(": ", where, fault) for fault in found.faults))
    return InForce(found.codes, found.in_rulings)
