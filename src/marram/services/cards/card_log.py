"""A card as the entries of the log make it: what counts, what two scorers entered at once, what came after the return.

A figure is corrected by an entry that points at the one it was given in. So where two people enter a hole at once,
neither having seen the other's figure, both stand, side by side, until somebody who sees both says which is right.
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID, uuid5

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
from marram.competition.results.card import HoleScore, OutKind
from marram.records.entry import Entry, Kept
from marram.services.log.tap import Tap

FIGURES, RETURNED, SETTLED, FOUND_OUT, ANSWERED, ENDED = (
    "card_figures",
    "card_returned",
    "card_settled",
    "card_found_out",
    "card_answered",
    "card_ended",
)
CARD_KINDS = frozenset({FIGURES, RETURNED, SETTLED, FOUND_OUT, ANSWERED, ENDED})
"""The kinds of entries that a card is made of."""


@dataclass(frozen=True)
class GivenFigure:
    """A figure as an entry gives it."""

    score: HoleScore
    entry: Kept


@dataclass(frozen=True)
class AtOnce:
    """Figures of one hole, of one giver, that differ: entered by people who did not see each other's."""

    by: By
    hole: int
    given: tuple[GivenFigure, ...]
    ball: str = ""


@dataclass(frozen=True)
class CardKept:
    """A player's card of a round as the log has it.

    Attributes:
        player: whose, by identifier; of a side the partner under whose name what concerns all of it is entered.
        round: the identifier of the round.
        figures: for each ball, giver and hole every figure that nobody corrected, the first entered first.
        returned: the entry of the return; ``None``: not yet.
        settled: for each ruling beside it, what became of it.
        found_out: the entry of each actual score found out, by ball and hole.
        answers: further facts of findings, by their names.
        ended: the entry that ended the round without a card.
        late: figures that were entered after the return, and do not count.
        last: the number of the last entry that concerns it; 0 for none.
        balls: whose balls have a score on it, by identifier; none where there is one ball, whose key is the empty one.
    """

    player: str
    round: str
    figures: Mapping[tuple[str, By, int], tuple[GivenFigure, ...]]
    returned: Kept | None = None
    settled: Mapping[str, SettledAs] | None = None
    found_out: Mapping[tuple[str, int], Kept] | None = None
    answers: Mapping[str, Mapping[str, str]] | None = None
    ended: Kept | None = None
    late: tuple[Kept, ...] = ()
    last: int = 0
    balls: tuple[str, ...] = ()

    @property
    def at_once(self) -> tuple[AtOnce, ...]:
        """Figures that were entered at once and differ."""
        return tuple(
            AtOnce(by, hole, given, ball)
            for (ball, by, hole), given in sorted(
                self.figures.items(), key=lambda one: (one[0][2], one[0][0], one[0][1].value)
            )
            if len({one.score for one in given}) > 1
        )

    def score(self, by: By, hole: int, ball: str = "") -> HoleScore:
        """Return the figure of a hole that somebody gave, the last one where several were entered at once."""
        given = self.figures.get((ball, by, hole), ())
        return given[-1].score if given else None

    @property
    def returned_at(self) -> datetime | None:
        """When it was returned."""
        if self.returned is None:
            return None
        return datetime.fromisoformat(self.returned.content.get("at") or self.returned.told["given_at"])

    def acts(self, names: Mapping[str, str] | None = None) -> list[CardAct]:
        """Return what was entered, as cards are made of it.

        Args:
            names: the name of each ball on the card, by the identifier of its player.
        """
        called = names or {}
        found: list[CardAct] = [
            Figure(by, hole, given[-1].score, called.get(ball, ""))
            for (ball, by, hole), given in self.figures.items()
            if given[-1].score is not None
        ]
        found += [Settlement(ruling, how) for ruling, how in (self.settled or {}).items()]
        if self.returned is not None:
            told = self.returned.content
            found += [
                Certified(By.PLAYER, told["player_certified"]),
                Certified(By.MARKER, told["marker_certified"]),
            ]
            if (shown := told.get("handicap")) is not None:
                found.append(HandicapShown(None if shown == "none" else shown))
            found += [
                HandicapShown(None if one == "none" else one, called[ball])
                for ball, one in told.get("handicaps", {}).items()
                if ball in called
            ]
            found.append(Returned(told.get("promptly")))
            found += [
                FoundOut(hole, one.content["score"], called.get(ball, ""))
                for (ball, hole), one in (self.found_out or {}).items()
            ]
        if self.ended is not None:
            found.append(Ended(OutKind(self.ended.content["how"]), self.ended.content.get("citation", "")))
        return found


def card_kept(
    player: str,
    round_: str,
    entries: Iterable[Kept],
    holes: Collection[int],
    balls: tuple[str, ...] = (),
) -> CardKept:
    """Return the card that entries make.

    Args:
        player: whose.
        round_: the round.
        entries: the entries about it, and those that withdraw one of them, by number.
        holes: the numbers of the holes of the round; figures of others, as of a map that was changed, are left out.
        balls: whose balls have a score on it, where partners each play one; an entry is about the ball of its player.
    """
    known = list(entries)
    withdrawn = {one.corrects for one in known if one.kind == "withdrawn"}
    standing = [one for one in known if one.kind in CARD_KINDS and one.id not in withdrawn]
    figures: dict[tuple[str, By, int], list[GivenFigure]] = {}
    settled: dict[str, SettledAs] = {}
    found_out: dict[tuple[str, int], Kept] = {}
    answers: dict[str, dict[str, str]] = {}
    returned: Kept | None = None
    ended: Kept | None = None
    late: list[Kept] = []
    for one in standing:
        told = one.content
        ball = str(one.told.get("player", "")) if balls else ""
        if one.kind == FIGURES:
            if returned is not None:
                late.append(one)
                continue
            by = By(told["by"])
            for hole, score in told["figures"].items():
                if int(hole) not in holes:
                    continue
                before = figures.setdefault((ball, by, int(hole)), [])
                before[:] = [each for each in before if each.entry.id != one.corrects]
                before.append(GivenFigure(score, one))
        elif one.kind == RETURNED:
            returned = returned or one
        elif one.kind == SETTLED:
            settled[told["ruling"]] = SettledAs(told["how"])
        elif one.kind == FOUND_OUT:
            if one.told["hole"] in holes:
                found_out[ball, one.told["hole"]] = one
        elif one.kind == ANSWERED:
            answers.setdefault(told["finding"], {}).update(told["facts"])
        else:
            ended = one
    return CardKept(
        player,
        round_,
        {key: tuple(given) for key, given in figures.items()},
        returned,
        settled,
        found_out,
        answers,
        ended,
        tuple(late),
        known[-1].number if known else 0,
        balls,
    )


def entering(
    card: CardKept, by: By, scores: Mapping[int, HoleScore], tap: Tap, ball: str = ""
) -> list[Entry]:
    """Return the entries that make figures of a card what somebody says they are.

    Only what differs from what was seen is entered; a figure that was seen is corrected by an entry that points at the
    one it was given in, and one that was not seen is left beside.

    Args:
        card: the card as it is.
        by: who gives the figures.
        scores: for each hole given its score; ``None``: there is none, or none any more, and nothing said of a hole where
            two figures were entered at once.
        tap: who enters them, when, and what was seen.
        ball: of whose ball, where partners each play one.
    """
    first: dict[str, HoleScore] = {}
    correcting: dict[str, dict[str, HoleScore]] = {}
    for hole, score in sorted(scores.items()):
        before = [one for one in card.figures.get((ball, by, hole), ()) if one.entry.number <= tap.seen]
        if score is None and len({one.score for one in before}) > 1:
            continue  # two were entered at once, and nobody says which is right
        if not before and score is not None:
            first[str(hole)] = score
        for one in before:
            if one.score != score:
                correcting.setdefault(one.entry.id, {})[str(hole)] = score
    groups: Sequence[tuple[str | None, dict[str, HoleScore]]] = [
        *([(None, first)] if first else []),
        *correcting.items(),
    ]
    return [
        Entry(
            FIGURES,
            tap.at,
            str(uuid5(UUID(tap.ident), f"{ball}{by.value} {corrects or ''}")),
            by=tap.by,
            player=ball or card.player,
            round=card.round,
            corrects=corrects,
            content={"by": by.value, "figures": figures},
        )
        for corrects, figures in groups
    ]
