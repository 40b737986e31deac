"""What ``marram course mend`` says: the map with its faults, each proposal with its choices; as lines and as JSON."""

import string
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from marram.cli.show import Line
from marram.course.fault import Fault, Severity
from marram.course.mending.draft import Draft, accept
from marram.course.mending.keeping import Accepted
from marram.course.mending.proposal import Choice, Proposal
from marram.rules.plain import as_plain
from marram.words.faults import fault_words
from marram.words.spoken import spoken
from marram.words.texts import count_text, text

_FEW = 6
"""Of more choices than a few above this the middle ones are not listed (own choice)."""


@dataclass(slots=True)
class Mending:
    """A map while it is mended: the draft as it was, as it is now, and what was accepted on the way."""

    first: Draft
    now: Draft
    accepted: list[Accepted] = field(default_factory=list)
    to_choose: list[Fault] = field(default_factory=list)

    def take(self, *chosen: Accepted) -> None:
        """Accept choices of the draft as it is now."""
        self.now = accept(self.now, *(choice for _, choice in chosen))
        self.accepted += chosen


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


def report_lines(path: Path, mending: Mending, version: int | None, output: Path | None) -> Iterator[Line]:
    """Yield what was mended, where it is kept, and what is left with its proposals."""
    draft = mending.now
    errors = len(draft.errors)
    state = "mend_command.usable" if draft.usable else "mend_command.not_usable"
    yield "title", text(state, file=path.name, errors=errors, others=len(draft.faults) - errors)
    if mending.accepted:
        yield "head", text("mend_command.mended")
        for proposal, choice in mending.accepted:
            where = spoken(proposal.fault.where) or text("mend_command.the_map")
            yield "item", text("mend_command.mended_one", where=where, words=spoken(choice.words))
        yield (
            "text",
            (
                text("mend_command.in_version", version=version, file=path.name)
                if version
                else text("mend_command.in_copy", copy=output, file=path.name)
            ),
        )
    if mending.to_choose:
        yield "head", text("mend_command.to_choose")
        yield from (("item", fault_words(one)) for one in mending.to_choose)
    for severity in Severity:
        some = [(number, one) for number, one in numbers_of(draft).items() if one.severity is severity]
        rest = [fault for fault in draft.unmended() if fault.severity is severity]
        if some or rest:
            yield "head", text(f"mend_command.head.{severity.value}")
        for number, proposal in some:
            yield from proposal_lines(number, proposal)
        for fault in rest:
            yield "item", text("mend_command.nothing_definite", fault=fault_words(fault))
    if draft.proposals and not mending.accepted:
        yield "quiet", text("mend_command.how", file=path)


def proposal_lines(number: int | None, proposal: Proposal) -> Iterator[Line]:
    """Yield a fault, why the proposal is made, and each choice; the middle ones of very many are left out."""
    fault = proposal.fault
    what = spoken(fault.what)
    where = spoken(fault.where)
    told = (
        text("mend_command.fault_at", where=where, what=what, kind=proposal.mending)
        if where
        else text("mend_command.fault", what=what, kind=proposal.mending)
    )
    yield "item", text("mend_command.numbered", number=number, what=told) if number else told
    yield "quiet", f"      {spoken(proposal.why)}"
    if proposal.also:
        yield "quiet", f"      {count_text('mend_command.with_it', len(proposal.also))}"
    if proposal.waiting:
        yield "quiet", f"      {count_text('mend_command.waiting', len(proposal.waiting))}"
    choices = list(lettered(proposal))
    for index, (letter, choice) in enumerate(choices):
        if index == _FEW + 2 and len(choices) > _FEW + 3:
            last, words = choices[-1][0], spoken(choices[-1][1].words)
            yield "text", f"      {text('mend_command.up_to', letter=last, words=words)}"
            break
        yield "text", f"      {_choice_words(letter, choice)}"


def _choice_words(letter: str, choice: Choice) -> str:
    words = spoken(choice.words)
    if choice.said:
        words = text("mend_command.brings", words=words, adds="; ".join(map(spoken, choice.said)))
    if not letter:
        return text("mend_command.only", words=words)
    return text("mend_command.lettered", letter=letter, words=words)


def document_of(mending: Mending, version: int | None, output: Path | None) -> dict[str, Any]:
    """Return the map as it is now, as JSON: faults, proposals with their edits, what was accepted and kept."""
    draft = mending.now
    before = {str(one["id"]): one for one in draft.document["features"]}
    proposals = [
        {
            "number": number,
            "mending": proposal.mending,
            "fault": as_plain(proposal.fault),
            "why": proposal.why,
            "also": as_plain(proposal.also),
            "waiting": as_plain(proposal.waiting),
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
        "to_choose": [str(one) for one in mending.to_choose],
        "version": version,
        "output": str(output) if output and mending.accepted else None,
    }
