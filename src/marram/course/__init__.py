"""The course map: import, checks, local metric plane, and which area of the course a ball lies in."""

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from marram.course.area_grid import areas_of
    from marram.course.areas import area_at, area_at_degrees
    from marram.course.loading import check, load

__all__ = ["area_at", "area_at_degrees", "areas_of", "check", "load"]

_WHERE = {
    "area_at": "areas",
    "area_at_degrees": "areas",
    "areas_of": "area_grid",
    "check": "loading",
    "load": "loading",
}


def __getattr__(name: str) -> Any:
    """Import a public name on first use, so that drawing relief reads no more than it needs."""
    if name not in _WHERE:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    found = getattr(import_module(f"{__name__}.{_WHERE[name]}"), name)
    globals()[name] = found
    return found
