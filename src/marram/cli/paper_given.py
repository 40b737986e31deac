"""The size of paper as typed on the command line."""

from typing import Annotated

import typer

from marram.errors import InputError
from marram.paper.paper_size import PaperSize
from marram.said import one_of, said

PaperOption = Annotated[str, typer.Option(metavar="a4|letter", help="The paper of the sheet.")]


def paper_given(typed: str) -> PaperSize:
    """Return the size of paper that was typed.

    Raises:
        InputError: there is no such size.
    """
    known = [one.value for one in PaperSize]
    if typed.casefold() not in known:
        raise InputError(
            said("--paper is {typed}; give {known}.", typed=repr(typed), known=one_of(tuple(known)))
        )
    return PaperSize(typed.casefold())
