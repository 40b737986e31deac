"""``marram changes``: what another edition rules differently."""

from collections.abc import Iterator, Sequence
from datetime import date
from itertools import groupby

from marram.cli.show import Line, print_json, show_lines
from marram.errors import InputError
from marram.rules.editions import FIRST_DAY
from marram.rules.engine.changes import changes
from marram.rules.incidents import INCIDENTS, incident
from marram.rules.incidents.incident import Incident
from marram.rules.plain import as_plain
from marram.said import said
from marram.services.given import day_of_edition, form_given, sides_given
from marram.words.changes import ChangeWords, change_words
from marram.words.language import translate
from marram.words.texts import count_text, text


def list_changes(
    earlier: str, later: str, names: Sequence[str], form: str | None, sides: str | None, as_json: bool
) -> None:
    """Print every change between two editions, by incident; in one form of play only, where it is given."""
    first, second = day_of_edition(earlier, "--from"), day_of_edition(later, "--to")
    if first >= second:
        raise InputError(
            said(
                "--from {earlier} is not before --to {later}; give the earlier edition first.",
                earlier=earlier,
                later=later,
            )
        )
    chosen, who = form_given(form), sides_given(sides)
    incidents = [incident(name) for name in names] or [one for one in INCIDENTS if _walked(one, first)]
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
        left_out = sum(not _walked(one, first) for one in INCIDENTS)
        show_lines([("quiet", text("cli.changes.left_out", count=left_out, year=FIRST_DAY.year))])


def _walked(one: Incident, first: date) -> bool:
    """Tell whether an incident is walked unasked: those of teaching reach back, and repeat others from 2019 on."""
    return (one.covered_from < FIRST_DAY) == (first < FIRST_DAY)


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
