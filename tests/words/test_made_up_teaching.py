"""The pages of a class and of an examination speak the reader's language, in each of their states."""

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere
from marram.records.classes import begin_class, explain_class
from marram.records.examinations import answer, begin, close, hand_in, keep_examination, sitters
from marram.records.retired_items import retire
from marram.teach.examinations.kept_paper import read_papers, written
from marram.teach.examinations.paper import examination
from marram.teach.situations.sampling import NAMES
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.words.made_up import speaking
from tests.words.outside import names_of
from tests.words.unmarked import seen_in, unmarked

NOW = datetime.now(UTC)


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


def test_the_pages_of_a_class_say_nothing_of_their_own(kept: KeptHere, locales: Path) -> None:
    """Joining, a question before and after its explanation, and the teacher's view of both."""
    with speaking(locales):
        desk = TestClient(create_app(kept_here=kept))
        one, told = (begin_class(kept.records, kept.event_id, NOW) for _ in range(2))
        explain_class(kept.records, told)
        names = {
            *names_of(desk.app.state.workplace.course),
            *NAMES,
            *(f"http://localhost/class/{each.code}" for each in (one, told)),
            one.code,
            told.code,
            kept.event.name,
        }  # type: ignore[attr-defined]
        for page in (
            "/class",
            *(f"/class/{each.code}{end}" for each in (one, told) for end in ("", "/teacher")),
        ):
            assert unmarked(seen_in(desk.get(page).text), names) == set(), page


def test_the_pages_of_an_examination_say_nothing_of_their_own(kept: KeptHere, locales: Path) -> None:
    """Waiting, sitting, handing in, handed in, collected; the examiner's view, results with a retired item, and the slips."""
    with speaking(locales):
        desk = TestClient(create_app(kept_here=kept))
        papers = written(examination(3, 4, forms=2), "Quillsand Links")
        waiting, running, closed = (
            keep_examination(
                kept.records, kept.event_id, papers, ["A", "B"], minutes=60, candidates=2, now=NOW
            )
            for _ in range(3)
        )
        for one in (running, closed):
            begin(kept.records, one, NOW)
        people = {one.id: sitters(kept.records, one) for one in (waiting, running, closed)}
        for each in people[closed.id]:
            answer(kept.records, each, [(1, 0, 1)], NOW)
        close(kept.records, closed, NOW)
        hand_in(kept.records, people[running.id][1], NOW)
        retire(kept.records, closed, read_papers(papers).forms["A"][1].ident, ["0.17"], NOW)
        codes = {each.code for found in people.values() for each in found}
        halves = {part for code in codes for part in (code[:4], code[4:], f"{code[:4]} {code[4:]}")}
        names = {
            *names_of(desk.app.state.workplace.course),
            *NAMES,
            *codes,
            *halves,
            kept.event.name,
            "Quillsand Links",
            "http://localhost/examination",
        }  # type: ignore[attr-defined]
        pages = ["/examination", "/examination?code=NOSUCH"]
        pages += [f"/examination/{each.code}" for found in people.values() for each in found]
        pages += [f"/examination/{people[running.id][0].code}?handing=true"]
        pages += [f"/examining/{one.id}" for one in (waiting, running, closed)]
        pages += [f"/examining/{waiting.id}/slips"]
        for page in pages:
            assert unmarked(seen_in(desk.get(page).text), names) == set(), page


def test_the_pages_of_kept_briefings_say_nothing_of_their_own(kept: KeptHere, locales: Path) -> None:
    """The list, the pages with a flag and own words, and a slide with its ruling."""
    with speaking(locales):
        desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
        asked = {"kind": "topics", "topics": "sand_touched", "count": 2, "title": "2026"}
        address = desk.post("/briefings", data=asked).headers["location"]
        parts = {name: words for name, words, _ in desk.get(address).context["pages"][0]["parts"]}
        desk.post(address, data={"step": "edit", "version": 1, "number": 1, **parts, "question": "17?"})
        names = {*names_of(desk.app.state.workplace.course), *NAMES, kept.event.name}  # type: ignore[attr-defined]
        for page in ("/briefings", address, f"{address}/slides?shown=1"):
            assert unmarked(seen_in(desk.get(page).text), names) == set(), page
