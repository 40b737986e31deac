"""Handicap Indexes of 1,000,000 players x 20 scores, beside DuckDB and an exact NumPy partition in the same run.

One thread each, processor time; every method computes differentials from scores, slopes and ratings (made from a seed) and
the average of the lowest eight, to a tenth. "differ" counts players whose index is not that of exact integers. Then the
same on all cores and, where the address of a Dask scheduler is given (with ``distributed`` installed), on its cluster; elapsed time.

    python bench/handicap.py [--players 1000000] [--runs 5] [--dask tcp://HOST:8786]
"""

import argparse
import os
import statistics
import time
from concurrent.futures import ThreadPoolExecutor

import duckdb
import numpy as np

from marram.competition.handicaps.bulk_indexes import indexes_in_tenths
from marram.competition.handicaps.spread import indexes_spread

CHUNK = 8192


def records(players, seed=2):
    draw = np.random.default_rng(seed)
    return tuple(
        draw.integers(low, high, (players, 20), dtype=np.int16)
        for low, high in ((65, 121), (55, 156), (600, 781))
    )


def by_integers(scores, slopes, ratings):
    """All in whole numbers, with integer division and NumPy's own partition."""
    slopes = slopes.astype(np.int32)
    tenths = (226 * (10 * scores.astype(np.int32) - ratings) + slopes) // (2 * slopes)
    tenths.partition(7, axis=1)
    return ((2 * tenths[:, :8].sum(axis=1) + 8) // 16).astype(np.int32)


def partition(*arrays):
    return np.concatenate(
        [
            by_integers(*(one[start : start + CHUNK] for one in arrays))
            for start in range(0, len(arrays[0]), CHUNK)
        ]
    )


def in_duckdb(scores, slopes, ratings):
    person = np.repeat(np.arange(len(scores), dtype=np.int32), 20)
    told = {
        "person": person,
        "score": scores.ravel(),
        "slope": slopes.ravel(),
        "rating": ratings.ravel() / 10,
    }
    database = duckdb.connect(config={"threads": 1})
    database.register("given", told)
    database.execute("create table record as select * from given")
    ask = (
        "select floor(list_avg(min(floor(1130.0::double / slope * (score - rating) + 0.5), 8)) + 0.5) as tenths "
        "from record group by person order by person"
    )
    return lambda: database.execute(ask).fetchnumpy()["tenths"]


def main() -> None:
    asked = argparse.ArgumentParser()
    asked.add_argument("--players", type=int, default=1_000_000)
    asked.add_argument("--runs", type=int, default=5)
    asked.add_argument("--dask", default="")
    given = asked.parse_args()
    arrays = records(given.players)
    ways = {
        "marram, bulk indexes": lambda: indexes_in_tenths(*arrays),
        "numpy partition, exact integers": lambda: partition(*arrays),
        "duckdb, min(d, 8)": in_duckdb(*arrays),
    }
    exact = np.minimum(by_integers(*arrays), 540)
    times = {name: [] for name in ways}
    differ = {
        name: int((np.minimum(np.asarray(way(), np.int64), 540) != exact).sum()) for name, way in ways.items()
    }
    for _ in range(given.runs):
        for name, way in ways.items():
            before = time.process_time()
            way()
            times[name].append(time.process_time() - before)
    ours = statistics.median(times["marram, bulk indexes"])
    print(f"{given.players:,} players x 20 scores, one thread, processor time, median of {given.runs}")
    for name, taken in times.items():
        median = statistics.median(taken)
        print(f"{name:34} {median:7.3f} s   {median / ours:5.2f} x ours   {differ[name]:,} differ")
    cores = os.cpu_count() or 1
    with ThreadPoolExecutor(cores) as executor:
        spread(f"marram, on {cores} cores", executor, arrays, exact, given.runs)
    if given.dask:
        from distributed import Client  # only where a cluster is at hand

        with Client(given.dask) as client:
            there = len(client.scheduler_info()["workers"])
            spread(f"marram, {there} Dask workers", client.get_executor(), arrays, exact, given.runs)


def spread(name, executor, arrays, exact, runs):
    """Print how long an executor takes, and what differs."""
    taken = []
    for _ in range(runs):
        before = time.perf_counter()
        found = indexes_spread(executor, *arrays)
        taken.append(time.perf_counter() - before)
    differ = int((found != exact).sum())
    print(f"{name:34} {statistics.median(taken):7.3f} s elapsed   {differ:,} differ")


if __name__ == "__main__":
    main()
