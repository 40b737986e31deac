"""``marram records published``: every list that was published, written as files."""

from datetime import date
from pathlib import Path

from marram.cli.writing import write_files
from marram.records.database import opened
from marram.records.field import details
from marram.records.log import Log
from marram.services.course_kept import course_kept
from marram.services.keeping import kept_event
from marram.services.publishing.documents import named
from marram.services.publishing.formats import formats_of, in_format
from marram.services.publishing.published import published
from marram.services.results.competition_kept import competition_kept
from marram.words.texts import text


def write_published(records: str, folder: Path, event: str | None, course: str | None) -> None:
    """Write every published list in each of its formats, named by kind and digest; say which is gone."""
    with opened(records) as there:
        id_, found = kept_event(there, event)
        map_on, _ = course_kept(there, course)
        competition = competition_kept(there, id_, map_on(found.played_on or date.today()))  # noqa: DTZ011 - a day of the club
        lists = published(Log(there), id_, named(competition, details(there)))
    if not lists:
        print(text("publishing.none"))
        return
    files = {
        folder / f"{one.document['kind']}-{one.digest}.{form}": in_format(
            one.document, form, one.at, change=one.number
        )
        for one in lists
        if one.whole
        for form in formats_of(one.document)
    }
    folder.mkdir(parents=True, exist_ok=True)
    write_files(files)
    for path in files:
        print(text("paper.written", path=path))
    for one in lists:
        if not one.whole:
            print(text("publishing.gone_list", digest=one.digest, why=text("publishing.gone")))
