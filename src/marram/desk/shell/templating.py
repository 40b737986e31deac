"""The page templates of every room, made ready once."""

from functools import cache
from pathlib import Path

from fastapi.templating import Jinja2Templates

from marram.desk.shell.wording import WORDING, in_their_language

ROOMS = ("shell", "rulings", "course", "holes", "competition")
"""The folders of the desk that hold templates, styles and scripts."""

DESK = Path(__file__).parents[1]


@cache
def templates() -> Jinja2Templates:
    """Return the page templates."""
    found = Jinja2Templates(directory=[DESK / room / "templates" for room in ROOMS])
    found.env.globals |= WORDING
    found.env.finalize = in_their_language
    return found
