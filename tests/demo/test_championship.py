"""The invented championship: what its script makes, and what records hold of it."""

import json
from pathlib import Path

from marram.competition.conditions.reading import read_event_file
from marram.course import load
from marram.demo import CHAMPIONSHIP, CHAMPIONSHIP_SCORES, COURSE
from marram.demo.championship_cards import ON_THE_COURSE, RULINGS
from marram.records.log import Log
from marram.records.making import made as made_records
from marram.records.starting_sheet import groups
from marram.services.cases.places import Places
from marram.services.demonstrating.championship import championship
from marram.services.demonstrating.make_championship import compact, made
from marram.services.ground.lies import what_lies_here
from marram.services.results.competition_kept import competition_kept
from marram.services.results.event_results import EventResults
from marram.services.sheets.report_lines import ruling_lines


def test_the_files_are_what_the_script_makes() -> None:
    """The same from the same seed, to the letter; the event is one that can be read."""
    found = made()
    scores = {"second_round": found.second_round, "scores": found.scores}

    assert compact(found.event) == CHAMPIONSHIP.read_text(encoding="utf-8")
    assert compact(scores) == CHAMPIONSHIP_SCORES.read_text(encoding="utf-8")
    assert len(read_event_file(CHAMPIONSHIP).players) == 156


def test_rulings_with_a_place_lie_where_their_answers_say() -> None:
    """Told in the general area they lie there on the map; told in a bunker they lie in one."""
    course = load(COURSE)
    placed = [one for one in (*RULINGS, *(ruling for _, ruling in ON_THE_COURSE)) if one.at]
    assert len(placed) == 11
    for one in placed:
        assert one.at
        lie = what_lies_here(course, one.hole, Places({"ball": one.at}))
        assert lie.place
        said = "bunker" if one.facts.get("ball_and_bunker") == "lies_in_it" else "general_area"
        assert lie.place.area.value == one.facts.get("area_of_ball", said)
        assert lie.place.area_open is False


def test_the_report_tells_of_disputed_rulings_with_their_drawings(tmp_path: Path) -> None:
    """Two were asked about again and confirmed, their relief is drawn; one was ruled otherwise, by no stroke in place of one."""
    with made_records(tmp_path / "club.db") as records:
        event = championship(records, "Quillsand Links", maps=tmp_path / "none")
        lines = ruling_lines(Log(records), event, None, load(COURSE))
    disputed = {one.hole: one.disputed for one in lines if one.disputed}
    assert {hole: len(one.asked) for hole, one in disputed.items()} == {15: 1, 10: 1, 13: 0}
    assert all(one.agrees for hole in (10, 15) for one in disputed[hole].asked)
    assert [disputed[hole].drawing[:4] for hole in (10, 15, 13)] == ["<svg", "<svg", ""]
    assert disputed[13].instead == "penalty strokes given: 0"


def test_records_hold_a_whole_first_round_and_half_a_second(tmp_path: Path) -> None:
    """The cut is the second round's field; one card waits for the Committee, one late one stands, one is out by 3.3b(3)."""
    with made_records(tmp_path / "club.db") as records:
        event = championship(records, "Quillsand Links", maps=tmp_path / "none")
        competition = competition_kept(records, event, load(COURSE))
        read = EventResults(Log(records), event)
        first, second = competition.rounds
        results = {
            (one.score.value, one.division.name if one.division else ""): one.board
            for one in read.now(competition, {}).results
        }
        cards = read.cards(competition, {}, first.id)
        field = {player.name for group in groups(records, second.id) for player in group.players}
        names = [one["name"] for one in json.loads(CHAMPIONSHIP.read_text(encoding="utf-8"))["players"]]

    assert len(results) == 8
    assert results["net", ""].through == field
    out = {one.side: one.out.citation or one.out.kind.value for one in results["net", ""].places if one.out}
    assert out == {names[16]: "withdrawn", names[87]: "no_return", names[62]: "3.3b(3)"}
    open_ = [one.card.side for one in cards.values() if not one.outcome.settled]
    assert open_ == [names[45]]
    leaders = [one.place for one in results["net", "Second division"].places[:3]]
    assert leaders == [1, 1, 3]
    assert sum(len(one.beside) for one in cards.values()) == 11
    assert not any(one.card.unsettled(one.beside) for one in cards.values())
    stages = {one.score.played for one in results["gross", ""].places if one.side in field}
    assert stages >= {18, 36}
    assert len(stages) > 4
