"""``marram course mend``: how each fault of a map can be mended; what is accepted becomes a version, or a copy.

At a terminal it opens the editor of the desk on the map, unless something says that it is mended here.
"""

import json
import re
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from marram.cli import long_work
from marram.cli.exits import BAD_INPUT, DECIDED
from marram.cli.mending_report import Mending, document_of, lettered, numbers_of, proposal_lines, report_lines
from marram.cli.show import print_json, show_lines
from marram.cli.writing import different, write_files
from marram.course.mending.courses import CHOOSE_COURSE
from marram.course.mending.draft import Draft, read_draft
from marram.course.mending.keeping import Accepted, draft_on, note_of
from marram.course.mending.proposal import Choice, Proposal
from marram.course.versions.map_edits import differences
from marram.course.versions.map_versions import MapVersions
from marram.errors import InputError
from marram.said import joined, said
from marram.words.texts import text

HERE = "127.0.0.1"
"""The editor is opened for this machine alone."""
ALL_OF = re.compile(r"all[-_ ]of[: =]+(\w+)")


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is to be mended, and where it goes.

    Attributes:
        accepted: numbers, letters and kinds to accept, as typed.
        course: the course to use among several.
        who: who mends it.
        why: why.
        day: the first day of play it is used for.
        maps: the folder of versions; ``None`` for that of ``marram serve``.
        output: a file for a mended copy instead of a version.
        as_json: print JSON.
        only_list: list the faults, whoever looks on.
        ask: ask for each proposal at the terminal.
        port: the port of the editor; ``None`` takes the usual one, or one that is free.
    """

    accepted: Sequence[str]
    course: str | None
    who: str
    why: str
    day: date
    maps: Path | None
    output: Path | None
    as_json: bool
    only_list: bool = False
    ask: bool = False
    port: int | None = None

    @property
    def here(self) -> bool:
        """Whether anything asks for the list, or mends it without the editor."""
        return bool(self.accepted or self.course or self.output or self.as_json or self.only_list or self.ask)


def mend_course(path: Path, wanted: Wanted) -> None:
    """Open the editor; or list faults with proposals, accept what is asked for, and keep it.

    Where the editor is not opened the exit code is 2 while errors are left.
    """
    if wanted.only_list and (wanted.ask or wanted.accepted or wanted.course is not None):
        raise InputError(said("--list only lists; leave it out to mend something, or leave out the rest."))
    if wanted.ask and not sys.stdin.isatty():
        raise InputError(said("--ask asks at a terminal, and there is none; give --accept instead."))
    if not wanted.here and at_terminal():
        open_editor(path, wanted)
        return
    if wanted.output is not None and wanted.maps is not None:
        raise InputError(said("--output writes a copy and --maps keeps a version; give one of them."))
    different(wanted.output, read=(path,))
    maps = MapVersions(path, wanted.maps)
    with long_work.shown():
        draft = read_draft(path) if wanted.output is not None else _in_force(path, maps, wanted.day)
    mending = Mending(draft, draft)
    if wanted.course is not None:
        _choose_course(mending, wanted.course)
    _accept_named(mending, wanted.accepted)
    who = wanted.who
    if wanted.ask:
        _ask(mending)
        if mending.accepted and not who and wanted.output is None:
            who = input(text("mend_command.ask.who")).strip()
    version = None
    if mending.accepted and wanted.output is not None:
        copy = json.dumps(mending.now.document, ensure_ascii=False, indent=1).encode()
        write_files({wanted.output: copy + b"\n"})
    elif mending.accepted:
        if not who.strip():
            raise InputError(said("Nothing was saved: say who mends the map, with --who."))
        version = maps.save(
            differences(maps.document_on(wanted.day), mending.now.document),
            base=maps.latest().number,
            who=who,
            in_force_from=wanted.day,
            note=note_of(mending.accepted, wanted.why),
            mending=True,
        ).number
    if wanted.as_json:
        print_json(document_of(mending, version, wanted.output))
    else:
        show_lines(report_lines(path, mending, version, wanted.output))
    raise SystemExit(DECIDED if mending.now.usable else BAD_INPUT)


def _in_force(path: Path, maps: MapVersions, day: date) -> Draft:
    """Return the draft of the map in force on a day; of a file that holds no map, one that says so."""
    try:
        return draft_on(maps, day)
    except InputError:
        draft = read_draft(path)
        if draft.document["features"]:
            raise
        return draft


def at_terminal() -> bool:
    """Whether somebody sits at a terminal, so that the editor can be opened and stopped there."""
    return sys.stdin.isatty() and sys.stdout.isatty()


def open_editor(path: Path, wanted: Wanted) -> None:
    """Serve the desk on the map, its first page the places to mend, until it is stopped."""
    from urllib.parse import urlencode

    from marram.cli.serving import browser_here, free_port, serve_desk

    given = {"on": wanted.day.isoformat(), "who": wanted.who.strip(), "why": wanted.why.strip()}
    page = urlencode({name: value for name, value in given.items() if value})
    print(text("mend_command.opens"), flush=True)
    serve_desk(
        path,
        None,
        HERE,
        wanted.port or free_port(HERE),
        demo=False,
        open_browser=browser_here(),
        maps=wanted.maps,
        first_page=f"/map/mend?{page}",
    )


def _choose_course(mending: Mending, name: str) -> None:
    asked = [
        (one, choice)
        for one in mending.now.proposals
        if one.mending == CHOOSE_COURSE
        for choice in one.choices
    ]
    if not asked:
        raise InputError(
            said("--course: the map holds one course, so there is none to choose. Leave --course out.")
        )
    wanted = name.casefold()
    exact = [found for found in asked if found[1].course.casefold() == wanted]
    near = exact or [found for found in asked if wanted in found[1].course.casefold()]
    if len(near) != 1:
        listed = joined("; ", *(choice.words for _, choice in asked))
        raise InputError(
            said(
                "--course {name!r} names {count} of these: {listed}.",
                name=name,
                count=len(near),
                listed=listed,
            )
            if near
            else said("--course {name!r} names none of these: {listed}.", name=name, listed=listed)
        )
    mending.take(near[0])


def _accept_named(mending: Mending, given: Sequence[str]) -> None:
    """Accept what was named: numbers are those of the first list, however much was mended before."""
    numbered = numbers_of(mending.now)
    faults: list[str] = []
    for written in given:
        if found := ALL_OF.fullmatch(written.strip()):
            _accept_all(mending, found[1], faults)
            continue
        parts = re.fullmatch(r"(\d+)([a-z]*)", written.strip().lower())
        if parts is None or int(parts[1]) not in numbered:
            faults.append(
                said(
                    "--accept {given!r} is no proposal of the list; give its number, such as 3 or 3b, or all-of:KIND.",
                    given=written,
                )
            )
            continue
        key = numbered[int(parts[1])].key
        proposal = next((one for one in mending.now.proposals if one.key == key), None)
        if proposal is None:
            continue  # what was accepted before has mended this too
        if (choice := _lettered(proposal, parts[2])) is None:
            letters = joined(
                ", ",
                *(
                    said("{number}{letter} ({words})", number=parts[1], letter=letter, words=one.words)
                    for letter, one in lettered(proposal)
                ),
            )
            faults.append(said("--accept {given}: choose one of {letters}.", given=written, letters=letters))
        else:
            mending.take((proposal, choice))
    if faults:
        raise InputError(*faults)


def _accept_all(mending: Mending, kind: str, faults: list[str]) -> None:
    """Accept all proposals of a kind that leave nothing to choose, until none comes up anew."""
    known = {one.mending for one in mending.first.proposals} | {
        one.fault.check for one in mending.first.proposals
    }
    if kind not in known:
        faults.append(
            said(
                "--accept all-of:{kind}: nothing of this kind is proposed; there is {known}.",
                kind=kind,
                known=", ".join(sorted(known)) or said("nothing"),
            )
        )
        return
    while True:
        some = [one for one in mending.now.proposals if kind in {one.mending, one.fault.check}]
        taken: set[str] = set()
        chosen: list[Accepted] = []
        for proposal in some:
            if len(proposal.choices) == 1 and taken.isdisjoint(proposal.idents):
                taken.update(proposal.idents)
                chosen.append((proposal, proposal.choices[0]))
        if not chosen:
            mending.to_choose += [one.fault for one in some]
            return
        mending.take(*chosen)


def _lettered(proposal: Proposal, letter: str) -> Choice | None:
    choices = dict(lettered(proposal))
    return choices.get(letter) or (choices.get("") if letter == "a" else None)


def _ask(mending: Mending) -> None:
    """Ask of each proposal on the terminal whether it is accepted, until all are answered."""
    left: set[str] = set()
    while True:
        proposal = next((one for one in mending.now.proposals if one.key not in left), None)
        if proposal is None:
            return
        show_lines(proposal_lines(None, proposal))
        letters = [letter for letter, _ in lettered(proposal)]
        asked = (
            text("mend_command.ask.single")
            if letters == [""]
            else text("mend_command.ask.choice", first=letters[0], last=letters[-1])
        )
        answer = input(f"  {asked}").strip().lower()
        if answer == "q":
            return
        choice = _lettered(proposal, "" if answer in {"y", "yes"} else answer) if answer else None
        if choice is None:
            left.add(proposal.key)
        else:
            mending.take((proposal, choice))
