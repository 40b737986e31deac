"""What the commands of ``marram records`` do."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from marram.cli.exits import BAD_INPUT, stop
from marram.cli.show import Line, print_json, show_lines
from marram.errors import InputError
from marram.records.backup import backed_up, restored
from marram.records.chain import Broken
from marram.records.database import opened
from marram.records.exporting import exported, read_back
from marram.records.log import Log
from marram.records.making import brought_up_to_date, made
from marram.records.people import erase, named, names
from marram.records.verifying import Verified, unsound, verified
from marram.rules.plain import as_plain
from marram.said import Said, said
from marram.services.keeping import Started, kept_event, start
from marram.services.kinds.registry import kind_named
from marram.services.log.log import RULING
from marram.services.log.log import again as ruled_again
from marram.services.log.searching import OUTCOMES, Search, all_found
from marram.words.texts import count_text, text


def init(
    records: str,
    club: str | None,
    time_zone: str | None,
    course: Path | None,
    maps: Path | None,
    event: Path | None,
) -> None:
    """Make records or bring them up to date, and put into them what is given."""
    if club is None and (course is not None or event is not None or time_zone is not None):
        raise InputError(said("Say whose course or event it is: give the club's name with --club."))
    if maps is not None and course is None:
        raise InputError(said("--maps holds versions of a map; give the map too, with --course."))
    if _is_there(records) and (copy := brought_up_to_date(records)) is not None:
        print(text("records.upgraded", copy=copy) if copy else text("records.upgraded.database"))
    with made(records) as there:
        done = Started()
        if club is not None:
            done = start(there, club, time_zone=time_zone, course_file=course, maps=maps, event=event)
        print(text("records.ready", name=there.name))
        if done.taken is not None:
            print(count_text("records.taken.maps", done.taken.maps))
            print(count_text("records.taken.holes", done.taken.holes))
        if done.event is not None:
            print(text("records.event", event=done.event))


def verify(records: str, receipts: Sequence[str], event: str | None, as_json: bool) -> None:
    """Look at every log and at the database itself; exit with 2 where something is not as it was."""
    with opened(records) as there:
        wanted = {kept_event(there, event)[0]: _receipts(receipts)} if receipts else {}
        wrong, logs = unsound(there), verified(there, wanted)
    broken = [one for one in logs if one.broken]
    if as_json:
        print_json({"marram": 1, "kind": "verified", "logs": as_plain(logs), "database": wrong})
    else:
        _show_logs(logs)
        for one in wrong:
            print(text("records.unsound", what=one))
    if broken or wrong:
        stop(BAD_INPUT, text("records.not_whole"))


def backup(records: str, to: Path) -> None:
    """Copy a file of records while it is in use."""
    with opened(records) as there:
        logs = backed_up(there, to)
    print(text("records.backed_up", path=to))
    _show_logs(logs)


def restore(file: Path, to: Path) -> None:
    """Put a backup in the place of records that are gone."""
    logs = restored(file, to)
    print(text("records.restored", path=to))
    _show_logs(logs)


def export(records: str, to: Path) -> None:
    """Write everything in open formats."""
    with opened(records) as there:
        logs = exported(there, to)
    print(text("records.exported", path=to))
    _show_logs(logs)


def import_(folder: Path, to: str) -> None:
    """Read an export back into new records."""
    with made(to) as there:
        logs = read_back(folder, there)
        print(text("records.imported", name=there.name))
    _show_logs(logs)
    if any(one.broken for one in logs):
        stop(BAD_INPUT, text("records.not_whole"))


def list_log(
    records: str,
    event: str | None,
    again: bool,
    as_json: bool,
    *,
    hole: int | None = None,
    search: str = "",
    outcome: str = "",
    kind: str = "",
) -> None:
    """Print the entries of an event's log that hold what is looked for; with ``again`` also what differs today."""
    if outcome and outcome not in OUTCOMES:
        raise InputError(
            said(
                "There is no outcome {given}; give one of {known}.", given=outcome, known=", ".join(OUTCOMES)
            )
        )
    wanted = Search(search, kind_named(kind).name if kind else "", hole, outcome)
    with opened(records) as there:
        id_, found = kept_event(there, event)
        entries = (
            all_found(there, id_, wanted)
            if search or outcome
            else Log(there).entries(id_, hole=hole, kind=kind or None)
        )
        known = names(there)
    anew = {one.id: ruled_again(one) for one in entries if again and one.kind == RULING}
    if as_json:
        told = [
            {
                "number": one.number,
                "id": one.id,
                "recorded_at": one.recorded_at,
                "digest": one.digest,
                **one.told,
                **(
                    {"differs": anew[one.id].differs, "today": anew[one.id].headline}
                    if one.id in anew
                    else {}
                ),
            }
            for one in entries
        ]
        print_json({"marram": 1, "kind": "log", "event": found.name, "entries": told})
        return
    corrected = {one.corrects for one in entries if one.corrects}

    def lines() -> Iterator[Line]:
        yield "title", count_text("records.log", len(entries), event=found.name)
        for one in entries:
            who = known.get(one.told.get("player", ""), "")
            told = {
                "number": one.number,
                "time": one.told["given_at"][:16].replace("T", " "),
                "what": one.kind,
            }
            where = text("records.log.hole", hole=one.told["hole"]) if "hole" in one.told else ""
            line = text("records.log.entry", **told, more=", ".join(filter(None, (where, who))))
            yield "item", line
            if headline := one.content.get("headline"):
                yield "text", f"     {headline}"
            if one.id in anew and anew[one.id].differs:
                yield "caution", "     " + text("records.log.differs", today=anew[one.id].headline)
            if one.id in corrected:
                yield "caution", "     " + text("records.log.corrected")

        if again:
            differing = sum(bool(one.differs) for one in anew.values())
            yield "text", count_text("records.log.again", len(anew), differing=differing)

    show_lines(lines())


def erase_person(records: str, name: str, sure: bool) -> None:
    """Erase what is personal about somebody."""
    with opened(records) as there:
        found = named(there, name)
        if len(found) != 1:
            raise InputError(
                said(
                    "Several people in {records} are called {name}; none was erased.",
                    records=there.name,
                    name=name,
                )
                if found
                else said("Nobody in {records} is called {name}.", records=there.name, name=name)
            )
        if not sure:
            raise InputError(said("Erasing {name} cannot be undone. Say it again with --yes.", name=name))
        parts = erase(there, found[0])
    print(count_text("records.erased", parts))


def _show_logs(logs: Sequence[Verified]) -> None:
    for one in logs:
        if one.broken:
            print(text("records.broken", event=one.name, what=_broken(one.broken)))
        else:
            print(count_text("records.whole", one.entries, event=one.name, receipt=one.receipt or "0:"))


def _broken(broken: Broken) -> str:
    return text(f"records.break.{broken.how.value}", number=broken.number)


def _receipts(given: Sequence[str]) -> dict[int, str]:
    found: dict[int, str] = {}
    faults: list[Said] = []
    for one in given:
        number, colon, digits = one.strip().partition(":")
        hexadecimal = set(digits.casefold()) <= set("0123456789abcdef")
        if (
            colon
            and number.isdecimal()
            and number.isascii()
            and int(number)
            and len(digits) >= 8
            and hexadecimal
        ):
            found[int(number)] = digits.casefold()
        else:
            faults.append(said("{given} is no receipt; give one such as 14:0123456789abcdef.", given=one))
    if faults:
        raise InputError(*faults)
    return found


def _is_there(records: str) -> bool:
    return "://" in records or Path(records).is_file()
