"""Wishes of a draw are read in the reader's language, and in English beside it."""

from datetime import time
from pathlib import Path

import pytest

from marram.competition.draw.wishes import Apart, NotBefore, Part, Together, Within
from marram.demo import EVENT
from marram.errors import InputError
from marram.records.field import EntrantKept, entrants
from marram.schema import read_json
from marram.services.field.wishes_written import read_wishes, wish_lines
from marram.words.place import writing_in, written_as
from tests.services.scoring import scoring
from tests.words.made_up import speaking

EVERY = """together: {0}, {1}
APART : {1},{2}
early: {0}
late: {1}, {2}
first tee: {0}
other   tee: {1}
not before 9:05: {2}"""


def field(tmp_path: Path) -> list[EntrantKept]:
    players = [{"name": "Ada Brill"}, {"name": "Ben Coyle"}, {"name": "Cleo Dunn"}]
    with scoring(tmp_path, {**read_json(EVENT, "event"), "players": players, "starting_times": []}) as there:
        return sorted(entrants(there.records, there.event), key=lambda one: one.name)


def test_every_kind_is_read(tmp_path: Path) -> None:
    playing = field(tmp_path)
    ada, ben, cleo = (one.person for one in playing)

    found = read_wishes(EVERY.format(*(one.name for one in playing)), playing)

    assert [wish for wish, _ in found] == [
        Together((ada, ben)),
        Apart((ben, cleo)),
        Within(ada, Part.EARLY),
        Within(ben, Part.LATE),
        Within(cleo, Part.LATE),
        Within(ada, Part.FIRST_TEE),
        Within(ben, Part.OTHER_TEE),
        NotBefore(cleo, time(9, 5)),
    ]


def test_what_the_page_shows_is_read_in_another_language(tmp_path: Path, locales: Path) -> None:
    """Each line as the page shows it, with names set in, is a wish; so is the same line in English."""
    playing = field(tmp_path)
    with speaking(locales):
        shown = [line.rpartition(":")[0] for line in wish_lines()]
        assert not any(line.startswith("together") for line in shown)
        lines = "\n".join(f"{what}: Ada Brill, Ben Coyle" for what in shown)
        in_other = [wish for wish, _ in read_wishes(lines, playing)]
        in_english = [wish for wish, _ in read_wishes("together: Ada Brill, Ben Coyle", playing)]
    assert {type(one) for one in in_other} == {Together, Apart, Within, NotBefore}
    assert [type(one) for one in in_other].count(Within) == 8
    assert in_english == in_other[:1]


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        ("10:30 am", time(10, 30)),
        ("10:30\u00a0am", time(10, 30)),
        ("1:30 pm", time(13, 30)),
        ("1:30PM", time(13, 30)),
        ("12:05 p.m.", time(12, 5)),
        ("12:05 am", time(0, 5)),
        ("13:30", time(13, 30)),
    ],
)
def test_a_time_of_twelve_hours_or_of_the_whole_day(tmp_path: Path, written: str, meant: time) -> None:
    """By the clock of the reader's region; where it counts to twelve, the page's own example does, and is read."""
    playing = field(tmp_path)
    found = read_wishes(f"not before {written}: Ada Brill", playing)
    assert [wish for wish, _ in found] == [NotBefore(playing[0].person, meant)]


def test_the_example_of_the_page_is_written_as_the_region_writes_times(tmp_path: Path) -> None:
    """Source: Unicode CLDR 46, time formats of en-US and en-GB."""
    playing = field(tmp_path)
    for region, example in (("US", "10:30\u00a0am"), ("GB", "10:30")):
        with written_as(writing_in(region)):
            (line,) = (one for one in wish_lines() if one.startswith("not before"))
            assert line == f"not before {example}: NAME"
            found = read_wishes(line.replace("NAME", "Ben Coyle"), playing)
        assert [wish for wish, _ in found] == [NotBefore(playing[1].person, time(10, 30))]


@pytest.mark.parametrize(
    ("line", "words"),
    [
        (
            "beside: Ada Brill",
            "Line 1: 'beside: Ada Brill' is no wish. Write one of these: together: NAME, NAME · apart",
        ),
        ("together: Ada Brill", "is no wish"),
        ("not before 25:00: Ada Brill", "is no wish"),
        ("not before 13:30 pm: Ada Brill", "is no wish"),
        ("not before 9:75: Ada Brill", "is no wish"),
        ("early", "is no wish"),
        ("early: Ada Bril", "'Ada Bril' does not play. Did you mean 'Ada Brill'"),
    ],
)
def test_what_is_none_is_told_with_its_line(tmp_path: Path, line: str, words: str) -> None:
    playing = field(tmp_path)
    with pytest.raises(InputError) as caught:
        read_wishes(line, playing)
    assert words in str(caught.value)
