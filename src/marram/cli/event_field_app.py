"""The commands of ``marram event`` about the field: entries, lots, withdrawals, the draw, officials."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.event_options import By, Note, OfCourse, OfEvent, RecordsAt, Round, Where, event_app
from marram.cli.paper_given import PaperOption
from marram.cli.shared_options import Json


@event_app.command("field")
def field(
    records: RecordsAt,
    output: Annotated[Path | None, typer.Option(help="Write who plays here, as CSV or XLSX.")] = None,
    event: OfEvent = None,
    course: OfCourse = None,
    json: Json = False,
) -> None:
    """Tell who plays, who waits for a place, who may not play, and who withdrew."""
    from marram.cli.event_field import tell_field

    tell_field(Where(records, event, course), output, json)


@event_app.command("take")
def take(
    records: RecordsAt,
    file: Annotated[Path, typer.Argument(help="The list: CSV or XLSX.", metavar="FILE")],
    columns: Annotated[
        Path | None,
        typer.Option(
            help="Which headings tell what (JSON); without it as lists before were read. Read where it is there, else written."
        ),
    ] = None,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Take every entry of a list, or none where a line is at fault; with lots cast before, they wait."""
    from marram.cli.event_field import take

    take(Where(records, event, course, by), file, columns)


@event_app.command("lots")
def lots(
    records: RecordsAt,
    seed: Annotated[str, typer.Option(help="The published seed.")],
    places: Annotated[int, typer.Option(min=1, help="How many can play.")],
    handicap_limit: Annotated[
        str | None, typer.Option(help="The highest Handicap Index that may play.")
    ] = None,
    lowest_handicaps: Annotated[
        bool, typer.Option("--lowest-handicaps", help="Lowest handicaps first; equal ones by lot.")
    ] = False,
    publish: Annotated[
        Path | None, typer.Option(help="Write the ballot here, as JSON from which anybody can draw it again.")
    ] = None,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Cast lots for the places of an event, once."""
    from marram.cli.event_field import cast_lots

    where = Where(records, event, course, by)
    cast_lots(where, seed, places, handicap_limit, publish, lowest=lowest_handicaps)


@event_app.command("withdraw")
def withdraw(
    records: RecordsAt,
    name: Annotated[str, typer.Argument(help="Who withdraws.", metavar="NAME")],
    note: Note = "",
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Have somebody withdraw before the start; the first reserve moves up into the very place."""
    from marram.cli.event_field import withdraw

    withdraw(Where(records, event, course, by), name, note)


@event_app.command("put-right")
def put_right(
    records: RecordsAt,
    name: Annotated[str, typer.Argument(help="Whose entry.", metavar="NAME")],
    index: Annotated[
        str | None,
        typer.Option(metavar="INDEX", help="The Handicap Index; '+1.4' for a plus one, '-' for none."),
    ] = None,
    sex: Annotated[str | None, typer.Option(metavar="SEX", help="Whose ratings hold: m or f.")] = None,
    tees: Annotated[
        str | None, typer.Option(metavar="TEES", help="The tees; '' for those of the competition.")
    ] = None,
    playing: Annotated[
        str | None,
        typer.Option("--playing-handicap", metavar="HANDICAP", help="As it is given; '-': it is worked out."),
    ] = None,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Put right what an entry says, as long as the competition is not closed; what is not named stays."""
    from marram.cli.event_field import put_right

    says = {"handicap_index": index, "sex": sex, "tees": tees, "playing_handicap": playing}
    put_right(Where(records, event, course, by), name, says)


@event_app.command("draw")
def draw(
    records: RecordsAt,
    seed: Annotated[str, typer.Option(help="The published seed of the draw.")],
    round_: Round = 1,
    first: Annotated[str, typer.Option(metavar="HH:MM", help="The first starting time.")] = "08:00",
    second: Annotated[
        str, typer.Option(metavar="HH:MM", help="A second start, for the second half of the groups.")
    ] = "",
    minutes: Annotated[
        int, typer.Option(min=0, max=120, help="Between two groups of a tee; 0 for a shotgun start.")
    ] = 10,
    places: Annotated[int, typer.Option(help="Players of a group, 1 to 4.")] = 3,
    tee: Annotated[list[int] | None, typer.Option(help="A hole that groups start at. Repeat.")] = None,
    order: Annotated[
        str,
        typer.Option(help="seed, handicap (the lowest first) or score (after the cut, the leaders last)."),
    ] = "seed",
    clubs_apart: Annotated[
        bool, typer.Option("--clubs-apart", help="No two of one club in a group.")
    ] = False,
    not_again: Annotated[
        bool, typer.Option("--not-again", help="Nobody again with whom they played in a round before.")
    ] = False,
    wish: Annotated[
        list[str] | None,
        typer.Option(metavar="LINE", help="A wish, as on the page of the draw. Repeat."),
    ] = None,
    keep: Annotated[bool, typer.Option("--keep", help="Have the round start as it was drawn.")] = False,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
    json: Json = False,
) -> None:
    """Draw a round of the event and show it, or the wishes that clash (exit code 2); with --keep it starts so."""
    from marram.cli.event_field import DrawAsked, draw_round

    tees = tuple(tee or [1])
    asked = DrawAsked(
        seed, first, second, minutes, places, tees, order, clubs_apart, not_again, tuple(wish or ())
    )
    draw_round(Where(records, event, course, by), round_, asked, keep=keep, as_json=json)


@event_app.command("officials")
def officials(
    records: RecordsAt,
    round_: Round = 1,
    seed: Annotated[str, typer.Option(help="Propose places by this seed.")] = "",
    at: Annotated[
        list[str] | None, typer.Option(metavar="NAME=PLACE", help="Where an official is to be. Repeat.")
    ] = None,
    keep: Annotated[bool, typer.Option("--keep", help="Keep the places that are shown.")] = False,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Tell where officials are in a round; propose their places, or say them, and keep them."""
    from marram.cli.event_field import officials

    officials(Where(records, event, course, by), round_, seed, at or [], keep=keep)


@event_app.command("holes")
def holes(
    records: RecordsAt,
    day: Annotated[str, typer.Option(metavar="DATE", help="The day of play.")],
    locations: Annotated[
        Path | None, typer.Option(help="These locations, as 'marram course holes --json' prints them.")
    ] = None,
    seed: Annotated[
        int | None, typer.Option(help="Propose locations by this seed, also where some are kept.")
    ] = None,
    who: Annotated[
        str, typer.Option("--who", "--by", metavar="NAME", help="Who sets them (name or initials).")
    ] = "",
    keep: Annotated[bool, typer.Option("--keep", help="Keep them as the holes of the day.")] = False,
    pdf: Annotated[Path | None, typer.Option(help="Write the sheet here, as PDF.")] = None,
    paper: PaperOption = "a4",
    for_players: Annotated[
        bool, typer.Option("--for-players", help="Leave what speaks against a place out of the sheet.")
    ] = False,
    course: OfCourse = None,
) -> None:
    """Tell where the holes of a day are: as kept, else proposed away from where they were; set them, print their sheet."""
    from marram.cli.event_holes import HolesAsked, set_holes

    asked = HolesAsked(day, locations, seed, who, keep, pdf, paper, for_players)
    set_holes(records, course, asked)
