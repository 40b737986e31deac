"""Write what is pinned of the Rules as they now are: leaf counts, and the answers that no provision names."""

from pathlib import Path

from marram.rules.engine.counting import counts_text
from marram.rules.engine.otherwise import otherwise_text

PINNED = Path(__file__).parents[1] / "tests" / "rules"

if __name__ == "__main__":
    (PINNED / "leaf_counts.txt").write_text(counts_text(), encoding="utf-8")
    (PINNED / "otherwise.txt").write_text(otherwise_text(), encoding="utf-8")
