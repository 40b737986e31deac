"""Reading and checking large maps, beside what general-purpose libraries need for the same geometry in the same run.

The peer reads the same JSON, makes the same shapes (``shapely.from_geojson``), asks a tree which of them touch
(``STRtree.query`` in bulk) and unites them: no meaning, no fault, no course. CPU seconds of this process.

With ``--growth`` each map is also made with a quarter of the features: work that is linear takes four times as long for
four times as many. Crowded maps have their features in one place, each over the others; every pair of them meets, so
that even the peer is not linear there.

    python bench/large_maps.py [--count 50000] [--crowded 400] [--kinds bunkers tees …] [--growth]
"""

import argparse
import json
import sys
import tempfile
import time
from pathlib import Path

import shapely

sys.path.insert(0, str(Path(__file__).parents[1]))

from marram.course.lies.regions import ground_of
from marram.course.loading import examine
from tests.course.large_maps import AREAS, KINDS, LINES, crowded_map, large_map, patches_map, with_text

FOR_GROWTH = 4
"""How many times fewer features the smaller map has."""


def seconds(work, *given):
    before = time.process_time()
    work(*given)
    return time.process_time() - before


def opened(path: Path) -> None:
    """Read and check a map, and lay out the ground of its holes."""
    course, _ = examine(path)
    for number in course.holes if course else ():
        ground_of(course, number)


def peer(data: bytes) -> None:
    shapes = [json.dumps(one["geometry"]) for one in json.loads(data)["features"]]
    made = shapely.make_valid(shapely.from_geojson(shapes))
    shapely.STRtree(made).query(made, predicate="intersects")
    shapely.union_all(made[shapely.get_dimensions(made) == 2])


def measured(name, make, count, path, *, growth):
    """Print how long a map of so many features takes, and how much longer than one of a quarter of them."""
    document = make(count)
    data = with_text(document)
    path.write_bytes(data)
    ours, theirs = seconds(opened, path), seconds(peer, data)
    told = ""
    if growth:
        fewer = with_text(make(count // FOR_GROWTH))
        path.write_bytes(fewer)
        told = (
            f"; for {FOR_GROWTH} times as many {ours / seconds(opened, path):.1f} times as long, "
            f"the peer {theirs / seconds(peer, fewer):.1f} times"
        )
    print(
        f"{name}: {len(document['features']):,} features, read and checked in {ours:.2f} s, "
        f"{ours / theirs:.1f} times the peer ({theirs:.2f} s){told}",
        flush=True,
    )


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--count", type=int, default=5_000)
    parser.add_argument("--crowded", type=int, default=400)
    parser.add_argument("--kinds", nargs="*", default=[*KINDS, *LINES])
    parser.add_argument("--growth", action="store_true")
    wanted = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "map.geojson"
        for kind in dict.fromkeys(wanted.kinds):
            if kind in KINDS and wanted.count:
                measured(
                    kind,
                    lambda count, kind=kind: large_map(kind, count),
                    wanted.count,
                    path,
                    growth=wanted.growth,
                )
            if kind in (*AREAS, *LINES) and wanted.crowded:
                measured(
                    f"{kind} in one place",
                    lambda count, kind=kind: crowded_map(kind, count),
                    wanted.crowded,
                    path,
                    growth=wanted.growth,
                )
        measured("120 patches on 1,900 features", lambda _: patches_map(), 0, path, growth=False)


if __name__ == "__main__":
    main()
