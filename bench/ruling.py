"""One ruling through marram.rule, reasons included, beside general-purpose engines in the same process.

The peers decide a synthetic table of 300 rows over 25 facts (2-6 answers each, 2-6 tests a row, seeded), the
first row that fits: zen-engine 2 as a decision table, and one generated Python if-chain. marram decides the
published cases of tests/published. p50 is the median over single calls.
"""

import json
import random
import statistics
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).parents[1]))

import marram
from tests.published.cases import all_cases

FACTS, ROWS, CASES = 25, 300, 2000


def table(seed: int = 7) -> tuple[list[int], list[dict[int, list[int]]]]:
    """Return the number of answers of each fact, and rows of allowed answers by fact, rarest first."""
    rng = random.Random(seed)
    sizes = [rng.randint(2, 6) for _ in range(FACTS)]
    rows = []
    while len(rows) < ROWS:
        row = {
            fact: sorted(rng.sample(range(sizes[fact]), 2 if sizes[fact] >= 4 and rng.random() < 0.5 else 1))
            for fact in rng.sample(range(FACTS), rng.randint(2, 6))
        }
        chance = 1.0
        for fact, answers in row.items():
            chance *= len(answers) / sizes[fact]
        if chance < 0.06:
            rows.append(row)
    rows.sort(key=len, reverse=True)
    return sizes, rows


def if_chain(rows: list[dict[int, list[int]]]) -> Callable[[dict[str, str]], int]:
    """Return one generated function: an if per row."""
    lines = ["def decide(c):"]
    lines += [f"    f{fact:02d} = c['f{fact:02d}']" for fact in range(FACTS)]
    for number, row in enumerate(rows):
        tests = " and ".join(
            f"f{fact:02d} in {tuple(f'v{one}' for one in answers)!r}" for fact, answers in row.items()
        )
        lines += [f"    if {tests}:", f"        return {number}"]
    lines += ["    return -1"]
    space: dict[str, Any] = {}
    exec("\n".join(lines), space)  # noqa: S102 - the peer is a generated function
    return space["decide"]


def zen_table(rows: list[dict[int, list[int]]]) -> Callable[[dict[str, str]], int]:
    """Return a zen-engine decision table of the same rows, first hit."""
    import zen

    content = {
        "hitPolicy": "first",
        "inputs": [
            {"id": f"i{fact}", "name": f"f{fact:02d}", "field": f"f{fact:02d}"} for fact in range(FACTS)
        ],
        "outputs": [{"id": "o", "name": "row", "field": "row"}],
        "rules": [
            {
                "_id": str(number),
                "o": str(number),
                **{
                    f"i{fact}": ", ".join(f'"v{one}"' for one in row[fact]) if fact in row else ""
                    for fact in range(FACTS)
                },
            }
            for number, row in enumerate(rows)
        ],
    }
    nodes = [
        {"id": "in", "type": "inputNode", "name": "in", "position": {"x": 0, "y": 0}},
        {
            "id": "t",
            "type": "decisionTableNode",
            "name": "t",
            "position": {"x": 1, "y": 0},
            "content": content,
        },
        {"id": "out", "type": "outputNode", "name": "out", "position": {"x": 2, "y": 0}},
    ]
    edges = [
        {"id": "a", "sourceId": "in", "targetId": "t", "type": "edge"},
        {"id": "b", "sourceId": "t", "targetId": "out", "type": "edge"},
    ]
    decision = zen.ZenEngine().create_decision(json.dumps({"nodes": nodes, "edges": edges}))

    def decide(case: dict[str, str]) -> int:
        result = decision.evaluate(case)["result"]
        return int(result["row"]) if result and "row" in result else -1

    return decide


def microseconds(call: Callable[[Any], Any], inputs: list[Any], runs: int = 5) -> float:
    """Return the median of single calls, in microseconds, after one warm run."""
    for one in inputs:
        call(one)
    times = []
    for _ in range(runs):
        for one in inputs:
            start = time.perf_counter_ns()
            call(one)
            times.append(time.perf_counter_ns() - start)
    return statistics.median(times) / 1000


def main() -> None:
    sizes, rows = table()
    rng = random.Random(11)
    cases = [
        {f"f{fact:02d}": f"v{rng.randrange(size)}" for fact, size in enumerate(sizes)} for _ in range(CASES)
    ]
    chain, zen = if_chain(rows), zen_table(rows)
    assert all(chain(case) == zen(case) for case in cases[:300]), "the peers disagree"
    published = [
        (
            (case.raw["incident"], case.raw["facts"]),
            {
                "played_on": case.day,
                "form_of_play": case.form,
                "local_rules": case.raw.get("local_rules", ()),
            },
        )
        for case in all_cases()
        if "needs" not in case.raw["expect"]
    ]
    ours = microseconds(lambda case: marram.rule(*case[0], **case[1]), published)
    peers = {
        "generated if-chain": microseconds(chain, cases),
        "zen-engine table": microseconds(zen, cases[:400], 2),
    }
    print(f"marram.rule, {len(published)} published cases, reasons included: p50 {ours:.1f} µs")
    for name, figure in peers.items():
        print(f"{name}, {ROWS} rows: p50 {figure:.1f} µs; marram takes {ours / figure:.2f} times as long")


if __name__ == "__main__":
    main()
