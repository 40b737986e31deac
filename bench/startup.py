"""Wall time of the command line beside bare Python and bare imports, median of 21 runs each."""

import statistics
import subprocess
import sys
import time
from pathlib import Path

MARRAM = [str(Path(sys.executable).parent / "marram")]
RULING = [
    *MARRAM, "rule", "ball_moved_by_natural_forces", "--edition", "2023", "--form", "stroke_play", "--local-rule", "none",
    "--fact", "area_of_ball=general_area", "--fact", "new_place=same_area",
]  # fmt: skip
COMMANDS = {
    "python -c pass": [sys.executable, "-c", "pass"],
    "import typer": [sys.executable, "-c", "import typer"],
    "import shapely": [sys.executable, "-c", "import shapely"],
    "marram --help": [*MARRAM, "--help"],
    "marram rule (one ruling)": RULING,
}


def milliseconds(command: list[str], runs: int = 21) -> float:
    times = []
    for _ in range(runs):
        start = time.perf_counter()
        subprocess.run(command, capture_output=True, check=False)
        times.append((time.perf_counter() - start) * 1000)
    return statistics.median(times)


def main() -> None:
    bare = 0.0
    for name, command in COMMANDS.items():
        took = milliseconds(command)
        bare = bare or took
        print(f"{name}: {took:.1f} ms, {took - bare:.1f} ms over bare Python")


if __name__ == "__main__":
    main()
