"""A ruling is recorded with all it rests on, found again by what decided it, and ruled again by today's program."""

from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Kept, new_ident
from marram.records.log import Log
from marram.records.making import made
from marram.rules.facts.conditions import FormOfPlay
from marram.services.cases.case import Act, Case, MadeWith, Spot
from marram.services.cases.made_with import book_digest
from marram.services.log.log import About, again, earlier, ruling_entry
from tests.records.conftest import new_event

NOW = datetime(2025, 6, 21, 14, 5, tzinfo=UTC)
FACTS = {"found_in_penalty_area": "yes", "last_stroke_from_penalty_area": "no", "penalty_area_colour": "red"}
CASE = Case(
    date(2025, 6, 21),
    (Act("ball_in_penalty_area", FACTS, {"ball": Spot(55.0, 3.99)}, option="lateral"),),
    FormOfPlay.STROKE_PLAY,
    local_rules=(),
    hole=9,
    made_with=MadeWith("0.0.1", "old", 3, date(2025, 6, 1)),
)


@pytest.fixture
def records(tmp_path: Path) -> Records:
    return made(tmp_path / "club.db")


def recorded(records: Records, event: str, case: Case = CASE, about: About | None = None) -> Kept:
    return Log(records).append(event, ruling_entry(case, NOW, about))


def test_a_ruling_is_recorded_with_all_it_rests_on(records: Records) -> None:
    """Who, to whom, where, when; the case, the book, the map, the option, the strokes, the ruling, and what was otherwise."""
    about = About(new_ident(), new_ident(), new_ident(), note="a note", otherwise="the reason")
    kept = recorded(records, new_event(records), about=about)
    case, outcome = kept.content["case"], kept.content["outcome"]

    told = {key: kept.told[key] for key in ("by", "player", "round", "hole", "place")}
    assert told == {
        "by": about.by,
        "player": about.player,
        "round": about.round,
        "hole": 9,
        "place": {"latitude": 55.0, "longitude": 3.99},
    }
    assert kept.told["given_at"] == "2025-06-21T14:05:00.000000Z"
    assert case["incidents"][0]["facts"] == FACTS
    assert case["incidents"][0]["option"] == "lateral"
    assert (case["made_with"]["book"], case["made_with"]["map_version"]) == (book_digest(), 3)
    assert (outcome["kind"], outcome["count"]["penalty_strokes"]) == ("Ruling", 1)
    assert "17.1d" in str(outcome["combined"])
    assert kept.content["headline"]
    assert kept.content["otherwise"] is True
    assert [part and part.content for part in Log(records).parts(kept.id)] == [b"a note", b"the reason"]
    assert "a note" not in kept.body


def test_an_open_question_is_no_ruling() -> None:
    """What the Rules still ask is not recorded as if it were decided; the fact is named."""
    case = replace(CASE, incidents=(Act("ball_in_penalty_area", {"found_in_penalty_area": "yes"}),))
    with pytest.raises(InputError, match=r"is still to be answered"):
        ruling_entry(case, NOW)


def test_earlier_rulings_of_the_same_situation_are_found_in_every_event(records: Records) -> None:
    """The same deciding facts elsewhere and on another hole; one that went otherwise is told apart, corrected ones are not shown."""
    one, two = new_event(records), new_event(records, "Autumn Foursomes")
    log = Log(records)
    same = recorded(records, one, replace(CASE, hole=3))
    otherwise = recorded(records, two, about=About(otherwise="the reason"))
    wrong = recorded(records, two)
    log.append(two, ruling_entry(replace(CASE, hole=4, incidents=yellow()), NOW, About(corrects=wrong.id)))
    found = earlier(log, ruling_entry(CASE, NOW))

    assert {(item.entry.id, item.same) for item in found} == {(same.id, True), (otherwise.id, False)}


def yellow() -> tuple[Act, ...]:
    return (Act("ball_in_penalty_area", {**FACTS, "penalty_area_colour": "yellow"}),)


def test_another_deciding_fact_is_another_situation() -> None:
    """A yellow penalty area is not a red one; a fact that decides nothing makes no difference."""
    red, idle = ruling_entry(CASE, NOW), ruling_entry(replace(CASE, strokes_before=2), NOW)

    assert ruling_entry(replace(CASE, incidents=yellow()), NOW).alike != red.alike
    assert idle.alike == red.alike


def test_an_old_ruling_is_ruled_again(records: Records) -> None:
    """Under the same book nothing differs."""
    kept = recorded(records, new_event(records))

    assert again(kept).differs == ()
    assert again(kept).headline == kept.content["headline"]


def test_what_today_says_otherwise_is_told(records: Records) -> None:
    """A penalty recorded otherwise than the book has it now, and a case that cannot be ruled any more, are named."""
    event, log = new_event(records), Log(records)
    entry = ruling_entry(CASE, NOW)
    outcome = {**entry.content["outcome"], "count": None}
    old = log.append(event, replace(entry, id=new_ident(), content={**entry.content, "outcome": outcome}))
    case = {**entry.content["case"], "incidents": [{"incident": "ball_in_zeppelin"}]}
    gone = log.append(event, replace(entry, id=new_ident(), content={**entry.content, "case": case}))

    assert again(old).differs == ("count",)
    assert again(gone).differs == ("case",)
    assert "ball_in_zeppelin" in again(gone).headline
