"""What the commands of ``marram records`` do that belong to the day: second opinions, play stopped and resumed."""

from collections.abc import Iterator
from datetime import UTC, datetime
from enum import Enum
from typing import TypeVar

from marram.cli.show import Line, show_lines
from marram.errors import InputError, shown
from marram.records.database import opened
from marram.records.entry import new_ident
from marram.records.log import Log
from marram.records.people import names
from marram.records.starting_sheet import groups, rounds
from marram.said import said
from marram.services.day.suspension import on_now, resuming, suspending, what_groups_do
from marram.services.keeping import kept_event
from marram.services.kinds.registry import checked
from marram.services.kinds.suspension import Cause, Suspension
from marram.services.log.differences import differences
from marram.services.log.opinions import opinions
from marram.words.texts import clock_words, text

E = TypeVar("E", bound=Enum)


def list_opinions(records: str, event: str | None) -> None:
    """Print the second opinions of an event, the open ones first, and the rulings that differ from earlier ones."""
    with opened(records) as there:
        id_, _ = kept_event(there, event)
        log = Log(there)
        asked = sorted(opinions(log, id_), key=lambda one: not one.is_open)
        differing = differences(log, id_)
        known = names(there)

    def lines() -> Iterator[Line]:
        yield "title", text("log.opinions.title")
        for one in asked:
            state = text("log.opinions.open" if one.is_open else "log.opinions.answered")
            who = known.get(one.asked.told.get("by", ""), "")
            yield "item", " · ".join(filter(None, (str(one.asked.number), state, who)))
            yield "text", str(one.asked.content.get("headline", ""))
            if one.thinks:
                yield "text", f"{text('log.opinions.thinks')} {one.thinks}"
            for answer, words in zip(one.answers, one.words, strict=True):
                agrees = text("log.opinions.agrees" if answer.content["agrees"] else "log.opinions.differs")
                yield "text", " ".join(filter(None, (agrees, words, answer.content.get("headline", ""))))
        if not asked:
            yield "text", text("log.opinions.none")
        for different in differing:
            state = text("log.differences.seen" if different.seen else "log.differences.open")
            others = ", ".join(str(one.number) for one in different.others)
            yield "item", f"{state}: {different.ruling.number} ({others})"

    show_lines(lines())


def suspend(records: str, how: str, cause: str, event: str | None) -> None:
    """Stop play, and print what each group of the day must do."""
    chosen, why = _one_of(Suspension, how, "HOW"), _one_of(Cause, cause, "--cause")
    now = datetime.now(UTC)
    with opened(records) as there:
        id_, found = kept_event(there, event)
        log = Log(there)
        log.append(id_, checked(suspending(new_ident(), now, chosen, why)))
        stopped = on_now(log, id_)
        assert stopped is not None
        today = now.astimezone().date()
        of_day = [group for one in rounds(there, id_) if one.day == today for group in groups(there, one.id)]
        stops = what_groups_do(
            stopped, of_day, log.entries(id_, kind="ruling")[::-1], found.form_of_play, None
        )

    def lines() -> Iterator[Line]:
        yield "title", text(f"suspension.is.{chosen.value}")
        for one in stops:
            yield "item", text("log.record.group", number=one.group.number)
            yield from (("text", text(f"suspension.{say}")) for say in one.say)
        yield from (("caution", text(f"suspension.{one}")) for one in ("people_first", "advises"))

    show_lines(lines())


def resume(records: str, at: str, ready: str | None, event: str | None) -> None:
    """Say when play that is stopped goes on."""
    when = _moment(at, "--at")
    in_position = _moment(ready, "--ready") if ready else None
    with opened(records) as there:
        id_, _ = kept_event(there, event)
        log = Log(there)
        stopped = on_now(log, id_)
        if stopped is None:
            raise InputError(said("Play is not stopped; there is nothing to resume."))
        log.append(
            id_, checked(resuming(new_ident(), datetime.now(UTC), stopped, when, in_position_at=in_position))
        )
    print(text("suspension.resumed", time=clock_words(when)))


def _one_of(kind: type[E], given: str, option: str) -> E:
    try:
        return kind(given)
    except ValueError:
        known = ", ".join(str(one.value) for one in kind)
        raise InputError(
            said("{option} is {given}; give one of {known}.", option=option, given=shown(given), known=known)
        ) from None


def _moment(given: str, option: str) -> datetime:
    try:
        moment = datetime.fromisoformat(given)
    except ValueError:
        moment = None
    if moment is None or moment.tzinfo is None:
        raise InputError(
            said(
                "{option} is {given}; give a time with its distance from UTC, such as 2025-06-21T15:30+01:00.",
                option=option,
                given=shown(given),
            )
        )
    return moment
