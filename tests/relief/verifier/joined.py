"""What is joined on the ground is one: things that hang together, and their union without seams."""

import numpy as np
import shapely

JOINED = 0.001
"""Metres: areas no farther apart than this are one on the ground (the layer's tolerance for distances)."""


CREVICE = 0.02
"""Metres: ground no wider than this between two areas may count to them (docs/course-map.md)."""


def crevices(shapes):
    """Return what lies between two of some areas and is too narrow to be ground of its own."""
    whole = shapely.union_all(shapes)
    grown = shapely.buffer(whole, CREVICE / 2, join_style="mitre", mitre_limit=5)
    closed = shapely.buffer(grown, -CREVICE / 2, join_style="mitre", mitre_limit=5)
    between = shapely.get_parts(shapely.difference(closed, whole))
    touching = shapely.STRtree(shapes).query(between, predicate="dwithin", distance=JOINED)[0]
    return shapely.union_all(between[np.bincount(touching, minlength=len(between)) > 1])


def united(shapes):
    """Return shapes as one, seams closed: the hairline that rounding leaves between neighbours is no edge."""
    whole = shapely.union_all(shapes)
    if len(shapes) < 2 or len(shapely.get_parts(whole)) == len(shapes):
        return whole
    grown = shapely.buffer(whole, JOINED / 2, join_style="mitre", mitre_limit=50)
    return shapely.buffer(grown, -JOINED / 2, join_style="mitre", mitre_limit=50)


def connected(pairs, place, *, alike):
    """Return the things that hang together with the one nearest a place; ``alike``: of its colour only."""
    if not pairs:
        return []
    point = shapely.Point(place)
    shapes = [one for one, _ in pairs]
    start = int(np.argmin([one.distance(point) for one in shapes]))
    colour = pairs[start][1][0]
    tree = shapely.STRtree(shapes)
    found, edge = {start}, [start]
    while edge:
        here = edge.pop()
        for other in tree.query(shapes[here], predicate="dwithin", distance=JOINED):
            if int(other) not in found and (not alike or pairs[other][1][0] == colour):
                found.add(int(other))
                edge.append(int(other))
    return [pairs[one][1] for one in sorted(found)]
