"""Every form of the desk filled in with words where numbers, times, identifiers or files go: refused in words, or taken; never a failure of ours."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

import marram.desk
from marram.desk.log.kept import KeptHere
from marram.desk.people.rights import rights_of
from marram.desk.people.roles import CHIEF
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signature, signed_in
from tests.desk.test_rights import SAMPLE

ENDING = {"/me/end", "/sign-out", "/people/end", "/join/{secret}", "/sign-in"}
"""Forms after which nobody is signed in, or somebody else is."""
FORMS = [
    path
    for method, path in (one.split(" ") for one in rights_of())
    if method == "POST" and path not in ENDING and not path.startswith("/api/")
]
NAMES = sorted(
    {
        name
        for page in Path(marram.desk.__file__).parent.rglob("templates/*.html")
        for name in re.findall(r'name="([\w-]+)"', page.read_text(encoding="utf-8"))
    }
    - {"csrf"}
)
"""Every field of every form."""
WORDS = ("", "9" * 30, "٣", "2025-02-30", "{}", "é\u202e\x00")


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[KeptHere]:
    with club(tmp_path_factory.mktemp("words")) as found:
        yield found


@pytest.fixture(scope="module")
def chief(kept: KeptHere) -> TestClient:
    return signed_in(guarded(kept), kept, CHIEF)


@pytest.mark.parametrize("path", FORMS)
def test_any_words_in_a_form_are_answered(chief: TestClient, path: str) -> None:
    """The answer is a page of ours with a status that says whose fault it is."""
    signed = signature(chief, "/people")
    for words in WORDS:
        answer = chief.post(path.format_map(SAMPLE), data=dict.fromkeys(NAMES, words) | {"csrf": signed})
        assert answer.status_code < 500, words
        assert "Traceback" not in answer.text
