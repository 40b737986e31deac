"""Places on the demonstration course, as an address writes them."""

from dataclasses import dataclass

from marram.course.model import Course


@dataclass(frozen=True)
class Ground:
    """Places on the demonstration course, as an address writes them."""

    course: Course

    def at(self, xy: tuple[float, float]) -> str:
        longitude, latitude = self.course.plane.to_degrees(*xy)
        return f"{latitude:.7f},{longitude:.7f}"

    def fairway(self, hole: int = 9, along: float = 330) -> str:
        place = self.course.hole(hole).line.interpolate(along)
        return self.at((place.x, place.y))

    def in_feature(self, name: str) -> str:
        feature = next(one for one in self.course.features if one.name == name)
        place = feature.geometry.representative_point()
        return self.at((place.x, place.y))

    def in_the_burn(self, share: float = 0.5) -> str:
        """On the line of play of the ninth, a share of the way across the burn."""
        burn = next(one for one in self.course.features if one.name == "The Burn")
        place = self.course.hole(9).line.intersection(burn.geometry).interpolate(share, normalized=True)
        return self.at((place.x, place.y))
