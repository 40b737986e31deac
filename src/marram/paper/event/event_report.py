"""The report of the event, out of its log: rulings by Rule, hole and hour, those asked about again, play stopped, the pace."""

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from marram.paper.event.disputed import Disputed, disputed_sentences
from marram.paper.event.on_paper import OnPaper
from marram.paper.event.pace import RoundPace, pace_parts
from marram.paper.sheet import Cell, Column, Part, Picture, Sheet, Side, Table, Words
from marram.words.texts import clock_words, count_text, short_day_words, text


@dataclass(frozen=True, slots=True)
class RulingLine:
    """A ruling of the log, as it stands.

    Attributes:
        number: of its entry.
        at: when it was given, by the clock of the place.
        hole: where; ``None``: not said.
        rules: the Rules it rests on.
        headline: what was computed, which is what was ruled unless ``otherwise``.
        otherwise: whether it was ruled otherwise than computed.
        corrects: whether it stands in the place of an earlier one.
        disputed: how it was disputed; ``None``: it was not.
    """

    number: int
    at: datetime
    hole: int | None
    rules: tuple[str, ...]
    headline: str
    otherwise: bool = False
    corrects: bool = False
    disputed: Disputed | None = None


@dataclass(frozen=True, slots=True)
class Stop:
    """Play stopped.

    Attributes:
        first: from when, by the clock of the place.
        last: when it went on; ``None``: it has not.
        cause: what for, in words.
    """

    first: datetime
    last: datetime | None
    cause: str


NARROW = 28
"""Letters that a third of the page has room for, beside a count."""


def event_report(
    event: OnPaper,
    rulings: Sequence[RulingLine],
    stops: Sequence[Stop] = (),
    paces: Sequence[RoundPace] = (),
) -> Sheet:
    """Return the report of an event: it names no player."""
    parts: list[Part] = [
        Words("", (count_text("paper.report.rulings.total", len(rulings)),)),
        _counted(
            text("paper.report.by_rule"),
            text("paper.column.rule"),
            (rule for one in rulings for rule in dict.fromkeys(one.rules) or ("",)),
            lambda rule: rule or text("paper.report.no_rule"),
            _rule_order,
        ),
        _counted(
            text("paper.report.by_hole"),
            text("paper.column.hole"),
            (str(one.hole or "") for one in rulings),
            lambda hole: hole or text("paper.report.no_hole"),
            lambda hole: (int(hole or 0) == 0, int(hole or 0)),
        ),
        _counted(
            text("paper.report.by_hour"),
            text("paper.column.hour"),
            (one.at.strftime("%Y-%m-%d %H") for one in rulings),
            _hour_words,
            lambda hour: hour,
        ),
        _rulings(rulings),
    ]
    for one in rulings:
        parts += _disputed(one)
    parts += [_stops(stops), *pace_parts(paces)]
    return Sheet(
        text("paper.title.report"),
        event.name,
        event.course,
        event.day_words,
        tuple(parts),
        text("paper.foot.committee"),
    )


def _disputed(one: RulingLine) -> Iterator[Part]:
    """Yield what is told of a disputed ruling, and its drawing; nothing of one that was not disputed."""
    if one.disputed is None:
        return
    where = text("paper.report.no_hole") if one.hole is None else one.hole
    called = text(
        "paper.report.disputed",
        number=one.number,
        hole=where,
        day=short_day_words(one.at.date()),
        time=clock_words(one.at),
    )
    said = list(disputed_sentences(one.disputed, one.headline, one.rules, otherwise=one.otherwise))
    yield Words(called, tuple(words for _, words in said), lead=tuple(lead for lead, _ in said))
    if one.disputed.drawing:
        alt = text("paper.report.drawing", number=one.number, hole=where, ruling=one.headline)
        yield Picture("", one.disputed.drawing, alt)


def _counted(
    heading: str,
    column: str,
    things: Iterable[str],
    words: Callable[[str], str],
    order: Callable[[str], object],
) -> Table:
    counts = Counter(things)
    rows = tuple(
        (Cell(words(one)), Cell(str(counts[one])))
        for one in sorted(counts, key=order)  # type: ignore[arg-type]
    )
    columns = (
        Column(column, 1, names_row=True),
        Column(text("paper.column.count"), 0, Side.RIGHT),
    )
    across = 3 if all(len(name.words) <= NARROW for name, _ in rows) else 2
    return Table(heading, columns, rows, text("paper.report.rulings.none"), across=across)


def _rule_order(rule: str) -> tuple[bool, list[tuple[int, str]]]:
    """Sort ``9.4`` before ``14.1``; Local Rules, which begin with a letter, after the Rules."""
    parts = rule.replace("-", ".").split(".")
    numbers = [(int(part) if part.isdigit() else _leading(part), part) for part in parts]
    return not rule[:1].isdigit(), numbers


def _leading(part: str) -> int:
    digits = "".join(one for one in part[:2] if one.isdigit())
    return int(digits) if digits else 0


def _hour_words(hour: str) -> str:
    moment = datetime.strptime(hour, "%Y-%m-%d %H")  # noqa: DTZ007 - the clock of the place
    hours = text(
        "paper.report.hour", first=clock_words(moment), last=clock_words(moment + timedelta(hours=1))
    )
    return text("paper.about", first=short_day_words(moment.date()), second=hours)


def _rulings(rulings: Sequence[RulingLine]) -> Table:
    columns = (
        Column(text("paper.column.number"), 0, Side.RIGHT, names_row=True),
        Column(text("paper.column.time"), 0),
        Column(text("paper.column.hole"), 0, Side.RIGHT),
        Column(text("paper.column.rules"), 1),
        Column(text("paper.column.ruling"), 4),
    )
    rows = []
    for one in rulings:
        marks = [
            text("paper.report.otherwise") if one.otherwise else "",
            text("paper.report.second_opinion") if one.disputed and one.disputed.asked else "",
            text("paper.report.corrected") if one.corrects else "",
        ]
        rows.append(
            (
                Cell(str(one.number)),
                Cell(clock_words(one.at), short_day_words(one.at.date())),
                Cell("" if one.hole is None else str(one.hole)),
                Cell(", ".join(one.rules)),
                Cell(one.headline, " · ".join(filter(None, marks))),
            )
        )
    return Table(text("paper.report.rulings"), columns, tuple(rows), text("paper.report.rulings.none"))


def _stops(stops: Sequence[Stop]) -> Words:
    sentences = [
        text("paper.report.suspensions.on", first=_moment(one.first), cause=one.cause)
        if one.last is None
        else text(
            "paper.report.suspensions.line",
            first=_moment(one.first),
            last=clock_words(one.last) if one.last.date() == one.first.date() else _moment(one.last),
            cause=one.cause,
        )
        for one in stops
    ]
    none = () if sentences else (text("paper.report.suspensions.none"),)
    return Words(text("paper.report.suspensions"), (*sentences, *none), listed=bool(sentences))


def _moment(at: datetime) -> str:
    return text("paper.about", first=short_day_words(at.date()), second=clock_words(at))
