"""The commands by name, and where each is declared. Only the one that is asked for is loaded and built."""

import os
import sys
from collections.abc import Callable
from importlib import import_module

import typer
from typer.main import get_command

from marram.cli.exits import faults_as_exit_codes, open_streams, quiet_when_unread
from marram.cli.given_once import refuse_given_twice
from marram.words.place import region_of_locale, write_as, writing_in

COMMANDS = {
    "incidents": "book_app:incidents",
    "facts": "book_app:facts",
    "rule": "rulings_app:rule",
    "why": "rulings_app:why",
    "may": "rulings_app:may",
    "story": "rulings_app:story",
    "situation": "rulings_app:story",
    "situations": "teaching_app:situations",
    "quiz": "teaching_app:quiz",
    "changes": "teaching_app:changes",
    "briefing": "briefing_app:briefing_app",
    "examination": "examination_app:examination_app",
    "local-rules": "book_app:local_rules",
    "relief": "relief_app:relief",
    "draw": "draw_app:draw",
    "paper": "paper_app:paper",
    "next-round": "rounds_app:next_round",
    "calendar": "rounds_app:calendar",
    "sunset": "rounds_app:sunset",
    "serve": "desk_app:serve",
    "pocket": "book_app:pocket",
    "graph": "book_app:graph",
    "course": "course_app:course_app",
    "entries": "entries_app:entries_app",
    "handicap": "handicap_app:handicap_app",
    "records": "records_app:records_app",
    "competition": "competition_app:competition_app",
    "event": "event_app:event_app",
    "card": "competition_app:card_app",
    "results": "competition_app:results_app",
    "matches": "rounds_app:matches_app",
}
"""For each command the module of this package that declares it and the function, or the group of commands, there."""
FORMER = {"situation"}
"""Names that a command had before: they work and are not shown."""

Declared = typer.Typer | Callable[..., None]


def run() -> None:
    """Run the application; marram's own errors become messages and exit codes."""
    with quiet_when_unread(), faults_as_exit_codes():
        open_streams()
        write_as(writing_in(region_of_locale(os.environ)))
        name = sys.argv[1] if len(sys.argv) > 1 else ""
        command = get_command(application(name) if name in COMMANDS else names_alone())
        if os.environ.get("MARRAM_LANGUAGE"):
            from marram.cli.help import put_help_into_language

            put_help_into_language(command)
        refuse_given_twice(command, sys.argv[1:])
        command()


def application(*names: str) -> typer.Typer:
    """Return the application with these commands, or with all of them where none is named."""
    app = _empty()
    for name in names or COMMANDS:
        _add(app, name, _declared(name))
    return app


def names_alone() -> typer.Typer:
    """Return the application as far as its own help needs it: every command with its help, none that could be run.

    Typer reads the type hints of every command it holds, which takes longer than most rulings.
    """
    app = _empty()
    for name in COMMANDS:
        declared = _declared(name)
        if isinstance(declared, typer.Typer):
            _add(app, name, typer.Typer(help=declared.info.help, rich_markup_mode=None))
        else:
            _add(app, name, _named_alone(declared))
    return app


def _named_alone(command: Callable[..., None]) -> Callable[[], None]:
    def nothing() -> None:
        pass

    nothing.__doc__ = command.__doc__
    return nothing


def _empty() -> typer.Typer:
    app = typer.Typer(
        name="marram",
        help="The workbench of a golf rules official: facts of a situation to a ruling, with the relief drawn to scale. "
        "Advice only: the referee and the Committee decide.",
        rich_markup_mode=None,
        pretty_exceptions_enable=False,
        add_completion=False,
        no_args_is_help=True,
    )
    app.callback()(_always_a_group)
    return app


def _always_a_group() -> None:
    """Keep the name of the command a part of the command line when only one is built."""


def _declared(name: str) -> Declared:
    module, _, attribute = COMMANDS[name].partition(":")
    found: Declared = getattr(import_module(f"marram.cli.{module}"), attribute)
    return found


def _add(app: typer.Typer, name: str, declared: Declared) -> None:
    if isinstance(declared, typer.Typer):
        app.add_typer(declared, name=name)
    else:
        app.command(name, hidden=name in FORMER)(declared)
