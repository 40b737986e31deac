"""A map as far as it can be read, its faults, and how they can be mended: ``read_draft`` raises nothing.

Accepting a choice makes its edits on a copy and finds faults and proposals anew.
"""

from collections import Counter
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from marram.course.fault import Fault, Severity
from marram.course.loading import LINES_OF_PLAY, examine_source
from marram.course.mending.findings import drawing_faults
from marram.course.mending.lines import WITHOUT_LINE
from marram.course.mending.menders import proposals_for
from marram.course.mending.proposal import Choice, Proposal
from marram.course.mending.setting import Setting
from marram.course.model import Course
from marram.course.reading.document import document_of, named
from marram.course.reading.geojson import source_of
from marram.course.reading.source import Source, SourceFeature
from marram.course.scheme import Role, meaning
from marram.course.versions.map_edits import Document, apply_edits
from marram.errors import InputError
from marram.said import said

_FIRST_OF_ALL = frozenset({"which_course", "misplaced"})
"""Faults at which the reading stops; a draft looks further, so that all faults are told at once."""


@dataclass(frozen=True, slots=True)
class Draft:
    """A map as it stands, with what is wrong and what could be done.

    Attributes:
        document: the map as GeoJSON; empty where the file cannot be read at all.
        course: the course as far as it could be put together, or ``None``.
        features: what could be read, in degrees.
        faults: what is wrong, errors first.
        proposals: how it can be mended, in the order of the faults.
    """

    document: Document
    course: Course | None
    features: tuple[SourceFeature, ...]
    faults: tuple[Fault, ...]
    proposals: tuple[Proposal, ...]

    @property
    def errors(self) -> tuple[Fault, ...]:
        """The faults that keep the map from being used."""
        return tuple(fault for fault in self.faults if fault.severity is Severity.ERROR)

    @property
    def usable(self) -> bool:
        """Whether the map can be used as it is."""
        return self.course is not None and not self.errors

    def choice(self, mark: str) -> tuple[Proposal, Choice]:
        """Return the proposal and choice of a mark.

        Raises:
            InputError: no proposal has it; the map has changed since.
        """
        for proposal in self.proposals:
            for choice in proposal.choices:
                if choice.mark == mark:
                    return proposal, choice
        raise InputError(
            said("This proposal no longer fits the map, which has changed since. Look at the list again.")
        )

    def unmended(self) -> tuple[Fault, ...]:
        """Return the faults that no proposal covers and that wait for none."""
        covered = {id(fault) for one in self.proposals for fault in (one.fault, *one.also, *one.waiting)}
        return tuple(fault for fault in self.faults if id(fault) not in covered)


def read_draft(path: str | Path) -> Draft:
    """Return a map file as far as it can be read, with its faults and proposals; nothing is raised.

    Args:
        path: the file: GeoJSON or OpenStreetMap XML, told apart by what it begins with.
    """
    document, faults = document_of(Path(path))
    if document is None:
        return Draft({"type": "FeatureCollection", "features": []}, None, (), tuple(faults), ())
    return draft_of(document)


def draft_of(document: Document) -> Draft:
    """Return the draft of a map given as GeoJSON.

    Args:
        document: a FeatureCollection (RFC 7946).
    """
    document = named(document)
    source = source_of(document)
    course, faults = _examined(source)
    found = (*_first(faults), *drawing_faults(document, course))
    order = list(Severity)
    found = tuple(sorted(found, key=lambda fault: order.index(fault.severity)))
    proposals = proposals_for(Setting(document, source, course, found))
    return Draft(document, course, tuple(source.features), found, proposals)


def accept(draft: Draft, *choices: Choice) -> Draft:
    """Return the draft with choices made; the given one stays as it is.

    Raises:
        InputError: two choices change the same feature, or one does not fit the map.
    """
    counted = Counter(ident for choice in choices for ident in {edit.ident for edit in choice.edits})
    if twice := [ident for ident, count in counted.items() if count > 1]:
        raise InputError(
            said(
                "Two of the proposals change {twice}. Accept one, then look at the list again.",
                twice=", ".join(twice),
            )
        )
    return draft_of(apply_edits(draft.document, [edit for choice in choices for edit in choice.edits]))


def _examined(source: Source) -> tuple[Course | None, list[Fault]]:
    """Examine a source beyond the faults at which reading stops: each course of several, and without misplaced things."""
    course, faults = examine_source(source)
    stopped = [fault for fault in faults if fault.check in _FIRST_OF_ALL]
    if course is not None or not stopped:
        return course, faults
    astray = {fault.feature for fault in stopped if fault.check == "misplaced"}
    more: list[Fault] = []
    for which, kept in _further(source, astray):
        made, found = examine_source(_only(source, kept), which)
        course = course or (made if astray else None)
        more += found
    return course, list({str(fault): fault for fault in (*faults, *more)}.values())


def _first(faults: Iterable[Fault]) -> list[Fault]:
    """Return faults without those that follow from a map without any line of play: every tee and green is of no hole."""
    found = list(faults)
    if all(fault.check != "no_holes" for fault in found):
        return found
    return [fault for fault in found if fault.check not in WITHOUT_LINE]


def _further(source: Source, astray: Collection[str]) -> Iterator[tuple[str | None, list[SourceFeature]]]:
    kept = [one for one in source.features if one.ident not in astray]
    outlines = [one for one in kept if meaning(one.tags) is Role.COURSE]
    yield from ((outline.ident, kept) for outline in outlines) if len(outlines) > 1 else [(None, kept)]


def _only(source: Source, features: Iterable[SourceFeature]) -> Source:
    return Source(features=list(features), credit=source.credit, bounds=source.bounds)


def only_lines_lack(draft: Draft) -> bool:
    """Whether nothing but the lines of play is wrong with a map that has none to use: relief then asks for the flagstick."""
    course = draft.course
    return (
        course is not None
        and not course.holes
        and all(fault.check in LINES_OF_PLAY for fault in draft.errors)
    )
