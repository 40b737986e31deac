"""One case: what happened, where, and under which conditions. The one schema of all that is written and read back.

A page's address (:mod:`marram.services.cases.address`), JSON (:mod:`marram.services.cases.case_file`) and what is kept hold the
same case. Answers are written as on the command line; what is not known is left out, never guessed.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Any, ClassVar, Literal

from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.plain import as_plain
from marram.said import said
from marram.schema import STRICT, give

_ANSWERS = said('an object of facts and answers, for example {{"cause_known": "yes"}}')
_NAMES = said("a word in quotation marks")


@dataclass(frozen=True)
class Spot:
    """A place on the course.

    Attributes:
        latitude: degrees north.
        longitude: degrees east.
        accuracy: metres: how well it is known, where a phone said so.
    """

    __pydantic_config__: ClassVar = STRICT

    latitude: float = field(metadata=give(said("degrees north, for example 55.0012345")))
    longitude: float = field(metadata=give(said("degrees east, for example 3.9912345")))
    accuracy: float | None = field(default=None, metadata=give(said("metres, for example 6")))


@dataclass(frozen=True)
class CasePlayer:
    """The player of the case; nothing of it is true of the next one.

    Attributes:
        handed: how the player swings.
        club_length: metres: the longest club other than the putter.
    """

    __pydantic_config__: ClassVar = STRICT

    handed: Literal["right", "left"] | None = field(default=None, metadata=give('"right" or "left"'))
    club_length: float | None = field(default=None, metadata=give(said("metres, for example 1.15")))


@dataclass(frozen=True)
class Act:
    """One thing that happened.

    Attributes:
        incident: its name.
        facts: what the official answered, by fact, in the order given.
        places: what was shown on the map, by role (:data:`marram.services.cases.places.ROLES`).
        condition: the identifier of the mapped condition relief is taken from, if chosen.
        option: what the player then did: a kind of relief, ``as_it_lies`` or ``nothing_yet``.
        ball: which ball of the story it was about: ``in_play``, ``provisional``, ``other_players``, …
        strokes: strokes that count, made in this act and until the next; ``None``: those the act itself shows.
        by: ``another_player`` where it was another player's act (in a match the opponent's).
    """

    __pydantic_config__: ClassVar = STRICT

    incident: str = field(metadata=give(said("the name of an incident; 'marram incidents' lists them")))
    facts: Mapping[str, str] = field(default_factory=dict, metadata=give(_ANSWERS))
    places: Mapping[str, Spot] = field(
        default_factory=dict, metadata=give(said('an object of places, each with "latitude" and "longitude"'))
    )
    condition: str | None = field(default=None, metadata=give(_NAMES))
    option: str | None = field(default=None, metadata=give(said('a word such as "lateral" or "as_it_lies"')))
    ball: str | None = field(default=None, metadata=give(said('a word such as "provisional" or "in_play"')))
    strokes: int | None = field(default=None, metadata=give(said("a whole number of strokes")))
    by: Literal["another_player"] | None = field(
        default=None, metadata=give(said('"another_player", or leave it out'))
    )


@dataclass(frozen=True)
class MadeWith:
    """What a case was written by.

    Attributes:
        program: the version of marram.
        book: a digest of the Rules as encoded (:func:`marram.services.cases.made_with.book_digest`).
        map_version: the version of the map, where versions are kept.
        map_in_force_from: the first day of that map.
    """

    __pydantic_config__: ClassVar = STRICT

    program: str = field(metadata=give(_NAMES))
    book: str = field(metadata=give(_NAMES))
    map_version: int | None = field(default=None, metadata=give(said("the number of a version")))
    map_in_force_from: date | None = field(default=None, metadata=give(said("a day as year-month-day")))


@dataclass(frozen=True)
class Case:
    """A case: one incident, or several of one story.

    Attributes:
        played_on: the day of play, which decides the edition.
        incidents: what happened, in order.
        form_of_play: the form of play; ``None``: not known.
        sides: who plays together; ``None``: not known.
        local_rules: codes of the Local Rules in force; ``None``: not known.
        hole: the number of the hole, if known.
        player: the player of the case.
        between: what is known between incidents, by fact.
        strokes_before: strokes on the hole before the first incident, penalty strokes included.
        made_with: what the case was written by.
        flag: where the hole is cut, if the official said so.
    """

    __pydantic_config__: ClassVar = STRICT

    played_on: date = field(metadata=give(said("a day as year-month-day, for example 2025-06-21")))
    incidents: tuple[Act, ...] = field(metadata=give(said('a list of objects with "incident" and "facts"')))
    form_of_play: FormOfPlay | None = field(
        default=None,
        metadata=give(said("one of {known}", known=", ".join(one.value for one in FormOfPlay))),
    )
    sides: Sides | None = field(
        default=None, metadata=give(said("one of {known}", known=", ".join(one.value for one in Sides)))
    )
    local_rules: tuple[str, ...] | None = field(
        default=None, metadata=give(said('a list of codes, for example ["E-5"]; [] for none'))
    )
    hole: int | None = field(default=None, metadata=give(said("the number of a hole")))
    player: CasePlayer = field(
        default_factory=CasePlayer, metadata=give(said('an object with "handed" and "club_length"'))
    )
    between: Mapping[str, str] = field(default_factory=dict, metadata=give(_ANSWERS))
    strokes_before: int | None = field(default=None, metadata=give(said("a whole number of strokes")))
    made_with: MadeWith | None = field(
        default=None, metadata=give(said("what marram wrote there, or leave it out"))
    )
    flag: Spot | None = field(
        default=None, metadata=give(said('an object with "latitude" and "longitude", beside "hole"'))
    )

    def document(self) -> dict[str, Any]:
        """Return the case as JSON holds it; what is not known is left out."""
        plain = as_plain(self)
        plain["incidents"] = [_known(one) for one in plain["incidents"]]
        for act in plain["incidents"]:
            if "places" in act:
                act["places"] = {role: _known(spot) for role, spot in act["places"].items()}
        if plain["flag"]:
            plain["flag"] = _known(plain["flag"])
        plain["player"] = _known(plain["player"])
        if plain["made_with"]:
            plain["made_with"] = _known(plain["made_with"])
        return _known(plain)


def _known(plain: Mapping[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in plain.items() if value is not None and value != {}}
