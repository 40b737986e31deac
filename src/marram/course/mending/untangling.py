"""Edges that cross or touch themselves: the areas they enclose, and what of them is kept."""

import shapely
from shapely import make_valid
from shapely.geometry import LineString, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.fault import Fault
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import Setting
from marram.course.model import Kind
from marram.course.scheme import is_area, meaning
from marram.said import Said, all_of, said

SLIVER = 0.01
"""Parts below this share of the whole are slips of the drawing and are proposed to be dropped (own choice)."""


def untangle(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose the areas that an edge which crosses or touches itself encloses."""
    shape = area_of(setting, fault.feature)
    if shape is None or shape.is_valid:
        return None
    choices = untangled(setting, fault.feature, shape)
    why = said(
        "The edge crosses or touches itself, so that nobody can tell its inside; these areas it does enclose."
    )
    return offer("untangle", fault, why, choices)


def untangled(setting: Setting, ident: str, shape: BaseGeometry, *, closed: bool = False) -> list[Choice]:
    """Return the ways to make valid areas of a shape in degrees, the one that keeps most first.

    Args:
        setting: the map.
        ident: the feature that is redrawn.
        shape: its area.
        closed: whether the area was closed before, which the words of a choice then say.
    """
    choices: list[Choice] = []
    ways = [make_valid(shape), make_valid(shape, method="structure", keep_collapsed=False)]
    if ways[0].symmetric_difference(ways[1]).area <= SLIVER * ways[0].area:
        ways.pop()
    for made in ways:
        parts = sorted(areas_in(made), key=lambda part: _square(setting, part), reverse=True)
        if not parts:
            continue
        sizes = [_square(setting, part) for part in parts]
        kept = [part for part, size in zip(parts, sizes, strict=True) if size > SLIVER * sum(sizes)]
        if not kept:  # no part has any size
            continue
        dropped = [said("a part of {size} is dropped", size=_size(size)) for size in sizes[len(kept) :]]
        lost = setting.plane.inward(shapely.union_all(_thin(made))).length
        if lost > SLIVER:
            dropped.append(said("{lost:.1f} m of edge that encloses nothing are dropped", lost=lost))
        if len(kept) == 1:
            choices.append(
                Choice(
                    said("Close it, then untangle it") if closed else said("Untangle it"),
                    (setting.redraw(ident, kept[0]),),
                    (*dropped, said("{size} stay", size=_size(sizes[0]))),
                )
            )
            continue
        told = all_of(_size(size) for size in sizes[: len(kept)])
        choices.append(
            Choice(
                _keep(len(kept), closed=closed),
                (setting.redraw(ident, MultiPolygon(kept)),),
                (told, *dropped),
            )
        )
        choices += [
            Choice(
                said("Close it, then keep only the part of {size}", size=_size(size))
                if closed
                else said("Keep only the part of {size}", size=_size(size)),
                (setting.redraw(ident, part),),
                (said("{size} are dropped", size=_size(sum(sizes) - size)),),
            )
            for part, size in zip(kept[:2], sizes, strict=False)
        ]
    return choices


def _keep(count: int, *, closed: bool) -> Said:
    if count == 2:
        return said("Close it, then keep both parts") if closed else said("Keep both parts")
    if closed:
        return said("Close it, then keep all {count} parts", count=count)
    return said("Keep all {count} parts", count=count)


def area_of(setting: Setting, ident: str) -> BaseGeometry | None:
    """Return the area of a feature in degrees, a closed line taken for what it encloses; ``None`` for none."""
    shape = setting.shape(ident) if ident in setting.features else None
    closes = shape is not None and (
        is_area(setting.tags(ident)) or meaning(setting.tags(ident)) is Kind.BOUNDARY
    )
    if closes and isinstance(shape, LineString) and shape.is_closed and len(shape.coords) > 3:
        return Polygon(shape)
    return shape


def areas_in(geometry: BaseGeometry) -> list[Polygon]:
    """Return the polygons of a geometry, those inside collections too."""
    return [part for one in shapely.get_parts([geometry]) for part in _deep(one) if isinstance(part, Polygon)]


def _thin(geometry: BaseGeometry) -> list[BaseGeometry]:
    return [part for part in _deep(geometry) if not isinstance(part, Polygon)]


def _deep(geometry: BaseGeometry) -> list[BaseGeometry]:
    parts = getattr(geometry, "geoms", None)
    return [geometry] if parts is None else [inner for part in parts for inner in _deep(part)]


def _square(setting: Setting, part: BaseGeometry) -> float:
    return setting.plane.inward(part).area


def _size(square_metres: float) -> str:
    return f"{square_metres:,.0f} m²" if square_metres >= 10 else f"{square_metres:.1f} m²"
