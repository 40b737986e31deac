"""What an entry says put right: a Handicap Index that was missing or wrong, the tees, men's or women's ratings."""

from collections.abc import Sequence
from dataclasses import asdict, dataclass

from marram.competition.conditions.event_file import EventFile
from marram.competition.entries.cells import handicap_in, sex_in
from marram.errors import InputError, did_you_mean, shown
from marram.records.entry import Entry
from marram.records.field_changes import Enters, put_right
from marram.said import said, sentences
from marram.services.cards.figures_typed import read_handicap
from marram.services.field.field_kept import PUT_RIGHT, EventLog, field_now
from marram.services.log.tap import Tap


@dataclass(frozen=True)
class EntrySays:
    """What an entry is to say, as somebody writes it; empty for what is not known.

    Attributes:
        handicap_index: ``12.4``, ``+1.4`` for a plus one.
        sex: whose ratings hold, ``m`` or ``f``.
        tees: empty for those of the competition.
        playing_handicap: as it is given; empty where it is worked out.
    """

    handicap_index: str = ""
    sex: str = ""
    tees: str = ""
    playing_handicap: str = ""


def putting_right(at: EventLog, conditions: EventFile, person: str, says: EntrySays, tap: Tap) -> Entry:
    """Put an entry right, and return the entry of the log that tells what it said and says now.

    Args:
        at: the event.
        conditions: its conditions, which know the tees.
        person: whose entry; somebody who plays or waits.
        says: all that it is to say.
        tap: who does it, and when.

    Raises:
        InputError: the person neither plays nor waits, or something cannot be used; every fault is listed and nothing was changed.
    """
    now = field_now(at)
    before = next(
        (
            Enters(one.person, one.handicap_index, one.tees, one.playing_handicap)
            for one in now.playing
            if one.person == person
        ),
        None,
    ) or next((one for one in now.reserves if one.person == person), None)
    if before is None:
        raise InputError(said("This player neither plays nor waits any more. Look at the list again."))
    faults: list[str] = []
    index = sex = None
    try:
        index = handicap_in(says.handicap_index)
    except InputError as error:
        faults += error.faults
    try:
        sex = sex_in(says.sex) or None
    except InputError as error:
        faults += error.faults
    tees = _tees(conditions, says.tees.strip(), faults)
    playing = _playing_handicap(says.playing_handicap.strip(), faults)
    if faults:
        raise InputError(*faults)
    after = Enters(person, None if index is None else str(index), tees, playing)
    put_right(at.records, at.event, after, sex)
    content = {"was": asdict(before), "now": asdict(after)}
    for one in content.values():
        one["who"] = one.pop("person")
    return Entry(PUT_RIGHT, tap.at, tap.ident, by=tap.by, player=person, content=content)


def _tees(conditions: EventFile, written: str, faults: list[str]) -> str | None:
    known = tees_of(conditions)
    if not written:
        return None
    named = next((one for one in known if one.casefold() == written.casefold()), written)
    if known and named not in known:
        none = said("There is no rating of the tees {given}.", given=shown(written))
        faults.append(sentences(none, did_you_mean(written, dict.fromkeys(known))))
    return named


def tees_of(conditions: EventFile) -> Sequence[str]:
    """Return the names of the tees that the conditions rate, each once."""
    return tuple(dict.fromkeys(one.tees for one in conditions.ratings if one.tees))


def _playing_handicap(written: str, faults: list[str]) -> int | None:
    try:
        read = read_handicap(written)
    except InputError as error:
        faults += error.faults
        return None
    return read if isinstance(read, int) else None
