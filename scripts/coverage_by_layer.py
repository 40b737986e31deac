"""Print how many lines and branches the tests reach, by layer and room: `python scripts/coverage_by_layer.py FILE`.

FILE is what `pytest --cov --cov-report=json:FILE` wrote.
"""

import json
import sys
from collections import defaultdict
from pathlib import Path, PurePosixPath

KINDS = (("covered_lines", "num_statements"), ("covered_branches", "num_branches"))


def rooms_of(path: str) -> list[str]:
    """Return the layer that a file belongs to, and its room in it: `rules` and `rules/book`."""
    inside = PurePosixPath(path.replace("\\", "/")).parts
    inside = inside[inside.index("marram") + 1 :]
    return ["/".join(inside[:depth]) for depth in range(1, min(len(inside), 3))]


def main(measured: Path) -> None:
    """Print the table."""
    counts: dict[str, list[int]] = defaultdict(lambda: [0, 0, 0, 0])
    for path, file in json.loads(measured.read_text(encoding="utf-8"))["files"].items():
        for room in rooms_of(path):
            for place, name in enumerate(name for kind in KINDS for name in kind):
                counts[room][place] += file["summary"][name]
    print(f"{'':32}{'lines':>20}{'branches':>20}")  # noqa: T201 - a script's own output
    for room, (lines, every_line, branches, every_branch) in sorted(counts.items()):
        shares = (share(lines, every_line), share(branches, every_branch))
        print(f"{room:32}{shares[0]:>20}{shares[1]:>20}")  # noqa: T201 - the same


def share(reached: int, every: int) -> str:
    """Return a count and its percentage, rounded down so that 100 % means all."""
    return f"{reached}/{every} {reached * 1000 // every / 10:.1f} %" if every else "-"


if __name__ == "__main__":
    main(Path(sys.argv[1]))
