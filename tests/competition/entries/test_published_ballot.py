"""A ballot that is published can be drawn again from its file alone, with nothing of marram."""

import json
import subprocess
import sys
from hashlib import sha256
from pathlib import Path

import pytest

from tests.cli.running import marram

AGAIN = """
import hashlib, json, sys
published = json.load(open(sys.argv[1], encoding="utf-8"))
seed, index = published["seed"], {one["key"]: one.get("handicap_index") for one in published["order"]}
def drawn_by(key):
    lot = hashlib.sha256((seed + "\\n" + key).encode("utf-8")).hexdigest()
    by_index = published["lowest_handicaps_first"]
    return (by_index and index[key] is None, float(index[key] or 0) if by_index else 0, lot)
able = [key for key in published["entries"] if key not in published["refused"]]
order = sorted(able, key=drawn_by)
print(json.dumps({"playing": order[: published["places"]], "reserves": order[published["places"] :]}))
"""
"""What anybody may write who reads the method that stands in the file: ten lines of their own."""

NAMES = [f"Ö{letter}lander {number}" for letter in "abc" for number in range(14)]


@pytest.mark.parametrize("lowest", [False, True], ids=["by lot", "lowest first"])
@pytest.mark.parametrize("limit", [None, "30"])
def test_anybody_can_draw_it_again(tmp_path: Path, lowest: bool, limit: str | None) -> None:
    """Who plays and who waits, in the very order, from the published file; and its digest is that of its bytes."""
    entries = tmp_path / "entries.csv"
    rows = [f"{name},{(at * 37) % 54 / 1.0},Quillsand" for at, name in enumerate(NAMES)]
    entries.write_text("\n".join(["Name,Handicap Index,Club", *rows]), encoding="utf-8")
    more = [*(["--lowest-handicaps"] if lowest else []), *(["--handicap-limit", limit] if limit else [])]
    public = tmp_path / "ballot.json"
    asked = ("entries", "ballot", str(entries), "--seed", "3 17 22 41", "--places", "20", *more)
    told = marram(*asked, "--publish", str(public), "--json")
    assert told.code == 0, told.err
    assert sha256(public.read_bytes()).hexdigest() in told.err

    run = [sys.executable, "-I", "-c", AGAIN, str(public)]
    again = json.loads(subprocess.run(run, capture_output=True, text=True, check=True).stdout)
    drawn = json.loads(told.out)
    for part in ("playing", "reserves"):
        assert again[part] == [one["key"] for one in drawn[part]]
    assert len(again["playing"]) == 20


def test_another_seed_draws_another_order(tmp_path: Path) -> None:
    """The file says the seed that it was drawn by, and its order follows from no other."""
    entries, public = tmp_path / "entries.csv", tmp_path / "ballot.json"
    entries.write_text("Name\n" + "\n".join(NAMES), encoding="utf-8")
    orders = []
    for seed in ("1", "2"):
        args = ("--seed", seed, "--places", "9", "--publish", str(public))
        assert marram("entries", "ballot", str(entries), *args).code == 0
        orders.append([one["key"] for one in json.loads(public.read_text(encoding="utf-8"))["order"]])
    assert sorted(orders[0]) == sorted(orders[1])
    assert orders[0] != orders[1]
