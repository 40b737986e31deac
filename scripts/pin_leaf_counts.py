"""Write the number of leaves and graph vertices of each incident and edition, as the Rules now are."""

from pathlib import Path

from marram.rules.engine.counting import counts_text

TARGET = Path(__file__).parents[1] / "tests" / "rules" / "leaf_counts.txt"

if __name__ == "__main__":
    TARGET.write_text(counts_text(), encoding="utf-8")
