"""What the report of an event takes out of the log: the rulings as they stand, and how each that was disputed went on."""

from collections.abc import Mapping, Sequence
from datetime import datetime, tzinfo

from marram.course.model import Course
from marram.paper.event.disputed import Asked, Disputed
from marram.paper.event.event_report import RulingLine, Stop
from marram.records.entry import Kept
from marram.records.log import Log
from marram.services.day.suspension import suspensions
from marram.services.log.differences import differences
from marram.services.log.log import RULING
from marram.services.log.opinions import Opinion, opinions
from marram.services.log.ruling_again import relief_drawn, told_again
from marram.words.texts import text


def ruling_lines(
    log: Log, event: str, zone: tzinfo | None, course: Course | None = None
) -> Sequence[RulingLine]:
    """Return the rulings of a log as they stand, the first first: without those that were corrected or withdrawn.

    What was asked about a ruling that was corrected later is told with the one that stands in its place.

    Args:
        log: the log.
        event: the event.
        zone: of the clocks of the place; ``None``: those of this machine.
        course: the map, to draw the relief of those disputed; ``None``: nothing is drawn.
    """
    rulings = log.entries(event, kind=RULING)
    gone = {one.corrects for one in (*rulings, *log.entries(event, kind="withdrawn"))}
    by_id = {one.id: one for one in rulings}
    asked: dict[str, list[Opinion]] = {}
    for opinion in reversed(opinions(log, event)):
        asked.setdefault(opinion.about or "", []).append(opinion)
    unlike = {one.ruling.id: len(one.others) for one in differences(log, event)}
    found = []
    for one in rulings:
        if one.id in gone:
            continue
        line = _line_of(one, by_id)
        questions = [opinion for id_ in line for opinion in asked.get(id_, ())]
        others = max((unlike.get(id_, 0) for id_ in line), default=0)
        found.append(_as_line(one, zone, course, questions, others))
    return found


def stops(log: Log, event: str, zone: tzinfo | None) -> Sequence[Stop]:
    """Return when play was stopped, the first first."""
    found = []
    for one in reversed(suspensions(log, event)):
        last = one.resumed[-1].content.get("at") if one.resumed else None
        found.append(
            Stop(
                _moment(one.entry.told["given_at"], zone),
                _moment(last, zone) if last else None,
                text(f"suspension.cause.{one.cause.value}"),
            )
        )
    return found


def _line_of(one: Kept, by_id: Mapping[str, Kept]) -> list[str]:
    """Return a ruling and those it stands in the place of, the oldest first."""
    line = [one.id]
    before = by_id.get(one.corrects or "")
    while before is not None and before.id not in line:
        line.insert(0, before.id)
        before = by_id.get(before.corrects or "")
    return line


def _as_line(
    one: Kept, zone: tzinfo | None, course: Course | None, questions: Sequence[Opinion], others: int
) -> RulingLine:
    content = one.content
    otherwise = bool(content.get("otherwise"))
    disputed = None
    if otherwise or questions or others:
        disputed = Disputed(
            told_again(one),
            _instead(content.get("instead") or {}),
            tuple(_asked(each, zone) for each in questions),
            others,
            relief_drawn(one, course) if course else "",
        )
    return RulingLine(
        one.number,
        _moment(one.told["given_at"], zone),
        one.told.get("hole"),
        tuple(content.get("rules") or ()),
        str(content.get("headline", "")),
        otherwise=otherwise,
        corrects=one.corrects is not None,
        disputed=disputed,
    )


def _instead(given: Mapping[str, object]) -> str:
    """Return what was given in place of what was computed, in words; empty where it was not said."""
    for name in ("disqualified", "hole_lost"):
        if given.get(name):
            return text(f"log.instead.{name}")
    strokes = given.get("penalty_strokes")
    return "" if strokes is None else text("paper.report.strokes_given", strokes=strokes)


def _asked(one: Opinion, zone: tzinfo | None) -> Asked:
    if one.is_open:
        return Asked(_moment(one.asked.told["given_at"], zone))
    answer = one.answers[-1]
    return Asked(
        _moment(one.asked.told["given_at"], zone),
        _moment(answer.told["given_at"], zone),
        bool(answer.content.get("agrees")),
        str(answer.content.get("headline") or ""),
    )


def _moment(written: object, zone: tzinfo | None) -> datetime:
    return datetime.fromisoformat(str(written)).astimezone(zone)
