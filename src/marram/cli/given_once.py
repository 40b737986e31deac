"""An option that holds one value is given once: the last of several would silently take the place of the others."""

from collections import Counter
from typing import Any

from marram.errors import InputError


def refuse_given_twice(command: Any, given: list[str]) -> None:
    """Look through what is given to a command, and to the commands below it, before anything of it is done.

    Args:
        command: a command of typer, or a group of them.
        given: the command line after the command's name.

    Raises:
        InputError: an option that holds one value is given more than once; every such option is named.
    """
    while command is not None:
        parser = command.make_parser(command.context_class(command, resilient_parsing=True))
        parser.allow_interspersed_args = command.allow_interspersed_args
        _, rest, order = parser.parse_args(args=list(given))
        _refuse(order)
        command = getattr(command, "commands", {}).get(rest[0]) if rest else None
        given = rest[1:]


def _refuse(order: list[Any]) -> None:
    times = Counter(
        max(one.opts, key=len)
        for one in order
        if one.param_type_name == "option" and not (one.multiple or one.is_flag or one.count)
    )
    twice = [option for option, count in times.items() if count > 1]
    if twice:
        from marram.words.texts import text

        raise InputError(*(text("cli.given_twice", option=option) for option in twice))
