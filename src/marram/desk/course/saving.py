"""What every form that saves the map holds: who saves, from which day it is in force, on which version it rests."""

from datetime import date

from fastapi import Request
from fastapi.responses import HTMLResponse
from pydantic import BaseModel

from marram.desk.course.map_editing import read_day
from marram.desk.shell.workplace import show
from marram.errors import InputError
from marram.words.texts import text


class Saving(BaseModel):
    """The part of a form that signs what is saved.

    Attributes:
        base: the newest version that whoever saves has seen.
        who: who saves.
        in_force_from: the first day on which it holds, as typed.
    """

    base: int = 0
    who: str = ""
    in_force_from: str = ""

    def signed(self, *faults: str, unsigned: str) -> date:
        """Return the day it is in force from.

        Args:
            faults: what else is wrong with the form; told together with what is wrong with the signing.
            unsigned: what is said where nobody signed.

        Raises:
            InputError: the day cannot be read, nobody signed, or there were other faults; all are listed.
        """
        found = list(faults)
        day = None
        try:
            day = read_day(self.in_force_from)
        except InputError as error:
            found += error.faults
        if not self.who.strip():
            found.append(unsigned)
        if found or day is None:
            raise InputError(*found)
        return day


def not_kept(request: Request) -> HTMLResponse:
    """Return the page that says that this desk keeps no map, so that nothing can be saved."""
    return show(
        request,
        "map_editor.html",
        None,
        title=text("editor.title"),
        maps=None,
        not_kept=text("editor.not_kept"),
    )
