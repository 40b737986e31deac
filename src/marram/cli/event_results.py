"""``marram event``: leader boards, ties decided, and lists made public, of an event that records keep."""

from collections.abc import Sequence
from pathlib import Path

from marram.cli.competition import tell_results, tell_why
from marram.cli.event_here import event_here, list_lines, named
from marram.cli.event_options import Where
from marram.cli.show import Line, print_json
from marram.cli.writing import write_files
from marram.competition.conditions.choices import TieMethod
from marram.errors import InputError, shown
from marram.records.field import details
from marram.said import one_of, said
from marram.services.publishing.change_words import changed_words
from marram.services.publishing.changes import StartChanged, changed_since_published
from marram.services.publishing.document_now import document_now, publishing_now
from marram.services.publishing.documents import BRACKET, RESULTS, STARTING_TIMES
from marram.services.publishing.documents import named as names_of
from marram.services.publishing.formats import in_format
from marram.services.results.tie_entering import decide_tie
from marram.words.texts import text

LISTS = (STARTING_TIMES, RESULTS, BRACKET)


def board(where: Where, output: Path | None, as_json: bool) -> None:
    """Print every result as it stands; write it where asked, in the format that the ending of the file names."""
    with event_here(where) as here:
        if why_not := here.scored.competition.why_no_cards():
            raise InputError(why_not)
        if output is None:
            tell_results(here.scored.now().results, as_json)
            return
        document = document_now(here.scored, here.name, RESULTS)
        write_files({output: in_format(document, output.suffix.lower().lstrip("."), here.tap.at)})
    print(text("paper.written", path=output))


def why(where: Where, side: str, score: str | None, division: str | None, as_json: bool) -> None:
    """Print why somebody, or a team, has a place."""
    with event_here(where) as here:
        if why_not := here.scored.competition.why_no_cards():
            raise InputError(why_not)
        found = here.scored.now().results
        teams = {one.team for result in found for one in result.teams}
        called = side if side in teams else here.scored.competition.labels[here.side(side)]
        tell_why(found, called, score, division, as_json)


def tie(where: Where, method: str, names: Sequence[str]) -> None:
    """Enter the order that a play-off or a lot gave."""
    with event_here(where) as here:
        order = [here.side(one) for one in names]
        decide_tie(here.scored, named(TieMethod, method, "METHOD"), order, here.tap)


def publish(where: Where, what: str, number: int) -> None:
    """Publish a list as it now stands."""
    if what not in LISTS:
        raise InputError(
            said("There is no list {given}; give {known}.", given=shown(what), known=one_of(LISTS))
        )
    with event_here(where) as here:
        here.scored.add(publishing_now(here.scored, here.name, what, number, here.tap))


def changes(where: Where, number: int, as_json: bool) -> None:
    """Print which starting times of a round changed since they were published."""
    with event_here(where) as here:
        here.round(number)
        found = changed_since_published(here.scored, here.log, here.name, number)
        known = names_of(here.scored.competition, details(here.scored.records)).names
    if as_json:
        told = None if found is None else [_told(one, known.get(one.who, one.who)) for one in found]
        print_json({"marram": 1, "kind": "event changes", "round": number, "changed": told})
        return
    lines: list[Line] = [("item", changed_words(one, known.get(one.who, ""))) for one in found or ()]
    none = text("publishing.none") if found is None else text("event_kept.unchanged")
    list_lines(text("draw.round", number=number), lines, none)


def _told(one: StartChanged, name: str) -> dict[str, object]:
    return {"name": name, "was": one.was, "now": one.now}
