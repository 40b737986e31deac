"""A course map read plainly: what each feature is for, by the tags that docs/course-map.md lists."""

import json
import re
from dataclasses import dataclass
from pathlib import Path

import shapely
from shapely.geometry import shape

BY_GOLF = {
    "hole": "hole",
    "pin": "pin",
    "tee": "tee",
    "green": "green",
    "fairway": "fairway",
    "bunker": "bunker",
    "water_hazard": "yellow",
    "lateral_water_hazard": "red",
    "cartpath": "path",
    "path": "path",
    "clubhouse": "obstruction",
}
BY_OWN = {
    "red_penalty_area": "red",
    "yellow_penalty_area": "yellow",
    "boundary": "boundary",
    "out_of_bounds": "out",
    "ground_under_repair": "repair",
    "temporary_water": "puddle",
    "no_play_zone": "no_play",
    "obstruction": "obstruction",
    "teeing_area": "day_tee",
    "dropping_zone": "zone",
}
SOFT = {"grass", "ground", "dirt", "earth", "mud", "sand", "unpaved", "rock", "woodland"}
WATERCOURSES = {
    *("stream", "ditch", "drain", "canal", "river", "brook", "tidal_channel", "wadi", "rapids", "drystream"),
    *("spillway", "fish_pass", "derelict_canal", "riverbank", "dock"),
}
BODIES = {
    *(("natural", one) for one in ("water", "bay", "strait")),
    *(("landuse", one) for one in ("reservoir", "basin", "pond", "salt_pond")),
    *(("water", one) for one in ("pond", "lake", "reservoir", "lagoon", "basin", "moat", "oxbow", "river")),
}
AREAS = {
    "tee",
    "green",
    "fairway",
    "bunker",
    "boundary",
    "out",
    "repair",
    "puddle",
    "no_play",
    "day_tee",
    "zone",
}


@dataclass(frozen=True)
class Thing:
    """One feature: what it is, its identifier, tags, and geometry in degrees."""

    what: str
    ident: str
    tags: dict
    geometry: object

    @property
    def holes(self):
        """The holes its ``holes`` tag names."""
        return {int(one) for one in re.findall(r"\d+", self.tags.get("holes", ""))}

    @property
    def width(self):
        """Its width in metres, or ``None``."""
        found = re.fullmatch(r"\s*([\d.]+)\s*m?\s*", self.tags.get("width", ""))
        return float(found[1]) if found and float(found[1]) > 0 else None


def what_is(tags):
    """Return what a feature is for, or ``None``."""
    if own := tags.get("marram"):
        if own == "penalty_area":
            return "yellow" if tags.get("colour") == "yellow" else "red"
        return BY_OWN.get(own)
    golf = tags.get("golf")
    if golf in BY_GOLF:
        return None if BY_GOLF[golf] == "path" and tags.get("surface") in SOFT else BY_GOLF[golf]
    if tags.get("leisure") == "golf_course":
        return "course"
    if golf == "driving_range":
        return None
    if tags.get("natural") == "coastline":
        return "coast"
    if BODIES & tags.items() or tags.get("waterway") in WATERCOURSES:
        return None if tags.get("tunnel") else "water"
    if "building" in tags or tags.get("barrier") == "wall":
        return "obstruction"
    if "highway" in tags and tags.get("surface") not in SOFT and "tunnel" not in tags:
        return "path"
    return None


def read(path: Path):
    """Return the things of a GeoJSON file that mean something for the game."""
    things = []
    for number, feature in enumerate(json.loads(Path(path).read_text(encoding="utf-8"))["features"]):
        tags = {
            key: str(value) for key, value in (feature.get("properties") or {}).items() if value is not None
        }
        what = what_is(tags)
        if what is None or not feature.get("geometry"):
            continue
        geometry = shape(feature["geometry"])
        closes = what in AREAS | {"red", "yellow", "course"} or BODIES & tags.items() or "building" in tags
        if geometry.geom_type == "LineString" and geometry.is_closed and closes:
            geometry = shapely.Polygon(geometry.coords)
        things.append(Thing(what, str(feature.get("id", tags.get("@id", number))), tags, geometry))
    return things
