"""The holes of a card over its columns."""

from collections.abc import Iterable, Sequence

from marram.competition.results.card import Hole
from marram.words.texts import text

NINE = 9


class Spread:
    """Holes over the columns of a card: nine and nine with their sums, or as many as there are with one sum."""

    def __init__(self, holes: Sequence[Hole]) -> None:
        numbers = [str(one.number) for one in holes]
        self._halves = len(holes) == 2 * NINE
        if self._halves:
            self.head = (
                *numbers[:NINE],
                text("paper.card.out"),
                *numbers[NINE:],
                text("paper.card.in"),
                text("paper.card.total"),
            )
            self.totals: tuple[int, ...] = (NINE, 2 * NINE + 1, 2 * NINE + 2)
        else:
            self.head = (*numbers, text("paper.card.total"))
            self.totals = (len(holes),)

    @property
    def empty(self) -> tuple[str, ...]:
        """Cells to write in."""
        return ("",) * len(self.head)

    def figures(self, values: Sequence[int | None], *, totals: bool = True) -> tuple[str, ...]:
        """Return a figure for each hole, with the sums where they mean something."""

        def sum_of(part: Iterable[int | None]) -> str:
            return str(sum(one or 0 for one in part)) if totals else ""

        cells = ["" if one is None else str(one) for one in values]
        if not self._halves:
            return (*cells, sum_of(values))
        return (
            *cells[:NINE],
            sum_of(values[:NINE]),
            *cells[NINE:],
            sum_of(values[NINE:]),
            sum_of(values),
        )
