"""Whether a mapped condition stands up, so that the whole swing can meet it, or lies on the ground.

A path, ground under repair, temporary water or a wrong green meets only the part of the swing near the ground; a
wall, a building or a fence meets all of it. The map's tags tell, as OpenStreetMap's wiki describes them (pages
"Key:building", "Key:barrier", "Key:man_made", "Key:power", "Key:height"). Where they do not, it is not known: the
official says it.
"""

import re
from collections.abc import Mapping

from marram.course.model import Feature, Kind

LOW = 0.3
"""Metres: a thing with a mapped ``height`` below this lies on the ground for the swing (a choice of ours: a club head
on its way to and from the ball is lower only within the low part of the swing)."""

_ON_THE_GROUND = frozenset(
    {
        Kind.PATH,
        Kind.GROUND_UNDER_REPAIR,
        Kind.TEMPORARY_WATER,
        Kind.PUTTING_GREEN,
        Kind.NO_PLAY_ZONE,
        Kind.WATER,
    }
)
"""Kinds of ground, not of things. What grows in a no play zone may stand up: the official says so."""

_ANY = frozenset[str]()
"""Every value of a key, but ``no``."""

STANDING: Mapping[str, frozenset[str]] = {
    "building": _ANY,
    "building:part": _ANY,
    "golf": frozenset({"clubhouse"}),
    "barrier": frozenset(
        {
            "wall",
            "city_wall",
            "retaining_wall",
            "fence",
            "guard_rail",
            "handrail",
            "jersey_barrier",
            "gate",
            "stile",
            "turnstile",
            "bollard",
            "block",
        }
    ),
    "man_made": frozenset(
        {
            "tower",
            "mast",
            "flagpole",
            "utility_pole",
            "chimney",
            "silo",
            "storage_tank",
            "water_tower",
            "water_tank",
            "pump",
            "pumping_station",
            "street_cabinet",
            "antenna",
            "monitoring_station",
            "windmill",
            "watermill",
            "monument",
        }
    ),
    "power": frozenset({"pole", "tower", "portal", "substation", "transformer", "generator"}),
    "amenity": frozenset(
        {"bench", "shelter", "toilets", "waste_basket", "drinking_water", "fountain", "clock"}
    ),
    "highway": frozenset({"street_lamp"}),
    "tourism": frozenset({"information", "artwork"}),
    "historic": frozenset({"ruins", "castle", "monument", "memorial", "wayside_cross", "city_gate"}),
    "leisure": frozenset({"picnic_table"}),
    "advertising": _ANY,
    "ruins": _ANY,
}
"""Tags of things that stand up."""

LYING: Mapping[str, frozenset[str]] = {
    "barrier": frozenset({"kerb", "cattle_grid", "ditch"}),
    "man_made": frozenset({"manhole", "reservoir_covered", "pipeline", "pier", "bridge"}),
    "emergency": frozenset({"fire_hydrant"}),
    "surface": _ANY,
}
"""Tags of things that lie on the ground, flush with it or nearly."""

_METRES = re.compile(r"(\d+(?:\.\d+)?)(?: ?m)?")


def stands_up(feature: Feature) -> bool | None:
    """Return whether a condition stands up: by its height, else by its tags; ``None`` where the map does not tell."""
    height = _METRES.fullmatch(feature.tags.get("height", "").strip())
    if height:
        return float(height[1]) >= LOW
    if _says(feature.tags, STANDING):
        return True
    if feature.kind in _ON_THE_GROUND or _says(feature.tags, LYING):
        return False
    return None


def _says(tags: Mapping[str, str], table: Mapping[str, frozenset[str]]) -> bool:
    return any(
        key in tags and tags[key] != "no" and (not values or tags[key] in values)
        for key, values in table.items()
    )
