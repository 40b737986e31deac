"""From a relief option and a place on the map to an exact relief area.

Distances decide and polygons draw: whether a place is in a relief area is told by distances with one named
tolerance; the polygons are pictures with a stated error. Each area comes with its construction (points,
lines, arcs), so that it can be drawn, checked with a tape on the ground, and explained.
"""

from typing import TYPE_CHECKING

from marram.lazy_names import on_first_use

if TYPE_CHECKING:
    from marram.relief.area import Failure, ReliefArea, Verdict
    from marram.relief.crossing import Crossing, last_crossing
    from marram.relief.dangerous_animal import danger
    from marram.relief.drawing import svg
    from marram.relief.drop import DropCheck, check_drop
    from marram.relief.geojson import feature_collection
    from marram.relief.limits import Bound
    from marram.relief.options import relief_areas
    from marram.relief.outline import Outline
    from marram.relief.player import Player
    from marram.relief.shape import Footprint
    from marram.relief.situation import Answer, Drawn, NeedsPlace, NoRelief, Place, Why
    from marram.relief.usual_footprint import footprint

__all__ = [
    "Answer",
    "Bound",
    "Crossing",
    "Drawn",
    "DropCheck",
    "Failure",
    "Footprint",
    "NeedsPlace",
    "NoRelief",
    "Outline",
    "Place",
    "Player",
    "ReliefArea",
    "Verdict",
    "Why",
    "check_drop",
    "danger",
    "feature_collection",
    "footprint",
    "last_crossing",
    "relief_areas",
    "svg",
]

_WHERE = {
    "Answer": "situation",
    "Bound": "limits",
    "Crossing": "crossing",
    "Drawn": "situation",
    "DropCheck": "drop",
    "Failure": "area",
    "Footprint": "shape",
    "NeedsPlace": "situation",
    "NoRelief": "situation",
    "Outline": "outline",
    "Place": "situation",
    "Player": "player",
    "ReliefArea": "area",
    "Verdict": "area",
    "Why": "situation",
    "check_drop": "drop",
    "danger": "dangerous_animal",
    "feature_collection": "geojson",
    "footprint": "usual_footprint",
    "last_crossing": "crossing",
    "relief_areas": "options",
    "svg": "drawing",
}

# So a question about distances loads no drawing.
__getattr__ = on_first_use(__name__, _WHERE)
