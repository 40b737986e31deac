"""``marram entries``: lists of entries read, and the ballot."""

import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal, InvalidOperation
from pathlib import Path
from typing import Any

from marram.cli.exits import BAD_INPUT
from marram.cli.show import Line, print_json, show_lines
from marram.competition.entries.ballot import (
    Choosing,
    Field,
    after_withdrawals,
    chosen_field,
    digest,
    moved_up,
)
from marram.competition.entries.columns import keep_columns, kept_columns
from marram.competition.entries.entry import Entry, EntryList
from marram.competition.entries.reading import read_entries
from marram.competition.entries.writing import index_as_written, write_entries
from marram.errors import InputError
from marram.words.spoken import spoken
from marram.words.texts import count_text, text


@dataclass(frozen=True, slots=True)
class Ballot:
    """What a ballot goes by, as typed."""

    seed: str
    places: int
    handicap_limit: str | None
    lowest_handicaps: bool
    withdrawn: Sequence[str]
    publish: Path | None = None


def tell_entries(file: Path, columns: Path | None, output: Path | None, as_json: bool) -> None:
    """Print entries, or what is wrong line by line (exit code 2); write them where asked, and all is well."""
    found = _read(file, columns)
    if output is not None and not found.faults:
        write_entries(found.entries, output)
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "entries read",
                "entries": [entry_json(one) for one in found.entries],
                "faults": [{"line": one.line, "fault": spoken(one.fault)} for one in found.faults],
                "notes": [spoken(one) for one in found.notes],
                "columns": {heading: column.value for heading, column in found.columns.items()},
            }
        )
    else:
        show_lines(_lines(found))
    if found.faults:
        raise SystemExit(BAD_INPUT)


def tell_ballot(file: Path, columns: Path | None, ballot: Ballot, as_json: bool) -> None:
    """Print who plays and who waits; a list with faults is refused."""
    found = _read(file, columns)
    if found.faults:
        raise InputError(
            *(text("entries.line", line=one.line, fault=spoken(one.fault)) for one in found.faults)
        )
    limit = None if ballot.handicap_limit is None else _number("--handicap-limit", ballot.handicap_limit)
    choosing = Choosing.LOWEST_HANDICAPS if ballot.lowest_handicaps else Choosing.BALLOT
    before = chosen_field(
        found.entries, seed=ballot.seed, places=ballot.places, handicap_limit=limit, choosing=choosing
    )
    now = after_withdrawals(before, ballot.withdrawn)
    if ballot.publish is not None:
        _publish(ballot.publish, found.entries, before, ballot, choosing)
    parts = {
        "playing": now.playing,
        "reserves": now.reserves,
        "refused": now.refused,
        "withdrawn": now.withdrawn,
        "moved_up": moved_up(before, now),
    }
    if as_json:
        told = {
            name: [entry_json(one) | {"digest": digest(ballot.seed, one)} for one in some]
            for name, some in parts.items()
        }
        print_json({"marram": 1, "kind": "entries ballot", "seed": ballot.seed, **told})
        return
    heads = {
        "playing": text("entries.playing"),
        "reserves": text("entries.reserves"),
        "refused": text("entries.over_limit"),
        "withdrawn": text("entries.withdrawn"),
        "moved_up": text("entries.moved_up"),
    }
    lines: list[Line] = []
    for name, some in parts.items():
        if some:
            lines += [("head", heads[name]), *(("item", _one(one)) for one in some)]
    show_lines([*lines, ("quiet", text("entries.repeat", seed=ballot.seed))])


def _publish(path: Path, entries: Sequence[Entry], drawn: Field, ballot: Ballot, choosing: Choosing) -> None:
    """Write a ballot as it is published, and say its digest on standard error, where it is in nobody's way."""
    from marram.cli.writing import write_files
    from marram.services.publishing.ballot import ballot_document
    from marram.services.publishing.formats import digest_of, written

    document = ballot_document("", entries, drawn, seed=ballot.seed, places=ballot.places, choosing=choosing)
    write_files({path: written(document)})
    print(text("entries.published", path=path, digest=digest_of(document)), file=sys.stderr)


def entry_json(entry: Entry) -> dict[str, Any]:
    """Return an entry as JSON."""
    return {
        "name": entry.name,
        "handicap_index": index_as_written(entry.handicap_index),
        "club": entry.club,
        "sex": entry.sex,
        "born": entry.born,
        "number": entry.number,
        "line": entry.line,
        "key": entry.key,
        "side": entry.side,
        "team": entry.team,
        "tees": entry.tees,
    }


def _read(file: Path, columns: Path | None) -> EntryList:
    kept = kept_columns(columns) if columns is not None and columns.exists() else None
    found = read_entries(file, kept)
    if columns is not None and kept is None and not found.faults:
        keep_columns(found.columns, columns)
    return found


def _lines(found: EntryList) -> Iterator[Line]:
    if found.faults:
        yield "title", count_text("entries.refused", len(found.faults))
    else:
        yield "title", count_text("entries.read", len(found.entries))
    for note in found.notes:
        yield "quiet", spoken(note)
    for fault in found.faults:
        yield "item", text("entries.line", line=fault.line, fault=spoken(fault.fault))
    for entry in found.entries:
        yield "item", _one(entry)


def _one(entry: Entry) -> str:
    return text(
        "entries.player",
        name=entry.name,
        index=index_as_written(entry.handicap_index) or text("entries.no_index"),
        club=entry.club or text("entries.no_club"),
    )


def _number(option: str, given: str) -> Decimal:
    try:
        return Decimal(given.replace(",", "."))
    except InvalidOperation:
        raise InputError(text("entries.number_needed", option=option, given=repr(given))) from None
