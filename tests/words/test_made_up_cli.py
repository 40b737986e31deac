"""Every word of the command line goes through the catalogue: under a made-up language no plain letter is left.

Codes stay as they are: names of incidents, facts and answers, options, and what was typed.
"""

import json
import re
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest

from marram.course import load
from marram.demo import COURSE, GREENS
from marram.demo.plan import COURSE_NAME
from marram.teach.situations.sampling import NAMES as FIRST_NAMES
from tests.cli.running import marram
from tests.desk.places import Ground
from tests.words.made_up import speaking
from tests.words.outside import names_of
from tests.words.unmarked import unmarked

CODES = re.compile(
    r"'marram [a-z -]+'|--?[a-z][\w-]*|^\s*(- )?⟦?[a-z0-9_-]+(:|$|  )|=[a-z_]+|\b[a-z]+(_[a-z0-9]+)+\b|\(yes|no\)"
    r'|: "[a-z_]+"|\([^⟦⟧]*; (?=⟦)|http://\S+|Ctrl\+C|(?<=⟦)[a-z]\)'
)
"""Names of incidents and facts, answers, options, commands, citations."""

CLICK = re.compile(
    r"Usage: .*|^(Options|Commands|Arguments):|\[(default|required)[^\]]*\]|Show this message and exit\.|<[a-z ]+>"
    r"|\b[A-Z]+\b"
)
"""What click says of itself, from a catalogue of its own, and what stands for a value."""

NAMES = names_of(load(COURSE))

BOW_TIE = Path(__file__).parents[1] / "bad" / "course" / "bow_tie.geojson"


@pytest.fixture(autouse=True)
def made_up(locales: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    monkeypatch.setenv("COLUMNS", "400")
    monkeypatch.setattr("marram.cli.show._wrapped", lambda _style, text, _width: [text])
    with speaking(locales):
        yield


def left(said: str, *names: str) -> set[str]:
    """Return the lines of an answer that went past the catalogue."""
    for name in sorted(names, key=len, reverse=True):
        said = said.replace(name, "")
    lines = (CLICK.sub("", CODES.sub("", line)) for line in said.splitlines())
    return unmarked(lines, NAMES)


def burn() -> list[str]:
    ground = Ground(load(COURSE))

    def swapped(place: str) -> str:
        return ",".join(reversed(place.split(",")))

    inside, edge = ground.in_the_burn(), ground.in_the_burn(0)
    return ["--hole", "9", "--ball", swapped(inside), "--entry", swapped(edge)]


def commands(folder: Path) -> dict[str, list[str]]:
    """Return the commands to try, by what they are about; files they read or write stand in a folder."""
    story = folder / "story.json"
    lifted = {"area_of_ball": "general_area", "handled_as": "lifted", "handling_allowed": "no"}
    parts = [{"incident": "ball_lifted_by_player", "facts": lifted}] * 2
    story.write_text(json.dumps({"incidents": [*parts], "edition": "2023", "form_of_play": "stroke_play"}))
    whole = folder / "whole.json"
    whole.write_text(json.dumps(json.loads(story.read_text()) | {"between": {"intervening_event_1": "yes"}}))
    points = folder / "points.csv"
    points.write_text("name,longitude,latitude,accuracy\n1,3.9996,55.0041,0.02\n2,4.0001,55.0042,3\n")
    entries = folder / "entries.csv"
    entries.write_text("Title\n\nName,HCP,31\n1,1.4,\n2,,\n3,30,\n", encoding="utf-8")
    bad_entries = folder / "bad.csv"
    bad_entries.write_text("Name,HCP,31\n1,-1.4,\n2,99,\n,1,\n1,3,\n5,1,1,1\n", encoding="utf-8")
    course = str(COURSE)
    event = folder / "event.json"
    event.write_text(
        json.dumps(
            {
                "form_of_play": "stroke_play",
                "sides": "individual",
                "played_on": "2025-06-21",
                "scores": ["gross", "net"],
                "local_rules": ["E-5"],
                "players": [{"name": "1", "playing_handicap": 9}, {"name": "2"}],
                "starting_times": [{"time": "08:00", "tee": 1, "players": ["1"]}],
            }
        )
    )
    return {
        "sheets of the event": ["paper", "all", str(event), "--course", course, "--html", str(folder / "copy.geojson")],
        "help of the event": ["event", "--help"],
        "help of a draw of the event": ["event", "draw", "--help"],
        "no such records": ["event", "board", str(folder / "none.db")],
        "a bracket": ["matches", "bracket", str(entries), "--seed", "7", "--seeded", "2|"],
        "a round robin": ["matches", "round-robin", str(entries)],
        "a calendar": ["calendar", str(event), str(folder / "copy.geojson"), "--time-zone", "UTC"],
        "sunset": ["sunset", course, "--day", "2025-06-21", "--time-zone", "UTC"],
        "a change of the result": ["results", "reopen", "breach", "--played-on", "2025-06-21"],
        "cards without pars": ["paper", "scorecards", str(event)],
        "the starter's sheet": ["paper", "starters-sheet", str(event)],
        "the cards": ["paper", "scorecards", str(event), "--course", course],
        "the notice": ["paper", "notice", str(event)],
        "the referee's sheet": ["paper", "referees-sheet", str(event), "--course", course],
        "help of paper": ["paper", "--help"],
        "entries": ["entries", "read", str(entries)],
        "entries at fault": ["entries", "read", str(bad_entries)],
        "a draw": ["draw", str(entries), "--seed", "7", "--places", "2", "--early", "1|"],
        "a draw that clashes": ["draw", str(entries), "--seed", "7", "--places", "2", "--together", "1|,2|", "--apart", "1|,2|"],
        "a draw at no time": ["draw", str(entries), "--seed", "7", "--first", "25"],
        "a ballot": ["entries", "ballot", str(entries), "--seed", "7", "--places", "1", "--handicap-limit", "20"],
        "incidents": ["incidents"],
        "a Course Handicap": ["handicap", "course", "14.3", "--slope", "129", "--course-rating", "71", "--par", "72"],
        "a Course Handicap of faults": ["handicap", "course", "70", "--slope", "1", "--course-rating", "1", "--par", "?"],
        "handicaps of a match": ["handicap", "playing", "6", "+2", "--course-handicaps", "--allowance", "90", "--match"],
        "a handicap of a side": ["handicap", "playing", "6", "8", "--course-handicaps", "--format", "foursomes"],
        "strokes by hole": ["handicap", "strokes", "4", "--stroke-indexes", "1,2,3,4,5,6,7,8,9"],
        "strokes not to be read": ["handicap", "strokes", "4", "--stroke-indexes", "1;2"],
        "a differential": ["handicap", "differential", "94", "--slope", "125", "--course-rating", "73", "--par", "72"],
        "nine holes": ["handicap", "differential", "45", "--slope", "125", "--course-rating", "36", "--par", "36", "--holes", "9"],
        "an index": ["handicap", "index", *["15.3"] * 20, "--low", "8.2"],
        "an index of nothing": ["handicap", "index", "15.35"],
        "a search": ["incidents", "lost", "ball"],
        "nearly found": ["incidents", "lost", "zeppelin"],
        "facts": ["facts"],
        "facts of an incident": ["facts", "ball_found_in_time"],
        "local rules": ["local-rules"],
        "local rules in detail": ["local-rules", "E-5", "B-2", "K-3", "A-1", "F-5", "A-4.2"],
        "a question": ["rule", "ball_in_penalty_area", "--edition", "2023"],
        "a number asked": ["rule", "ball_found_in_time", "--edition", "2023", "--local-rule", "none"],
        "a ruling": [
            "rule", "ball_in_penalty_area", "--edition", "2023", "--form", "stroke_play", "--local-rule", "none",
            "--fact", "found_in_penalty_area=yes", "--fact", "last_stroke_from_penalty_area=no",
            "--fact", "penalty_area_colour=red",
        ],
        "a story": ["story", str(story)],
        "a story combined": ["story", str(whole)],
        "changes told": ["changes"],
        "changes by a Local Rule": ["changes", "--local-rule", "E-5"],
        "changes on a day": ["changes", "--on", "2025-01-01"],
        "situations": ["situations", "12", "--seed", "3"],
        "quiz": ["quiz", "4", "--seed", "3"],
        "why": [
            "why", "putt_hit_something", "--edition", "2023", "--form", "stroke_play", "--local-rule", "none",
            "--fact", "putt_hit=ball_at_rest", "--fact", "both_on_green=yes",
        ],
        "changes": ["changes", "--incident", "ball_moved_by_player", "--incident", "club_damaged"],
        "relief": ["relief", course, *burn(), "--svg", str(folder / "relief.svg")],
        "relief, a drop": ["relief", course, *burn(), "--dropped", "3.99,55.0041", "--at-rest", "3.99,55.0041"],
        "check": ["course", "check", course],
        "check of a bad map": ["course", "check", str(BOW_TIE)],
        "mend": ["course", "mend", str(BOW_TIE)],
        "mend, one accepted": ["course", "mend", str(BOW_TIE), "--accept", "1a", "--output", str(folder / "copy.geojson")],
        "mend, faults": ["course", "mend", str(BOW_TIE), "--accept", "99", "--accept", "1z", "--accept", "all-of:drop_doubled"],
        "order": ["course", "order", course, "--hole", "9", "--ball", "3.99,55.0041", "--ball", "4.0,55.0042"],
        "survey": ["course", "survey", course, str(points), "--hole", "9"],
        "versions": ["course", "versions", course, "--maps", str(folder / "maps")],
        "holes": ["course", "holes", course, "--pdf", str(folder / "holes.pdf")],
        "holes on slopes": ["course", "holes", course, "--elevations", str(GREENS), "--green-speed", "9"],
        "marking": ["course", "marking", course, "--pdf", str(folder / "marking.pdf")],
        "records": ["records", "init", str(folder / "club.db"), "--club", "C", "--course", course, "--maps", str(folder)],
        "records of a file that is none": ["records", "verify", str(points)],
        "records that are not there": ["records", "log", str(folder / "none.db")],
        "help of records": ["records", "--help"],
        "help": ["--help"],
        "help of rule": ["rule", "--help"],
        "help of relief": ["relief", "--help"],
        "help of story": ["story", "--help"],
        "help of course": ["course", "--help"],
        "help of holes": ["course", "holes", "--help"],
        "help of serve": ["serve", "--help"],
        "a fault of day": ["rule", "ball_in_penalty_area", "--edition", "1999"],
        "two days": ["rule", "ball_in_penalty_area", "--edition", "2023", "--played-on", "2023-05-01"],
        "a fault of a place": ["relief", course, "--hole", "9", "--ball", "here"],
        "a fault of a fact": ["rule", "ball_in_penalty_area", "--fact", "cause"],
    }  # fmt: skip


def subjects() -> tuple[str, ...]:
    with TemporaryDirectory() as folder:
        return tuple(commands(Path(folder)))


@pytest.mark.parametrize("about", subjects())
def test_a_command_says_nothing_of_its_own(about: str, tmp_path: Path) -> None:
    """Answers, questions, help and faults come from the catalogue."""
    found = marram(*commands(tmp_path)[about])

    assert found.code in (0, 2, 3, 4)
    assert (
        left(
            found.out + found.err,
            str(tmp_path),
            COURSE.name,
            str(COURSE),
            "relief.svg",
            str(BOW_TIE),
            BOW_TIE.name,
            "bunker",
            "untangle",
            "drop_doubled",
            "copy.geojson",
            "club.db",
            "none.db",
            "points.csv",
            "zeppelin",
            "here",
            "cause",
            "a4|letter",
            "quiz",
            "situations",
            COURSE_NAME,
            *FIRST_NAMES,
        )
        == set()
    )
