"""From lines of play, greens, tees and pins to holes. What belongs to what is read, never guessed."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace

from shapely import STRtree
from shapely.geometry import Point

from marram.course.fault import FaultList
from marram.course.feature_index import FeatureIndex
from marram.course.model import Feature, Hole, Kind
from marram.course.progress import ASSEMBLING, Progress, no_progress, part_of, telling
from marram.course.reading.lines_of_play import LineOfPlay, whole_number
from marram.course.reading.shapes import hole_numbers
from marram.said import Said, joined, said

TEE_REACH = 35.0
"""A tee without ``ref`` belongs to a hole only within this distance of its line of play (own choice), metres."""
TEE_PART = 0.4
"""… and only beside the first two fifths of the line (own choice)."""
TEE_MARGIN = 10.0
"""… and only if no other hole is as near within this margin (own choice), metres."""


def holes_of(
    lines: Sequence[LineOfPlay],
    features: Sequence[Feature],
    pins: Sequence[tuple[Point, int | None]],
    faults: FaultList,
    progress: Progress = no_progress,
) -> tuple[dict[int, Hole], list[Feature]]:
    """Return the holes by number, and the features with the holes that greens and tees belong to filled in.

    A green belongs to the holes its ``holes`` or ``ref`` tag names, and to every hole whose line of play ends
    on it. A tee belongs to the hole its tag names, else to the one line of play it stands beside.
    """
    numbers = {line.number for line in lines}
    greens = FeatureIndex([feature for feature in features if feature.kind is Kind.PUTTING_GREEN])
    ends: dict[int, set[int]] = defaultdict(set)
    for line in lines:
        for green in greens.near(line.end):
            ends[id(green)].add(line.number)
    beside = _Beside(lines)
    placed: list[Feature] = []
    for feature in telling(features, part_of(progress, 0.0, 0.5), ASSEMBLING):
        if feature.kind not in {Kind.PUTTING_GREEN, Kind.TEEING_AREA}:
            placed.append(feature)
            continue
        own = feature.holes or tuple(n for n in hole_numbers(feature.ref) if n in numbers)
        if feature.kind is Kind.PUTTING_GREEN:
            placed.append(replace(feature, holes=tuple(sorted({*own, *ends[id(feature)]}))))
        else:
            placed.append(replace(feature, holes=own or _tee_of(feature, beside, faults)))
    parts = _Parts(placed, pins)
    rest = telling(lines, part_of(progress, 0.5, 1.0), ASSEMBLING)
    holes = {line.number: _hole(line, parts, faults) for line in rest}
    return holes, placed


class _Beside:
    """The lines of play, and a tree that tells which of them a tee stands beside."""

    def __init__(self, lines: Sequence[LineOfPlay]) -> None:
        self._lines = lines
        self._tree = STRtree([line.line for line in lines])

    def near(self, tee: Feature) -> list[tuple[float, int]]:
        """Return the distance and the number of the lines that could be a tee's, the nearest first."""
        middle = tee.geometry.centroid
        found = self._tree.query(tee.geometry, predicate="dwithin", distance=TEE_REACH + TEE_MARGIN)
        lines = [self._lines[i] for i in found]
        return sorted(
            (line.line.distance(tee.geometry), line.number)
            for line in lines
            if line.line.project(middle, normalized=True) <= TEE_PART
        )


class _Parts:
    """What a hole is put together from: greens and tees by the holes they belong to, and pins."""

    def __init__(self, features: Sequence[Feature], pins: Sequence[tuple[Point, int | None]]) -> None:
        self.greens = FeatureIndex([f for f in features if f.kind is Kind.PUTTING_GREEN])
        self.of_hole: dict[tuple[Kind, int], list[Feature]] = defaultdict(list)
        for feature in features:
            if feature.kind in {Kind.PUTTING_GREEN, Kind.TEEING_AREA}:
                for number in dict.fromkeys(feature.holes):
                    self.of_hole[feature.kind, number].append(feature)
        self._numbered: dict[int, list[Point]] = defaultdict(list)
        for pin, of in pins:
            if of is not None:
                self._numbered[of].append(pin)
        self._loose = [pin for pin, number in pins if number is None]
        self._tree = STRtree(self._loose)

    def pins_of(self, number: int) -> list[Point]:
        """Return the pins that say they belong to a hole."""
        return self._numbered.get(number, [])

    def pins_on(self, green: Feature) -> list[Point]:
        """Return the pins on a green that do not say which hole they belong to."""
        return [self._loose[i] for i in sorted(self._tree.query(green.geometry, predicate="intersects"))]


def _tee_of(tee: Feature, beside: _Beside, faults: FaultList) -> tuple[int, ...]:
    middle = tee.geometry.centroid
    near = beside.near(tee)
    if not near or near[0][0] > TEE_REACH:
        faults.warn(
            "tee_of_no_hole",
            said("this tee stands beside no line of play and belongs to no hole"),
            said("Add ref=<hole number> if it is in use."),
            feature=tee.ident,
            at=middle,
        )
        return ()
    if len(near) > 1 and near[1][0] - near[0][0] < TEE_MARGIN:
        faults.warn(
            "tee_of_two_holes",
            said(
                "this tee stands beside holes {one} and {other}: it was given to neither",
                one=near[0][1],
                other=near[1][1],
            ),
            said("Add ref=<hole number>."),
            feature=tee.ident,
            at=middle,
        )
        return ()
    return (near[0][1],)


def _hole(line: LineOfPlay, parts: _Parts, faults: FaultList) -> Hole:
    green = _green(line, parts, faults)
    return Hole(
        number=line.number,
        line=line.line,
        location=_location(line, green, parts, faults),
        par=whole_number(line, "par", faults),
        stroke_index=whole_number(line, "handicap", faults),
        green=green,
        tees=tuple(parts.of_hole.get((Kind.TEEING_AREA, line.number), ())),
    )


def _which(under_end: int) -> Said:
    if under_end > 1:
        return said("those its line of play ends on lie over each other and count as one")
    return said("the one its line of play ends on is used") if under_end else said("none was chosen")


def _green(line: LineOfPlay, parts: _Parts, faults: FaultList) -> Feature | None:
    own = parts.of_hole.get((Kind.PUTTING_GREEN, line.number), [])
    if len(own) > 1:
        end = line.end
        under_end = [green for green in own if green.geometry.distance(end) == 0]
        faults.warn(
            "two_greens",
            said(
                "{count} greens belong to it ({idents}{more}): {which}",
                count=len(own),
                idents=joined(", ", *(green.ident for green in own[:5])),
                more=" …" if own[5:] else "",
                which=_which(len(under_end)),
            ),
            said("Let the line of play end on the green in use; the other is then a wrong green."),
            hole=line.number,
            at=line.end,
        )
        # Greens that both hold the end of the line lie over each other: they are one on the ground.
        return under_end[0] if under_end else None
    if own:
        return own[0]
    nearest = parts.greens.nearest(line.end)
    far = (
        said(
            " (the nearest, {nearest}, is {distance:.1f} m away)",
            nearest=nearest.ident,
            distance=nearest.geometry.distance(line.end),
        )
        if nearest
        else ""
    )
    faults.warn(
        "hole_without_green",
        said("its line of play ends on no green{far}: a ball on the green cannot be told", far=far),
        said(
            "Draw the green as an area with golf=green, or end the line of play on it, or tag the green with ref."
        ),
        hole=line.number,
        feature=line.ident,
        at=line.end,
    )
    return None


def _location(line: LineOfPlay, green: Feature | None, parts: _Parts, faults: FaultList) -> Point:
    own = parts.pins_of(line.number)
    if not own and green is not None:
        own = parts.pins_on(green)
        if len(green.holes) > 1 and own:
            faults.warn(
                "pin_of_double_green",
                said(
                    "the pins on its green, shared with another hole, do not say which is whose: the end of the line of "
                    "play is used"
                ),
                said("Add ref=<hole number> to each pin."),
                hole=line.number,
                at=line.end,
            )
            return line.end
    if len(own) == 1:
        return own[0]
    if len(own) > 1:
        faults.warn(
            "two_pins",
            said("{count} pins are mapped on its green: the end of the line of play is used", count=len(own)),
            said("Keep the pin in use, or give each its ref."),
            hole=line.number,
            at=line.end,
        )
    return line.end
