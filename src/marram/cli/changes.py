"""``marram changes``: what another edition rules differently."""

from collections.abc import Iterator, Sequence
from datetime import date
from itertools import groupby

from marram.cli.long_work import shown
from marram.cli.show import Line, print_json, show_lines
from marram.errors import InputError
from marram.rules.editions import FIRST_DAY
from marram.rules.engine.changes import changes
from marram.rules.incidents import INCIDENTS, incident
from marram.rules.plain import as_plain
from marram.said import said
from marram.services.cases.given import day_of_edition, form_given, sides_given
from marram.teach.what_changed.grouping import walked, what_changed
from marram.teach.what_changed.kept import kept
from marram.teach.what_changed.telling import ToldChange, told
from marram.words.changes import ChangeWords, change_words
from marram.words.language import translate
from marram.words.texts import count_text, text


def tell_changes(earlier: str, later: str, as_json: bool) -> None:
    """Print what changed between two editions as a teacher would tell it: one change for each thing decided anew."""
    first, second = _days(earlier, later)
    found = kept(int(earlier), int(later))
    if found is None:
        with shown() as progress:
            found = what_changed(first, second, progress=progress)
    changed = told(found, first, second)
    if as_json:
        document = {"marram": 1, "kind": "what_changed", "from": earlier, "to": later}
        print_json({**document, "changes": as_plain(changed)})
        return
    show_lines(_told_lines(changed, earlier, later))


def _told_lines(changed: Sequence[ToldChange], earlier: str, later: str) -> Iterator[Line]:
    yield "title", count_text("what_changed.count", len(changed), earlier=earlier, later=later)
    for one in changed:
        yield "head", text("what_changed.head", rule=one.rule or one.key, title=one.title)
        yield "item", text("what_changed.was", sentence=one.before)
        yield "item", text("what_changed.is", sentence=one.now)
        yield "text", "      " + text("what_changed.example", incident=one.example.what)
        for fact in one.example.facts:
            yield "quiet", f"        {fact}"
        yield "text", "      " + text("what_changed.ruled", year=earlier, headline=one.example.before)
        yield "text", "      " + text("what_changed.ruled", year=later, headline=one.example.after)
        if one.example.before == one.example.after:
            for difference in one.example.differences:
                yield "quiet", f"        {difference}"
        if one.situations is not None:
            yield "quiet", "      " + count_text("what_changed.touches", one.situations)
    yield "quiet", text("what_changed.everything", earlier=earlier, later=later)


def _days(earlier: str, later: str) -> tuple[date, date]:
    first, second = day_of_edition(earlier, "--from"), day_of_edition(later, "--to")
    if first >= second:
        raise InputError(
            said(
                "--from {earlier} is not before --to {later}; give the earlier edition first.",
                earlier=earlier,
                later=later,
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
    found = [
        change_words(one, chosen)
        for each in incidents
        for one in changes(each.name, first, second, chosen, who)
        if not one.renumbered_only
    ]
    if as_json:
        document = {"marram": 1, "kind": "changes", "from": earlier, "to": later, "changes": as_plain(found)}
        print_json(document)
        return
    titles = {one.name: translate()(one.title) for one in INCIDENTS}
    show_lines(_lines(found, titles, earlier, later))
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
