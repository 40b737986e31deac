"""Reading and checking large maps, beside what general-purpose libraries need for the same geometry in the same run.

The peer reads the same JSON, makes the same shapes (``shapely.from_geojson``), asks a tree which of them touch
(``STRtree.query`` in bulk) and unites them: no meaning, no fault, no course. CPU seconds of this process.

    python bench/large_maps.py [--count 50000] [--kinds bunkers tees …]
"""

import argparse
import json
import sys
import tempfile
import time
from pathlib import Path

import shapely

sys.path.insert(0, str(Path(__file__).parents[1]))

from marram.course.loading import examine
from tests.course.large_maps import KINDS, large_map, patches_map, with_text


def seconds(work, *given):
    before = time.process_time()
    work(*given)
    return time.process_time() - before


def peer(data: bytes) -> None:
    shapes = [json.dumps(one["geometry"]) for one in json.loads(data)["features"]]
    made = shapely.make_valid(shapely.from_geojson(shapes))
    shapely.STRtree(made).query(made, predicate="intersects")
    shapely.union_all(made[shapely.get_dimensions(made) == 2])


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--count", type=int, default=5_000)
    parser.add_argument("--kinds", nargs="*", default=list(KINDS))
    wanted = parser.parse_args()
    maps = {kind: large_map(kind, wanted.count) for kind in wanted.kinds}
    maps["120 patches on 1,900 features"] = patches_map()
    with tempfile.TemporaryDirectory() as folder:
        for kind, document in maps.items():
            data = with_text(document)
            path = Path(folder) / "map.geojson"
            path.write_bytes(data)
            ours, theirs = seconds(examine, path), seconds(peer, data)
            print(
                f"{kind}: {len(document['features']):,} features, read and checked in {ours:.2f} s, "
                f"{ours / theirs:.1f} times the peer ({theirs:.2f} s)",
                flush=True,
            )


if __name__ == "__main__":
    main()
