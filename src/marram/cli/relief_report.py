"""What ``marram relief`` says: where the ball lies, the ruling, and what became of each option."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from marram.cli.drop import drop_lines
from marram.cli.show import Line, option_head, question_lines
from marram.relief import NeedsPlace, NoRelief
from marram.relief.pictures.picture_words import LEAST_AREA, assumed_words, measures_told
from marram.relief.place.place_words import PICKED, missing_words, no_relief_words
from marram.rules.plain import as_plain
from marram.rules.result import NeedFacts
from marram.rules.ruling import HandOver
from marram.services.cases.places import Degrees
from marram.services.cases.rulings import Ruled
from marram.services.ground.marked import WithoutLocalRule
from marram.services.ground.relief import OptionDrawn, condition_words
from marram.words.spoken import spoken
from marram.words.texts import text
from marram.words.told_apart import options_words

if TYPE_CHECKING:
    from marram.course.versions.hole_days import HoleVersion
    from marram.course.versions.map_versions import Version
    from marram.relief.areas.relief_area import ReliefArea
    from marram.relief.drop import DropCheck


@dataclass(frozen=True)
class FlagGiven:
    """That the hole is where the official said.

    Attributes:
        place: latitude and longitude in degrees.
        mapped: whether the map has a line of play for the hole.
    """

    place: Degrees
    mapped: bool

    def document(self) -> dict[str, Any]:
        """Return it as data."""
        latitude, longitude = self.place
        return {"longitude": longitude, "latitude": latitude, "on_map": self.mapped}


@dataclass(frozen=True)
class Report:
    """What the command says.

    Attributes:
        no_local_rule: whether it is taken for granted that no Local Rule is in force.
        ruled: the case and its ruling.
        drawn: what became of each option.
        drops: the check of a dropped ball, by the number of the option.
        version: the version of the map, where versions are kept.
        holes: the hole locations of the day, where some were set.
        not_offered: dropping zones that only a Local Rule which is not in force would offer.
        flag: that the place of the hole was given, where it was.
    """

    no_local_rule: bool
    ruled: Ruled
    drawn: Sequence[OptionDrawn]
    drops: "Mapping[int, DropCheck]"
    version: "Version | None" = None
    holes: "HoleVersion | None" = None
    not_offered: WithoutLocalRule | None = None
    flag: FlagGiven | None = None

    @property
    def in_force_from(self) -> date | None:
        """The day from which the version of the map is in force, but for the map as its file holds it."""
        version = self.version
        return version.since(self.ruled.asked.conditions.on) if version and version.saved_at else None

    @property
    def version_number(self) -> int | None:
        """The number of the version of the map, where versions are kept."""
        return self.version.number if self.version else None

    def lines(self, svg: Path | None) -> Iterator[Line]:
        """Yield the lines of the text report."""
        ruled, place, words = self.ruled, self.ruled.lie.place, self.ruled.sheet
        assert place is not None
        assert words is not None
        yield "title", text("cli.relief.lies", where=place.sentence, metres=place.metres)
        for doubt in place.doubts:
            yield "caution", doubt
        if self.flag is not None:
            key = "cli.relief.flag" if self.flag.mapped else "cli.relief.flag_alone"
            yield "quiet", text(key, hole=ruled.asked.hole)
        if isinstance(ruled.result, NeedFacts):
            yield "text", text("cli.relief.needed", incident=ruled.asked.what, question=words.headline)
            yield from question_lines(words)
            return
        yield "text", words.headline
        if isinstance(ruled.result, HandOver):
            yield "text", text("cli.relief.rather", incident=ruled.result.incident)
            return
        for name, premise in ruled.assumed.items():
            yield "quiet", text("cli.relief.assumed", fact=name, answer=premise)
        if self.not_offered is not None:
            yield "caution", self.not_offered.here_words
        if self.no_local_rule:
            yield "quiet", text("cli.relief.no_local_rule")
        told = options_words(one.option for one in self.drawn)
        for number, (one, option) in enumerate(zip(self.drawn, told, strict=True), start=1):
            yield "head", option_head(number, option)
            yield from _option_lines(one)
            if number in self.drops:
                yield from drop_lines(self.drops[number])
        if svg is not None:
            yield "text", ""
            yield "text", text("cli.relief.drawn", file=svg)
        if self.version is not None:
            key = "cli.relief.map_version_since" if self.in_force_from else "cli.relief.map_version"
            yield "quiet", text(key, version=self.version.number, since=self.in_force_from)
        if self.holes is not None:
            yield (
                "quiet",
                text(
                    "shell.holes_cut",
                    day=self.holes.day.isoformat(),
                    number=self.holes.number,
                    who=self.holes.who,
                ),
            )
        yield "quiet", words.reminder

    def document(self) -> dict[str, Any]:
        """Return the report as data."""
        from marram.services.cases.address_case import case_asked
        from marram.services.cases.made_with import made_with

        ruled, hole, place = self.ruled, self.ruled.lie.hole, self.ruled.lie.place
        assert hole is not None
        assert place is not None
        return {
            "marram": 1,
            "kind": "relief",
            "incident": ruled.asked.what,
            "played_on": ruled.asked.conditions.on.isoformat(),
            "hole": hole.number,
            "map_version": self.version_number,
            "holes_version": self.holes.number if self.holes else None,
            "hole_at": None if self.flag is None else self.flag.document(),
            "map_in_force_from": as_plain(self.in_force_from),
            "area": place.area.value if place.area else "out_of_bounds",
            "area_open": place.area_open,
            "metres_to_hole": round(place.metres, 3),
            "facts": dict(ruled.known),
            "assumed": dict(ruled.assumed),
            "result": as_plain(ruled.result),
            "options": [
                {
                    "option": as_plain(one.option),
                    "state": _state(one),
                    "lines": [line for _, line in _option_lines(one)],
                    "area_m2": [round(area.area_m2, 3) for area in one.areas],
                    "drop": as_plain(self.drops.get(number)),
                }
                for number, one in enumerate(self.drawn, start=1)
            ],
            "not_offered": self.not_offered.here_words if self.not_offered else None,
            "case": case_asked(ruled.asked, made_with(self.version_number, self.in_force_from)).document(),
        }


def _state(one: OptionDrawn) -> str:
    """Return what became of an option, as a word of the document."""
    if one.fault:
        return "NotDrawn"
    return type(one.answer).__name__


def _size(area: "ReliefArea") -> str:
    """Return how large a relief area is, in words: never as nothing, however little it is."""
    if area.is_spot:
        return text("cli.relief.spot")
    least = area.area_m2 < LEAST_AREA
    key = "cli.relief.area_least" if least else "cli.relief.area"
    return text(key, area=LEAST_AREA if least else area.area_m2, club_length=area.club_length)


def _option_lines(one: OptionDrawn) -> Iterator[Line]:
    if one.fault:
        yield "item", spoken(one.fault)
    if isinstance(one.answer, NeedsPlace):
        for missing in one.answer.needs:
            if missing in PICKED:
                yield "item", text("cli.relief.give_place", role=PICKED[missing])
            elif missing.value == "handedness":
                yield "item", text("cli.relief.give_hand")
            else:
                yield "item", missing_words(missing)
    elif isinstance(one.answer, NoRelief):
        yield "item", no_relief_words(one.answer.why)
    for area in one.areas:
        yield "item", _size(area)
        for measure in measures_told(area):
            yield "item", measure
        for key in area.remarks:
            yield "quiet", f"    {assumed_words(key)}"
    for note in one.notes:
        yield "quiet", f"    {note}"
    for other in one.choices:
        yield (
            "quiet",
            "    " + text("cli.relief.near", condition=condition_words(other), ident=other.ident),
        )
