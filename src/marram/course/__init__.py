"""The course map: import, checks, local metric plane, and which area of the course a ball lies in."""

from typing import TYPE_CHECKING

from marram.lazy_names import on_first_use

if TYPE_CHECKING:
    from marram.course.lies.area_grid import areas_of
    from marram.course.lies.areas import area_at, area_at_degrees
    from marram.course.loading import check, load
    from marram.course.mending.draft import read_draft

__all__ = ["area_at", "area_at_degrees", "areas_of", "check", "load", "read_draft"]

_WHERE = {
    "area_at": "lies.areas",
    "area_at_degrees": "lies.areas",
    "areas_of": "lies.area_grid",
    "check": "loading",
    "load": "loading",
    "read_draft": "mending.draft",
}

# So drawing relief reads no more than it needs.
__getattr__ = on_first_use(__name__, _WHERE)
