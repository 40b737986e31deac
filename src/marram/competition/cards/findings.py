"""What is to be ruled on about a card: incidents of the Rules, with the facts that the card itself shows."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from marram.competition.cards.acts import By, SettledAs
from marram.competition.cards.scorecard import Beside, Scorecard
from marram.competition.conditions.choices import Score
from marram.competition.results.card import NO_SCORE, HoleScore
from marram.competition.results.scoring import Scoring, hole_value
from marram.rules.engine.request import rule
from marram.rules.facts.conditions import EACH_PLAYS_OWN_BALL, FormOfPlay, Sides
from marram.rules.facts.scorecard import CardFault, HandicapShown, WhyTooLow
from marram.rules.facts.scorecard import HoleScore as Returned
from marram.rules.result import Result


@dataclass(frozen=True)
class RuledUnder:
    """What a card is ruled under.

    Attributes:
        played_on: the day of play, which decides the edition and its time limits.
        form: the form of play.
        sides: who plays together.
        local_rules: the codes in force; ``None``: not known, and asked where it matters.
        scorings: how scores count, gross and net, as far as both do.
        closed: whether the competition has closed; ``None``: not known.
        handicap: the Playing Handicap that applies; ``None``: only gross scores count. What the card shows is entered as
            the Playing Handicap that follows from it, whichever handicap had to be shown.
        handicaps: the same of each ball, where partners play one each.
        strokes: for each ball the handicap strokes of each hole by its number.
        pars: for a ball whose tees have another par than the card shows, the par of each hole by its number.
    """

    played_on: date
    form: FormOfPlay = FormOfPlay.STROKE_PLAY
    sides: Sides | None = Sides.INDIVIDUAL
    local_rules: Sequence[str] | None = None
    scorings: Sequence[Scoring] = (Scoring(),)
    closed: bool | None = False
    handicap: int | None = None
    strokes: Mapping[str, Mapping[int, int]] = field(default_factory=dict)
    handicaps: Mapping[str, int] = field(default_factory=dict)
    pars: Mapping[str, Mapping[int, int]] = field(default_factory=dict)

    def handicap_of(self, card: Scorecard, ball: str) -> int | None:
        """Return the Playing Handicap that applies to a ball on a card; ``None`` where none does or it is not known."""
        return self.handicap if len(card.balls) == 1 else self.handicaps.get(ball)


@dataclass(frozen=True)
class Finding:
    """Something about a card that the Rules are asked about.

    Attributes:
        name: its name on this card, by which further facts are given: the incident, and the hole where it has one.
        incident: the incident.
        facts: what is known of it.
        result: what the Rules say, or ask next.
        hole: the hole; ``None``: the whole card.
        ball: whose score.
        returned: the score returned for the hole.
        actual: the score that it ought to be, as far as known.
    """

    name: str
    incident: str
    facts: Mapping[str, Any]
    result: Result
    hole: int | None = None
    ball: str = ""
    returned: HoleScore = None
    actual: HoleScore = None


@dataclass(frozen=True)
class _Told:
    incident: str
    facts: Mapping[str, Any]
    hole: int | None = None
    ball: str = ""
    returned: HoleScore = None
    actual: HoleScore = None
    about: str = ""


def findings(
    card: Scorecard,
    under: RuledUnder,
    beside: Sequence[Beside] = (),
    answers: Mapping[str, Mapping[str, Any]] | None = None,
) -> tuple[Finding, ...]:
    """Return what is to be ruled on about a returned card, each with what the Rules say of it; nothing before the return.

    Args:
        card: the card.
        under: what it is ruled under.
        beside: the rulings that lie beside it.
        answers: further facts of a finding, by its name.

    Raises:
        InputError: a fact given cannot be used.
    """
    if card.returned is None or card.ended is not None:
        return ()
    known = answers or {}
    found = []
    for one in _told(card, under, beside):
        name = "-".join(
            filter(
                None, (one.incident, one.about, str(one.hole or ""), one.ball if len(card.balls) > 1 else "")
            )
        )
        facts = {**one.facts, **known.get(name, {})}
        result = rule(
            one.incident,
            facts,
            played_on=under.played_on,
            form_of_play=under.form,
            sides=under.sides,
            local_rules=under.local_rules,
        )
        found.append(Finding(name, one.incident, facts, result, one.hole, one.ball, one.returned, one.actual))
    return tuple(found)


def _told(card: Scorecard, under: RuledUnder, beside: Sequence[Beside]) -> Iterator[_Told]:
    yield from _certification(card)
    yield from _scores(card, under, beside)
    for ball, shown in card.handicaps_shown.items():
        if (right := under.handicap_of(card, ball)) is not None:
            yield from _handicap(under, ball if len(card.balls) > 1 else "", shown, right)


def _certification(card: Scorecard) -> Iterator[_Told]:
    """Yield what certification lacks: one breach, whether one of them or both did not certify (Rule 3.3b(2))."""
    for by, fault in (
        (By.PLAYER, CardFault.PLAYER_DID_NOT_CERTIFY),
        (By.MARKER, CardFault.MARKER_DID_NOT_CERTIFY),
    ):
        if not card.certified.get(by, False):
            yield _Told("scorecard_fault", {"card_fault": fault}, about=by.value)
            break
    if card.returned is not None and card.returned.promptly is False:
        yield _Told("scorecard_fault", {"card_fault": CardFault.NOT_RETURNED_PROMPTLY}, about="late")


def _scores(card: Scorecard, under: RuledUnder, beside: Sequence[Beside]) -> Iterator[_Told]:
    """Yield the holes whose returned score is missing, or not the actual one as far as that is known."""
    for hole in card.holes:
        returned = {ball: _returned(card, ball, hole.number) for ball in card.balls}
        if all(one is None or one == NO_SCORE for one in returned.values()):
            yield _Told(
                "hole_score_wrong",
                {
                    "returned_score": Returned.NONE,
                    **({"score_counts_for_side": True} if _partners(under) else {}),
                },
                hole.number,
                card.balls[0],
            )
            continue
        for ball, score in returned.items():
            if isinstance(score, int):
                yield from _wrong(card, under, beside, (ball, hole.number), score)


def _returned(card: Scorecard, ball: str, hole: int) -> HoleScore:
    """Return the score that the returned card shows: the marker's figure, which the player certifies."""
    given = card.figures.get((ball, hole), {})
    return given.get(By.MARKER, given.get(By.PLAYER))


def _wrong(
    card: Scorecard, under: RuledUnder, beside: Sequence[Beside], at: tuple[str, int], returned: int
) -> Iterator[_Told]:
    """Yield a score that is not the actual one.

    With the card returned a hole not completed can no longer be put right (Rule 3.3c). Where each hole is scored alone
    the card may then show only no score or one that counts no better (Rules 21.1b(2) to 21.3b(2)): any other is too low.
    """
    ball, hole = at
    left_out = sum(
        one.on(ball)
        for one in beside
        if one.hole == hole and card.settled.get(one.ruling) is SettledAs.NOT_INCLUDED
    )
    actual = card.found_out.get(at, returned + left_out if left_out else None)
    if actual is None or actual == returned:
        return
    if actual == NO_SCORE and under.form is FormOfPlay.STROKE_PLAY:
        yield _Told("did_not_hole_out", {"next_hole_started": True}, hole, ball, returned, actual)
        return
    lower = actual == NO_SCORE or (isinstance(actual, int) and returned < actual)
    facts: dict[str, Any] = {"returned_score": Returned.LOWER if lower else Returned.HIGHER}
    if actual == NO_SCORE:
        facts["why_too_low"] = WhyTooLow.OTHER
    if lower and under.form is not FormOfPlay.STROKE_PLAY:
        facts["hole_result_affected"] = _affected(card, under, at, (returned, actual))
    if lower and under.closed is not None:
        facts["competition_closed"] = under.closed
    if _partners(under) and (counts := _counts_for_side(card, under, at)) is not None:
        facts["score_counts_for_side"] = counts
    yield _Told("hole_score_wrong", facts, hole, ball, returned, actual)


def _partners(under: RuledUnder) -> bool:
    return under.sides in EACH_PLAYS_OWN_BALL


def _counts_for_side(card: Scorecard, under: RuledUnder, at: tuple[str, int]) -> bool | None:
    """Return whether a ball's returned score counts for the side in some result; ``None`` where partners are level."""
    mine, number = at
    hole = next(one for one in card.holes if one.number == number)
    counts: set[bool | None] = set()
    for scoring in under.scorings:
        value = {
            ball: hole_value(
                scoring,
                hole,
                _returned(card, ball, number),
                under.strokes.get(ball, {}).get(number, 0),
            )
            for ball in card.balls
        }
        own = value.pop(mine)
        sign = 1 if scoring.lower_wins else -1
        others = sorted(sign * one for one in value.values() if one is not None)
        if own is None:
            counts.add(False)
        elif len(others) < scoring.counting or sign * own < others[scoring.counting - 1]:
            counts.add(True)
        else:
            counts.add(None if sign * own == others[scoring.counting - 1] else False)
    return True if True in counts else None if None in counts else False


def _affected(
    card: Scorecard, under: RuledUnder, at: tuple[str, int], scores: tuple[HoleScore, HoleScore]
) -> bool:
    """Return whether the one score counts otherwise than the other in any result (Rules 21.1b to 21.3b)."""
    ball, number = at
    hole = next(one for one in card.holes if one.number == number)
    strokes = under.strokes.get(ball, {}).get(number, 0)
    returned, actual = scores
    return any(
        hole_value(one, hole, returned, strokes) != hole_value(one, hole, actual, strokes)
        for one in under.scorings
    )


def _handicap(under: RuledUnder, ball: str, shown: int | None, right: int) -> Iterator[_Told]:
    """Yield a handicap on the card that is not the right one: of partners who play a ball each it is each one's own."""
    if shown == right or not any(one.score is Score.NET for one in under.scorings):
        return
    facts: dict[str, Any] = {
        "handicap_shown": HandicapShown.NONE
        if shown is None
        else HandicapShown.TOO_HIGH
        if shown > right
        else HandicapShown.TOO_LOW
    }
    if shown is not None and shown > right:
        facts["card_strokes_affected"] = True  # a Playing Handicap that is higher gives more strokes
    yield _Told("card_handicap_wrong", facts, ball=ball)
