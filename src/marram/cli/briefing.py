"""``marram briefing``: a deck drawn up from a topic, kept in a file, printed."""

from collections.abc import Iterator
from pathlib import Path

from marram.cli import long_work
from marram.cli.paper_given import paper_given
from marram.cli.show import Line, print_json, show_lines
from marram.cli.writing import different, write_files
from marram.course.loading import load
from marram.course.model import Course
from marram.demo import COURSE
from marram.errors import InputError
from marram.said import said
from marram.teach.briefings.deck import PARTS, WORDS_A_MINUTE, Deck, Topic
from marram.teach.briefings.deck_file import as_document, read, written
from marram.teach.briefings.drawing_up import drawn_up
from marram.teach.briefings.printing import deck_pdf, flag_of
from marram.teach.briefings.renewing import confirmed, renewed
from marram.words.texts import text


def draw_up(
    topic: Topic,
    *,
    title: str,
    course: Path | None,
    event: str | None,
    records: str | None,
    deck: Path | None,
    pdf: Path | None,
    handout: Path | None,
    paper: str,
    as_json: bool,
) -> None:
    """Draw up a briefing; where its file is there already, the words put otherwise in it stay.

    Raises:
        InputError: it cannot be drawn up or written; nothing is written.
    """
    different(deck, pdf, handout)
    with long_work.shown():
        ground = load(course or COURSE)
    topic, cases = _with_event(topic, event, records)
    found = drawn_up(topic, ground, cases=cases, title=title)
    if deck is not None and deck.exists():
        found = renewed(opened(deck), found, ground)
    _give(found, ground, deck=deck, pdf=pdf, handout=handout, paper=paper, as_json=as_json)


def renew(
    file: Path,
    *,
    course: Path | None,
    confirm: list[int],
    pdf: Path | None,
    handout: Path | None,
    paper: str,
    as_json: bool,
) -> None:
    """Rule every page of a kept briefing anew, and write it back with what is decided otherwise flagged."""
    different(file, pdf, handout)
    with long_work.shown():
        ground = load(course or COURSE)
    found = renewed(opened(file), None, ground)
    for number in confirm:
        found = found.with_page(number, confirmed(found.pages[number - 1]) if 1 <= number <= len(found.pages) else found.pages[0])  # fmt: skip
    _give(found, ground, deck=file, pdf=pdf, handout=handout, paper=paper, as_json=as_json)


def put_otherwise(file: Path, number: int, parts: dict[str, str]) -> None:
    """Put parts of a page into the teacher's words and keep them in the file."""
    deck = opened(file)
    if not parts:
        raise InputError(said("Say what is put otherwise: {parts}.", parts=", ".join(PARTS)))
    page = deck.pages[number - 1] if 1 <= number <= len(deck.pages) else deck.pages[0]
    found = deck.with_page(number, page.put_otherwise(parts))
    write_files({file: written(found)})
    show_lines([("text", _counts(found))])


def opened(file: Path) -> Deck:
    """Return the deck of a file.

    Raises:
        InputError: it cannot be read; every fault is listed.
    """
    try:
        content = file.read_bytes()
    except OSError as error:
        raise InputError(
            said("{path} cannot be read: {why}.", path=file, why=error.strerror or error)
        ) from None
    return read(content)


def _with_event(
    topic: Topic, event: str | None, records: str | None
) -> tuple[Topic, list[dict[str, object]]]:
    if topic.kind == "local_rules" and not topic.given:
        from marram.services.cases.event import read_event

        if event is None:
            raise InputError(said("Give the event whose Local Rules are meant, with --event FILE."))
        codes = tuple(sorted(read_event(Path(event)).local_rules or ()))
        return Topic(topic.kind, codes, topic.seed, topic.count), []
    if topic.kind == "event":
        from marram.records.database import opened as opened_records
        from marram.records.log import Log
        from marram.services.keeping import kept_event
        from marram.services.log.ruled_cases import cases_of

        if records is None:
            raise InputError(said("Give the records that keep the event's log, with --records."))
        with opened_records(records) as there:
            return topic, cases_of(Log(there), kept_event(there, event)[0])
    return topic, []


def _give(
    found: Deck,
    course: Course,
    *,
    deck: Path | None,
    pdf: Path | None,
    handout: Path | None,
    paper: str,
    as_json: bool,
) -> None:
    size = paper_given(paper)
    files = {} if deck is None else {deck: written(found)}
    if pdf is not None:
        files[pdf] = deck_pdf(found, course, paper=size)
    if handout is not None:
        files[handout] = deck_pdf(found, handout=True, paper=size)
    if files:
        write_files(files)
    if as_json:
        print_json(as_document(found))
    elif files:
        show_lines(
            [("title", found.title), ("text", _counts(found)), ("text", _aloud(found)), *_left_out(found)]
        )
    else:
        show_lines(_lines(found))


def _counts(found: Deck) -> str:
    return text(
        "briefings.version",
        version=found.version,
        count=len(found.pages),
        edited=sum(bool(one.edited) for one in found.pages),
        flagged=sum(bool(one.was) for one in found.pages),
    )


def _aloud(found: Deck) -> str:
    return text("briefings.aloud", pace=WORDS_A_MINUTE, minutes=found.minutes)


def _lines(found: Deck) -> Iterator[Line]:
    yield "title", found.title
    for number, one in enumerate(found.pages, start=1):
        yield "head", f"{number}. {one.part('title')}"
        yield from (("text", line) for line in one.part("told").split("\n"))
        yield "item", one.part("question")
        yield "text", one.part("ruling")
        for line in one.part("why").split("\n"):
            yield "quiet", "   " + line
        if flag_of(one):
            yield "item", flag_of(one)
    yield "quiet", _aloud(found)
    yield from _left_out(found)


def _left_out(found: Deck) -> Iterator[Line]:
    if found.left_out:
        yield "quiet", text("briefings.left_out", count=found.left_out)
