"""``marram pocket``: the whole book of an edition on one page, for a phone that was never connected."""

from dataclasses import replace
from datetime import date
from pathlib import Path

from marram.cli.exits import BAD_INPUT, stop
from marram.cli.writing import write_files
from marram.desk.offline.pocket import pocket_page
from marram.said import said
from marram.services.cases.conditions import conditions_of_event, in_competition
from marram.services.cases.event import read_event
from marram.services.cases.given import day_of_play
from marram.words.texts import day_words, text


def write_pocket(file: Path, edition: str | None, played_on: str | None, event: Path | None) -> None:
    """Write the page, and say what it holds and how large it is.

    Raises:
        InputError: the conditions, the event or the file cannot be used; every fault is listed.
    """
    found = read_event(event)
    conditions = conditions_of_event(found)
    if edition is not None or played_on is not None:
        if found.played_on is not None:
            stop(BAD_INPUT, said("The event names its day; leave out --edition and --played-on."))
        conditions = replace(conditions, on=day_of_play(played_on, edition))
    page, book = pocket_page(in_competition(conditions), found)
    write_files({file: page})
    print(
        text(
            "offline.written",
            path=file,
            size=len(page) / 1000,
            edition=book["edition"],
            day=day_words(date.fromisoformat(book["clarified_to"])),
            incidents=len(book["incidents"]),
        )
    )
