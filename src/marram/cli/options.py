"""Options that several commands share."""

from typing import Annotated, Optional

import typer

Json = Annotated[bool, typer.Option("--json", help="Print JSON instead of text.")]
PlayedOn = Annotated[
    str | None, typer.Option("--played-on", metavar="DATE", help="Day of the round; default today.")
]
Edition = Annotated[
    str | None, typer.Option("--edition", metavar="YEAR", help="2019 or 2023 (teaching: 2016), not a day.")
]
Form = Annotated[Optional[str], typer.Option("--form", help="Form of play, e.g. stroke_play or match_play.")]  # noqa: UP045
LocalRules = Annotated[
    Optional[list[str]],  # noqa: UP045
    typer.Option(
        "--local-rule", metavar="CODE", help="A Model Local Rule in force, e.g. E-5; 'none' for none. Repeat."
    ),
]
Facts = Annotated[
    Optional[list[str]],  # noqa: UP045
    typer.Option("--fact", metavar="NAME=VALUE", help="A fact that is known. Repeat."),
]
