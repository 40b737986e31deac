"""Made courses where things lie over each other, meet in many pieces, or leave hardly any room; each drawn from a seed."""

from itertools import pairwise

from shapely.geometry import LineString, MultiLineString, Point, box

from tests.relief.verifier.drawn_course import Drawing


def overlaps(seed):
    """Bunkers over water, greens and tees; a yellow ditch through a red pond; repair over a ditch; greens over each other."""
    d = Drawing(seed, "overlaps")
    d.holes()
    d.add(d.blob(14, 110, 12, 14), golf="lateral_water_hazard")
    d.add(box(-40, 112, 60, 118), golf="water_hazard")
    d.add(d.blob(22, 102, 5), golf="bunker")
    d.add(d.blob(-6, 115, 4), golf="bunker")
    (x1, y1), (x2, y2) = d.hole_at(1), d.hole_at(2)
    d.add(d.blob(x1 - 11, y1, 5), golf="bunker")
    d.add(d.blob(x1, y1 + 12, 5), golf="lateral_water_hazard")
    d.add(box(-2, -6, 2, -2), golf="bunker")
    d.add(d.blob(10, 200, 4), marram="ground_under_repair")
    d.add(d.blob(13, 203, 3), golf="bunker")
    d.add(d.blob(30, 112, 4), marram="ground_under_repair")
    d.add(d.blob(x2 + 8, y2 + 6, 6), golf="green")
    d.add(LineString([(-25, -10), (-22, 115), (-24, 250)]), golf="cartpath", width=2.2, surface="asphalt")
    return d.document()


def coast_in_pieces(seed):
    """A coast in several lines with an island before it; a bunker, a green and a marked area over the shore, a stream into the sea."""
    d = Drawing(seed, "coast in pieces")
    d.holes(boundary=False)
    d.add(d.around(90), marram="boundary")
    shore = [(-28 + d.random.uniform(-5, 5), y) for y in range(-200, 600, 25)][::-1]
    for start in range(0, len(shore) - 1, 7):
        d.add(LineString(shore[start : start + 8]), natural="coastline")
    d.add(LineString(d.blob(-75, 150, 10).exterior.coords), natural="coastline")
    d.add(d.blob(-28, 110, 6), golf="bunker")
    d.add(d.blob(-26, 60, 5), golf="green", ref="9")
    d.add(d.blob(-30, 200, 8), golf="lateral_water_hazard")
    d.add(LineString([(-31, 250), (0, 252), (60, 256)]), waterway="stream")
    d.add(LineString([(-18, 20), (-20, 130), (-34, 180)]), golf="cartpath", width=2, surface="concrete")
    return d.document()


def burns(seed):
    """A stream in five lines, a ditch into it, a marked reach of it, a pond at its end; joined yellow and red areas; a forked path."""
    d = Drawing(seed, "burns")
    d.holes()
    bends = [(-60, 100), (-30, 104), (-5, 98), (25, 103), (60, 99), (140, 104)]
    for start, end in pairwise(bends):
        d.add(LineString([start, end]), waterway="stream", width=2.4)
    d.add(LineString([(-5, 98), (-8, 60), (-4, 20)]), waterway="ditch", width=1.2)
    d.add(LineString([(25, 103), (28, 150)]), golf="lateral_water_hazard", width=3)
    d.add(d.blob(28, 156, 7, 12), natural="water")
    d.add(box(-40, 230, 0, 234), golf="water_hazard")
    d.add(box(0.008, 230, 30, 234), golf="water_hazard")
    d.add(box(30, 230, 60, 234), golf="lateral_water_hazard")
    fork = MultiLineString([[(-28, 0), (-24, 90)], [(-24, 90), (-20, 140)], [(-24, 90), (-44, 92)]])
    d.add(fork, golf="cartpath", width=2.6, surface="asphalt")
    return d.document()


def tight(seed):
    """Hardly any room: a bunker round a green, a path along ground out of bounds, water 40 cm from a building, a puddle with an island."""
    d = Drawing(seed, "tight")
    d.holes()
    ring = Point(d.hole_at(1)).buffer(19, quad_segs=5)
    d.add(ring.difference(Point(d.hole_at(1)).buffer(14.5, quad_segs=5)), golf="bunker")
    d.add(box(-44, 150, -36, 170), marram="out_of_bounds")
    d.add(box(-36, 140, -33, 180), golf="cartpath")
    d.add(box(16, 60, 18, 140), building="yes")
    d.add(box(18.4, 60, 20, 140), golf="lateral_water_hazard")
    d.add(d.blob(-20, 90, 5).difference(Point(-20, 90).buffer(1.5)), marram="temporary_water")
    d.add(box(-3, 180, 3, 190), marram="no_play_zone")
    d.add(box(-3, 190, 3, 200), marram="ground_under_repair")
    return d.document()


LAID_OVER = {"overlaps": overlaps, "coast in pieces": coast_in_pieces, "burns": burns, "tight": tight}
"""These maps by name."""
