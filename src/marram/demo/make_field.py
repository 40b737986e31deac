"""Make the invented field: 156 players of invented clubs with Handicap Indexes, always the same from one seed.

    python -m marram.demo.make_field

Names are put together from words of dunes, water and birds; none is taken from a person. It writes ``field.csv``.
"""

import csv
from pathlib import Path
from random import Random

FIELD = Path(__file__).with_name("field.csv")
"""The invented field, as ``marram entries read`` reads it."""

SEED = 20250621
PLAYERS = 156
CLUBS = (
    "Quillsand Links",
    "Dunlin Hythe",
    "Mereholt Heath",
    "Saltwick Strand",
    "Tarnmoss Park",
    "Gorsewater Down",
    "Plovermere Old Course",
    "Whinfell Warren",
)
_FIRST = ("Fen", "Maris", "Tob", "Isau", "Corv", "Linn", "Osr", "Perp", "Jor", "Ambr", "Tess", "Brim", "Oril", "Wend", "Sandr", "Hesk")  # fmt: skip
_FIRST_END = ("wyn", "ette", "iam", "ric", "ane", "olf", "enna", "imor", "ilda", "und", "iel", "asta")
_LAST = ("Quill", "Dun", "Mere", "Salt", "Tarn", "Gorse", "Plover", "Whin", "Samphire", "Lyme", "Knot", "Curlew", "Thrift", "Teal", "Marsh", "Sedge")  # fmt: skip
_LAST_END = (
    "sey",
    "beck",
    "holt",
    "wick",
    "ling",
    "away",
    "mew",
    "strand",
    "fallow",
    "thorpe-Reed",
    "gannet",
    "drift",
)


def invented_field(seed: int = SEED, players: int = PLAYERS) -> list[tuple[str, str, str, str, int, str]]:
    """Return players: name, Handicap Index as golfers write it, club, sex, year of birth, number."""
    draw = Random(seed)  # noqa: S311 - an invented field needs no secrecy
    names: list[str] = []
    while len(names) < players:
        first = draw.choice(_FIRST) + draw.choice(_FIRST_END)
        name = f"{first} {draw.choice(_LAST)}{draw.choice(_LAST_END)}"
        if name not in names:
            names.append(name)
    found = []
    for number, name in enumerate(names, start=1):
        tenths = min(max(round(draw.gauss(115, 70)), -28), 360)
        index = f"+{-tenths // 10}.{-tenths % 10}" if tenths < 0 else f"{tenths // 10}.{tenths % 10}"
        sex = draw.choice("mmf")
        found.append((name, index, draw.choice(CLUBS), sex, draw.randint(1948, 2008), f"Q{number:04d}"))
    return found


def main() -> None:
    """Write the field."""
    with FIELD.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, delimiter=";", lineterminator="\n")
        writer.writerow(("name", "handicap index", "club", "sex", "born", "number"))
        writer.writerows(invented_field())


if __name__ == "__main__":
    main()
