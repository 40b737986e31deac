"""The input scheme: which tags mean what for the game.

OpenStreetMap's tags are used as its wiki describes them (pages "Key:golf", "Tag:leisure=golf_course",
"Tag:golf=water_hazard"); what it has no tag for has the key ``marram``. See ``docs/course-map.md``.
"""

from collections.abc import Mapping
from enum import Enum

from marram.course.fault import Fault, Severity
from marram.course.model import THINGS, Kind
from marram.errors import did_you_mean
from marram.said import said, sentences


class Role(Enum):
    """What a tagged thing is when it is not an area or line that a ball can lie in or on."""

    COURSE = "course"
    """The outline of a golf course."""
    HOLE = "hole"
    """The line of play of a hole."""
    PIN = "pin"
    """Where a hole is cut."""


GOLF: dict[str, Kind | Role] = {
    "hole": Role.HOLE,
    "pin": Role.PIN,
    "tee": Kind.TEEING_AREA,
    "fairway": Kind.FAIRWAY,
    "green": Kind.PUTTING_GREEN,
    "bunker": Kind.BUNKER,
    "rough": Kind.ROUGH,
    "water_hazard": Kind.YELLOW_PENALTY_AREA,
    "lateral_water_hazard": Kind.RED_PENALTY_AREA,
    "cartpath": Kind.PATH,
    "path": Kind.PATH,
    "clubhouse": Kind.OBSTRUCTION,
}
"""Values of ``golf=*`` that matter."""

NOT_USED = frozenset({"driving_range", "practice"})
"""Values of ``golf=*`` that say nothing the Rules need."""

OWN: dict[str, Kind] = {
    kind.value: kind
    for kind in (
        Kind.GROUND_UNDER_REPAIR,
        Kind.TEMPORARY_WATER,
        Kind.NO_PLAY_ZONE,
        Kind.DROPPING_ZONE,
        Kind.OUT_OF_BOUNDS,
        Kind.OBSTRUCTION,
        Kind.INTEGRAL_OBJECT,
        Kind.BOUNDARY,
        Kind.RED_PENALTY_AREA,
        Kind.YELLOW_PENALTY_AREA,
        Kind.TEEING_AREA,
        Kind.STAKE,
        Kind.MARKING,
        Kind.EVACUATION_POINT,
    )
}
"""Values of ``marram=*``: what OpenStreetMap has no tag for."""

PENALTY_AREA = "penalty_area"
"""``marram=penalty_area`` has the colour its ``colour`` says; of no known colour it is red (Definition of penalty area)."""

OPEN_WATERCOURSES = frozenset(
    {
        "brook",
        "canal",
        "derelict_canal",
        "ditch",
        "dock",
        "drain",
        "drystream",
        "fish_pass",
        "rapids",
        "river",
        "riverbank",
        "spillway",
        "stream",
        "tidal_channel",
        "wadi",
    }
)
"""Values of ``waterway=*`` that are open water or a ditch, also when dry; the others are dams, gates, pipes and the like."""

WATERS: dict[str, frozenset[str]] = {
    "natural": frozenset({"water", "bay", "strait", "coastline"}),
    "landuse": frozenset({"reservoir", "basin", "pond", "salt_pond"}),
    "waterway": OPEN_WATERCOURSES,
    "barrier": frozenset({"ditch"}),
    "water": frozenset(
        {
            "basin",
            "canal",
            "ditch",
            "drain",
            "lagoon",
            "lake",
            "moat",
            "oxbow",
            "pond",
            "reservoir",
            "river",
            "stream",
            "stream_pool",
        }
    ),
}
"""Tags of open water, by their keys (OpenStreetMap's wiki, page "Water"): bodies of water and watercourses."""

BODIES_OF_WATER = {
    key: values - {"coastline"} for key, values in WATERS.items() if key not in {"waterway", "barrier"}
} | {"waterway": frozenset({"riverbank", "dock"})}
"""Those of them that a closed line encloses."""

NO_BARRIERS = frozenset({"no", "none", "entrance", "log", "debris"})
"""Values of ``barrier=*`` of which nothing artificial stands there; a hedge grows, so it is read with the trees."""

NO = frozenset({"no", "0", "false"})
"""Values of a tag that say no."""

UNSURFACED = frozenset({"grass", "ground", "dirt", "earth", "mud", "sand", "unpaved", "rock", "woodland"})
"""Values of ``surface=*`` that are no artificial surface, so that the path is no immovable obstruction."""

AREA_KINDS = frozenset(Kind) - {
    Kind.PATH,
    Kind.WATER,
    Kind.OBSTRUCTION,
    Kind.BARRIER,
    Kind.INTEGRAL_OBJECT,
    Kind.TREES,
    Kind.STAKE,
    Kind.MARKING,
}
"""Kinds that must be areas: a line cannot say which balls lie in them."""

SCENERY = frozenset(
    {Kind.ROUGH, Kind.TREES, Kind.WATER, Kind.WETLAND, Kind.PATH, Kind.OBSTRUCTION, Kind.BARRIER}
)
"""Kinds kept only where they touch the course when they come from tags that are not about golf."""


def meaning(tags: Mapping[str, str]) -> Kind | Role | None:
    """Return what the tags mean for the game, or ``None`` when they mean nothing."""
    if (own := tags.get("marram")) is not None:
        if own == PENALTY_AREA:
            return Kind.YELLOW_PENALTY_AREA if tags.get("colour") == "yellow" else Kind.RED_PENALTY_AREA
        return OWN.get(own)
    if (golf := tags.get("golf")) in GOLF:
        found = GOLF[golf]
        return None if found is Kind.PATH and tags.get("surface") in UNSURFACED else found
    if tags.get("leisure") == "golf_course":
        return Role.COURSE
    return None if golf == "driving_range" else _scenery(tags)


def _scenery(tags: Mapping[str, str]) -> Kind | None:
    if _has(tags, WATERS):
        return None if _underground(tags) else Kind.WATER
    if tags.get("natural") == "wetland":
        return Kind.WETLAND
    if (
        tags.get("natural") in {"wood", "tree_row", "tree"}
        or tags.get("landuse") == "forest"
        or tags.get("barrier") == "hedge"
    ):
        return Kind.TREES
    if "building" in tags:
        return Kind.OBSTRUCTION
    if "highway" in tags and tags.get("surface") not in UNSURFACED and tags.get("tunnel") is None:
        return Kind.PATH
    return Kind.BARRIER if tags.get("barrier", "no") not in NO_BARRIERS else None


def _has(tags: Mapping[str, str], wanted: Mapping[str, frozenset[str]]) -> bool:
    """Whether one of the tags has one of the values wanted for its key."""
    return any(tags.get(key) in values for key, values in wanted.items())


def _underground(tags: Mapping[str, str]) -> bool:
    """Whether water runs under the ground: in a culvert or pipe nothing is open water."""
    return tags.get("tunnel", "no") not in NO or tags.get("location") == "underground"


def is_area(tags: Mapping[str, str]) -> bool:
    """Whether a closed line with these tags encloses an area, rather than being a road or line of play."""
    what = meaning(tags)
    if what in THINGS and "barrier" in tags and "building" not in tags:
        return tags.get("area") == "yes"  # a fence around a field is not the field
    return (
        what in AREA_KINDS
        or what in {Role.COURSE, Kind.OBSTRUCTION, Kind.INTEGRAL_OBJECT}
        or _has(tags, BODIES_OF_WATER)
        or tags.get("natural") == "wood"
        or tags.get("landuse") == "forest"
        or tags.get("area") == "yes"
    )


def is_about_golf(tags: Mapping[str, str]) -> bool:
    """Whether the tags speak of golf at all, rather than of the landscape around."""
    return "golf" in tags or "marram" in tags


def unknown_tags(ident: str, tags: Mapping[str, str]) -> Fault | None:
    """Return the fault of a value that the scheme does not know, or ``None``."""
    own = tags.get("marram")
    known = [*OWN, PENALTY_AREA]
    if own is not None and own not in known:
        return Fault(
            Severity.ERROR,
            "unknown_tag",
            said("marram={own} is not known", own=own),
            sentences(did_you_mean(own, known), said("Use one of: {known}.", known=", ".join(sorted(known)))),
            feature=ident,
        )
    golf = tags.get("golf")
    if own is None and golf is not None and golf not in GOLF and golf not in NOT_USED:
        return Fault(
            Severity.WARNING,
            "unknown_tag",
            said("golf={golf} is not known and was left out", golf=golf),
            sentences(
                did_you_mean(golf, [*GOLF, *OWN]),
                said("Use one of: {known}; or marram=*.", known=", ".join(sorted(GOLF))),
            ),
            feature=ident,
        )
    return None
