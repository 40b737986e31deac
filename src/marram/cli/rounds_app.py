"""The commands ``marram next-round``, ``marram calendar``, ``marram sunset`` and ``marram matches``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import CourseMap, Json

matches_app = typer.Typer(
    help="Brackets with seeds and byes, and round robins.", rich_markup_mode=None, no_args_is_help=True
)
Entries = Annotated[Path, typer.Argument(help="The entries: CSV or XLSX.", metavar="FILE")]


def next_round(
    cards: Annotated[
        Path, typer.Argument(help="Conditions, holes and cards, as a JSON file.", metavar="CARDS")
    ],
    seed: Annotated[str, typer.Option(help="The published seed, for who has the same score.")],
    first: Annotated[str, typer.Option(metavar="HH:MM", help="The first starting time.")] = "08:00",
    second: Annotated[
        str, typer.Option(metavar="HH:MM", help="A second start, for the second half of the groups.")
    ] = "",
    minutes: Annotated[int, typer.Option(help="Between two groups of a tee; 0 for a shotgun start.")] = 10,
    places: Annotated[int, typer.Option(help="Players of a group, 2 to 4.")] = 3,
    tee: Annotated[list[int] | None, typer.Option(help="A hole that groups start at. Repeat.")] = None,
    score: Annotated[
        str | None,
        typer.Option(help="gross or net; default the one that decides the cut, or the first that counts."),
    ] = None,
    leaders_first: Annotated[bool, typer.Option("--leaders-first", help="The leaders start first.")] = False,
    before: Annotated[
        list[Path] | None,
        typer.Option(
            help="The draw of a round before, as 'marram draw --json' prints it, the latest last. Repeat."
        ),
    ] = None,
    turn: Annotated[
        bool,
        typer.Option("--turn", help="Early ones start late and from the other tee, instead of by score."),
    ] = False,
    not_again: Annotated[
        bool, typer.Option("--not-again", help="Nobody plays again with whom they played in these rounds.")
    ] = False,
    clubs_apart: Annotated[
        bool, typer.Option("--clubs-apart", help="No two of one club in a group.")
    ] = False,
    json: Json = False,
) -> None:
    """Draw a further round by the scores so far, after the cut (exit code 2 where wishes clash)."""
    from marram.cli.next_round import Slots, tell_next_round
    from marram.services.field.draw_file import read_draw
    from marram.services.field.next_round import FurtherRound

    rounds = [read_draw(one) for one in before or ()]
    groups = rounds[-1] if rounds else ()
    earlier = [group for one in rounds[:-1] for group in one]
    by = FurtherRound(seed, leaders_first, groups, turn, not_again, clubs_apart, earlier)
    tell_next_round(cards, Slots(first, minutes, places, tuple(tee or [1]), second), by, score, json)


def calendar(
    event: Annotated[Path, typer.Argument(help="The event, as a JSON file.", metavar="EVENT")],
    file: Annotated[Path, typer.Argument(help="The calendar to write.", metavar="FILE.ics")],
    time_zone: Annotated[
        str, typer.Option(metavar="ZONE", help="The zone of the clocks at the course, e.g. Europe/London.")
    ],
    player: Annotated[
        list[str] | None, typer.Option(help="Only this player's start. Repeat; default everybody's.")
    ] = None,
    round_: Annotated[int, typer.Option("--round", help="The number of the round.")] = 1,
    draw: Annotated[
        Path | None,
        typer.Option(
            help="The groups of the round, as 'marram draw --json' prints them; default those of EVENT."
        ),
    ] = None,
    minutes: Annotated[
        int | None,
        typer.Option(min=1, help="How long a round takes; default minutes_of_play of EVENT, or 270."),
    ] = None,
    change: Annotated[
        int, typer.Option(min=0, help="0 at first, one more each time that starting times changed.")
    ] = 0,
) -> None:
    """Write starting times as iCalendar (RFC 5545)."""
    from marram.cli.times import write_calendar

    write_calendar(event, file, time_zone, player or [], round_, draw, minutes, change)


def sunset(
    course: CourseMap,
    day: Annotated[str, typer.Option(metavar="DATE", help="The day, e.g. 2025-06-21.")],
    time_zone: Annotated[
        str, typer.Option(metavar="ZONE", help="The zone of the clocks at the course, e.g. Europe/London.")
    ],
    minutes: Annotated[int, typer.Option(min=1, help="How long the last group takes.")] = 270,
    json: Json = False,
) -> None:
    """Tell when the sun sets at a course, and when the last group must have started to be home by then."""
    from marram.cli.times import tell_sunset

    tell_sunset(course, day, time_zone, minutes, json)


@matches_app.command("bracket")
def matches_bracket(
    file: Entries,
    seed: Annotated[str, typer.Option(help="The published seed, for who is not seeded.")],
    seeded: Annotated[
        list[str] | None, typer.Option(metavar="KEY", help="Who is seeded, the highest first. Repeat.")
    ] = None,
    by_handicap: Annotated[
        bool,
        typer.Option("--by-handicap", help="Number the others by handicap, the lowest first, not by lot."),
    ] = False,
    winner: Annotated[
        list[str] | None,
        typer.Option(metavar="ROUND.MATCH=KEY", help="Who won a match, both counted from 1. Repeat."),
    ] = None,
    json: Json = False,
) -> None:
    """Draw a bracket with seeds and byes, and move it on as matches are decided."""
    from marram.cli.matches import tell_bracket

    tell_bracket(file, seed, seeded or [], winner or [], by_handicap=by_handicap, as_json=json)


@matches_app.command("round-robin")
def matches_round_robin(file: Entries, json: Json = False) -> None:
    """Let everybody meet everybody once, round by round."""
    from marram.cli.matches import tell_round_robin

    tell_round_robin(file, json)
