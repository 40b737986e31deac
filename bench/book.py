"""The whole book: time to enumerate it, its size, and the questions asked per ruling.

Questions are counted over the published cases of tests/published: the facts among a ruling's reasons, less
the conditions of the competition; with the map, less the facts that the map can hand over as well.
"""

import gzip
import json
import statistics
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from marram.rules.editions import EDITIONS
from marram.rules.engine.counting import count
from marram.rules.engine.export import graph_document
from marram.rules.engine.fact import DecidedBy
from marram.rules.facts import vocabulary
from marram.rules.incidents import INCIDENTS
from marram.rules.result import NeedFacts
from tests.published.cases import all_cases


def spread(values: list[int]) -> str:
    ordered = sorted(values)
    return f"median {statistics.median(ordered):g}, 95 % {ordered[int(0.95 * (len(ordered) - 1))]}"


def main() -> None:
    start = time.perf_counter()
    for day in EDITIONS:
        counts = [count(one.name, day) for one in INCIDENTS]
        leaves, size = (sum(column) for column in zip(*counts, strict=True))
        print(f"edition {day.year}: {len(INCIDENTS)} incidents, {leaves} leaves, {size} graph vertices")
    print(f"enumerated and reduced in {time.perf_counter() - start:.2f} s")
    whole = json.dumps([graph_document(one.name) for one in INCIDENTS], separators=(",", ":")).encode()
    print(f"exported graph: {len(whole) / 1e6:.2f} MB, {len(gzip.compress(whole)) / 1e6:.3f} MB compressed")
    facts = vocabulary()
    conditions = {"date_of_play", "form_of_play", "sides"} | {
        name for name in facts if name.startswith("local_rule_")
    }
    without, with_map = [], []
    for case in all_cases():
        result = case.run()
        if isinstance(result, NeedFacts):
            continue
        asked = [reason.fact for reason in result.reasons if reason.fact not in conditions]
        without.append(len(asked))
        with_map.append(sum(facts[name].decided_by is not DecidedBy.MAP for name in asked))
    print(f"questions per ruling over {len(without)} published cases: {spread(without)}")
    print(f"with the map's answers handed over: {spread(with_map)}")


if __name__ == "__main__":
    main()
