"""What is wrong with a map, an event, a case or an edit is told in the made-up language, every sentence of it.

A value set into a sentence may be plain only where it stands in what was given: a name on the map, a word that was
typed, a code. Any other plain letter is a word that went past the catalogue.
"""

import json
import re
from collections.abc import Iterable, Iterator
from pathlib import Path

import pytest

from marram.course import check
from marram.course.mending.draft import Draft, draft_of, read_draft
from marram.course.scheme import GOLF, OWN, PENALTY_AREA
from marram.rules.facts import vocabulary
from marram.rules.local_rules.register import REGISTER
from marram.said import Said
from marram.words.spoken import spoken
from tests.course.mending.broken import BREAKS, document, features
from tests.words.made_up import speaking, write_made_up
from tests.words.unmarked import unmarked

BAD = Path(__file__).parents[1] / "bad"
MAPS = sorted((BAD / "course").glob("*"))
EVENTS = sorted((BAD / "event").glob("*"))

LIBRARIES = re.compile(
    r"Expecting |Extra data|Invalid |not well-formed|mismatched tag|no element found|unclosed token|codec|syntax error"
)
"""What Python's readers of JSON and XML say of a file, from no catalogue of ours."""


@pytest.fixture(scope="module")
def locales(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("locales")
    write_made_up(folder)
    return folder


@pytest.fixture(autouse=True)
def made_up(locales: Path) -> Iterator[None]:
    with speaking(locales):
        yield


def plain_values(sentence: object) -> Iterator[str]:
    """Yield the words that are set into a sentence as they are, however deep."""
    if isinstance(sentence, Said):
        for value in sentence.values.values():
            yield from plain_values(value)
    elif isinstance(sentence, str | Exception):
        yield str(sentence)


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
    bare = value.strip("'\"").removesuffix("…")
    return (
        bare in given
        or bare.replace("None", "null") in given
        or repr(bare)[1:-1] in given
        or LIBRARIES.search(value) is not None
        or is_codes(value)
    )


CODES = {
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
}


def is_codes(value: str) -> bool:
    """Whether a value is names of facts, answers, tags or files, which are alike in every language."""
    return (
        all(
            part in CODES or re.fullmatch(r"[a-z]+(_[a-z0-9]+)+|[\d:-]+|feature \d+|drawn/[\w-]+", part)
            for part in re.split(r"[,;] ?| ", value)
        )
        or re.fullmatch(r"feature \d+( \(\d+\))?", value) is not None
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
    given = path.read_bytes().decode("utf-8", "replace") + str(path)
    faults, draft = check(path), read_draft(path)

    assert past((*(one.sentence for one in faults), *told(draft)), given + shapes_of(draft)) == set()
    assert past((one.what for one in faults), given) == set()


def shapes_of(draft: Draft) -> str:
    return json.dumps(draft.document, ensure_ascii=False)


@pytest.mark.parametrize("name", BREAKS)
def test_a_broken_hole_is_told_in_the_language(name: str) -> None:
    """Each way in which nine holes can be broken, with the choices to mend it."""
    found = features()
    BREAKS[name](found, 4)
    draft = draft_of(document(found))

    assert past(told(draft), shapes_of(draft)) == set()
