"""The commands of ``marram event`` about the scoring area: cards entered, settled, returned, ruled."""

from typing import Annotated

import typer

from marram.cli.event_options import By, Note, OfCourse, OfEvent, RecordsAt, Round, Where, Who, event_app
from marram.cli.shared_options import Json

Ball = Annotated[
    str, typer.Option("--ball", metavar="NAME", help="Whose ball, where partners each play one.")
]


@event_app.command("cards")
def cards(
    records: RecordsAt, round_: Round = 1, event: OfEvent = None, course: OfCourse = None, json: Json = False
) -> None:
    """List the cards of a round: not in, being entered, in, with a question open, out."""
    from marram.cli.event_cards import list_cards

    list_cards(Where(records, event, course), round_, json)


@event_app.command("card")
def card(
    records: RecordsAt,
    who: Who,
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    json: Json = False,
) -> None:
    """Show a card: figures, rulings beside it, what is to be done, what the Rules ask or rule."""
    from marram.cli.event_cards import show_card

    show_card(Where(records, event, course), who, round_, json)


@event_app.command("enter")
def enter(
    records: RecordsAt,
    who: Who,
    given_by: Annotated[
        str, typer.Option(help="Whose figures: player, marker, or scorer (told from the course).")
    ],
    scores: Annotated[
        str,
        typer.Option(help="All holes in their order, with '-' for no score and '.' for one not told yet."),
    ] = "",
    hole: Annotated[
        list[str] | None, typer.Option(metavar="HOLE=SCORE", help="The score of one hole. Repeat.")
    ] = None,
    ball: Ball = "",
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Enter figures of a card; what was entered before and differs is corrected."""
    from marram.cli.event_cards import enter

    enter(Where(records, event, course, by), who, round_, given_by, scores, hole or [], ball)


@event_app.command("settle")
def settle(
    records: RecordsAt,
    who: Who,
    ruling: Annotated[int, typer.Argument(help="The number of the ruling in the log.", metavar="NUMBER")],
    how: Annotated[str, typer.Argument(help="included, not_included or does_not_concern.", metavar="HOW")],
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Say whether the penalty of a ruling beside a card is in its scores."""
    from marram.cli.event_cards import settle

    settle(Where(records, event, course, by), who, round_, ruling, how)


@event_app.command("return")
def return_(
    records: RecordsAt,
    who: Who,
    not_certified: Annotated[
        list[str] | None,
        typer.Option(metavar="BY", help="Whose certification is missing: player or marker. Repeat."),
    ] = None,
    at: Annotated[str, typer.Option(metavar="HH:MM", help="When it was returned; default now.")] = "",
    promptly: Annotated[str, typer.Option(help="Whether that was promptly: yes or no.")] = "",
    handicap: Annotated[
        list[str] | None,
        typer.Option(
            metavar="[NAME=]HANDICAP",
            help="The handicap that the card shows, '+2' for a plus one, '-' for none; with partners of each.",
        ),
    ] = None,
    as_it_is: Annotated[
        bool,
        typer.Option("--as-it-is", help="It has left the scoring area with figures that differ or lack."),
    ] = False,
    note: Note = "",
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Enter the return of a card; from then on nothing on it may be changed (Rule 3.3b(2))."""
    from marram.cli.event_cards import Brought, bring_in

    brought = Brought(tuple(not_certified or ()), at, promptly, tuple(handicap or ()), as_it_is, note)
    bring_in(Where(records, event, course, by), who, round_, brought)


@event_app.command("answer")
def answer(
    records: RecordsAt,
    who: Who,
    finding: Annotated[
        str, typer.Argument(help="The finding that asks, as the card shows it.", metavar="FINDING")
    ],
    value: Annotated[str, typer.Argument(help="The answer.", metavar="VALUE")],
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Answer what the Rules ask about a card."""
    from marram.cli.event_cards import answer

    answer(Where(records, event, course, by), who, round_, finding, value)


@event_app.command("found-out")
def found_out(
    records: RecordsAt,
    who: Who,
    score: Annotated[str, typer.Argument(help="The hole and its actual score.", metavar="HOLE=SCORE")],
    ball: Ball = "",
    note: Note = "",
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Enter the actual score of a hole, found out after the return; also after the close (Rule 20.2e)."""
    from marram.cli.event_cards import found_out

    found_out(Where(records, event, course, by), who, round_, score, ball, note)


@event_app.command("end")
def end(
    records: RecordsAt,
    who: Who,
    how: Annotated[str, typer.Argument(help="disqualified, withdrawn or no_return.", metavar="HOW")],
    citation: Annotated[
        str, typer.Option(metavar="RULE", help="The Rule of a disqualification, such as 1.2b.")
    ] = "",
    note: Note = "",
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """End a round without a card that counts."""
    from marram.cli.event_cards import end

    end(Where(records, event, course, by), who, round_, how, citation, note)


@event_app.command("take-back")
def take_back(
    records: RecordsAt,
    who: Who,
    why: Annotated[str, typer.Option(metavar="WORDS", help="Why it is taken back.")],
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Take a return, or an end of the round, back that was entered by mistake; both entries stay in the log."""
    from marram.cli.event_cards import back

    back(Where(records, event, course, by), who, round_, why)
