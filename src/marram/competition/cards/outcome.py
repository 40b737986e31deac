"""What becomes of a card: what is still to be done before its return, or what the Rules make of it after."""

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from marram.competition.cards.acts import By, SettledAs
from marram.competition.cards.findings import Finding, RuledUnder, findings
from marram.competition.cards.scorecard import Beside, Difference, Scorecard
from marram.competition.conditions.choices import Score
from marram.competition.results.card import NO_SCORE, HoleScore, Out, OutKind, RoundCard, Row
from marram.handicap.strokes import strokes_by_hole
from marram.rules.penalty import OWN, PenaltyKind, Who
from marram.rules.result import NeedFacts
from marram.rules.ruling import Judgement, Ruling
from marram.said import Said, joined, said


@dataclass(frozen=True)
class CardOutcome:
    """What becomes of a card.

    Attributes:
        to_do: what is still to be done in the scoring area, in words; empty once everything is.
        findings: what was ruled on, or is to be.
        questions: the findings with an open question of the Rules.
        judgements: the findings that the Committee judges.
        out: how the side is out; ``None``: it is not.
        card: the card as it counts in results, with what the Rules add; scores as known so far while it is not returned.
        added: for each ball and hole the strokes that the Rules add.
    """

    to_do: tuple[Said, ...]
    findings: tuple[Finding, ...]
    questions: tuple[Finding, ...]
    judgements: tuple[Finding, ...]
    out: Out | None
    card: RoundCard
    added: Mapping[tuple[str, int], int]

    @property
    def settled(self) -> bool:
        """Whether nothing is left to do, to ask or to judge."""
        return not (self.to_do or self.questions or self.judgements)


def card_outcome(
    card: Scorecard,
    under: RuledUnder,
    beside: Sequence[Beside] = (),
    answers: Mapping[str, Mapping[str, Any]] | None = None,
) -> CardOutcome:
    """Return what becomes of a card.

    Args:
        card: the card.
        under: what it is ruled under.
        beside: the rulings with a penalty that lie beside it.
        answers: further facts of findings, by their names.

    Raises:
        InputError: a fact given cannot be used.
    """
    found = findings(card, under, beside, answers)
    added: dict[tuple[str, int], int] = {}
    out: Out | None = None
    deducted = 0
    struck: set[tuple[str, int]] = set()
    for one in found:
        if not isinstance(one.result, Ruling):
            continue
        ruled = _out(card, one.result)
        if ruled is not None and (out is None or out.score is not None):
            out = ruled
        for at, strokes in _strokes(card, one, one.result):
            added[at] = added.get(at, 0) + strokes
    for ruling in beside:
        how = card.settled.get(ruling.ruling)
        if how not in (SettledAs.INCLUDED, SettledAs.NOT_INCLUDED):
            continue
        deducted += ruling.deducted
        if ruling.hole is not None:
            struck |= {(ball, ruling.hole) for ball in ruling.no_score}
        if ruling.disqualified_under:
            out = Out(card.side, OutKind.DISQUALIFIED, ruling.disqualified_under, round=card.round)
    if card.ended is not None:
        out = Out(card.side, card.ended.kind, card.ended.citation, round=card.round)
    return CardOutcome(
        tuple(_to_do(card, beside)) if card.ended is None else (),
        found,
        tuple(one for one in found if isinstance(one.result, NeedFacts)),
        tuple(one for one in found if isinstance(one.result, Judgement)),
        out,
        replace(_struck(round_card(card, _as_shown(card, under, found), added), struck), deducted=deducted),
        added,
    )


def _to_do(card: Scorecard, beside: Sequence[Beside]) -> Iterator[Said]:
    if card.returned is None:
        yield from _before_return(card)
    else:
        for doubted in certified_too_low(card):
            found = said(
                "Hole {hole}: the returned card has {marker}, and the player had noted {player}. "
                "Find out the actual score (Rule 3.3b(3)).",
                hole=doubted.hole,
                marker=doubted.marker,
                player=doubted.player,
            )
            yield joined(": ", doubted.ball, found) if len(card.balls) > 1 else found
    for one in beside:
        if card.returned is None and card.settled.get(one.ruling) is SettledAs.NOT_INCLUDED:
            yield said(
                "The penalty of a ruling is not in the scores: {words}. Player and marker put it right before the return.",
                words=one.words or one.ruling,
            )
    for one in card.unsettled(beside):
        yield said(
            "A ruling lies beside the card: {words}. Say whether its penalty is included.",
            words=one.words or one.ruling,
        )
    if card.returned is None:
        yield said("The card has not been returned.")


def _before_return(card: Scorecard) -> Iterator[Said]:
    for one in card.differences():
        asked = said(
            "Hole {hole}: the player has {player}, the marker {marker}. Ask both.",
            hole=one.hole,
            player=one.player,
            marker=one.marker,
        )
        yield joined(": ", one.ball, asked) if len(card.balls) > 1 else asked
    for by, words in ((By.PLAYER, said("player")), (By.MARKER, said("marker"))):
        if missing := card.missing(by):
            yield said("No figure of the {by} for {holes}.", by=words, holes=", ".join(map(str, missing)))
        if not card.certified.get(by, False):
            yield said("The {by} has not certified the scores.", by=words)


def certified_too_low(card: Scorecard) -> tuple[Difference, ...]:
    """Return the holes whose returned score is below the player's own figure, unless the actual score was found out."""

    def below(one: Difference) -> bool:
        mine, returned = one.player, one.marker
        return isinstance(returned, int) and (mine == NO_SCORE or (isinstance(mine, int) and returned < mine))

    return tuple(
        one for one in card.differences() if below(one) and (one.ball, one.hole) not in card.found_out
    )


def _as_shown(card: Scorecard, under: RuledUnder, found: Sequence[Finding]) -> RuledUnder:
    """Return what a card is ruled under, with the lower handicap that it shows where that one stands.

    Rule 3.3b(4) until 2022, since then Model Local Rule L-2: the net score is worked out with the lower handicap.
    """
    lower = {
        one.ball or card.balls[0]
        for one in found
        if isinstance(one.result, Ruling) and "lower_handicap_stands" in one.result.notes
    }
    shown = {ball: one for ball in lower if (one := card.handicaps_shown.get(ball)) is not None}
    if not shown:
        return under
    strokes = {ball: on for ball, on in under.strokes.items() if ball not in shown}
    strokes |= {ball: on for ball, one in shown.items() if (on := _strokes_of(card, one))}
    alone = len(card.balls) == 1
    return replace(under, handicap=shown[card.balls[0]] if alone else under.handicap, strokes=strokes)


def _strokes_of(card: Scorecard, handicap: int) -> dict[int, int]:
    """Return the handicap strokes of each hole by its number; empty where a stroke index is missing."""
    indexes = [one.stroke_index for one in card.holes if one.stroke_index is not None]
    if len(indexes) != len(card.holes) or len(indexes) not in (9, 18):
        return {}
    return dict(zip((one.number for one in card.holes), strokes_by_hole(handicap, indexes), strict=True))


def _out(card: Scorecard, ruling: Ruling) -> Out | None:
    """Return how a ruling puts the side out; ``None`` where it does not."""
    for one in ruling.penalties:
        if one.kind is PenaltyKind.DISQUALIFICATION and one.who in OWN:
            net_only = "out_of_net_competition_only" in ruling.notes
            score = Score.NET if net_only else None
            return Out(card.side, OutKind.DISQUALIFIED, one.citation, score, card.round)
    return None


def _strokes(card: Scorecard, finding: Finding, ruling: Ruling) -> Iterator[tuple[tuple[str, int], int]]:
    """Yield the strokes that the Rules add, with the ball and hole they are added to."""
    if "add_the_penalty_strokes" in ruling.notes:
        hole, actual, returned = finding.hole, finding.actual, finding.returned
        assert isinstance(hole, int)
        assert isinstance(actual, int)
        assert isinstance(returned, int)
        yield (finding.ball, hole), actual - returned
    if "last_hole_gets_penalty" in ruling.notes:
        strokes = sum(one.strokes for one in ruling.penalties if one.kind is not PenaltyKind.DISQUALIFICATION)
        each = any(one.who in (Who.EACH_PARTNER, Who.SIDE) for one in ruling.penalties)
        for ball in card.balls if each else card.balls[:1]:
            yield (ball, card.last_hole), strokes


def round_card(card: Scorecard, under: RuledUnder, added: Mapping[tuple[str, int], int]) -> RoundCard:
    """Return a card as results take it, with strokes added; scores as known so far while it is not returned."""
    rows = tuple(
        Row(
            ball,
            tuple(_counts(card, ball, one.number, added) for one in card.holes),
            tuple(under.strokes[ball].get(one.number, 0) for one in card.holes)
            if ball in under.strokes
            else (),
            tuple(under.pars[ball].get(one.number, one.par) for one in card.holes)
            if ball in under.pars
            else (),
        )
        for ball in card.balls
    )
    return RoundCard(card.side, card.round, card.holes, rows, (under.handicap or 0) if len(rows) == 1 else 0)


def _struck(card: RoundCard, struck: Collection[tuple[str, int]]) -> RoundCard:
    """Return a card without the scores that cannot count for the side (Clarification 23.2a/1)."""
    if not struck:
        return card
    rows = tuple(
        replace(
            row,
            gross=tuple(
                NO_SCORE if score is not None and (row.player, hole.number) in struck else score
                for score, hole in zip(row.gross, card.holes, strict=True)
            ),
        )
        for row in card.rows
    )
    return replace(card, rows=rows)


def _counts(card: Scorecard, ball: str, hole: int, added: Mapping[tuple[str, int], int]) -> HoleScore:
    score = card.so_far(ball, hole)
    if score is None:
        return NO_SCORE if card.returned is not None else None
    return score + added.get((ball, hole), 0) if isinstance(score, int) else score
