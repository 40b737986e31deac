"""``marram changes``: what another edition rules differently."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby
from pathlib import Path
from typing import Any

from marram.cli.long_work import shown
from marram.cli.show import Line, print_json, show_lines
from marram.cli.writing import write_files
from marram.errors import InputError
from marram.rules.editions import CLARIFIED_ON, FIRST_DAY, FORMER_RULES
from marram.rules.engine.changes import changes
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.incidents import INCIDENTS, incident
from marram.rules.plain import as_plain
from marram.said import said
from marram.services.cases.given import day_or_edition, form_given, sides_given
from marram.teach.what_changed.adoption import MOST_SHOWN, Adoption, Met, adoption
from marram.teach.what_changed.grouping import walked
from marram.teach.what_changed.kept import found
from marram.teach.what_changed.telling import Shown, ToldChange, title_of, told
from marram.words.changes import ChangeWords, change_words
from marram.words.language import translate
from marram.words.texts import count_text, text


@dataclass(frozen=True, slots=True)
class Wanted:
    """How changes are told: which first, as what, drawn where and on which course."""

    rare_first: bool = False
    every: bool = False
    as_json: bool = False
    drawings: Path | None = None
    course: Path | None = None


def tell_changes(earlier: str, later: str, wanted: Wanted) -> None:
    """Print what changed between two editions or days as a teacher would tell it: one change for each thing decided anew."""
    first, second = _days(earlier, later)
    with shown() as progress:
        moved = found(first, second, progress)
    changed = told(moved, first, second, rare_first=wanted.rare_first)
    drawn = _drawn(wanted, [(one.key, one.example, ({}, {})) for one in changed], (first, second))
    if wanted.as_json:
        document = {"marram": 1, "kind": "what_changed", "from": earlier, "to": later}
        print_json({**document, "changes": as_plain(changed)})
        return
    show_lines(_told_lines(changed, earlier, later))
    show_lines(drawn)


def tell_day(day: str, wanted: Wanted) -> None:
    """Print what is decided otherwise since a day, such as that of a clarification."""
    second = day_or_edition(day, "--on")
    tell_changes((second - timedelta(days=1)).isoformat(), second.isoformat(), wanted)


def tell_adoption(code: str, day: str, wanted: Wanted) -> None:
    """Print what adopting a Local Rule changes."""
    on = day_or_edition(day, "--to")
    one = adoption(code, on, rare_first=wanted.rare_first)
    shown_whole = one.met if wanted.every else one.met[:MOST_SHOWN]
    fact = LOCAL_RULES[one.code].name
    drawn = _drawn(
        wanted,
        [(each.example.incident, each.example, ({fact: "no"}, {fact: "yes"})) for each in shown_whole],
        (on, on),
    )
    if wanted.as_json:
        document = {"marram": 1, "kind": "local_rule_adopted", "played_on": on.isoformat()}
        print_json({**document, **as_plain(one)})
        return
    show_lines(_adoption_lines(one, shown_whole))
    show_lines(drawn)


def _drawn(
    wanted: Wanted,
    examples: Sequence[tuple[str, Shown, tuple[Mapping[str, Any], Mapping[str, Any]]]],
    days: tuple[date, date],
) -> list[Line]:
    """Write a drawing of each situation that has ground to draw; return what is told of it."""
    if wanted.drawings is None:
        return []
    from marram.course.loading import load
    from marram.demo import COURSE
    from marram.teach.what_changed.drawing import on_ground

    course = load(wanted.course or COURSE)
    files: dict[Path, bytes] = {}
    for key, one, each in examples:
        there = on_ground(one, days, course, each)
        if there is not None:
            files |= {wanted.drawings / f"{key}{end}.svg": picture.encode() for end, picture in there.named()}
    if not files:
        return [("quiet", text("what_changed.drawn.none"))]
    wanted.drawings.mkdir(parents=True, exist_ok=True)
    write_files(files)
    return [("quiet", count_text("what_changed.drawn", len(files), folder=wanted.drawings))]


def _told_lines(changed: Sequence[ToldChange], earlier: str, later: str) -> Iterator[Line]:
    if not changed:
        days = ", ".join(day.isoformat() for day in CLARIFIED_ON)
        yield "text", text("what_changed.nothing", earlier=earlier, later=later, days=days)
        return
    yield "title", title_of(len(changed), earlier, later)
    for one in changed:
        yield "head", text("what_changed.head", rule=one.rule or one.key, title=one.title)
        yield "item", text("what_changed.was", sentence=one.before)
        yield "item", text("what_changed.is", sentence=one.now)
        yield from _situation_lines(one.example)
        yield "text", "      " + text("what_changed.ruled", year=earlier, headline=one.example.before)
        yield "text", "      " + text("what_changed.ruled", year=later, headline=one.example.after)
        yield from _difference_lines(one.example)
        if one.situations is not None:
            yield "quiet", "      " + count_text("what_changed.touches", one.situations)
    yield "quiet", text("what_changed.everything", earlier=earlier, later=later)


def _adoption_lines(one: Adoption, shown_whole: Sequence[Met]) -> Iterator[Line]:
    yield "title", text("what_changed.adopted", code=one.code, title=one.title)
    if one.statement:
        yield "text", text("what_changed.adopted.says", statement=one.statement)
    yield "quiet", count_text("what_changed.adopted.touches", one.situations)
    for each in shown_whole:
        yield "head", each.example.what
        yield from _situation_lines(each.example)
        yield "text", "      " + text("what_changed.adopted.without", headline=each.example.before)
        yield "text", "      " + text("what_changed.adopted.with", headline=each.example.after)
        yield from _difference_lines(each.example)
        yield "quiet", "      " + count_text("what_changed.touches", each.situations)
    rest = [each.example.what for each in one.met[len(shown_whole) :]]
    if rest:
        yield "quiet", count_text("what_changed.adopted.rest", len(rest), titles="; ".join(rest))


def _situation_lines(one: Shown) -> Iterator[Line]:
    """Yield a situation as somebody tells it; as question and answer where it has no telling."""
    if one.told:
        yield "text", "      " + text("what_changed.example", incident=one.told)
        return
    yield "text", "      " + text("what_changed.example", incident=one.what)
    yield from (("quiet", f"        {fact}") for fact in one.facts)


def _difference_lines(one: Shown) -> Iterator[Line]:
    if one.before == one.after:
        yield from (("quiet", f"        {difference}") for difference in one.differences)


def _days(earlier: str, later: str) -> tuple[date, date]:
    first, second = day_or_edition(earlier, "--from"), day_or_edition(later, "--to")
    if first >= second:
        raise InputError(
            said(
                "--from {earlier} is not before --to {later}; give the earlier edition first.",
                earlier=earlier,
                later=later,
            )
        )
    if first < FORMER_RULES:
        raise InputError(
            said(
                "--from {earlier}: marram knows the Rules since {first}.",
                earlier=earlier,
                first=FORMER_RULES.isoformat(),
            )
        )
    return first, second


def list_changes(
    earlier: str, later: str, names: Sequence[str], form: str | None, sides: str | None, as_json: bool
) -> None:
    """Print every difference between two editions, by incident; in one form of play only, where it is given."""
    first, second = _days(earlier, later)
    chosen, who = form_given(form), sides_given(sides)
    incidents = [incident(name) for name in names] or list(walked(first))
    differing = [
        change_words(one, chosen)
        for each in incidents
        for one in changes(each.name, first, second, chosen, who)
        if not one.renumbered_only
    ]
    if as_json:
        document = {
            "marram": 1,
            "kind": "changes",
            "from": earlier,
            "to": later,
            "changes": as_plain(differing),
        }
        print_json(document)
        return
    titles = {one.name: translate()(one.title) for one in INCIDENTS}
    show_lines(_lines(differing, titles, earlier, later))
    if first < FIRST_DAY and not names:
        left_out = len(INCIDENTS) - len(incidents)
        show_lines([("quiet", text("cli.changes.left_out", count=left_out, year=FIRST_DAY.year))])


def _lines(found: Sequence[ChangeWords], titles: dict[str, str], earlier: str, later: str) -> Iterator[Line]:
    yield "title", text("cli.changes.count", count=len(found), earlier=earlier, later=later)
    for name, changed in groupby(found, key=lambda one: one.incident):
        yield "head", titles[name]
        alike: dict[tuple[object, ...], list[ChangeWords]] = {}
        for one in changed:
            alike.setdefault((one.provision, one.before, one.after, one.differences), []).append(one)
        for first, *others in alike.values():
            yield (
                "item",
                f"{first.provision.citation}: {'; '.join(first.facts) or text('cli.changes.always')}",
            )
            yield "text", f"      {earlier}: {first.before}"
            yield "text", f"      {later}: {first.after}"
            for difference in first.differences:
                yield "quiet", f"        {difference}"
            if others:
                yield "quiet", f"        {count_text('cli.changes.ways', len(others))}"
