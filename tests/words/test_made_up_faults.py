"""What is wrong with a map, an event, a case or an edit is told in the made-up language, every sentence of it.

A value set into a sentence may be plain only where it stands in what was given: a name on the map, a word that was
typed, a code. Any other plain letter is a word that went past the catalogue.
"""

import json
import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import fields
from datetime import date
from math import inf
from pathlib import Path
from typing import Any

import pytest

from marram.course import check
from marram.course.mending.draft import Draft, draft_of, read_draft
from marram.course.reading.files import PACKED
from marram.course.scheme import GOLF, OWN, PENALTY_AREA
from marram.course.versions.map_edits import ACTIONS, Edit
from marram.course.versions.map_versions import MapVersions
from marram.demo import COURSE
from marram.errors import InputError
from marram.rules.engine.fact import Fact
from marram.rules.facts import vocabulary
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.local_rules.adoption import adopt
from marram.rules.local_rules.register import REGISTER
from marram.said import Said
from marram.services.cases.case import Act, Case, CasePlayer, Spot
from marram.services.cases.case_file import read_case
from marram.services.cases.event import Entrant, EventFile, Group, read_event
from marram.services.cases.places import ROLES
from marram.words.spoken import spoken
from tests.course.mending.broken import BREAKS, document, features
from tests.words.made_up import speaking
from tests.words.unmarked import plain_values, unmarked

BAD = Path(__file__).parents[1] / "bad"
MAPS = sorted((BAD / "course").glob("*"))
EVENTS = sorted((BAD / "event").glob("*"))

LIBRARIES = re.compile(r"not well-formed|mismatched tag|no element found|unclosed token|syntax error")
"""What Python's readers of XML say of a file, from no catalogue of ours."""


@pytest.fixture(autouse=True)
def made_up(locales: Path) -> Iterator[None]:
    with speaking(locales):
        yield


def past(sentences: Iterable[str], given: str) -> set[str]:
    """Return what of sentences goes past the catalogue, but for what stands in what was given."""
    found = set()
    for one in sentences:
        if not isinstance(one, Said):
            found.add(f"plain: {one}")
            continue
        known = {value for value in plain_values(one) if stands_in(value, given)}
        found |= unmarked([spoken(one)], known)
    return found


def stands_in(value: str, given: str) -> bool:
    bare = value.strip("'\"[]").removesuffix("…")
    bare = SYMBOL.sub(escape_of, bare)
    return (
        bare in given
        or as_json(bare) in given
        or repr(bare)[1:-1] in given
        or LIBRARIES.search(value) is not None
        or is_codes(value)
    )


SYMBOL = re.compile("[\u2400-\u241f]|\\[?U\\+D800\\]?")
"""What a control character, and half a character, is shown as."""


def escape_of(found: re.Match[str]) -> str:
    """Return what JSON writes for what is shown as a symbol."""
    return f"\\u{ord(found[0]) - 0x2400:04x}" if len(found[0]) == 1 else "\\ud800"


def as_json(bare: str) -> str:
    for python, written in {"None": "null", "True": "true", "False": "false", "nan": "NaN"}.items():
        bare = bare.replace(python, written)
    return bare


KEYS = " ".join(
    one.name for kind in (EventFile, Entrant, Group, Case, Act, Spot, CasePlayer) for one in fields(kind)
)
"""What a document of JSON may hold, alike in every language."""

CODES = {
    *KEYS.split(),
    *ROLES,
    *ACTIONS,
    *(one.value for kind in (FormOfPlay, Sides) for one in kind),
    *vocabulary(),
    *(token for fact in vocabulary().values() for token in fact.tokens()),
    *REGISTER,
    *GOLF,
    *OWN,
    PENALTY_AREA,
    "lon",
    "lat",
    "id",
    "ref",
    *PACKED.values(),
}


def is_codes(value: str) -> bool:
    """Whether a value is names of facts, answers, tags, keys or files, which are alike in every language."""
    return all(
        part in CODES or re.fullmatch(r"[a-z]+(_[a-z0-9]+)+|[\d:-]+|drawn/[\w-]+|moon|\(\d+\)|feature", part)
        for part in re.split(r"[,;] ?| ", value.replace("'", ""))
    )


def told(draft: Draft) -> Iterator[str]:
    """Yield what is said of a map and of the ways to mend it."""
    for fault in draft.faults:
        yield fault.sentence
    for one in draft.proposals:
        yield one.why
        for choice in one.choices:
            yield choice.words
            yield from choice.said


@pytest.mark.parametrize("path", MAPS, ids=lambda path: path.name)
def test_a_bad_map_is_told_in_the_language(path: Path) -> None:
    """Every fault that a check of the file finds, and every proposal to mend it."""
    text = path.read_bytes().decode("utf-8", "replace")
    given = text + str(path) + elements_of(text)
    faults, draft = check(path), read_draft(path)

    assert past((*(one.sentence for one in faults), *told(draft)), given + shapes_of(draft)) == set()
    assert past((one.what for one in faults), given) == set()


def elements_of(given: str) -> str:
    """Return the elements of an OpenStreetMap file as they are named: ``relation/9``."""
    return " ".join(map("/".join, re.findall(r"<(node|way|relation) id=[\"'](\d+)", given)))


def shapes_of(draft: Draft) -> str:
    return json.dumps(draft.document, ensure_ascii=False)


@pytest.mark.parametrize("name", BREAKS)
def test_a_broken_hole_is_told_in_the_language(name: str) -> None:
    """Each way in which nine holes can be broken, with the choices to mend it."""
    found = features()
    BREAKS[name](found, 4)
    draft = draft_of(document(found))

    assert past(told(draft), shapes_of(draft)) == set()


def refused(attempt: Callable[[], object]) -> tuple[str, ...]:
    """Return what is said of something that must be refused."""
    with pytest.raises(InputError) as caught:
        attempt()
    return caught.value.faults


@pytest.mark.parametrize("path", EVENTS, ids=lambda path: path.name)
def test_a_bad_event_is_told_in_the_language(path: Path) -> None:
    """Unknown keys, wrong types, players nobody knows, Local Rules against each other."""
    given = path.read_bytes().decode("utf-8", "replace") + path.name

    assert past(refused(lambda: read_event(path)), given + KEYS) == set()


ACT = {"incident": "ball_moved_by_player", "facts": {}}
DAY = {"played_on": "2024-06-01"}
CASES: dict[str, dict[str, Any]] = {
    "another version": DAY | {"marram": 99, "incidents": [ACT]},
    "no incident": DAY | {"incidents": []},
    "an unknown incident": DAY | {"incidents": [{"incident": "ball_movd", "facts": {}}]},
    "an unknown fact": DAY | {"incidents": [ACT | {"facts": {"cause_knwn": "yes"}}]},
    "a bad answer": DAY | {"incidents": [ACT | {"facts": {"area_of_ball": "lake"}}]},
    "a bad option": DAY | {"incidents": [ACT | {"option": "sideways"}]},
    "two days": DAY | {"edition": 2023, "incidents": [ACT]},
    "a bad edition": {"edition": 1999, "incidents": [ACT]},
    "a bad form": DAY | {"form_of_play": "skins", "incidents": [ACT]},
    "bad Local Rules": DAY | {"local_rules": ["Z-9", "E-55"], "incidents": [ACT]},
    "no place": DAY
    | {"incidents": [ACT | {"places": {"moon": {"latitude": 95, "longitude": 1, "accuracy": -1}}}]},
    "a bad club": DAY | {"player": {"club_length": 9}, "incidents": [ACT]},
    "an unknown key": DAY | {"incidents": [ACT | {"fcts": {}}], "hol": 3},
    "facts between": DAY | {"incidents": [ACT], "between": {"area_of_ball": "bunker"}},
}


@pytest.mark.parametrize("name", CASES)
def test_a_bad_case_is_told_in_the_language(name: str) -> None:
    """What cannot be read of a case, each fault with its place."""
    assert (
        past(refused(lambda: read_case(CASES[name])), json.dumps(CASES[name]) + KEYS + " ".join(ROLES))
        == set()
    )


@pytest.mark.parametrize("fact", list(vocabulary().values()), ids=lambda fact: fact.name)
def test_a_bad_answer_is_told_in_the_language(fact: Fact[Any]) -> None:
    """Every question says in the language what it allows; of numbers also one beyond the greatest or the least."""
    for given in ("zeppelin", None, *([fact.minimum - 1] if fact.minimum > -inf and fact.unit else [])):
        assert past(refused(lambda given=given: fact.parse(given)), "zeppelin None") == set()


@pytest.mark.parametrize("code", [*REGISTER, "Z-9"])
def test_a_local_rule_that_cannot_be_adopted_is_told_in_the_language(code: str) -> None:
    """Alone, in either edition, and beside those it cannot stand with."""
    others = REGISTER[code].not_with if code in REGISTER else ()
    for day in (date(2019, 6, 1), date(2024, 6, 1)):
        assert past(adopt([code, *others], day).faults, code) == set()


def test_bad_edits_are_told_in_the_language(tmp_path: Path) -> None:
    """Edits that name nothing, go twice, or come too late; versions that are not there; hole locations."""
    course = tmp_path / "course.geojson"
    course.write_bytes(COURSE.read_bytes())
    maps = MapVersions(course, tmp_path / "maps")
    ident = str(maps.document(1)["features"][0]["id"])
    day = date(2025, 6, 21)
    wrong = [
        Edit("change", "nowhere"),
        Edit("remove", "nowhere"),
        Edit("draw", ident),
        Edit("add", ident, {}),
    ]

    def save(*edits: Edit, base: int = 1, who: str = "Ada") -> object:
        return maps.save(edits, base=base, who=who, in_force_from=day)

    found = [
        *refused(lambda: save(*wrong)),
        *refused(lambda: save(Edit("remove", ident), who=" ")),
        *refused(save),
        *refused(lambda: save(Edit("remove", ident), base=9)),
        *refused(lambda: maps.restore(7, base=1, who="Ada", in_force_from=day)),
        *refused(lambda: maps.restore(1, base=1, who="Ada", in_force_from=day)),
    ]

    assert len(found) >= 8
    assert past(found, f"{ident} nowhere draw {course}") == set()


ADDRESSES = (
    "hole=x&what=ball_moved_by_player",
    "ball=here&entry=1,2;u=x&what=ball_moved_by_player",
    "what=ball_movd",
    "what=ball_moved_by_player&area_of_ball=lake&cause_knwn=1",
    "number=4&what=ball_moved_by_player",
    "1.area_of_ball=bunker&2.what=ground_altered&2.ask=x",
    "what=ball_moved_by_player&on=soon",
    "what=ball_moved_by_player&club=long&handed=both",
    "what=ball_moved_by_player&local=Z-9",
    "what=ball_moved_by_player&on=2025-01-01&edition=2023",
)


@pytest.mark.parametrize("query", ADDRESSES)
def test_a_bad_address_is_told_in_the_language(query: str) -> None:
    """The page of a refused address says each fault in the language."""
    from marram.desk.app import create_app
    from tests.desk.conftest import TestClient
    from tests.words.unmarked import seen_in

    page = TestClient(create_app()).get(f"/case?{query}")

    assert page.status_code in {400, 404}
    words = re.findall(r"\w+", query)
    codes = {
        "marram",
        *words,
        *CODES,
        *(f"{one}=" for one in words),
        "latitude,longitude",
        "right, left",
        "e.g.",
        "what=",
    }
    seen = [re.sub(r"\b[a-z]+(_[a-z0-9]+)+\b", "", one) for one in seen_in(page.text)]
    assert unmarked(seen, codes - {"a", "no", "on", "the"}) == set()
