"""``marram records``: what a club keeps, made, looked at, copied, and brought back."""

import json
import shutil
import sqlite3
from dataclasses import replace
from pathlib import Path

import pytest

from marram.course.versions.map_versions import MapVersions
from marram.demo import COURSE, EVENT
from marram.records.database import opened
from marram.records.entry import Part, new_ident
from marram.records.log import Log
from marram.records.maps import MapShelf
from marram.records.starting_sheet import courses
from marram.services.keeping import kept_event
from marram.services.log.log import ruling_entry
from tests.cli.running import marram
from tests.records.conftest import note
from tests.records.test_maps import made_folder
from tests.services.test_log import CASE, NOW

CUP = "Quillsand Midsummer Cup"


@pytest.fixture(scope="module")
def made_once(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Records of the invented club: its course with two versions of the map, its event, and two entries."""
    folder = tmp_path_factory.mktemp("records")
    made_folder(folder / "maps")
    given = ["--club", "Quillsand Links", "--course", str(COURSE), "--maps", str(folder / "maps")]
    done = marram("records", "init", str(folder / "club.db"), *given, "--event", str(EVENT))
    assert done.code == 0, done.err
    assert "3 versions of the map" in done.out
    with opened(folder / "club.db") as records:
        event, _ = kept_event(records)
        wrong = Log(records).append(event, note(hole=7, parts=(Part("note", b"so"),)))
        Log(records).append(event, note(hole=9, corrects=wrong.id))
    return folder / "club.db"


@pytest.fixture
def club(made_once: Path, tmp_path: Path) -> Path:
    shutil.copyfile(made_once, tmp_path / "club.db")
    return tmp_path / "club.db"


def test_a_club_is_put_into_records_whole(club: Path) -> None:
    """The event with its conditions, and the map with every version, are read back as they were given."""
    with opened(club) as records:
        _, event = kept_event(records, CUP)
        (course,) = courses(records)
        versions = MapVersions(COURSE, MapShelf(records, course.id)).versions()

    given = json.loads(EVENT.read_text(encoding="utf-8"))
    assert (event.name, event.round, str(event.played_on)) == (CUP, given["round"], given["played_on"])
    assert list(event.adopted) == given["local_rules"]
    assert list(event.notice) == given["notice_to_players"]
    assert [one.number for one in versions] == [1, 2, 3]


def test_a_course_without_versions_is_kept_as_its_file_holds_it(tmp_path: Path) -> None:
    """Version 1 is the map of the file, so that the records hold the course without it."""
    records = tmp_path / "club.db"
    marram(
        "records",
        "init",
        str(records),
        "--club",
        "C",
        "--course",
        str(COURSE),
        "--maps",
        str(tmp_path / "none"),
    )
    with opened(records) as there:
        (course,) = courses(there)
        kept = MapVersions(tmp_path / "gone.geojson", MapShelf(there, course.id)).document(1)

    assert len(kept["features"]) == len(json.loads(COURSE.read_text(encoding="utf-8"))["features"])


def test_verifying_prints_a_receipt_that_proves_it_later(club: Path) -> None:
    """The receipt printed today is confirmed tomorrow; a forged log is not, and the entry is named."""
    receipt = marram("records", "verify", str(club)).out.split("Receipt: ")[1].strip()

    assert marram("records", "verify", str(club), "--receipt", receipt).code == 0
    found = marram("records", "verify", str(club), "--receipt", f"2:{'0' * 16}", "--json")
    assert found.code == 2
    assert json.loads(found.out)["logs"][0]["broken"]["number"] == 2


def test_a_changed_entry_is_named(club: Path) -> None:
    """Whoever changes the file behind the program's back is found, and what to do is said."""
    with sqlite3.connect(club) as connection:
        connection.execute("DROP TRIGGER log_refuses_update")
        connection.execute("UPDATE log SET recorded_at = '2020' WHERE number = 1")
    connection.close()
    found = marram("records", "verify", str(club))

    assert found.code == 2
    assert f"{CUP}: entry 1 was changed" in found.out
    assert "compare them with a backup" in found.err


def test_what_is_destroyed_is_brought_back(club: Path, tmp_path: Path) -> None:
    """By a backup, and by an export: the log lists the same as before."""
    before = marram("records", "log", str(club), "--json").out
    assert marram("records", "backup", str(club), str(tmp_path / "backup.db")).code == 0
    assert marram("records", "export", str(club), str(tmp_path / "export")).code == 0
    club.unlink()
    assert marram("records", "restore", str(tmp_path / "backup.db"), str(club)).code == 0
    assert marram("records", "import", str(tmp_path / "export"), str(tmp_path / "again.db")).code == 0

    assert marram("records", "log", str(club), "--json").out == before
    assert marram("records", "log", str(tmp_path / "again.db"), "--json").out == before


def test_the_log_lists_what_was_recorded(club: Path) -> None:
    """Each entry with number, time, kind and hole; one that was corrected says so; a hole alone can be asked for."""
    told = marram("records", "log", str(club)).out

    assert f"{CUP}: 2 entries" in told
    assert "1. 2025-06-21 12:00 note hole 7" in told
    assert told.index("Corrected by a later entry") < told.index("2. 2025-06-21")
    assert "1 entry" in marram("records", "log", str(club), "--hole", "9").out


def test_old_rulings_are_ruled_again(club: Path) -> None:
    """One that holds what this program says does not differ; one recorded otherwise is named with today's ruling."""
    with opened(club) as records:
        event, _ = kept_event(records)
        entry = ruling_entry(CASE, NOW)
        Log(records).append(event, entry)
        outcome = {**entry.content["outcome"], "kind": "Judgement"}
        Log(records).append(
            event, replace(entry, id=new_ident(), content={**entry.content, "outcome": outcome})
        )
    told = marram("records", "log", str(club), "--again").out
    entries = json.loads(marram("records", "log", str(club), "--again", "--json").out)["entries"]

    assert "2 rulings were ruled again; 1 " in told
    assert told.count("Today:") == 1
    assert [one.get("differs") for one in entries] == [None, None, [], ["kind"]]


def test_erasing_asks_to_be_sure(club: Path) -> None:
    """Nothing is erased by a slip: without --yes, and where the name is nobody's."""
    asked = marram("records", "erase", str(club), "Osric Tarnbeck")
    nobody = marram("records", "erase", str(club), "Osric", "--yes")
    done = marram("records", "erase", str(club), "Osric Tarnbeck", "--yes")

    assert (asked.code, nobody.code, done.code) == (2, 2, 0)
    assert "cannot be undone" in asked.err
    assert "Nobody in" in nobody.err
    assert marram("records", "erase", str(club), "Osric Tarnbeck", "--yes").code == 2


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (["verify", "{club}", "--receipt", "seven"], "seven is no receipt; give one such as 14:"),
        (["verify", "nothing.db"], "There are no records at"),
        (
            ["log", "{club}", "--event", "Other"],
            "holds no event of that name. It holds: 'Quillsand Midsummer Cup'",
        ),
        (["init", "{club}", "--course", "map.geojson"], "give the club's name with --club"),
        (["init", "{club}", "--maps", "maps", "--club", "C"], "give the map too, with --course"),
        (["init", "{club}", "--club", "Quillsand Links", "--event", str(EVENT)], "There is an event"),
        (["backup", "{club}", "{club}"], "is there already"),
        (["import", "nothing", "new.db"], "nothing is no export that can be read"),
        (["verify", "mysql://a/b"], "give a file, or postgresql://"),
    ],
)
def test_a_fault_says_what_to_do(
    club: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, arguments: list[str], told: str
) -> None:
    """One sentence with what, where and what to do; the records are as they were."""
    monkeypatch.chdir(tmp_path)
    before = marram("records", "log", str(club), "--json").out
    found = marram("records", *(one.format(club=club) for one in arguments))

    assert found.code == 2
    assert told in found.err
    assert "Traceback" not in found.err
    assert marram("records", "log", str(club), "--json").out == before


def test_a_role_that_is_not_known_is_told_before_anything_is_made(tmp_path: Path) -> None:
    """Every such official is named, with the roles that are known; no club, no event."""
    event = tmp_path / "event.json"
    officials = [
        {"name": "Ada", "role": "umpire"},
        {"name": "Bo", "role": "Chief Referee, all day"},
        {"name": "Cy"},
    ]
    event.write_text(json.dumps({"name": "Cup", "officials": officials}), encoding="utf-8")
    found = marram("records", "init", str(tmp_path / "club.db"), "--club", "C", "--event", str(event))

    assert found.code == 2
    assert "officials 1, role is 'umpire'" in found.err
    assert "officials 3, role is ''" in found.err
    assert marram("records", "log", str(tmp_path / "club.db")).code == 2


def test_the_log_is_searched_and_play_is_stopped_from_the_shell(tmp_path: Path) -> None:
    """What is found is listed; play is stopped and resumed once; what cannot be is told in a sentence."""
    records = str(tmp_path / "club.db")
    event = str(EVENT)
    assert marram("records", "init", records, "--club", "Quillsand Links", "--event", event).code == 0
    stopped = marram("records", "suspend", records, "immediate", "--cause", "lightning")
    assert stopped.code == 0
    assert "Immediate suspension" in stopped.out
    assert "national weather service" in stopped.out
    found = marram("records", "log", records, "--kind", "play_suspended", "--json")
    assert [one["kind"] for one in json.loads(found.out)["entries"]] == ["play_suspended"]
    assert json.loads(marram("records", "log", records, "--search", "zebra", "--json").out)["entries"] == []
    assert "Nobody has asked" in marram("records", "opinions", records).out
    assert marram("records", "resume", records, "--at", "2099-06-21T15:30+01:00").code == 0
    for wrong, match in (
        (("suspend", records, "slowly"), "give one of immediate, normal"),
        (("resume", records, "--at", "2099-06-21T15:30+01:00"), "Play is not stopped"),
        (("resume", records, "--at", "noon"), "distance from UTC"),
        (("log", records, "--outcome", "bad"), "give one of free"),
        (("log", records, "--kind", "rulling"), "Did you mean 'ruling'"),
    ):
        refused = marram("records", *wrong)
        assert refused.code == 2, wrong
        assert match in refused.err, wrong


def test_a_sheet_out_of_records_takes_the_map_they_keep(club: Path) -> None:
    """Scorecards need the pars of the holes: they stand in the map that is kept for the day of the round."""
    found = marram("paper", "scorecards", "--records", str(club))
    assert found.code == 0, found.err
    assert "Fenwin Dulsey" in found.out
    assert marram("paper", "notice", "--records", str(club), "--round", "9").code == 2
