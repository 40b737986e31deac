"""``marram examination results``: examinations that records keep, their marks and what the answers say of each item."""

from collections.abc import Iterator

from marram.cli.examination import figures_lines, figures_of
from marram.cli.show import Line, print_json, show_lines
from marram.errors import InputError
from marram.records.database import Records, opened
from marram.records.examinations import Sat, chosen_in, examinations, sitters
from marram.records.retired_items import retired
from marram.said import said
from marram.services.keeping import kept_event
from marram.teach.examinations.kept_paper import KeptItem, read_papers, sat
from marram.teach.examinations.report import Sitting
from marram.words.texts import text


def tell_results(records: str, *, event: str | None, number: int | None, as_json: bool) -> None:
    """Print the examinations of an event, or the results of one.

    Raises:
        InputError: there is no such examination.
    """
    with opened(records) as there:
        ident, _ = kept_event(there, event)
        found = examinations(there, ident)
        if number is None:
            _tell_list(found, as_json)
            return
        if number > len(found):
            raise InputError(
                said("There is no examination {number}: {count} are kept.", number=number, count=len(found))
            )
        one = found[number - 1]
        forms = _forms(there, one)
    if as_json:
        told = [{"form": form, **figures_of(items, each)} for form, (items, each) in forms.items() if each]
        print_json({"marram": 1, "kind": "examination_results", "state": one.state, "forms": told})
        return
    show_lines(_lines(forms))


def _tell_list(found: list[Sat], as_json: bool) -> None:
    if as_json:
        listed = [
            {"number": at, "made_at": one.made_at.isoformat(), "state": one.state, "minutes": one.minutes}
            for at, one in enumerate(found, start=1)
        ]
        print_json({"marram": 1, "kind": "examinations", "examinations": listed})
        return
    show_lines(
        (
            "item",
            text(
                "examining.numbered",
                number=at,
                day=f"{one.made_at:%Y-%m-%d %H:%M} UTC",
                state=text(f"examining.state.{one.state}"),
            ),
        )
        for at, one in enumerate(found, start=1)
    )


Forms = dict[str, tuple[tuple[KeptItem, ...], Sitting | None]]


def _forms(records: Records, one: Sat) -> Forms:
    """Return for each form its items and what came of it, candidates by number."""
    people, every, out = sitters(records, one), chosen_in(records, one), retired(records)
    found: Forms = {}
    for form, items in read_papers(one.papers).forms.items():
        answers = {
            f"{each.number}": {item: chosen.place for item, chosen in every[each.id].items()}
            for each in people
            if each.form == form and each.id in every
        }
        found[form] = (items, sat(items, answers, out.keys()))
    return found


def _lines(forms: Forms) -> Iterator[Line]:
    for form, (_, result) in forms.items():
        yield "title", text("examining.results", letter=form)
        if result is None:
            yield "text", text("examining.results.none", letter=form)
        else:
            yield from figures_lines(result)
