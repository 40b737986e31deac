"""Entries are added exactly once, in order, and never changed."""

from datetime import UTC, datetime, timedelta, timezone
from threading import Thread

import pytest
from sqlalchemy import text

from marram.errors import InputError
from marram.records.database import Records, opened
from marram.records.entry import Entry, Kept, Part, new_ident
from marram.records.group_commit import GroupCommit
from marram.records.log import Log
from marram.records.people import names
from marram.records.starting_sheet import courses, events, groups, officials, rounds
from marram.records.verifying import verified
from tests.records.conftest import NOON, clock, new_event, note


def whole(records: Records) -> bool:
    return all(one.broken is None for one in verified(records))


def test_what_is_given_is_kept(address: str, records: Records, event: str) -> None:
    """Every value of an entry is there when the log is opened again, numbered in order and sealed on the one before."""
    log = Log(records, clock())
    given = Entry(
        "ruling",
        datetime(2025, 6, 21, 14, 5, 30, tzinfo=timezone(timedelta(hours=1))),
        by=new_ident(),
        player=new_ident(),
        round=new_ident(),
        hole=7,
        place={"latitude": 55.0012345, "longitude": 3.99, "accuracy": 6.0},
        alike="a" * 32,
        content={"case": {"played_on": "2025-06-21"}, "words": "Größe 10°"},
    )
    first, second = log.append(event, note("first")), log.append(event, given)
    with opened(address) as again:
        kept = Log(again).entries(event)

    assert kept == [first, second]
    assert (second.number, second.previous) == (2, first.digest)
    assert second.recorded_at == "2025-06-21T12:00:01.000000Z"
    assert second.told == {
        "kind": "ruling",
        "given_at": "2025-06-21T13:05:30.000000Z",
        "by": given.by,
        "player": given.player,
        "round": given.round,
        "hole": 7,
        "place": given.place,
        "alike": given.alike,
        "content": given.content,
    }


def test_entries_are_found_by_what_the_database_reads_out_of_them(records: Records, event: str) -> None:
    """By kind, player, hole, number and likeness; those of other events stay out."""
    log, player, other = Log(records, clock()), new_ident(), new_event(records, "Autumn Foursomes")
    one = log.append(event, note("a", hole=7, player=player))
    two = log.append(event, Entry("ruling", NOON, hole=7, alike="x"))
    three = log.append(other, Entry("ruling", NOON, hole=7, player=player, alike="x"))

    assert log.entries(event, hole=7) == [one, two]
    assert log.entries(event, player=player) == [one]
    assert log.entries(event, kind="ruling", after=1) == [two]
    assert log.alike("x") == [three, two]
    assert log.numbered(event, 2) == two == log.entry(two.id)
    assert log.entry(new_ident()) is None


@pytest.mark.parametrize(
    "deed", ["UPDATE log SET body = body", "DELETE FROM log", "UPDATE log SET number = 7"]
)
def test_the_database_refuses_to_change_an_entry(records: Records, event: str, deed: str) -> None:
    """Whoever writes to the database by another way can neither change nor remove an entry."""
    kept = Log(records).append(event, note())
    with pytest.raises(InputError, match="only ever added to"), records.writing() as connection:
        connection.execute(text(deed))

    assert Log(records).entries(event) == [kept]


def test_replacing_an_entry_is_refused_too(records: Records, event: str) -> None:
    """Neither a replacing insert of SQLite nor a TRUNCATE of PostgreSQL goes round the triggers."""
    kept = Log(records).append(event, note())
    deed = "INSERT OR REPLACE INTO log (event_id, number, id, recorded_at, body, previous, digest) VALUES (:event, 1, '', '', '{}', '', '')"
    if not records.is_file:
        deed = "TRUNCATE log CASCADE"
    with pytest.raises(InputError, match="only ever added to"), records.writing() as connection:
        connection.execute(text(deed), {"event": event} if records.is_file else {})

    assert Log(records).entries(event) == [kept]


def test_the_same_entry_given_again_is_kept_once(records: Records, event: str) -> None:
    """The answer to a save was lost: the same entry sent again gets the same number, with its parts sealed as before."""
    log, ident = Log(records, clock()), new_ident()
    first = log.append(event, note("a", id=ident, parts=(Part("note", b"said so"),)))
    again = log.append(event, note("a", id=ident, parts=(Part("note", b"said so"),)))

    assert again == first
    assert log.entries(event) == [first]
    assert [part.content for part in log.parts(ident) if part] == [b"said so"]


def test_the_same_entry_twice_in_one_transaction_is_kept_once(records: Records, event: str) -> None:
    """Two tries that arrive together are one entry; another entry beside them is not hindered."""
    one = note("a", id=new_ident(), parts=(Part("note", b"said so"),))
    other = note("b", id=one.id)
    answers = Log(records, clock()).append_all(
        [(event, one), (event, one), (event, other), (event, note("c"))]
    )

    assert answers[0] == answers[1]
    assert isinstance(answers[2], InputError)
    assert [kept.number for kept in Log(records).entries(event)] == [1, 2]
    assert whole(records)


@pytest.mark.parametrize(
    "other",
    [note("b"), note("a", parts=(Part("note", b"other"),)), note("a", parts=()), note("a", hole=3)],
    ids=["words", "part", "no part", "hole"],
)
def test_another_entry_with_a_known_identifier_is_refused(records: Records, event: str, other: Entry) -> None:
    """What differs from what is kept is told, never silently left out."""
    log, ident = Log(records), new_ident()
    log.append(event, note("a", id=ident, parts=(Part("note", b"said so"),)))
    with pytest.raises(InputError, match="Entry 1 has this identifier and says something else"):
        log.append(event, Entry(**{**vars(other), "id": ident}))

    assert len(log.entries(event)) == 1


def test_a_correction_points_at_what_it_corrects(records: Records, event: str) -> None:
    """The corrected entry stays; two corrections of it, made at once, are both there."""
    log = Log(records, clock())
    wrong = log.append(event, note("wrong"))
    one = log.append(event, note("right", corrects=wrong.id))
    two = log.append(event, note("right too", corrects=wrong.id))

    assert log.corrections(wrong.id) == [one, two]
    assert log.entries(event) == [wrong, one, two]


def test_a_correction_of_what_is_not_there_is_refused(records: Records, event: str) -> None:
    """Neither an unknown entry nor one of another event can be corrected here."""
    log, other = Log(records), new_event(records, "Autumn Foursomes")
    elsewhere = log.append(other, note())
    for corrects in (new_ident(), elsewhere.id):
        with pytest.raises(InputError, match="in this log to be corrected"):
            log.append(event, note(corrects=corrects))

    assert log.entries(event) == []


def test_one_that_cannot_be_kept_hinders_no_other(records: Records, event: str) -> None:
    """Of many entries in one transaction, each that can be kept is, and each that cannot says why."""
    answers = Log(records).append_all(
        [
            (event, note("a")),
            (new_ident(), note("no event")),
            (event, note("bad", hole=0)),
            (event, note("bad", id="seven")),
            (event, note("z")),
        ]
    )

    assert [answer.number if isinstance(answer, Kept) else None for answer in answers] == [
        1,
        None,
        None,
        None,
        2,
    ]
    assert all(str(answer) for answer in answers if isinstance(answer, InputError))
    assert whole(records)


def test_a_clock_that_jumps_back_breaks_no_order(records: Records, event: str) -> None:
    """Order is by number; the time is kept as the clock told it."""
    first = Log(records, clock(NOON)).append(event, note())
    second = Log(records, clock(NOON - timedelta(days=1))).append(event, note())

    assert (first.number, second.number) == (1, 2)
    assert second.recorded_at < first.recorded_at
    assert whole(records)


def test_a_time_without_a_zone_is_refused(records: Records, event: str) -> None:
    """A time that could mean any hour is not kept."""
    with pytest.raises(InputError, match="names no time zone"):
        Log(records).append(event, Entry("note", datetime(2025, 6, 21, 12)))  # noqa: DTZ001 - that is the point


def test_many_who_add_at_once_are_all_kept_in_one_chain(address: str, records: Records, event: str) -> None:
    """Threads with a writer in common and others with connections of their own: nobody's entry is lost or doubled."""
    other = new_event(records, "Autumn Foursomes")
    with opened(address) as second, GroupCommit(Log(records)) as shared:
        mine, theirs = Log(second), []

        def add(append: object, to: str, name: str) -> None:
            for turn in range(12):
                append(to, note(f"{name} {turn}"))  # type: ignore[operator]

        for name in range(6):
            append = shared.append if name % 2 else mine.append
            theirs.append(Thread(target=add, args=(append, other if name == 5 else event, str(name))))
        for thread in theirs:
            thread.start()
        for thread in theirs:
            thread.join()
    told = [one.content["words"] for to in (event, other) for one in Log(records).entries(to)]

    assert sorted(told) == sorted(f"{name} {turn}" for name in range(6) for turn in range(12))
    assert whole(records)


def test_a_closed_log_says_so(records: Records, event: str) -> None:
    """Nothing waits for ever for a writer that has gone."""
    with GroupCommit(Log(records)) as log:
        log.append(event, note())
    with pytest.raises(InputError, match="The log is closed"):
        log.append(event, note())


def test_a_fault_reaches_everybody_who_waits(records: Records, event: str) -> None:
    """An entry that cannot be kept, and a transaction that fails, are told to whoever gave them; the log goes on."""
    with GroupCommit(Log(records)) as log:
        with pytest.raises(InputError, match="no event"):
            log.append(new_ident(), note())
        with pytest.raises(InputError, match="no time zone"):
            log.append(event, Entry("note", datetime.now(UTC).replace(tzinfo=None)))

        assert log.append(event, note()).number == 1


@pytest.mark.parametrize("address", ["sqlite"], indirect=True)
def test_reading_waits_for_nobody_who_writes(records: Records, event: str) -> None:
    """While one writes, all that pages read is read, as it was before: a long save holds up nobody."""
    log = Log(records)
    kept = log.append(event, note())
    with records.writing() as connection:
        connection.execute(text("UPDATE events SET name = 'Other'"))

        assert log.entries(event) == [kept]
        assert [one.name for one in events(records)] == ["Quillsand Midsummer Cup"]
        assert rounds(records, event) == groups(records, event) == officials(records, event) == []
        assert names(records) == {}
        assert courses(records) == []
        assert verified(records)[0].entries == 1
