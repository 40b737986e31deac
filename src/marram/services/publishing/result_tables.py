"""The results of a published list as tables for people: one for each score and division, and one of its teams."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from marram.competition.results.board import Standing
from marram.services.publishing.documents import Document
from marram.words.texts import count_text, text


@dataclass(frozen=True)
class ResultRow:
    """A player, side or team of a result.

    Attributes:
        place: the place; ``None`` for who has none.
        shared: whether others have it too.
        name: who.
        club: the club; empty where it is not known.
        rounds: what each round came to; ``None`` where it was not played, or does not count.
        total: of all rounds.
        against: against par or target.
        words: how somebody stands who has not simply finished; else empty.
    """

    place: int | None
    shared: bool
    name: str
    club: str
    rounds: tuple[int | None, ...]
    total: int | None
    against: int | None
    words: str

    @property
    def placed(self) -> str:
        """The place as it is written: ``1``, ``T3``."""
        return "" if self.place is None else f"T{self.place}" if self.shared else str(self.place)


@dataclass(frozen=True)
class ResultTable:
    """A result: what it is called, how many rounds it has, its rows in order."""

    title: str
    rounds: int
    rows: tuple[ResultRow, ...]

    @property
    def headings(self) -> tuple[str, ...]:
        """What stands over the columns: place, name, each round, total, against par, how it stands."""
        last = ("total", "against_level", "standing")
        rounds = (text("results.round", number=number) for number in range(1, self.rounds + 1))
        return (
            text("results.place"),
            text("publishing.column.name"),
            *(rounds if self.rounds > 1 else ()),
            *(text(f"publishing.column.{one}") for one in last),
        )

    def figures(self, row: ResultRow) -> tuple[int | None, ...]:
        """Return the figures of a row under the headings from the first round to what stands against par."""
        return (*(row.rounds if self.rounds > 1 else ()), row.total, row.against)


def result_tables(document: Document) -> Iterator[ResultTable]:
    """Yield the results of a document in their order; a result's teams follow it."""
    for one in document["results"]:
        title = " · ".join(filter(None, (text(f"results.score.{one['score']}"), one["division"])))
        rounds = _last_round((*one["places"], *one.get("teams", ())))
        yield ResultTable(title, rounds, tuple(_row(each, each["name"], rounds) for each in one["places"]))
        if teams := one.get("teams"):
            yield ResultTable(
                f"{title} · {text('competition.teams')}",
                rounds,
                tuple(_row(each, each["team"], rounds) for each in teams),
            )


def _last_round(rows: Iterable[Document]) -> int:
    return max((played["round"] for one in rows for played in one["rounds"]), default=1)


def _row(one: Document, name: str, rounds: int) -> ResultRow:
    played = {each["round"]: each["total"] for each in one["rounds"]}
    return ResultRow(
        one["place"],
        one["shared"],
        name,
        one.get("club") or "",
        tuple(played.get(number) for number in range(1, rounds + 1)),
        one["total"],
        one.get("against_level"),
        _words(one),
    )


def _words(one: Document) -> str:
    if out := one.get("out"):
        words = text(f"cards.out.{out}")
        return f"{words} ({text('shell.rule', citation=one['rule'])})" if one.get("rule") else words
    if one.get("standing", Standing.FINISHED.value) == Standing.FINISHED.value:
        return ""
    if one["standing"] == Standing.PLAYING.value and one.get("left"):
        return count_text("competition.left", one["left"])
    return text(f"competition.standing.{one['standing']}")
