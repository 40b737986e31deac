"""Edits of a course map, feature by feature: what they are, and how they are applied to its GeoJSON."""

from collections.abc import Iterable, Sequence
from copy import deepcopy
from dataclasses import dataclass
from typing import Any

from marram.errors import InputError

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
    feature: dict[str, Any] | None = None


class EditConflict(InputError):
    """Somebody else saved a change of the same features meanwhile; nothing was saved.

    Attributes:
        theirs: their edits of these features.
        latest: the number of the newest version.
    """

    def __init__(self, theirs: Sequence[Edit], latest: int) -> None:
        self.theirs = tuple(theirs)
        self.latest = latest
        names = ", ".join(dict.fromkeys(edit.ident for edit in theirs))
        super().__init__(
            f"Version {latest} of the map, saved meanwhile, also changes {names}. "
            "Look at both, then save on top of that version."
        )


def feature_ident(feature: dict[str, Any], index: int = 0) -> str:
    """Return the identifier of a GeoJSON feature, as :class:`Edit` names it."""
    properties = feature.get("properties") or {}
    return str(feature.get("id") or properties.get("@id") or f"feature {index}")


def apply_edits(document: Document, edits: Iterable[Edit]) -> Document:
    """Return a map's GeoJSON with edits made; the given one is left as it is.

    Raises:
        InputError: an edit does not fit the map; all faults are listed and nothing is made.
    """
    edited = deepcopy(document)
    features: list[dict[str, Any]] = edited["features"]
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
    edited["features"] = [feature for index, feature in enumerate(features) if index not in removed]
    return edited


def _misfit(edit: Edit, places: dict[str, int]) -> str:
    if edit.action not in ACTIONS:
        return f"{edit.action!r} is no edit; it is one of {', '.join(ACTIONS)}."
    if not edit.ident:
        return "An edit names no feature; give its identifier."
    if edit.action == "add" and edit.ident in places:
        return f"{edit.ident} is on the map already; change it, or give the new one another identifier."
    if edit.action != "add" and edit.ident not in places:
        return f"{edit.ident} is not on the map, so it cannot be {edit.action}d; load the map again."
    if edit.action != "remove" and not isinstance((edit.feature or {}).get("geometry"), dict):
        return f"{edit.ident} has no geometry; draw it."
    return ""
