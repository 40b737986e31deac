"""Full-text search finds entries by their words, on both databases alike, each indexed once and forgotten when erased."""

from collections.abc import Sequence
from datetime import UTC, datetime

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from marram.records.database import Records
from marram.records.entry import Entry, Kept, Part, new_ident
from marram.records.log import Log
from marram.records.people import erase
from marram.records.searching import Wanted, found, index
from tests.records.conftest import clock, new_event
from tests.records.full import fill

NOON = datetime(2025, 6, 21, 12, tzinfo=UTC)


def words_of(entry: Kept, parts: Sequence[Part | None]) -> list[str]:
    """The words of its content, and those of its notes."""
    notes = [part.content.decode() for part in parts if part is not None and part.what == "note"]
    return [*entry.content.get("words", []), *" ".join(notes).split()]


def numbers(records: Records, wanted: Wanted) -> list[int]:
    index(records, words_of)
    return [one.number for one in found(records, wanted, most=100)[0]]


def add(log: Log, event: str, words: list[str], **more: object) -> Kept:
    return log.append(event, Entry("ruling", NOON, content={"words": words}, **more))  # type: ignore[arg-type]


def test_all_words_must_be_there_and_one_of_each_set(records: Records) -> None:
    """Words, one of several words, hole, kind and event restrict; the latest comes first."""
    event, other = new_event(records), new_event(records, "Autumn Foursomes")
    log = Log(records, clock())
    add(log, event, ["stake", "rule_17_1"], hole=9)
    add(log, event, ["stake", "rule_16_1"], hole=3)
    add(log, event, ["bunker", "rule_17_1"], hole=9)
    add(log, other, ["stake", "rule_17_1"], hole=9)

    assert numbers(records, Wanted(("stake",), event=event)) == [2, 1]
    assert numbers(records, Wanted(("stake", "rule_17_1"), event=event)) == [1]
    assert numbers(records, Wanted(("rule_17_1",), (("bunker", "stake"),), event=event)) == [3, 1]
    assert numbers(records, Wanted(hole=9, kinds=("ruling",), event=event)) == [3, 1]
    assert numbers(records, Wanted(kinds=("note",))) == []
    assert len(numbers(records, Wanted(("stake",)))) == 3
    assert numbers(records, Wanted(("stak",))) == []


def test_a_page_says_how_many_there_are(records: Records) -> None:
    """A page of the found entries goes on where the one before ended."""
    event, log = new_event(records), Log(records, clock())
    for _ in range(7):
        add(log, event, ["stake"])
    index(records, words_of)
    pages = [found(records, Wanted(("stake",)), most=3, before=before) for before in (0, 3, 6, 9)]

    assert [[one.number for one in page] for page, _ in pages] == [[7, 6, 5], [4, 3, 2], [1], []]
    assert {count for _, count in pages} == {7}


def test_each_entry_is_indexed_once(records: Records) -> None:
    """A second search makes no words anew, a further entry only its own."""
    event, log = new_event(records), Log(records)
    add(log, event, ["stake"])
    add(log, event, [])
    assert index(records, words_of) == 2
    assert index(records, words_of) == 0
    add(log, event, ["stake"])

    assert index(records, words_of) == 1


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None, max_examples=25)
@given(query=st.lists(st.text(max_size=12), max_size=4))
def test_no_query_is_a_fault(records: Records, query: list[str]) -> None:
    """Whatever letters and signs are looked for, the databases answer."""
    assert numbers(records, Wanted(tuple(query), (tuple(query),) if query else ())) == []


def test_what_was_erased_is_found_no_more(records: Records, tmp_path: object) -> None:
    """The words of an erased note are gone from the index; the entry is still found by what is left."""
    event = fill(records, tmp_path)  # type: ignore[arg-type]
    log = Log(records)
    player = log.entries(event)[0].told["player"]
    entry = add(log, event, ["stake"], player=player, id=new_ident(), parts=(Part("note", b"very private"),))
    assert numbers(records, Wanted(("private",))) == [entry.number]
    erase(records, player)

    assert numbers(records, Wanted(("private",))) == []
    assert numbers(records, Wanted(("stake",))) == [entry.number]
