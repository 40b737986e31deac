"""The course map: import, checks, local metric plane, and which area of the course a ball lies in."""

from marram.course.area_grid import areas_of
from marram.course.areas import area_at, area_at_degrees
from marram.course.loading import check, load

__all__ = ["area_at", "area_at_degrees", "areas_of", "check", "load"]
