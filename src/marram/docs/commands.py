"""docs/cli.md: every command and its options, as the command line declares them."""

from collections.abc import Iterator
from typing import Any

from typer.main import get_command

from marram.cli.app import application
from marram.docs.documents import documents_section

HEAD = """# The command line

Generated from the commands themselves by `make docs`.

Exit codes: 0 decided, 1 our fault, 2 bad input, 3 more facts needed, 4 left to judgement or not covered, 130 stopped from the keyboard, 141 nobody reads what is printed any more (`| head`).
"""


def commands_page() -> str:
    """Return the page."""
    return HEAD + "".join(_sections(get_command(application()), "marram")) + documents_section()


def _sections(command: Any, path: str) -> Iterator[str]:
    for name, child in getattr(command, "commands", {}).items():
        here = f"{path} {name}"
        if child.hidden:  # the name a command had before
            continue
        if hasattr(child, "commands"):
            yield from _sections(child, here)
            continue
        yield f"\n## {here}\n\n{(child.help or '').strip()}\n\n"
        for parameter in child.params:
            if parameter.name == "help":
                continue
            names = (
                ", ".join(f"`{one}`" for one in parameter.opts)
                if parameter.param_type_name == "option"
                else f"`{parameter.name.upper()}`"
            )
            yield f"- {names}: {getattr(parameter, 'help', '') or ''}\n"
