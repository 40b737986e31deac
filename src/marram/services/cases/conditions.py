"""The conditions a case is ruled under, and the player of the case, as an address writes them.

What is known of the player (``handed``, ``club``) belongs to the case: it is never kept for the next one.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from datetime import date as day
from typing import TYPE_CHECKING, Any

from marram.errors import BadAnswer, BadPlace, DateNotCovered
from marram.relief.place.player import USUAL_CLUB_LENGTH, Player
from marram.rules.editions import EDITIONS, FIRST_DAY, FORMER_RULES, clarified_to, edition_of
from marram.rules.engine.conditions import check_sides
from marram.rules.facts.conditions import FormOfPlay, Sides, form_of_play, sides
from marram.said import joined, said
from marram.services.cases.given import day_of_edition
from marram.words.language import translate
from marram.words.texts import day_words, text

if TYPE_CHECKING:
    from marram.services.cases.event import Event

PLAYER_KEYS = ("handed", "club")
"""Keys about the player of one case."""

KEYS = ("on", "edition", "form", "sides", "local", *PLAYER_KEYS)
"""Every key of the conditions in an address."""

NONE = "none"
"""How an empty list of Local Rules, or an open question, is written in an address."""


@dataclass(frozen=True, slots=True)
class Conditions:
    """The conditions a case is ruled under.

    Attributes:
        on: the day of play, which decides the edition.
        form: the form of play; ``None`` is unknown and will be asked.
        sides: who plays together; ``None`` is unknown and will be asked.
        local: the codes of the Local Rules in force, those that only define an area among them; ``None`` is
            unknown and will be asked.
        handed: ``right`` or ``left``: how the player swings; ``None`` is unknown.
        club: the length of the player's longest club other than the putter, in metres.
    """

    on: day
    form: FormOfPlay | None = None
    sides: Sides | None = None
    local: tuple[str, ...] | None = None
    handed: str | None = None
    club: float = USUAL_CLUB_LENGTH

    @property
    def edition(self) -> int:
        """The year the edition in force came into force."""
        return edition_of(self.on).year

    @property
    def former(self) -> bool:
        """Whether the day lies before the editions covered: only incidents for teaching reach back to it."""
        return self.on < FIRST_DAY

    @property
    def rules_words(self) -> str:
        """The Rules in force, in words."""
        if self.former:
            return text("conditions.former", year=FIRST_DAY.year - 1)
        return text("conditions.rules", year=self.edition)

    @property
    def clarified_words(self) -> str:
        """Up to which day the clarifications reach that a ruling stands on, in words."""
        return text("conditions.clarified", day=day_words(clarified_to(self.on)))

    @property
    def form_words(self) -> str:
        """The form of play in words."""
        return translate()(form_of_play.answers[self.form]) if self.form else text("conditions.form.open")

    @property
    def sides_words(self) -> str:
        """Who plays together, in words; empty for players each alone."""
        if self.sides is None or self.sides is Sides.INDIVIDUAL:
            return ""
        return text(f"conditions.sides.{self.sides.value}")

    @property
    def local_words(self) -> str:
        """The Local Rules in force, in words."""
        if self.local is None:
            return text("conditions.local.open")
        return ", ".join(self.local) or text("conditions.local.none")

    def pairs(self) -> list[tuple[str, str]]:
        """Return the conditions as they stand in an address."""
        return [
            ("on", self.on.isoformat()),
            ("form", self.form.value if self.form else NONE),
            ("sides", self.sides.value if self.sides else NONE),
            ("local", "open" if self.local is None else ",".join(self.local) or NONE),
            ("handed", self.handed or NONE),
            ("club", f"{self.club:g}"),
        ]

    def of_competition(self) -> "Conditions":
        """Return the conditions without what is known of the player: those of the next case."""
        return replace(self, handed=None, club=USUAL_CLUB_LENGTH)

    def facts(self) -> dict[str, Any]:
        """Return the facts that the conditions establish beyond those a request takes by name."""
        return {"sides": self.sides} if self.sides else {}

    def player(self) -> Player:
        """Return the player as far as relief areas depend on who plays."""
        return Player(self.club, None if self.handed is None else self.handed == "right")

    def request(self) -> dict[str, Any]:
        """Return the conditions as arguments of :func:`marram.rule`."""
        return {
            "played_on": self.on,
            "form_of_play": self.form,
            "sides": self.sides,
            "local_rules": self.local,
        }


def conditions_of_event(event: "Event") -> Conditions:
    """Return the conditions that an event sets; without a day of its own it is played today."""
    return Conditions(
        on=event.played_on or datetime.now(tz=UTC).astimezone().date(),
        form=event.form_of_play,
        sides=event.sides,
        local=None if event.local_rules is None else event.adopted or event.local_rules,
    )


def read_conditions(given: Mapping[str, str], base: Conditions) -> Conditions:
    """Return the conditions that pairs of an address set; what they leave out is as in ``base``.

    Raises:
        BadAnswer, DateNotCovered: one of them cannot be read.
    """

    def open_or(key: str, read: Any, otherwise: Any) -> Any:
        value = given.get(key)
        if value is None:
            return otherwise
        return None if value in ("", NONE) else read(value)

    on = _on(given) or base.on
    return Conditions(
        on=on,
        form=open_or("form", form_of_play.parse, base.form),
        sides=open_or("sides", sides.parse, base.sides),
        local=_local(given["local"], on) if "local" in given else base.local,
        handed=open_or("handed", _handed, base.handed),
        club=_club(given["club"]) if given.get("club") else base.club,
    )


def _on(given: Mapping[str, str]) -> day | None:
    """Return the day of play, or the day an edition stands for, as clarified up to its last day."""
    if not given.get("edition"):
        return _day(given["on"]) if given.get("on") else None
    if given.get("on"):
        raise BadAnswer(said("on and edition both name a day; give one of them."))
    return day_of_edition(given["edition"], "edition")


def _day(text: str) -> day:
    try:
        found = day.fromisoformat(text)
    except ValueError:
        raise BadAnswer(
            said("on: {text!r} is not a day; write it as year-month-day, for example 2025-06-21.", text=text)
        ) from None
    if found < FORMER_RULES:
        raise _not_covered(text)
    return found


def in_competition(conditions: Conditions) -> Conditions:
    """Return the conditions, as of a competition: the former Rules are for teaching only.

    Raises:
        DateNotCovered: the day lies before the first edition.
        BadAnswer: the sides cannot play in the form of play.
    """
    if conditions.former:
        raise _not_covered(conditions.on.isoformat())
    check_sides(conditions.sides, conditions.form)
    return conditions


def _not_covered(text: str) -> DateNotCovered:
    return DateNotCovered(
        said(
            "Play on {text} is not covered: marram knows the editions of the Rules from "
            "{editions}. Give a day on or after {first_day}. "
            "What the former Rules ruled is shown on the page of an incident for teaching.",
            text=text,
            editions=", ".join(one.isoformat() for one in EDITIONS),
            first_day=FIRST_DAY.isoformat(),
        )
    )


def _local(text: str, on: day) -> tuple[str, ...] | None:
    if text == "open":
        return None
    from marram.rules.local_rules.adoption import adopt  # noqa: PLC0415 - the register, only when needed

    found = adopt([code for code in text.split(",") if code and code != NONE], on)
    if found.faults:
        raise BadAnswer(*(joined(": ", "local", fault) for fault in found.faults))
    return found.codes


def _handed(text: str) -> str:
    if text not in ("right", "left"):
        raise BadAnswer(said("handed: {text!r} is not an answer. It allows: right, left.", text=text))
    return text


def _club(text: str) -> float:
    try:
        return Player(club_length=float(text)).club_length
    except (ValueError, BadPlace):
        raise BadAnswer(
            said("club: {text!r} is not the length of a club. Give metres, for example 1.15.", text=text)
        ) from None
