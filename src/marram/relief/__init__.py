"""From a relief option and a place on the map to an exact relief area.

Distances decide and polygons draw: whether a place is in a relief area is told by distances with one named
tolerance; the polygons are pictures with a stated error. Each area comes with its construction (points,
lines, arcs), so that it can be drawn, checked with a tape on the ground, and explained.
"""

from marram.relief.area import Failure, ReliefArea, Verdict
from marram.relief.drawing import svg
from marram.relief.drop import DropCheck, check_drop
from marram.relief.geojson import feature_collection
from marram.relief.limits import Bound
from marram.relief.options import relief_areas
from marram.relief.player import Player
from marram.relief.situation import Answer, Drawn, NeedsPlace, NoRelief, Place, Why

__all__ = [
    "Answer",
    "Bound",
    "Drawn",
    "DropCheck",
    "Failure",
    "NeedsPlace",
    "NoRelief",
    "Place",
    "Player",
    "ReliefArea",
    "Verdict",
    "Why",
    "check_drop",
    "feature_collection",
    "relief_areas",
    "svg",
]
