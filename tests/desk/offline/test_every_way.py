"""A phone without a network says what the desk says: every question in its order, every end in every word."""

import subprocess
from datetime import date
from pathlib import Path
from shutil import which

import pytest
from playwright._impl._driver import compute_driver_executable

from marram.desk.shell.assets import DESK
from marram.rules.editions import EDITION_2019, EDITION_2023, as_clarified
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.services.cases.conditions import Conditions
from marram.services.offline.book import book_bytes
from tests.desk.offline.every_way import lines

WALK = Path(__file__).with_name("every_way.mjs")

UNDER = {
    "2019": Conditions(as_clarified(EDITION_2019)),
    "2023": Conditions(as_clarified(EDITION_2023)),
    "an event": Conditions(
        date(2026, 6, 20), FormOfPlay.STROKE_PLAY, Sides.INDIVIDUAL, ("E-5", "F-17", "G-3", "K-4")
    ),
}
"""Both editions with nothing known of the competition, so that every condition is asked; and an event with Local Rules."""

NODE = which("node") or compute_driver_executable()[0]
"""Runs the script of the phone: the machine's own, or the one that the browser tests bring with them."""


@pytest.mark.parametrize("under", UNDER)
def test_the_phone_says_what_the_desk_says_on_every_way(under: str, tmp_path: Path) -> None:
    """Each way through each incident: the same questions, answers, stakes and reasons, and the same sheet at its end."""
    book = tmp_path / "book.json"
    book.write_bytes(book_bytes(UNDER[under]))

    walked = subprocess.run(
        [NODE, str(WALK), str(DESK / "offline" / "static"), str(book)],
        capture_output=True,
        text=True,
        check=True,
    ).stdout.splitlines()

    different = [pair for pair in zip(lines(UNDER[under]), walked, strict=True) if pair[0] != pair[1]]
    assert not different, f"{len(different)} of {len(walked)} differ: {different[:5]}"
    assert sum("\tend\t" in line for line in walked) > 2000
