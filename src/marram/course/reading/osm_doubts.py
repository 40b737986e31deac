"""What of an OpenStreetMap relation is not read as whoever drew it may have meant: said, and never guessed.

OpenStreetMap's wiki (page "Old style multipolygons"): until 2017 the tags of an area could stand at its outer way, the
relation having none; since then this is a mistake of tagging, and a way with tags is an area of its own.
"""

from collections.abc import Iterator, Mapping

from marram.course.fault import Fault, Severity
from marram.course.reading.source import Position
from marram.course.scheme import is_about_golf, meaning
from marram.said import said
from marram.visible import visible

SAYS_NOTHING = frozenset({"type", "name", "source", "note", "fixme", "created_by"})
"""Tags that do not say what a relation is."""


def open_edge(ident: str, place: Position, *, about_golf: bool) -> Fault:
    """Return the fault of a relation whose edge does not close; scenery is only left out."""
    return Fault(
        Severity.ERROR if about_golf else Severity.NOTE,
        "open_ring",
        said("its edge is not closed: a part ends where no other begins"),
        said("Draw the missing part of its edge."),
        ident,
        None,
        *place,
    )


def inner_outside(ident: str, place: Position, *, about_golf: bool) -> Fault:
    """Return the doubt about an inner ring that lies in no outer one."""
    return _doubt(
        "inner_outside",
        said("a ring of it has the role inner and lies outside its edge: nothing was cut out"),
        said("Move the ring, or correct its role."),
        ident,
        place,
        about_golf=about_golf,
    )


def tags_at_edge(
    relation: str,
    tags: Mapping[str, str],
    way: str,
    way_tags: Mapping[str, str],
    place: Position,
    *,
    in_pieces: bool,
) -> Iterator[Fault]:
    """Yield the doubt about a way at the edge of a relation that is read as a thing of its own.

    Args:
        relation: the identifier of the relation.
        tags: its tags.
        way: the identifier of the way.
        way_tags: the tags of the way.
        place: where to look, in degrees: at what the relation cuts out, or at a piece of its edge.
        in_pieces: whether the way is only a part of the edge.
    """
    what = meaning(way_tags)
    untagged = not tags.keys() - SAYS_NOTHING
    if what is None or not (untagged or (meaning(tags) is what and not in_pieces)):
        return
    if not untagged:
        told = said(
            "{relation} has the same tags and cuts a part out: this way fills that part again",
            relation=visible(relation),
        )
        remedy = said("Take the tags off the way; the relation has them.")
    elif in_pieces:
        told = said(
            "it is a part of the edge of {relation}, which has no tags itself: it was read alone",
            relation=visible(relation),
        )
        remedy = said("Move the tags of the edge to the relation.")
    else:
        told = said(
            "{relation} cuts a part out of it and has no tags itself: it was read whole, with that part",
            relation=visible(relation),
        )
        remedy = said("Move the tags of the edge to the relation.")
    yield _doubt("tags_at_edge", told, remedy, way, place, about_golf=is_about_golf(way_tags))


def _doubt(check: str, told: str, remedy: str, ident: str, place: Position, *, about_golf: bool) -> Fault:
    severity = Severity.WARNING if about_golf else Severity.NOTE
    return Fault(severity, check, told, remedy, ident, None, *place)
