"""Whoever changes what is kept is found out, and the first entry that is not as it was is named."""

from hashlib import sha256

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy import text

from marram.records.chain import START, Break, Broken, first_broken, sealed
from marram.records.database import Records
from marram.records.entry import Kept, Part
from marram.records.log import Log
from marram.records.verifying import unsound, verified
from tests.records.conftest import clock, new_event, note

EVENT = "00000000-0000-4000-8000-000000000001"


def chain(count: int) -> list[Kept]:
    links: list[Kept] = []
    for number in range(1, count + 1):
        previous = links[-1].digest if links else START
        moment = f"2025-06-21T12:00:{number:02d}.000000Z"
        links.append(sealed(Kept(EVENT, number, f"{number:036d}", moment, f'{{"n":{number}}}', previous, "")))
    return links


def test_the_digest_is_the_one_documented() -> None:
    """Anybody can check a link without this program: SHA-256 over the JSON that the module's first lines show."""
    written = (
        '{"body":{"n":1},"event":"00000000-0000-4000-8000-000000000001",'
        '"id":"000000000000000000000000000000000001","number":1,'
        f'"previous":"{"0" * 64}","recorded_at":"2025-06-21T12:00:01.000000Z"}}'
    )

    assert chain(1)[0].digest == sha256(written.encode()).hexdigest()


@given(st.integers(0, 6))
def test_an_untouched_chain_is_whole(count: int) -> None:
    """Nothing is found where nothing was done, with the receipt of every entry."""
    links = chain(count)

    assert first_broken(EVENT, links, {one.number: one.digest[:16] for one in links}) is None


@given(
    st.integers(1, 6),
    st.data(),
    st.sampled_from(["id", "recorded_at", "body", "previous", "digest", "event"]),
)
def test_any_change_of_any_value_is_found_where_it_was_made(
    count: int, data: st.DataObject, what: str
) -> None:
    """One letter of one value of one entry: that entry is named."""
    links = chain(count)
    place = data.draw(st.integers(0, count - 1))
    values = dict(vars(links[place]))
    values[what] = values[what][:-1] + ("0" if values[what][-1] != "0" else "1")
    links[place] = Kept(**values)

    assert first_broken(EVENT, links) == Broken(EVENT, place + 1, Break.CHANGED)


@given(st.integers(2, 6), st.data())
def test_a_removed_entry_is_missed(count: int, data: st.DataObject) -> None:
    """An entry taken out before the last is missed by its number; the last is missed by whoever has its receipt."""
    links = chain(count)
    place = data.draw(st.integers(0, count - 1))
    gone = links.pop(place)

    assert first_broken(EVENT, links, {gone.number: gone.digest}) == Broken(EVENT, place + 1, Break.MISSING)
    if place < count - 1:
        assert first_broken(EVENT, links) == Broken(EVENT, place + 1, Break.MISSING)


def test_an_entry_sealed_anew_is_found_by_the_next() -> None:
    """Whoever also mends the digest of the entry itself is found by the next one; of the last, by its receipt."""
    links = chain(3)
    forged = sealed(Kept(**{**vars(links[1]), "body": '{"n":7}'}))

    assert first_broken(EVENT, [links[0], forged, links[2]]) == Broken(EVENT, 2, Break.EXCHANGED)
    assert first_broken(EVENT, [links[0], forged]) is None
    assert first_broken(EVENT, [links[0], forged], {2: links[1].digest[:16]}) == Broken(
        EVENT, 2, Break.RECEIPT
    )


def without_guards(records: Records, deed: str, **values: object) -> None:
    """Do what the triggers refuse, as somebody who owns the database can."""
    with records.writing() as connection:
        if not records.is_file:
            connection.execute(text("SET session_replication_role = replica"))
            connection.execute(text(deed), values)
            connection.execute(text("SET session_replication_role = DEFAULT"))
            return
        guards = connection.execute(text("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'")).all()
        for name, _ in guards:
            connection.execute(text(f"DROP TRIGGER {name}"))
        connection.execute(text(deed), values)
        for _, made in guards:
            connection.exec_driver_sql(made)


@pytest.mark.parametrize(
    ("deed", "number", "how"),
    [
        ('UPDATE log SET body = \'{"kind":"note"}\' WHERE number = 2', 2, Break.CHANGED),
        ("UPDATE log SET recorded_at = '2025-06-21T12:00:00.000000Z' WHERE number = 3", 3, Break.CHANGED),
        ("DELETE FROM log WHERE number = 3", 3, Break.MISSING),
        ("DELETE FROM sealed_parts", 2, Break.PART),
        ("UPDATE sealed_parts SET content = salt", 2, Break.PART),
        ("UPDATE sealed_parts SET media_type = 'text/html'", 2, Break.PART),
        ("UPDATE sealed_parts SET entry_id = (SELECT id FROM log WHERE number = 1)", 1, Break.PART),
    ],
)
def test_the_first_broken_entry_is_named(
    records: Records, event: str, deed: str, number: int, how: Break
) -> None:
    """Whatever is done to the database behind the program's back, with the triggers out of the way."""
    log, other = Log(records, clock()), new_event(records, "Autumn Foursomes")
    for turn in range(1, 5):
        log.append(event, note(str(turn), parts=(Part("note", b"said so"),) if turn == 2 else ()))
    assert [one.broken for one in verified(records)] == [None, None]
    without_guards(records, deed)
    found = {one.event: one.broken for one in verified(records)}

    assert found == {event: Broken(event, number, how), other: None}


def test_a_receipt_written_down_proves_the_log(records: Records, event: str) -> None:
    """A forger who seals the whole log anew is found by whoever kept a receipt; without one, by nobody."""
    log = Log(records, clock())
    kept = [log.append(event, note(str(turn))) for turn in range(3)]
    forged = sealed(Kept(**{**vars(kept[2]), "body": kept[2].body.replace("2", "7")}))
    without_guards(
        records,
        "UPDATE log SET body = :body, digest = :digest WHERE number = 3",
        body=forged.body,
        digest=forged.digest,
    )
    number, digits = kept[2].receipt.split(":")

    assert verified(records)[0].broken is None
    assert verified(records, {event: {int(number): digits}})[0].broken == Broken(event, 3, Break.RECEIPT)


def test_a_sound_database_says_nothing(records: Records, event: str) -> None:
    """What the database looks at itself is in order after entries were added."""
    Log(records).append(event, note(parts=(Part("note", b"a"),)))

    assert unsound(records) == []
    assert verified(records)[0].entries == 1
    assert verified(records)[0].receipt == Log(records).entries(event)[0].receipt
