"""Which things of the source belong to the course that was asked for."""

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from marram.course.fault import Fault, Severity
from marram.course.model import Kind
from marram.course.progress import ASSEMBLING, Progress, no_progress, telling
from marram.course.reading.antimeridian import from_greenwich
from marram.course.reading.source import SourceFeature
from marram.course.scheme import Role, is_about_golf, meaning
from marram.errors import did_you_mean
from marram.said import Said, joined, said, sentences

COAST_DEGREES = 0.02
"""A coastline within this of the course (some 2 km) says where the sea is, also where it touches nothing mapped."""

BEYOND_DEGREES = 0.005
"""Where no outline and no boundary says how far a course reaches, water, paths and buildings within this of what is mapped
for golf (some 500 m, own choice) count: a ball can lie there."""

FURTHEST_DEGREES = 0.2
"""Golf features further than this from the middle of the others (some 20 km) are in the wrong place."""


def choose_outline(
    features: Sequence[SourceFeature], which: str | None
) -> tuple[SourceFeature | None, list[Fault]]:
    """Return the outline of the course asked for, or the fault of not knowing which.

    A file with one outline needs no choice; one without any holds one course.

    Args:
        features: what the source holds.
        which: the name or identifier of the course, or ``None``.
    """
    outlines = [feature for feature in features if meaning(feature.tags) is Role.COURSE]
    names = [
        said("{name} ({ident})", name=one.tags.get("name", said("without a name")), ident=one.ident)
        for one in outlines
    ]
    if which is not None:
        wanted = which.casefold()
        found = [
            outline
            for outline in outlines
            if wanted
            in {outline.tags.get("name", "").casefold(), outline.ident, outline.ident.partition("/")[2]}
        ]
        if len(found) == 1:
            return found[0], []
        hint = did_you_mean(which, [outline.tags.get("name", "") for outline in outlines])
        what = (
            said("{count} golf course in the file is called {which!r}", count=len(found), which=which)
            if found
            else said("no golf course in the file is called {which!r}", which=which)
        )
    elif len(outlines) > 1:
        what = said("the file holds {count} golf courses", count=len(outlines))
        hint = Said("")
    else:
        return (outlines[0] if outlines else None), []
    remedy = (
        said("Name one of: {names}.", names=joined("; ", *names))
        if names
        else said("Leave the name out: the file has no outline.")
    )
    return None, [Fault(Severity.ERROR, "which_course", what, sentences(hint, remedy))]


def of_course(
    features: Sequence[SourceFeature], outline: SourceFeature | None, progress: Progress = no_progress
) -> list[SourceFeature]:
    """Return what belongs to the course: golf features, scenery that touches the course, and the coast beside it.

    Golf features that lie inside another course's outline belong to that course. A course reaches as far as its outline
    and its boundary; where it has neither, some way beyond what is mapped for golf.
    """
    others = [f.geometry for f in features if meaning(f.tags) is Role.COURSE and f is not outline]
    golf = [feature for feature in features if is_about_golf(feature.tags)]
    bounded = [feature for feature in golf if meaning(feature.tags) is Kind.BOUNDARY]
    ground = _hull(golf if outline is None else bounded)
    if outline is not None:
        own = outline.geometry if outline.geometry.is_valid else outline.geometry.convex_hull
        ground = shapely.union(ground, own)
    beyond = 0.0 if outline is not None or bounded else BEYOND_DEGREES
    abroad = [other for other in others if other.is_valid]
    kept = [] if outline is None else [outline]
    for feature in telling(features, progress, ASSEMBLING):
        what = meaning(feature.tags)
        if what is Role.COURSE or what is None:
            continue
        shape = feature.geometry if feature.geometry.is_valid else feature.geometry.convex_hull
        if is_about_golf(feature.tags):
            belongs = not any(other.intersects(shape) for other in abroad) or ground.intersects(shape)
        else:
            reach = COAST_DEGREES if feature.tags.get("natural") == "coastline" else beyond
            belongs = ground.dwithin(shape, reach)
        if belongs:
            kept.append(feature)
    return kept


def _hull(features: Sequence[SourceFeature]) -> BaseGeometry:
    hull: BaseGeometry = shapely.convex_hull(
        shapely.union_all([shapely.convex_hull(one.geometry) for one in features])
    )
    return hull


def misplaced(features: Sequence[SourceFeature]) -> list[Fault]:
    """Return an error for every golf feature that lies far from all the others."""
    golf = [feature for feature in features if is_about_golf(feature.tags)]
    # The middle of the bounds: the centroid of an edge that crosses itself can lie anywhere.
    bounds = shapely.bounds([f.geometry for f in golf]).reshape(-1, 4)
    places = [((west + east) / 2, (south + north) / 2) for west, south, east, north in bounds.tolist()]
    if not places:
        return []
    # The median of each; numpy's own function loads its masked arrays first.
    ordered = np.sort(places, axis=0)
    middle = (ordered[(len(places) - 1) // 2] + ordered[len(places) // 2]) / 2
    east, north = float(middle[0]), float(middle[1])

    def far(x: float, y: float) -> bool:
        return abs(x - east) > FURTHEST_DEGREES or abs(y - north) > FURTHEST_DEGREES

    faults = []
    for feature, (x, y) in zip(golf, places, strict=True):
        if not far(x, y):
            continue
        why = (
            said("its longitude and latitude are swapped")
            if not far(y, x)
            else said("it is in another coordinate system")
        )
        faults.append(
            Fault(
                Severity.ERROR,
                "misplaced",
                said(
                    "it lies far from the rest of the course, which is at {north:.4f}, {east:.4f}: perhaps {why}",
                    north=north,
                    east=from_greenwich(east),
                    why=why,
                ),
                said("Give all positions as WGS 84 longitude, then latitude, in degrees."),
                feature=feature.ident,
                longitude=from_greenwich(x),
                latitude=y,
            )
        )
    return faults
