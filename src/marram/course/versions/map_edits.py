"""Edits of a course map, feature by feature: what they are, made on a map's GeoJSON, carried to another map."""

from collections.abc import Iterable, Sequence
from copy import deepcopy
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Any

from marram.errors import InputError
from marram.said import Said, said

Feature = dict[str, Any]
"""A GeoJSON Feature (RFC 7946)."""

Document = dict[str, Any]
"""A GeoJSON FeatureCollection (RFC 7946)."""

ACTIONS = ("add", "change", "remove")


@dataclass(frozen=True, slots=True)
class Edit:
    """One edit of one feature.

    Attributes:
        action: ``add``, ``change`` or ``remove``.
        ident: the feature's identifier, as in the file.
        feature: the GeoJSON Feature after the edit; ``None`` when it is removed.
    """

    action: str
    ident: str
    feature: Feature | None = None


class Side(Enum):
    """The other side of a conflict."""

    MEANWHILE = "meanwhile"
    """Somebody saved since the edits began."""
    PREPARED = "prepared"
    """The map of a later day is prepared with other changes."""
    EDITED_HERE = "edited_here"
    """The course file changed what was also edited here."""


class EditConflict(InputError):
    """The same features are changed on another side; nothing was saved.

    Attributes:
        theirs: what the other side made of these features.
        latest: the number of the newest version.
        side: which other side it is.
        since: the first day on which the other side's map is in force.
    """

    def __init__(self, theirs: Sequence[Edit], latest: int, side: Side, since: date) -> None:
        self.theirs = tuple(theirs)
        self.latest = latest
        self.side = side
        self.since = since
        names = ", ".join(dict.fromkeys(edit.ident for edit in theirs))
        super().__init__(_conflict_words(side, latest, since, names))


def _conflict_words(side: Side, latest: int, since: date, names: str) -> Said:
    if side is Side.MEANWHILE:
        return said(
            "Version {latest} of the map, saved meanwhile, also changes {names}. "
            "Look at both, then save on top of that version.",
            latest=latest,
            names=names,
        )
    if side is Side.PREPARED:
        return said(
            "The map prepared from {since} on also changes {names}. "
            "Say whether what is prepared stays from that day, or this change goes on.",
            since=since,
            names=names,
        )
    return said(
        "The course file changes {names}, which was also edited here (map from {since} on). "
        "Say whether the edit made here stays, or the file replaces it.",
        since=since,
        names=names,
    )


def feature_ident(feature: Feature, index: int = 0) -> str:
    """Return the identifier of a GeoJSON feature, as :class:`Edit` names it."""
    properties = feature.get("properties") or {}
    return str(feature.get("id") or properties.get("@id") or f"feature {index}")


def by_ident(document: Document) -> dict[str, Feature]:
    """Return the features of a map by their identifier."""
    return {feature_ident(one, index): one for index, one in enumerate(document["features"])}


def apply_edits(document: Document, edits: Iterable[Edit]) -> Document:
    """Return a map's GeoJSON with edits made; the given one is left as it is.

    Raises:
        InputError: an edit does not fit the map; all faults are listed and nothing is made.
    """
    features: list[Feature] = list(document["features"])  # features are replaced, never changed
    places = {feature_ident(feature, index): index for index, feature in enumerate(features)}
    removed: set[int] = set()
    faults: list[str] = []
    for edit in edits:
        fault = _misfit(edit, places)
        if fault:
            faults.append(fault)
        elif edit.action == "remove":
            removed.add(places.pop(edit.ident))
        else:
            feature = {**deepcopy(edit.feature or {}), "type": "Feature", "id": edit.ident}
            if edit.action == "add":
                places[edit.ident] = len(features)
                features.append(feature)
            else:
                features[places[edit.ident]] = feature
    if faults:
        raise InputError(*faults)
    left = [feature for index, feature in enumerate(features) if index not in removed]
    return {**document, "features": left}


def differences(before: Document, after: Document) -> list[Edit]:
    """Return the edits that make the one map of the other."""
    old, new = by_ident(before), by_ident(after)
    edits = [Edit("remove", ident) for ident in old if ident not in new]
    edits += [
        Edit("change" if ident in old else "add", ident, feature)
        for ident, feature in new.items()
        if old.get(ident) != feature
    ]
    return edits


@dataclass(frozen=True, slots=True)
class Carried:
    """Edits of one map, carried to another.

    Attributes:
        edits: what to make there; where both sides changed a feature it is left out.
        clashes: what the other map made of the features that both sides changed.
        forced: the edits to make there so that the first side's features stand in place of the clashes.
    """

    edits: tuple[Edit, ...]
    clashes: tuple[Edit, ...]
    forced: tuple[Edit, ...]


def carry(edits: Sequence[Edit], before: Document, there: Document) -> Carried:
    """Carry edits made to one map over to another: what both sides changed differently is a clash.

    Args:
        edits: the edits.
        before: the map they were made to.
        there: the map they are carried to.

    Raises:
        InputError: an edit does not fit the map it was made to.
    """
    old, mine, theirs = by_ident(before), by_ident(apply_edits(before, edits)), by_ident(there)
    fitting: list[Edit] = []
    clashes: list[Edit] = []
    forced: list[Edit] = []
    for ident in dict.fromkeys(edit.ident for edit in edits):
        made = _difference(ident, theirs.get(ident), mine.get(ident))
        if theirs.get(ident) == old.get(ident):
            fitting += made
        elif made:
            clashes += _difference(ident, old.get(ident), theirs.get(ident))
            forced += made
    return Carried(tuple(fitting), tuple(clashes), tuple(forced))


def _difference(ident: str, before: Feature | None, after: Feature | None) -> list[Edit]:
    if before == after:
        return []
    if after is None:
        return [Edit("remove", ident)]
    return [Edit("add" if before is None else "change", ident, after)]


def _misfit(edit: Edit, places: dict[str, int]) -> str:
    if edit.action not in ACTIONS:
        return said(
            "{action!r} is no edit; it is one of {actions}.", action=edit.action, actions=", ".join(ACTIONS)
        )
    if not edit.ident:
        return said("An edit names no feature; give its identifier.")
    if edit.action == "add" and edit.ident in places:
        return said(
            "{edit} is on the map already; change it, or give the new one another identifier.",
            edit=edit.ident,
        )
    if edit.action != "add" and edit.ident not in places:
        return (
            said("{edit} is not on the map, so it cannot be changed; load the map again.", edit=edit.ident)
            if edit.action == "change"
            else said(
                "{edit} is not on the map, so it cannot be removed; load the map again.", edit=edit.ident
            )
        )
    if edit.action != "remove" and not isinstance((edit.feature or {}).get("geometry"), dict):
        return said("{edit} has no geometry; draw it.", edit=edit.ident)
    return ""
