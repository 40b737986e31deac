"""Processor time of the command line beside bare Python and bare imports.

Run:  python bench/startup.py [--runs 21]

Bytecode is cached, as it is for whoever has run a command before: in a folder of its own, so that nothing else
is measured and nothing is left behind. The commands take turns, and the least of each is shown: what disturbs a
run only ever adds to it. Processor time (user and system) keeps out what other programs do meanwhile.
"""

import argparse
import os
import resource
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path
from tempfile import TemporaryDirectory

from marram.demo import COURSE

MARRAM = str(Path(sys.executable).parent / "marram")
BARE, TYPER, SHAPELY = "python -c pass", "import typer", "import shapely"
LIBRARIES = "import typer, shapely, pyproj (all that a drawing is made with)"
ONE_THREAD = "import shapely, with one thread for matrices as marram has it"
HELP, RULING, RELIEF = "marram --help", "marram rule (one ruling)", "marram relief (one drawing)"
COMMANDS = {
    BARE: [sys.executable, "-c", "pass"],
    TYPER: [sys.executable, "-c", "import typer"],
    SHAPELY: [sys.executable, "-c", "import shapely"],
    LIBRARIES: [sys.executable, "-c", "import typer, shapely, pyproj"],
    ONE_THREAD: [
        sys.executable, "-c", "import os; os.environ['OPENBLAS_NUM_THREADS'] = '1'; import shapely",
    ],
    HELP: [MARRAM, "--help"],
    RULING: [
        MARRAM, "rule", "ball_moved_by_natural_forces", "--edition", "2023", "--form", "stroke_play", "--local-rule",
        "none", "--fact", "area_of_ball=general_area", "--fact", "new_place=same_area",
    ],
    RELIEF: [MARRAM, "relief", str(COURSE), "--hole", "7", "--ball", "3.9961,55.0078", "--svg", os.devnull],
}  # fmt: skip


def milliseconds(command: list[str], environment: Mapping[str, str]) -> float:
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run(command, capture_output=True, check=True, env=environment)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return (after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime) * 1000


def least_of_each(runs: int) -> dict[str, float]:
    with TemporaryDirectory() as bytecode:
        environment = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
        environment["PYTHONPYCACHEPREFIX"] = bytecode
        for command in COMMANDS.values():
            milliseconds(command, environment)
        rounds = [
            {name: milliseconds(command, environment) for name, command in COMMANDS.items()}
            for _ in range(runs)
        ]
    return {name: min(one[name] for one in rounds) for name in COMMANDS}


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--runs", type=int, default=21)
    least = least_of_each(parser.parse_args().runs)
    bare = least[BARE]
    for name, took in least.items():
        print(f"{name}: {took:.1f} ms, {took - bare:.1f} ms over bare Python")
    print(f"help is {least[HELP] / least[TYPER]:.2f} times 'import typer'")
    print(
        f"a ruling over bare Python is {(least[RULING] - bare) / (least[TYPER] - bare):.2f} times 'import typer'"
    )
    print(
        f"a relief drawing is {least[RELIEF] / least[SHAPELY]:.2f} times 'import shapely', "
        f"{least[RELIEF] / least[ONE_THREAD]:.2f} times the same with one thread for matrices"
    )


if __name__ == "__main__":
    main()
