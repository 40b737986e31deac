"""Drawn relief checked by the verifier of ``tests/relief/verifier`` on many balls; what it finds, by kind and map.

Run:  python bench/verify_relief.py [--balls 300] [--seed 1] [--only NAME ...] [--examples 2]

The demo course, the made maps and, where they are at hand beside the repository, the three open maps.
"""

import argparse
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from marram.demo import COURSE
from tests.relief.verifier.made_maps import COURSES, MAPS, made
from tests.relief.verifier.real_maps import as_geojson
from tests.relief.verifier.run import try_map

OPEN_MAPS = Path(__file__).parents[2] / "shared" / "open-data" / "courses"


def maps(folder, seed):
    """Yield (name, file, course) of every map at hand."""
    yield "demo", COURSE, None
    for name, number in (("links-18.geojson", False), ("clipped-13.osm", False), ("bare-19-lines.osm", True)):
        if (OPEN_MAPS / name).exists():
            yield name.partition(".")[0], as_geojson(OPEN_MAPS / name, folder, number=number), None
    for name in MAPS:
        yield name, made(name, folder, seed), COURSES.get(name)


def tried(name, file, course, balls, seed):
    """Check one map, showing how far it is."""
    start = time.process_time()

    def progress(tally):
        if sys.stderr.isatty():
            print(f"\r{name}: {tally.counts['balls']} balls", end="", file=sys.stderr)

    tally = try_map(file, balls, name=course, seed=seed, progress=progress)
    if sys.stderr.isatty():
        print("\r" + " " * 60 + "\r", end="", file=sys.stderr)
    counts = tally.counts
    print(
        f"{name:18} {counts['balls']:6,} balls {counts['areas']:7,} areas {counts['places']:12,} places "
        f"{len(tally.found):6,} violations {time.process_time() - start:7.1f} s",
        flush=True,
    )
    return tally


def table(tallies):
    """Print violations by kind and map, and what was refused."""
    kinds = sum((one.kinds for one in tallies.values()), Counter())
    names = list(tallies)
    print("\n" + " " * 44 + "  ".join(f"{n[:9]:>9}" for n in names) + "      all")
    for kind, whole in kinds.most_common():
        row = "  ".join(f"{one.kinds[kind] or '·':>9}" for one in tallies.values())
        print(f"{kind[:43]:43} {row} {whole:8,}")
    print(f"{'balls':43} " + "  ".join(f"{one.counts['balls']:>9}" for one in tallies.values()))
    for name, one in tallies.items():
        for words, count in one.refused.most_common(3):
            print(f"   {name}: {count} times: {words[:160]}")


def states(tallies):
    """Print what became of the options, by the kind of place."""
    every = sum((one.states for one in tallies.values()), Counter())
    for sort in dict.fromkeys(sort for sort, _, _ in every):
        mine = {(state, why): n for (s, state, why), n in every.most_common() if s == sort}
        print(
            f"{sort:22} "
            + ", ".join(f"{n} {state}{f' ({why})' if why else ''}" for (state, why), n in mine.items())
        )


def examples(tallies, count):
    """Print some violations of every kind."""
    for kind in sum((one.kinds for one in tallies.values()), Counter()):
        print(f"\n{kind}")
        found = [
            (name, *one) for name, tally in tallies.items() for one in tally.found if one[2].sort == kind
        ]
        for name, question, option, violation in found[:count]:
            rule = f"{option['citation']} {option['kind']}" if option else ""
            print(
                f"   {name}, hole {question.hole}, {question.edition}, {question.sort}, {rule}: {violation.what}\n"
                f"      ball {question.ball} crossing {question.crossing} previous {question.previous} "
                f"club {question.club_length} {'right' if question.right_handed else 'left'}"
            )


def main():
    """Check every map and print the table; exit 1 where anything was found."""
    given = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    given.add_argument("--balls", type=int, default=300, help="balls for each map")
    given.add_argument("--seed", type=int, default=1)
    given.add_argument("--only", nargs="*", help="names of maps")
    given.add_argument("--examples", type=int, default=0, help="violations of each kind to print in full")
    chosen = given.parse_args()
    tallies = {}
    with tempfile.TemporaryDirectory() as folder:
        for name, file, course in maps(Path(folder), chosen.seed):
            if not chosen.only or name in chosen.only:
                tallies[name] = tried(name, file, course, chosen.balls, chosen.seed)
        table(tallies)
        states(tallies)
        examples(tallies, chosen.examples)
    total = sum((one.counts for one in tallies.values()), Counter())
    found = sum(len(one.found) for one in tallies.values())
    print(
        f"\n{total['balls']:,} balls, {total['areas']:,} areas, {total['places']:,} places, "
        f"{total['verdicts']:,} verdicts asked one by one: {found:,} violations"
    )
    raise SystemExit(1 if found else 0)


if __name__ == "__main__":
    main()
