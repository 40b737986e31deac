"""The conditions of the competition as facts: day, form of play, Local Rules, each read strictly."""

from collections.abc import Mapping
from datetime import date
from functools import lru_cache
from typing import Any

from marram.errors import BadAnswer, DateNotCovered, shown
from marram.rules.editions import EDITIONS, FIRST_DAY, FORMER_RULES, day_of_edition
from marram.rules.engine.fact import Fact
from marram.rules.facts.conditions import LOCAL_RULES, FormOfPlay, Sides, date_of_play, form_of_play
from marram.rules.incidents import incident
from marram.said import joined, said

Codes = frozenset[str] | None
"""The codes of the Local Rules in force; ``None`` where they are not known."""


def day_meant(played_on: date | None, edition: int | str | None) -> date:
    """Return the day of play: the one given, or the day that an edition stands for, as then clarified.

    Raises:
        BadAnswer: neither or both are given, or there is no such edition.
    """
    if edition is None:
        if played_on is None:
            raise BadAnswer(
                said("played_on: no day of play is given. Give it, or an edition such as edition=2023.")
            )
        return played_on
    if played_on is not None:
        raise BadAnswer(said("played_on and edition both name a day; give one of them."))
    day = None if isinstance(edition, bool) else day_of_edition(edition)
    if day is None:
        known = ", ".join(str(one.year) for one in EDITIONS)
        raise BadAnswer(
            said(
                "edition: {edition} is no edition. Give one of {known}; for teaching also {year}.",
                edition=shown(edition),
                known=known,
                year=FORMER_RULES.year,
            )
        )
    return day


@lru_cache(maxsize=512, typed=True)
def conditions(played_on: date, form: FormOfPlay | str | None, local_rules: Codes) -> Mapping[Fact[Any], Any]:
    """Return the facts that the conditions of the competition establish; the mapping is shared, not to be changed.

    Raises:
        DateNotCovered: ``played_on`` lies before the first edition covered.
        BadAnswer: no day, an unknown form of play, or Local Rules that cannot be adopted so on that day.
    """
    day = date_of_play.parse(played_on)
    if day < FIRST_DAY:
        raise DateNotCovered(
            said(
                "Play on {day} is not covered: marram knows the editions of the Rules from "
                "{editions}. Give a day on or after {first_day}.",
                day=day.isoformat(),
                editions=", ".join(one.isoformat() for one in EDITIONS),
                first_day=FIRST_DAY.isoformat(),
            )
        )
    return _established(day, form, local_rules)


def conditions_of(
    name: str, played_on: date, form: FormOfPlay | str | None, local_rules: Codes
) -> Mapping[Fact[Any], Any]:
    """Return the facts that the conditions establish, for an incident that may reach back before the editions.

    Raises:
        DateNotCovered: ``played_on`` lies before the first day covered for this incident.
        UnknownIncident, BadAnswer: the incident, or one of the conditions, cannot be used.
    """
    day = date_of_play.parse(played_on)
    form = None if form is None else form_of_play.parse(form)
    first = incident(name).covered_from
    if first == FIRST_DAY:
        return conditions(day, form, local_rules)
    if day < first:
        raise DateNotCovered(
            said(
                "Play on {day} is not covered: the incident {name!r} shows what the Rules ruled "
                "from {first} on. Give a day on or after {first}.",
                day=day.isoformat(),
                name=name,
                first=first.isoformat(),
            )
        )
    return _established(day, form, local_rules)


def _established(day: date, form: FormOfPlay | str | None, local_rules: Codes) -> Mapping[Fact[Any], Any]:
    known: dict[Fact[Any], Any] = {date_of_play: day}
    faults: list[str] = []
    if form is not None:
        try:
            known[form_of_play] = form_of_play.parse(form)
        except BadAnswer as error:
            faults += error.faults
    if local_rules is not None:
        in_force = _in_force(local_rules, day, faults)
        known.update({fact: code in in_force for code, fact in LOCAL_RULES.items()})
    if faults:
        raise BadAnswer(*faults)
    return known


def check_sides(who: Sides | None, form: FormOfPlay | None) -> None:
    """Refuse sides that cannot play in a form.

    Raises:
        BadAnswer: Three-Ball is said to be played in a form other than match play.
    """
    if who is Sides.THREE_BALL and form not in (None, FormOfPlay.MATCH_PLAY):
        raise BadAnswer(
            said(
                "sides: three_ball is match play (Rule 21.4a), and the form of play is {form}. "
                "Give match_play, or other sides.",
                form=form.value if form else "",
            )
        )


def check_partners(incident: str, rule: str, who: Sides | None) -> None:
    """Refuse an incident of partners where nobody has one.

    Args:
        incident: its name.
        rule: the Rule it starts from.
        who: who plays together, if known.

    Raises:
        BadAnswer: Three-Ball is told of an incident that Rule 22 or 23 knows.
    """
    if who is Sides.THREE_BALL and rule.startswith(_RULES_OF_PARTNERS):
        raise BadAnswer(
            said(
                "sides: {incident} is about partners (Rule {rule}), and in three_ball nobody has one. "
                "Give foursomes or four_ball, or take another incident.",
                incident=incident,
                rule=rule,
            )
        )


_RULES_OF_PARTNERS = ("22.", "23.")


def no_list_of_codes(given: object) -> BadAnswer:
    """Return the fault of Local Rules that are no list of texts; one text is not the list of its letters."""
    return BadAnswer(
        said(
            'local_rules: {given} is no list of codes. Give for example ["E-5"], or [] where none is in force.',
            given=shown(given),
        )
    )


def _in_force(codes: frozenset[str], day: date, faults: list[str]) -> frozenset[str]:
    """Return which codes change rulings on a day; what is wrong with others is added to ``faults``."""
    if not codes:  # said plainly, so that the register need not be read
        return codes
    if not all(isinstance(code, str) for code in codes):
        raise no_list_of_codes([code for code in codes if not isinstance(code, str)])
    from marram.rules.local_rules.adoption import adopt  # noqa: PLC0415 - the register, only when needed

    found = adopt(sorted(codes), day)
    faults += [joined(": ", "local_rules", fault) for fault in found.faults]
    return frozenset(found.in_rulings)


__all__ = ["Codes", "check_sides", "conditions", "conditions_of", "day_meant", "no_list_of_codes"]
