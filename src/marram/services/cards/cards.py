"""Cards as they are entered and kept: one written form of what can be entered, and what becomes of a card."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import Any, ClassVar, Literal

from marram.competition.cards.acts import (
    By,
    CardAct,
    Certified,
    Ended,
    Figure,
    FoundOut,
    HandicapShown,
    Returned,
    SettledAs,
    Settlement,
)
from marram.competition.cards.findings import RuledUnder
from marram.competition.cards.outcome import CardOutcome, card_outcome
from marram.competition.cards.scorecard import Beside, Scorecard, scorecard
from marram.competition.conditions.choices import Score
from marram.competition.conditions.event_file import WORDS, Maximum
from marram.competition.results.card import Hole, OutKind
from marram.competition.results.scoring import Scoring
from marram.errors import InputError, shown
from marram.handicap.strokes import strokes_by_hole
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.plain import as_plain
from marram.rules.result import NeedFacts
from marram.said import joined, said
from marram.schema import STRICT, give, read_into, read_json
from marram.services.results.competition_results import HoleGiven

_ACTS = ("figure", "certified", "handicap_shown", "returned", "settled", "found_out", "ended")
_ANSWERS = said("an object of findings, each with an object of facts")


def _some(kind: type[Any]) -> Mapping[str, str]:
    return give(said("one of {known}", known=", ".join(one.value for one in kind)))


@dataclass(frozen=True)
class ActGiven:
    """Something entered of a card, as it is written: what it is, and what belongs to that."""

    __pydantic_config__: ClassVar = STRICT

    act: Literal["figure", "certified", "handicap_shown", "returned", "settled", "found_out", "ended"] = (
        field(metadata=give(said("one of {known}", known=", ".join(_ACTS))))
    )
    by: By | None = field(default=None, metadata=_some(By))
    hole: int | None = field(default=None, metadata=give(said("the number of a hole")))
    score: int | Literal["-"] | None = field(
        default=None, metadata=give(said('a number of strokes, or "-" for none'))
    )
    ball: str = field(default="", metadata=give(WORDS))
    done: bool = field(default=True, metadata=give(said("true or false")))
    handicap: int | None = field(default=None, metadata=give(said("a whole number, or null for none")))
    promptly: bool | None = field(default=None, metadata=give(said("true or false")))
    ruling: str = field(default="", metadata=give(said("the identifier of a ruling")))
    how: SettledAs | None = field(default=None, metadata=_some(SettledAs))
    kind: OutKind | None = field(default=None, metadata=_some(OutKind))
    citation: str = field(default="", metadata=give(WORDS))

    def read(self) -> CardAct:
        """Return it as cards are made of it.

        Raises:
            InputError: something that belongs to it is missing.
        """
        needs = {
            "figure": ("by", "hole", "score"),
            "certified": ("by",),
            "settled": ("ruling", "how"),
            "found_out": ("hole", "score"),
            "ended": ("kind",),
        }.get(self.act, ())
        missing = [one for one in needs if getattr(self, one) in (None, "")]
        if missing:
            raise InputError(
                *(said("{act}: {key} is missing; give it.", act=self.act, key=key) for key in missing)
            )
        return self._of_its_kind(self.by or By.PLAYER, self.hole or 0)

    def _of_its_kind(self, by: By, hole: int) -> CardAct:
        match self.act:
            case "figure":
                return Figure(by, hole, self.score, self.ball)
            case "certified":
                return Certified(by, self.done)
            case "handicap_shown":
                return HandicapShown(self.handicap, self.ball)
            case "returned":
                return Returned(self.promptly)
            case "settled":
                return Settlement(self.ruling, self.how or SettledAs.INCLUDED)
            case "found_out":
                return FoundOut(hole, self.score, self.ball)
            case "ended":
                return Ended(self.kind or OutKind.NO_RETURN, self.citation)


def written(act: CardAct) -> dict[str, Any]:
    """Return an act as it is written; reading it gives the same."""
    name = {
        Figure: "figure",
        Certified: "certified",
        HandicapShown: "handicap_shown",
        Returned: "returned",
        Settlement: "settled",
        FoundOut: "found_out",
        Ended: "ended",
    }[type(act)]
    return {"act": name, **{key: value for key, value in as_plain(act).items() if value not in (None, "")}}


@dataclass(frozen=True)
class BesideGiven:
    """A ruling beside a card, as a file gives it."""

    __pydantic_config__: ClassVar = STRICT

    ruling: str = field(metadata=give(said("the identifier of a ruling")))
    hole: int | None = field(default=None, metadata=give(said("the number of a hole")))
    strokes: int = field(default=0, metadata=give(said("a whole number of penalty strokes")))
    words: str = field(default="", metadata=give(WORDS))
    disqualified_under: str = field(default="", metadata=give(WORDS))
    deducted: int = field(
        default=0, metadata=give(said("a whole number of points or holes taken off the total, until 2022"))
    )


@dataclass(frozen=True)
class CardFile:
    """A card with what it is ruled under, as a file gives it."""

    __pydantic_config__: ClassVar = STRICT

    side: str = field(metadata=give(WORDS))
    played_on: date = field(metadata=give(said("a day as year-month-day, for example 2025-06-21")))
    course: tuple[HoleGiven, ...] = field(
        metadata=give(said('a list of objects with "number", "par" and "stroke_index"'))
    )
    acts: tuple[ActGiven, ...] = field(metadata=give(said('a list of objects with "act"')))
    round: int = field(default=1, metadata=give(said("the number of a round")))
    balls: tuple[str, ...] = field(default=(), metadata=give(said("a list of names")))
    started_at: int | None = field(default=None, metadata=give(said("the number of a hole")))
    form_of_play: FormOfPlay = field(default=FormOfPlay.STROKE_PLAY, metadata=_some(FormOfPlay))
    sides: Sides | None = field(default=None, metadata=_some(Sides))
    local_rules: tuple[str, ...] | None = field(
        default=None, metadata=give(said('a list of codes, for example ["E-5"]; [] for none'))
    )
    maximum: Maximum | None = field(default=None, metadata=give(said('an object with "by" and "number"')))
    handicap: int | None = field(default=None, metadata=give(said("a whole number")))
    handicaps: Mapping[str, int] = field(
        default_factory=dict, metadata=give(said("an object of balls, each with a whole number"))
    )
    closed: bool | None = field(default=None, metadata=give(said("true or false")))
    beside: tuple[BesideGiven, ...] = field(
        default=(), metadata=give(said('a list of objects with "ruling" and "strokes"'))
    )
    answers: Mapping[str, Mapping[str, Any]] = field(default_factory=dict, metadata=give(_ANSWERS))


@dataclass(frozen=True)
class CardRuled:
    """A card and what becomes of it."""

    card: Scorecard
    outcome: CardOutcome


def rule_card(source: Path | Mapping[str, Any]) -> CardRuled:
    """Return what becomes of a card that a file holds.

    Raises:
        InputError: it cannot be used; every fault is listed, with its place and what to give.
    """
    where = source.name if isinstance(source, Path) else said("the card")
    document = read_json(source, where) if isinstance(source, Path) else source
    faults: list[str] = []
    file = read_into(CardFile, dict(document), where, faults)
    if file is None:
        raise InputError(*faults)
    holes = tuple(Hole(one.number, one.par, one.stroke_index) for one in file.course)
    acts = read_acts(file.acts)
    if faults := list(_faults_of_handicaps(file)):
        raise InputError(*(joined(": ", where, one) for one in faults))
    card = scorecard(file.side, file.round, holes, acts, balls=file.balls, started_at=file.started_at)
    handicaps = {**({} if file.handicap is None else {card.balls[0]: file.handicap}), **file.handicaps}
    under = RuledUnder(
        file.played_on,
        file.form_of_play,
        file.sides,
        file.local_rules,
        scorings(file.form_of_play, file.maximum, net=file.handicap is not None or bool(file.handicaps)),
        file.closed,
        file.handicap,
        {ball: strokes_of(one, holes) for ball, one in handicaps.items()},
        file.handicaps,
    )
    beside = [
        Beside(one.ruling, one.hole, one.strokes, one.words, one.disqualified_under, one.deducted)
        for one in file.beside
    ]
    return CardRuled(card, card_outcome(card, under, beside, file.answers))


def _faults_of_handicaps(file: CardFile) -> Iterator[str]:
    """Yield what does not fit the balls of a card: the one handicap where each ball has its own, and the other way round."""
    if len(file.balls) > 1 and file.handicap is not None:
        yield said("handicap is given, and each of the balls has one of its own. Give handicaps instead.")
    if file.handicaps and len(file.balls) < 2:
        yield said("handicaps are given, and the card shows one ball. Give handicap instead.")
    elif strange := sorted(set(file.handicaps) - set(file.balls)):
        yield said(
            "handicaps names {strange}, and the balls are {balls}; correct one of them.",
            strange=", ".join(map(shown, strange)),
            balls=", ".join(map(shown, file.balls)),
        )


def read_acts(given: Sequence[ActGiven]) -> list[CardAct]:
    """Return acts as cards are made of them.

    Raises:
        InputError: something that belongs to one is missing; every fault is listed.
    """
    acts: list[CardAct] = []
    faults: list[str] = []
    for one in given:
        try:
            acts.append(one.read())
        except InputError as error:
            faults += error.faults
    if faults:
        raise InputError(*faults)
    return acts


def scorings(form: FormOfPlay, maximum: Maximum | None, *, net: bool) -> tuple[Scoring, ...]:
    """Return how scores count, gross and where handicaps are known net."""
    scores = (Score.GROSS, Score.NET) if net else (Score.GROSS,)
    return tuple(Scoring(form, score, maximum=maximum) for score in scores)


def strokes_of(handicap: int, holes: Sequence[Hole]) -> dict[int, int]:
    """Return the handicap strokes of each hole by its number; empty where a stroke index is missing."""
    indexes = [one.stroke_index for one in holes if one.stroke_index is not None]
    if len(indexes) != len(holes) or len(holes) not in (9, 18):
        return {}
    return dict(zip((one.number for one in holes), strokes_by_hole(handicap, indexes), strict=True))


def told(ruled: CardRuled) -> dict[str, Any]:
    """Return a card and what becomes of it as plain data, ready for JSON."""
    card, found = ruled.card, ruled.outcome
    return {
        "side": card.side,
        "round": card.round,
        "settled": found.settled,
        "to_do": list(found.to_do),
        "differences": as_plain(card.differences()),
        "findings": [
            {
                "name": one.name,
                "incident": one.incident,
                "hole": one.hole,
                "facts": as_plain(dict(one.facts)),
                "asks": one.result.fact if isinstance(one.result, NeedFacts) else None,
                "result": as_plain(one.result),
            }
            for one in found.findings
        ],
        "added": [
            {"ball": ball, "hole": hole, "strokes": strokes} for (ball, hole), strokes in found.added.items()
        ],
        "out": None if found.out is None else as_plain(found.out),
        "gross": {row.player: list(row.gross) for row in found.card.rows},
    }
