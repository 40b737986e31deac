"""Cards and boards for tests, made shortly."""

from collections.abc import Sequence

from marram.competition.results.card import Hole, HoleScore, RoundCard, Row

PARS = (4, 5, 3, 4, 4, 4, 3, 5, 4, 4, 3, 4, 5, 4, 4, 3, 4, 5)
INDEX = (7, 11, 17, 3, 1, 13, 15, 5, 9, 8, 16, 2, 12, 4, 10, 18, 6, 14)
"""Par and stroke index of an invented course."""
COURSE = tuple(
    Hole(number, par, index) for number, (par, index) in enumerate(zip(PARS, INDEX, strict=True), start=1)
)


def strokes_on(holes: Sequence[Hole], handicap: int) -> tuple[int, ...]:
    """Return the strokes that a Playing Handicap from 0 on gives on each of 18 holes, by stroke index."""
    whole, rest = divmod(handicap, 18)
    return tuple(whole + ((hole.stroke_index or 0) <= rest) for hole in holes)


def card(
    side: str,
    gross: Sequence[HoleScore],
    handicap: int = 0,
    *,
    round_: int = 1,
    holes: Sequence[Hole] = COURSE,
) -> RoundCard:
    """Return a card of one ball with its handicap strokes."""
    return RoundCard(
        side, round_, tuple(holes), (Row(side, tuple(gross), strokes_on(holes, handicap)),), handicap
    )
