"""Mending a map that is kept in versions: each acceptance is a version, with who and why and from which day."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from marram.course.mending.draft import Draft, draft_of, only_lines_lack
from marram.course.mending.proposal import Choice, Proposal
from marram.course.model import Course
from marram.course.plane import LocalPlane
from marram.course.versions.map_versions import MapVersions, Version
from marram.errors import BadCourse

MOST_TOLD = 4
"""Of more mendings at once a note tells the kinds and how many (own choice)."""

Accepted = tuple[Proposal, Choice]
"""A proposal and the choice of it that was accepted."""


def draft_on(maps: MapVersions, day: date) -> Draft:
    """Return the draft of the map in force on a day of play.

    Raises:
        InputError: the map, or a version of it, cannot be read at all.
    """
    return draft_of(maps.document_on(day))


def keep_mended(
    maps: MapVersions,
    accepted: Sequence[Accepted],
    *,
    who: str,
    in_force_from: date,
    why: str = "",
    base: int = 0,
) -> Version:
    """Keep what was accepted as a new version of the map, though errors may be left.

    Args:
        maps: the versions.
        accepted: what was accepted, on the map in force from that day on.
        who: who accepted it.
        in_force_from: the first day of play it is used for.
        why: why; what was mended is told before it.
        base: the newest version that was there when it was accepted; 0 for the newest there is.

    Raises:
        InputError: nobody is named, others changed the same features meanwhile, or the folder cannot be written.
    """
    return maps.save(
        [edit for _, choice in accepted for edit in choice.edits],
        base=base or maps.latest().number,
        who=who,
        in_force_from=in_force_from,
        note=note_of(accepted, why),
        mending=True,
    )


def note_of(accepted: Sequence[Accepted], why: str = "") -> str:
    """Return what was mended, as the note of a version: each place with what was done there, many counted."""
    told = [f"{proposal.fault.where or 'the map'}: {_small(choice.words)}" for proposal, choice in accepted]
    if len(told) > MOST_TOLD:
        counted = Counter(_small(choice.words) for _, choice in accepted)
        told = [words if count == 1 else f"{words} ({count} times)" for words, count in counted.most_common()]
        told = [*told[:MOST_TOLD], *([f"and {len(told) - MOST_TOLD} more"] if len(told) > MOST_TOLD else [])]
    return "; ".join(["mended " + ", ".join(told), *([why.strip()] if why.strip() else [])])


def _small(words: str) -> str:
    return f"{words[0].lower()}{words[1:]}"


def newest_usable(maps: MapVersions) -> Course:
    """Return the newest map that can be used; where none can, what could be read of the map in its file.

    Raises:
        InputError: the file cannot be read at all.
    """
    for version in reversed(maps.versions()):
        try:
            return maps.course(version.number)
        except BadCourse:
            continue
    found = draft_of(maps.document(1)).course
    return found or Course("", LocalPlane(0.0, 0.0), {}, ())


@dataclass(frozen=True, slots=True)
class ToMend:
    """What keeps a map from being used.

    Attributes:
        errors: how many errors must be mended.
        serves: whether it serves all the same, with the flagstick shown: nothing but its lines of play is wrong.
    """

    errors: int = 0
    serves: bool = False


def to_mend(maps: MapVersions | None) -> ToMend:
    """Return what keeps the newest map from being used; nothing where no versions are kept."""
    if maps is None:
        return ToMend()
    latest = maps.latest()
    try:
        if maps.course(latest.number).holes:
            return ToMend()
    except BadCourse:
        pass
    draft = draft_of(maps.document(latest.number))
    return ToMend(len(draft.errors), only_lines_lack(draft))
