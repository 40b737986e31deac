"""``marram course mend``: how each fault of a map can be mended; what is accepted becomes a version, or a copy."""

import json
import re
import string
import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import Any

from marram.cli.exits import BAD_INPUT, DECIDED
from marram.cli.show import Line, print_json, show_lines
from marram.cli.writing import write_files
from marram.course.fault import Severity
from marram.course.mending.draft import Draft, accept, read_draft
from marram.course.mending.keeping import Accepted, draft_on, note_of
from marram.course.mending.proposal import Choice, Proposal
from marram.course.versions.map_edits import differences
from marram.course.versions.map_versions import MapVersions
from marram.errors import InputError
from marram.rules.plain import as_plain

ALL_OF = re.compile(r"all[-_ ]of[: =]+(\w+)")
COURSE = "choose_course"
_FEW = 6


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
    """

    accepted: Sequence[str]
    course: str | None
    who: str
    why: str
    day: date
    maps: Path | None
    output: Path | None
    as_json: bool


@dataclass(slots=True)
class Mending:
    """A map while it is mended: the draft as it was, as it is now, and what was accepted on the way."""

    first: Draft
    now: Draft
    accepted: list[Accepted] = field(default_factory=list)
    to_choose: list[str] = field(default_factory=list)

    def take(self, *chosen: Accepted) -> None:
        """Accept choices of the draft as it is now."""
        self.now = accept(self.now, *(choice for _, choice in chosen))
        self.accepted += chosen


def mend_course(path: Path, wanted: Wanted) -> None:
    """List faults with proposals, accept what is asked for, and keep it; exit with 2 while errors are left."""
    if wanted.output is not None and wanted.maps is not None:
        raise InputError("--output writes a copy and --maps keeps a version; give one of them.")
    maps = MapVersions(path, wanted.maps)
    draft = read_draft(path)
    if draft.document["features"] and wanted.output is None:
        draft = draft_on(maps, wanted.day)
    mending = Mending(draft, draft)
    if wanted.course is not None:
        _choose_course(mending, wanted.course)
    _accept_named(mending, wanted.accepted)
    who = wanted.who
    if not wanted.accepted and wanted.course is None and not wanted.as_json and sys.stdin.isatty():
        _ask(mending)
        if mending.accepted and not who and wanted.output is None:
            who = input("Who mends it (name or initials)? ").strip()
    version = None
    if mending.accepted and wanted.output is not None:
        copy = json.dumps(mending.now.document, ensure_ascii=False, indent=1).encode()
        write_files({wanted.output: copy + b"\n"})
    elif mending.accepted:
        if not who.strip():
            raise InputError("Nothing was saved: say who mends the map, with --who.")
        version = maps.save(
            differences(maps.document_on(wanted.day), mending.now.document),
            base=maps.latest().number,
            who=who,
            in_force_from=wanted.day,
            note=note_of(mending.accepted, wanted.why),
            mending=True,
        ).number
    if wanted.as_json:
        print_json(_document(mending, version, wanted.output))
    else:
        show_lines(_lines(path, mending, version, wanted.output))
    raise SystemExit(DECIDED if mending.now.usable else BAD_INPUT)


def _choose_course(mending: Mending, name: str) -> None:
    asked = [
        (one, choice) for one in mending.now.proposals if one.mending == COURSE for choice in one.choices
    ]
    if not asked:
        raise InputError(
            "--course: the map holds one course, so there is none to choose. Leave --course out."
        )
    wanted = name.casefold()
    exact = [found for found in asked if found[1].course.casefold() == wanted]
    near = exact or [found for found in asked if wanted in found[1].course.casefold()]
    if len(near) != 1:
        listed = "; ".join(choice.words for _, choice in asked)
        raise InputError(f"--course {name!r} names {len(near) or 'none'} of these: {listed}.")
    mending.take(near[0])


def _accept_named(mending: Mending, given: Sequence[str]) -> None:
    """Accept what was named: numbers are those of the first list, however much was mended before."""
    numbered = numbers_of(mending.now)
    faults: list[str] = []
    for text in given:
        if found := ALL_OF.fullmatch(text.strip()):
            _accept_all(mending, found[1], faults)
            continue
        parts = re.fullmatch(r"(\d+)([a-z]*)", text.strip().lower())
        if parts is None or int(parts[1]) not in numbered:
            faults.append(
                f"--accept {text!r} is no proposal of the list; give its number, such as 3 or 3b, or all-of:KIND."
            )
            continue
        key = numbered[int(parts[1])].key
        proposal = next((one for one in mending.now.proposals if one.key == key), None)
        if proposal is None:
            continue  # what was accepted before has mended this too
        if (choice := _lettered(proposal, parts[2])) is None:
            letters = ", ".join(f"{parts[1]}{letter} ({one.words})" for letter, one in lettered(proposal))
            faults.append(f"--accept {text}: choose one of {letters}.")
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
            f"--accept all-of:{kind}: nothing of this kind is proposed; there is {', '.join(sorted(known)) or 'nothing'}."
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
            mending.to_choose += [str(one.fault) for one in some]
            return
        mending.take(*chosen)


def numbers_of(draft: Draft) -> dict[int, Proposal]:
    """Return the proposals of a draft by the numbers they are listed under."""
    return dict(enumerate(draft.proposals, 1))


def lettered(proposal: Proposal) -> Iterator[tuple[str, Choice]]:
    """Return the choices of a proposal by letter; a single one has none."""
    if len(proposal.choices) == 1:
        yield "", proposal.choices[0]
        return
    letters = string.ascii_lowercase
    for index, choice in enumerate(proposal.choices):
        yield (
            (letters[index] if index < len(letters) else letters[index // 26 - 1] + letters[index % 26]),
            choice,
        )


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
        show_lines(_proposal_lines(None, proposal))
        letters = [letter for letter, _ in lettered(proposal)]
        how = "y to accept" if letters == [""] else f"{letters[0]} to {letters[-1]} to choose"
        answer = input(f"  {how}, Enter to leave it, q to stop: ").strip().lower()
        if answer == "q":
            return
        choice = _lettered(proposal, "" if answer in {"y", "yes"} else answer) if answer else None
        if choice is None:
            left.add(proposal.key)
        else:
            mending.take((proposal, choice))


def _lines(path: Path, mending: Mending, version: int | None, output: Path | None) -> Iterator[Line]:
    draft = mending.now
    state = "can be used" if draft.usable else "cannot be used yet"
    errors = len(draft.errors)
    yield "title", f"{path.name} {state}: {errors} to mend, {len(draft.faults) - errors} to look at."
    if mending.accepted:
        yield "head", "Mended"
        yield from (
            ("item", f"{proposal.fault.where or 'the map'}: {choice.words}")
            for proposal, choice in mending.accepted
        )
        where = f"Version {version} of the map holds it" if version else f"{output} holds it"
        yield "text", f"{where}; {path.name} is left as it was."
    if mending.to_choose:
        yield "head", "Not accepted: each leaves a choice"
        yield from (("item", one) for one in mending.to_choose)
    for severity, head in (
        (Severity.ERROR, "To mend before the map can be used"),
        (Severity.WARNING, "The map works, but not for everything"),
        (Severity.NOTE, "Worth a look"),
    ):
        some = [(number, one) for number, one in numbers_of(draft).items() if one.fault.severity is severity]
        rest = [fault for fault in draft.unmended() if fault.severity is severity]
        if some or rest:
            yield "head", head
        for number, proposal in some:
            yield from _proposal_lines(number, proposal)
        for fault in rest:
            yield "item", f"{fault} (Nothing definite can be proposed.)"
    if draft.proposals and not mending.accepted:
        yield (
            "quiet",
            "Accept with --accept NUMBER (3, or 3b where there is a choice) or --accept all-of:KIND; nothing is mended unasked.",
        )


def _proposal_lines(number: int | None, proposal: Proposal) -> Iterator[Line]:
    fault = proposal.fault
    place = f"{fault.where}: " if fault.where else ""
    label = f"{number}. " if number else ""
    more = f" ({len(proposal.also)} more like it)" if proposal.also else ""
    yield "item", f"{label}{place}{fault.what}{more}. [{proposal.mending}]"
    yield "quiet", f"      {proposal.why}"
    for index, (letter, choice) in enumerate(lettered(proposal)):
        if index == _FEW + 2 and len(proposal.choices) > _FEW + 3:
            last = dict(lettered(proposal))
            yield "text", f"      … to {list(last)[-1]}) {proposal.choices[-1].words}"
            break
        said = f" ({'; '.join(choice.said)})" if choice.said else ""
        yield "text", f"      {letter + ') ' if letter else '→ '}{choice.words}{said}"


def _document(mending: Mending, version: int | None, output: Path | None) -> dict[str, Any]:
    draft = mending.now
    before = {str(one["id"]): one for one in draft.document["features"]}
    proposals = [
        {
            "number": number,
            "mending": proposal.mending,
            "fault": as_plain(proposal.fault),
            "why": proposal.why,
            "also": as_plain(proposal.also),
            "before": {ident: before.get(ident) for ident in proposal.idents},
            "choices": [
                {
                    "letter": letter,
                    "words": choice.words,
                    "said": list(choice.said),
                    "edits": as_plain(choice.edits),
                }
                for letter, choice in lettered(proposal)
            ],
        }
        for number, proposal in numbers_of(draft).items()
    ]
    return {
        "marram": 1,
        "kind": "course_mend",
        "usable": draft.usable,
        "faults": as_plain(draft.faults),
        "proposals": proposals,
        "accepted": [
            {"mending": proposal.mending, "fault": as_plain(proposal.fault), "words": choice.words}
            for proposal, choice in mending.accepted
        ],
        "to_choose": mending.to_choose,
        "version": version,
        "output": str(output) if output and mending.accepted else None,
    }
