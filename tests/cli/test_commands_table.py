"""The table of the commands, and the help that is made from it alone."""

import pytest
from typer.main import get_command

from marram.cli.app import COMMANDS, FORMER, application, names_alone
from marram.words.language import language
from tests.cli.running import marram


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_of_the_table_can_be_built(name: str) -> None:
    """Each row names a module and what is declared there, and the command built from it has a help."""
    command = get_command(application(name))

    assert list(command.commands) == [name]
    assert command.commands[name].help


def test_the_help_made_without_options_is_that_of_the_whole_application() -> None:
    """Names, help and what is hidden are the same, whether the commands are built or only named."""

    def shown(command: object) -> list[tuple[str, str, bool]]:
        return [(name, one.help, one.hidden) for name, one in command.commands.items()]  # type: ignore[attr-defined]

    assert shown(get_command(names_alone())) == shown(get_command(application()))
    assert {name for name, _, hidden in shown(get_command(names_alone())) if hidden} == FORMER


def test_a_language_that_is_not_there_is_said_in_english(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever the command, one sentence says which catalogue is missing, and it is bad input."""
    monkeypatch.setenv("MARRAM_LANGUAGE", "tlh")

    for arguments in (["--help"], ["rule", "ball_lost"], ["no_such_command"]):
        language.cache_clear()
        ended = marram(*arguments)

        assert ended.code == 2
        assert ended.err.startswith("MARRAM_LANGUAGE is 'tlh'")
        assert len(ended.err.splitlines()) == 1
    language.cache_clear()
