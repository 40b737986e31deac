"""Entries are found by words, Rule, hole, player, official and outcome; a ruling that differs from an earlier one is put forward."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from marram.desk.log.kept import KeptHere
from marram.records.entry import Kept
from marram.services.cases.case import Act, Case
from marram.services.kinds.rulings import Instead
from marram.services.log.differences import differences, looked_at
from marram.services.log.log import About, ruling_entry
from marram.services.log.searching import Search, rule_words, search
from tests.clubs import club
from tests.services.test_log import CASE, yellow

NOW = datetime(2025, 6, 21, 14, 5, tzinfo=UTC)


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


def recorded(kept: KeptHere, case: Case = CASE, **about: object) -> Kept:
    return kept.add(ruling_entry(case, NOW, About(**about)))  # type: ignore[arg-type]


def numbers(kept: KeptHere, wanted: Search) -> list[int]:
    return [one.number for one in search(kept.records, kept.event_id, wanted).entries]


def test_an_entry_is_found_by_all_that_it_says(kept: KeptHere) -> None:
    """Words of title, ruling and note in any ending, the Rule at each depth, names of player and official, hole."""
    player = kept.groups_on(NOW.date())[0].players[0]
    official = kept.officials()[1]
    one = recorded(kept, player=player.id, by=official.id, note="Beside the third staké")
    recorded(kept, replace(CASE, hole=3, incidents=yellow()))
    for words in (
        "penalty areas staked",
        "rule 17.1d stake",
        "third",
        "STAKE",
        player.name.split()[-1],
        official.name.split()[0].lower()[:4],
        f"{official.name} stake",
    ):
        assert numbers(kept, Search(words)) == [one.number], words
    for words in ("17", "rule 17.1", "17.1d"):
        assert one.number in numbers(kept, Search(words)), words
    for wanted in (Search("rule 16"), Search("stakes Zebedee"), Search("17.1", hole=5), Search("7.1")):
        assert numbers(kept, wanted) == [], wanted
    assert numbers(kept, Search(hole=9)) == [one.number]
    assert numbers(kept, Search(player=player.id, by=official.id)) == [one.number]


def test_a_ruling_is_found_by_the_rules_of_the_relief_it_offers(kept: KeptHere) -> None:
    """An unplayable ball is ruled on under Rule 19.1; what the player may do stands in 19.2, and it is looked for by that too."""
    told = {
        "area_of_ball": "general_area",
        "last_stroke_from_penalty_area": "no",
        "spot_of_ball_known": "yes",
    }
    told |= {"all_of_ball_out_of_bounds": "no", "spot_behind_in_general_area": "yes"}
    act = Act("unplayable_ball", told)
    one = recorded(kept, replace(CASE, incidents=(act,)))
    assert "19.2" not in str(one.content["rules"])
    for words in ("19.1", "19.2", "rule 19.2c", "unplayable 19.2b"):
        assert numbers(kept, Search(words)) == [one.number], words
    assert numbers(kept, Search("19.3")) == []


def test_an_entry_is_found_by_its_outcome(kept: KeptHere) -> None:
    """No penalty is not disqualification, and what was ruled otherwise is found as such."""
    one = recorded(kept, replace(CASE, incidents=(replace(CASE.incidents[0], option=None),)))
    other = recorded(kept, replace(CASE, hole=3), otherwise="why", instead=Instead(penalty_strokes=2))

    assert numbers(kept, Search(outcome="otherwise")) == [other.number]
    assert numbers(kept, Search(outcome="disqualified")) == []
    assert one.number in numbers(kept, Search(outcome="free"))


def test_a_rule_is_found_at_every_depth() -> None:
    """17.1d(2) is found by itself and by all it stands in; a Local Rule by its code."""
    assert list(rule_words("17.1d(2)")) == ["rule_17", "rule_17_1", "rule_17_1_d", "rule_17_1_d_2"]
    assert list(rule_words("E-5")) == ["rule_e_5"]


def test_a_ruling_that_differs_is_put_before_the_chief_once(kept: KeptHere) -> None:
    """Rulings that go the same way are not; one that went otherwise is, with those it differs from, until it was looked at."""
    first = recorded(kept)
    recorded(kept, replace(CASE, hole=3))
    assert differences(kept.log, kept.event_id) == []
    entry = ruling_entry(CASE, NOW, About(otherwise="why"))
    other = kept.add(entry)
    kept.add(entry)
    (found,) = differences(kept.log, kept.event_id)

    assert found.ruling.id == other.id
    assert first.id in {one.id for one in found.others}
    assert found.seen == ()
    kept.add(looked_at(first.id[:-4] + "0000", NOW, other.id, by=None, stands=True, words="so"))
    assert [one.content["stands"] for one in differences(kept.log, kept.event_id)[0].seen] == [True]
