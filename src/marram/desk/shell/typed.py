"""What somebody typed into a form, where its fields are known only by what the page showed."""

from collections.abc import Mapping
from typing import Annotated

from fastapi import Depends, Request


async def _typed(request: Request) -> dict[str, str]:
    """Read a form, which waits for the network; whatever is done with it runs beside the event loop."""
    async with request.form() as form:
        return {key: value for key, value in form.items() if isinstance(value, str)}


Typed = Annotated[Mapping[str, str], Depends(_typed)]
"""The fields of the form sent, by name; a file is none."""
