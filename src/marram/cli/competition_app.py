"""The commands of ``marram competition``, ``marram results`` and ``marram card``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import Facts, Form, Json, Maps, PlayedOn

competition_app = typer.Typer(
    help="The conditions of a competition, and what still stands between now and the first start.",
    rich_markup_mode=None,
    no_args_is_help=True,
)
results_app = typer.Typer(
    help="Results from cards, and why a place is what it is.", rich_markup_mode=None, no_args_is_help=True
)
card_app = typer.Typer(
    help="A card in the scoring area, and what the Rules make of it.",
    rich_markup_mode=None,
    no_args_is_help=True,
)

Cards = Annotated[Path, typer.Argument(help="Conditions, holes and cards, as a JSON file.", metavar="CARDS")]


@competition_app.command("ready")
def competition_ready(
    event: Annotated[
        str | None,
        typer.Argument(
            metavar="[EVENT]",
            help="The event, as a JSON file; with --records its name, where there are several.",
        ),
    ] = None,
    course: Annotated[
        str | None,
        typer.Option(
            help="The course map: GeoJSON or OpenStreetMap XML; with --records the course's name, where there are several."
        ),
    ] = None,
    maps: Maps = None,
    time_zone: Annotated[
        str | None,
        typer.Option(metavar="ZONE", help="Zone of the club's clocks, e.g. Europe/London: tells the sunset."),
    ] = None,
    minutes_of_play: Annotated[
        int | None,
        typer.Option(
            help="How long the last group is expected to take, in minutes, where the conditions do not say it."
        ),
    ] = None,
    records: Annotated[
        str | None, typer.Option(help="Records that keep the event, its map and its hole locations.")
    ] = None,
    round_: Annotated[
        int | None, typer.Option("--round", help="The number of the round, in records; default the next one.")
    ] = None,
    json: Json = False,
) -> None:
    """Check that the conditions hold together, and list what still stands between now and the first start."""
    from marram.cli.readiness import Wanted, show_readiness

    wanted = Wanted(event, course, maps, time_zone, minutes_of_play, records, round_)
    show_readiness(wanted, json)


@results_app.command("board")
def results_board(cards: Cards, json: Json = False) -> None:
    """Work out every result that the conditions ask for: gross and net, of the field, divisions and teams."""
    from marram.cli.competition import show_results

    show_results(cards, json)


@results_app.command("why")
def results_why(
    cards: Cards,
    side: Annotated[str, typer.Argument(help="Who, by name; or a team.")],
    score: Annotated[str | None, typer.Option(help="gross or net; default the first that counts.")] = None,
    division: Annotated[str | None, typer.Option(help="A division; default the whole field.")] = None,
    json: Json = False,
) -> None:
    """Tell why somebody, or a team, has a place: the comparison with the one before that decided, down to the hole."""
    from marram.cli.competition import show_why

    show_why(cards, side, score, division, json)


@results_app.command("series")
def results_series(
    cards: Annotated[
        list[Path],
        typer.Argument(help="The competitions in their order, each a file of cards.", metavar="CARDS…"),
    ],
    points: Annotated[
        str,
        typer.Option(
            metavar="N,N,N", help="Points of the first, the second place … Beyond them there are none."
        ),
    ],
    best: Annotated[
        int | None, typer.Option(min=1, help="How many of each player's competitions count.")
    ] = None,
    shared: Annotated[
        str, typer.Option(metavar="mean|full", help="Who shares a place gets the mean of the points, or all.")
    ] = "mean",
    score: Annotated[str | None, typer.Option(help="gross or net; default the first that counts.")] = None,
    json: Json = False,
) -> None:
    """Work out an order of merit over a series of competitions."""
    from marram.cli.series import show_series

    show_series(cards, points, best, shared, score, json)


@results_app.command("close")
def results_close(
    records: Annotated[
        str,
        typer.Argument(help="The records: a file, or postgresql://USER@HOST/DATABASE.", metavar="RECORDS"),
    ],
    event: Annotated[
        str | None, typer.Option(metavar="NAME", help="The event, where there are several.")
    ] = None,
    look: Annotated[
        bool, typer.Option("--look", help="Only tell what still stands between now and the close.")
    ] = False,
    note: Annotated[str, typer.Option(metavar="WORDS", help="A note beside the entry.")] = "",
    json: Json = False,
) -> None:
    """Close a competition, so that its result is final (Rule 20.2e); exit code 3 where something stands between."""
    from marram.cli.closing import close

    close(records, event, look=look, note=note, as_json=json)


@results_app.command("reopen")
def results_reopen(
    change: Annotated[
        str,
        typer.Argument(
            metavar="breach|administrative",
            help="A breach that came to light, or a mistake of the Committee.",
        ),
    ],
    fact: Facts = None,
    played_on: PlayedOn = None,
    form: Form = None,
    still_open: Annotated[bool, typer.Option("--open", help="The competition is not closed yet.")] = False,
    records: Annotated[
        str | None, typer.Option(help="Records that keep the competition; with --why it is reopened.")
    ] = None,
    event: Annotated[
        str | None, typer.Option(metavar="NAME", help="The event, where there are several.")
    ] = None,
    why: Annotated[
        str, typer.Option(metavar="WORDS", help="What is to be put right; reopens the result.")
    ] = "",
    json: Json = False,
) -> None:
    """Tell whether a closed result may still be changed (Rule 20.2), or ask the next question."""
    if records is not None:
        from marram.cli.closing import refuse_beside_records, reopen

        refuse_beside_records({"--played-on": played_on, "--form": form, "--open": still_open or None})
        reopen(records, event, change, fact or [], why, as_json=json)
    from marram.cli.series import show_reopening

    show_reopening(change, fact or [], played_on, form, closed=not still_open, as_json=json)


@card_app.command("rule")
def card_rule(
    card: Annotated[
        Path, typer.Argument(help="A card with what was entered, as a JSON file.", metavar="CARD")
    ],
    json: Json = False,
) -> None:
    """Compare the figures of a card, lay the rulings beside it, and rule on what is wrong with it."""
    from marram.cli.competition import show_card

    show_card(card, json)
