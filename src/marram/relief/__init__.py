"""From a relief option and a place on the map to an exact relief area.

Distances decide and polygons draw: whether a place is in a relief area is told by distances with one named
tolerance; the polygons are pictures with a stated error. Each area comes with its construction (points,
lines, arcs), so that it can be drawn, checked with a tape on the ground, and explained.
"""

from typing import TYPE_CHECKING

from marram.lazy_names import on_first_use

if TYPE_CHECKING:
    from marram.relief.areas.relief_area import Failure, ReliefArea, Verdict
    from marram.relief.constructions.dangerous_animal import danger
    from marram.relief.drop import DropCheck, check_drop
    from marram.relief.geometry.limits import Bound
    from marram.relief.geometry.outline import Outline
    from marram.relief.interference.shape import Footprint
    from marram.relief.interference.usual_footprint import footprint
    from marram.relief.pictures.drawing import svg
    from marram.relief.pictures.geojson import feature_collection
    from marram.relief.place.answer import Answer, Drawn, NeedsPlace, NoRelief, Place, Why
    from marram.relief.place.crossing import Crossing, last_crossing
    from marram.relief.place.player import Player
    from marram.relief.place.situation import Situation, Stroke
    from marram.relief.relief_areas import relief_areas

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
    "Situation",
    "Stroke",
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
    "Answer": "place.answer",
    "Bound": "geometry.limits",
    "Crossing": "place.crossing",
    "Drawn": "place.answer",
    "DropCheck": "drop",
    "Failure": "areas.relief_area",
    "Footprint": "interference.shape",
    "NeedsPlace": "place.answer",
    "NoRelief": "place.answer",
    "Outline": "geometry.outline",
    "Place": "place.answer",
    "Player": "place.player",
    "ReliefArea": "areas.relief_area",
    "Situation": "place.situation",
    "Stroke": "place.situation",
    "Verdict": "areas.relief_area",
    "Why": "place.answer",
    "check_drop": "drop",
    "danger": "constructions.dangerous_animal",
    "feature_collection": "pictures.geojson",
    "footprint": "interference.usual_footprint",
    "last_crossing": "place.crossing",
    "relief_areas": "relief_areas",
    "svg": "pictures.drawing",
}

# So a question about distances loads no drawing.
__getattr__ = on_first_use(__name__, _WHERE)
