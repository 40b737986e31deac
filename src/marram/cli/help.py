"""The help of the commands in the reader's language; in English it stands as it is declared."""

import re
from typing import Any

from marram.words.language import translate


def put_help_into_language(command: Any) -> None:
    """Translate the help of a command, of its arguments and options, and of the commands below it."""
    command.help = translate()(flat(command.help or ""))
    for one in command.params:
        if getattr(one, "help", None):
            one.help = translate()(one.help)
    for below in getattr(command, "commands", {}).values():
        put_help_into_language(below)


def flat(help: str) -> str:
    """Return help on one line, as it is a message of the catalogue."""
    return re.sub(r"\s+", " ", help).strip()
