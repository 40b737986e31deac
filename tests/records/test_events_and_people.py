"""Clubs, events, groups and people: made whole or not at all, and erasable."""

from dataclasses import replace
from datetime import time
from pathlib import Path

import pytest

from marram.errors import InputError
from marram.records import tables
from marram.records.database import Records
from marram.records.entry import Entry, Part, new_ident
from marram.records.events import Official, Player, Start, new_club, new_course, new_event
from marram.records.log import Log
from marram.records.people import erase, named, names
from marram.records.starting_sheet import conditions, courses, events, groups, rounds
from marram.records.verifying import verified
from tests.records.conftest import NOON, clock, note
from tests.records.full import GIVEN, everything, fill


def test_an_event_is_kept_with_all_that_is_given(records: Records) -> None:
    """Conditions, the round with its day, and the groups in order with their players."""
    event = new_event(records, new_club(records, "Quillsand Links"), GIVEN)
    (round_,) = rounds(records, event)
    first, second = groups(records, round_.id)

    assert [(one.name, one.day) for one in events(records)] == [(GIVEN.name, GIVEN.played_on)]
    assert conditions(records, event) == GIVEN.conditions
    assert (first.number, first.starts_at, first.tee) == (1, time(8), 1)
    assert [one.name for one in first.players] == ["Fenwin Dulsey", "Maris Quillan-Roe"]
    assert (second.starts_at, second.tee) == (None, 10)


def test_a_person_is_the_same_in_every_event(records: Records) -> None:
    """Who plays again, or officiates where they played before, keeps their identifier."""
    club = new_club(records, "Quillsand Links")
    new_event(records, club, GIVEN)
    before = everything(records)["people"]
    new_event(
        records, club, replace(GIVEN, name="Autumn Cup", officials=[Official("Fenwin Dulsey", "starter")])
    )

    assert everything(records)["people"] == before
    assert len(named(records, "Fenwin Dulsey")) == 1


def test_every_fault_of_an_event_is_told_and_nothing_made(records: Records) -> None:
    """Entered twice, a group that names nobody who plays, a role that is none: nothing is half-made."""
    club = new_club(records, "Quillsand Links")
    wrong = replace(
        GIVEN,
        players=[Player("Fenwin Dulsey"), Player("Fenwin Dulsey")],
        starts=[Start(None, 1, ("Fenwin Dulsy",))],
    )
    with pytest.raises(InputError) as fault:
        new_event(records, club, wrong)
    with pytest.raises(InputError):
        new_event(records, club, replace(GIVEN, officials=[Official("Ada", "captain")]))

    assert fault.value.faults == (
        "Fenwin Dulsey is entered twice. Leave one out, or tell them apart by name.",
        "Group 1 names Fenwin Dulsy, who does not play. Did you mean 'Fenwin Dulsey'?",
    )
    assert not any(rows for name, rows in everything(records).items() if name != "clubs")


def test_names_are_not_guessed_between_two_people(records: Records) -> None:
    """Where two people have a name, an event that says only the name is refused."""
    with records.changing() as session:
        for person in (new_ident(), new_ident()):
            session.add(tables.Person(id=person, erased_at=None))
            session.flush()
            session.add(tables.PersonalDetails(person_id=person, name="Fenwin Dulsey", club=None))
    with pytest.raises(InputError, match="Several people are called Fenwin Dulsey"):
        new_event(records, new_club(records, "Quillsand Links"), GIVEN)


def test_making_a_club_or_course_again_finds_it(records: Records) -> None:
    """A name is a club's once, and a course's once in its club; an event's name is taken."""
    club = new_club(records, "Quillsand Links")

    assert new_club(records, " Quillsand Links ") == club
    assert new_course(records, club, "Old") == new_course(records, club, "Old")
    assert [one.name for one in courses(records)] == ["Old"]
    new_event(records, club, GIVEN)
    with pytest.raises(InputError, match="There is an event Quillsand Midsummer Cup already"):
        new_event(records, club, GIVEN)
    with pytest.raises(InputError, match="Say what the club is called"):
        new_club(records, " ")


def test_two_people_who_change_the_same_thing_are_told(records: Records) -> None:
    """Who saves second, having seen the first state, saves nothing and hears it."""
    fenwin, club = "Fenwin Dulsey", new_club(records, "Quillsand Links")
    new_event(records, club, GIVEN)
    (person,) = named(records, fenwin)

    with records.changing() as session:
        seen = session.get_one(tables.PersonalDetails, person)
        session.expunge(seen)
    with records.changing() as session:
        session.get_one(tables.PersonalDetails, person).name = "Fenwin Dulsey-Holt"
    seen.name = "Fenwin D."
    with pytest.raises(InputError, match="Somebody else changed"), records.changing() as session:
        session.merge(seen)

    assert names(records, [person]) == {person: "Fenwin Dulsey-Holt"}


def test_erasing_a_person_leaves_no_trace_but_the_identifier(records: Records, tmp_path: Path) -> None:
    """Name and sealed words are in no table and no byte of the file; the chain is whole, and says that it was done."""
    event = fill(records, tmp_path / "maps")
    (person,) = named(records, "Fenwin Dulsey")
    log = Log(records, clock())
    kept = log.append(
        event, Entry("ruling", NOON, player=person, parts=(Part("note", b"a very private remark"),))
    )
    other = log.append(event, note(parts=(Part("note", b"about nobody"),)))
    erased = erase(records, person, now=NOON)

    assert erased >= 1
    assert names(records, [person]) == {}
    assert log.parts(kept.id) == [None]
    assert [part and part.content for part in log.parts(other.id)] == [b"about nobody"]
    assert [one.broken for one in verified(records)] == [None]
    assert [one.told["player"] for one in log.entries(event, kind="erasure")] == [person]
    if records.is_file:
        held = b"".join(path.read_bytes() for path in records.file.parent.glob(f"{records.file.name}*"))
        assert b"a very private remark" not in held
        assert b"Fenwin Dulsey" not in held


def test_erasing_again_says_it_once(records: Records, tmp_path: Path) -> None:
    """A second try changes nothing; nobody else can be erased by a slip."""
    event = fill(records, tmp_path / "maps")
    person = next(one for one in names(records) if Log(records).entries(event, player=one))
    erase(records, person, now=NOON)
    before = everything(records)

    assert erase(records, person, now=NOON) == 0
    assert everything(records) == before
    with pytest.raises(InputError, match="There is nobody with the identifier"):
        erase(records, new_ident())
