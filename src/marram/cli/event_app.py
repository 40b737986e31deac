"""The commands of ``marram event``: what stands between, boards, ties, lists made public, matches and the bracket."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli import event_cards_app, event_field_app
from marram.cli.event_options import By, OfCourse, OfEvent, RecordsAt, Round, Where, Who, event_app
from marram.cli.shared_options import Json

__all__ = ["event_app", "event_cards_app", "event_field_app"]

Tees = Annotated[list[int] | None, typer.Option("--tee", help="A hole that groups start at. Repeat.")]


@event_app.command("conditions")
def conditions(
    records: RecordsAt,
    change: Annotated[
        Path | None,
        typer.Option(
            metavar="FILE", help="Change the conditions that this JSON object names; null takes one out."
        ),
    ] = None,
    day: Annotated[
        list[str] | None,
        typer.Option(
            metavar="ROUND=DAY",
            help="Move a round without scores to another day, such as 2=2026-06-21. Repeat.",
        ),
    ] = None,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
    json: Json = False,
) -> None:
    """Show the conditions, or change some as long as the competition is not closed; what they were stays in the log."""
    from marram.cli.event_conditions import tell_conditions

    tell_conditions(Where(records, event, course, by), change, day or [], json)


@event_app.command("board")
def board(
    records: RecordsAt,
    output: Annotated[
        Path | None, typer.Option(help="Write the results here instead: .xlsx, .csv, .json or .html.")
    ] = None,
    event: OfEvent = None,
    course: OfCourse = None,
    json: Json = False,
) -> None:
    """Show every result as it stands, with what is left to play."""
    from marram.cli.event_results import board

    board(Where(records, event, course), output, json)


@event_app.command("why")
def why(
    records: RecordsAt,
    who: Who,
    score: Annotated[str | None, typer.Option(help="gross or net; default the first that counts.")] = None,
    division: Annotated[str | None, typer.Option(help="A division; default the whole field.")] = None,
    event: OfEvent = None,
    course: OfCourse = None,
    json: Json = False,
) -> None:
    """Tell why somebody, or a team, has a place as it stands."""
    from marram.cli.event_results import why

    why(Where(records, event, course), who, score, division, json)


@event_app.command("tie")
def tie(
    records: RecordsAt,
    method: Annotated[str, typer.Argument(help="play_off or lot.", metavar="METHOD")],
    who: Annotated[list[str], typer.Argument(help="Those who were tied, the winner first.", metavar="WHO")],
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Enter the order that a play-off or a lot gave."""
    from marram.cli.event_results import tie

    tie(Where(records, event, course, by), method, who)


@event_app.command("publish")
def publish(
    records: RecordsAt,
    what: Annotated[str, typer.Argument(help="starting_times, results or bracket.", metavar="WHAT")],
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Publish a list as it now stands; 'marram records published' writes what was published as files."""
    from marram.cli.event_results import publish

    publish(Where(records, event, course, by), what, round_)


@event_app.command("changes")
def changes(
    records: RecordsAt, round_: Round = 1, event: OfEvent = None, course: OfCourse = None, json: Json = False
) -> None:
    """Tell which starting times of a round changed since they were published."""
    from marram.cli.event_results import changes

    changes(Where(records, event, course), round_, json)


@event_app.command("matches")
def matches(records: RecordsAt, event: OfEvent = None, course: OfCourse = None, json: Json = False) -> None:
    """List every match, as it stands."""
    from marram.cli.event_matches import list_matches

    list_matches(Where(records, event, course), json)


@event_app.command("hole")
def hole(
    records: RecordsAt,
    who: Who,
    how: Annotated[
        str,
        typer.Argument(
            help="won, conceded, penalty (WHO wins the hole), tied, agreed_tied or lost_by_both.",
            metavar="HOW",
        ),
    ] = "scores",
    scores: Annotated[
        str,
        typer.Option(
            help="The score of every ball instead, those of the side named first on the sheet first."
        ),
    ] = "",
    place: Annotated[
        int | None, typer.Option(min=1, help="Which hole in the order of play; default the next.")
    ] = None,
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Enter how a hole of a match ended, and tell how the match stands."""
    from marram.cli.event_matches import hole

    hole(Where(records, event, course, by), who, round_, how, scores, place)


@event_app.command("match-end")
def match_end(
    records: RecordsAt,
    who: Who,
    how: Annotated[
        str,
        typer.Argument(help="conceded or disqualified (WHO loses), or final.", metavar="HOW"),
    ],
    citation: Annotated[
        str, typer.Option(metavar="RULE", help="The Rule of a disqualification, such as 1.2b.")
    ] = "",
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Enter that a side concedes its match or is disqualified, or that the result is final."""
    from marram.cli.event_matches import end

    end(Where(records, event, course, by), who, round_, how, citation)


@event_app.command("match-take-back")
def match_take_back(
    records: RecordsAt,
    who: Who,
    entry: Annotated[int, typer.Argument(help="The number of the entry in the log.", metavar="NUMBER")],
    why: Annotated[str, typer.Option(metavar="WORDS", help="Why it is taken back.")],
    round_: Round = 1,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Take an entry of a match back that was made by mistake; both entries stay in the log."""
    from marram.cli.event_matches import take_back

    take_back(Where(records, event, course, by), who, round_, entry, why)


@event_app.command("bracket")
def bracket(records: RecordsAt, event: OfEvent = None, course: OfCourse = None, json: Json = False) -> None:
    """Show the bracket or round robin as it stands."""
    from marram.cli.event_matches import show_bracket

    show_bracket(Where(records, event, course), json)


@event_app.command("bracket-draw")
def bracket_draw(
    records: RecordsAt,
    seed: Annotated[str, typer.Option(help="The published seed, for who is not seeded.")],
    plan: Annotated[str, typer.Option(help="bracket or round_robin.")] = "bracket",
    seeded: Annotated[
        list[str] | None, typer.Option(metavar="WHO", help="Who is seeded, the highest first. Repeat.")
    ] = None,
    by_handicap: Annotated[
        bool, typer.Option("--by-handicap", help="Number the others by handicap, the lowest first.")
    ] = False,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Draw a bracket or a round robin; anew only while nothing of it is decided."""
    from marram.cli.event_matches import draw_bracket

    where = Where(records, event, course, by)
    draw_bracket(where, plan, seed, seeded or [], by_handicap=by_handicap)


@event_app.command("bracket-result")
def bracket_result(
    records: RecordsAt,
    stage: Annotated[int, typer.Argument(help="The round of the bracket, from 1.", metavar="ROUND")],
    match: Annotated[int, typer.Argument(help="The match, the uppermost being 1.", metavar="MATCH")],
    how: Annotated[
        str, typer.Argument(help="played, walkover, conceded or disqualified.", metavar="HOW")
    ] = "played",
    winner: Annotated[str | None, typer.Option(help="Who won; without it the match was tied.")] = None,
    up: Annotated[int, typer.Option(min=0, help="By how many holes.")] = 0,
    left: Annotated[int, typer.Option(min=0, help="How many were left.")] = 0,
    holes: Annotated[int, typer.Option(min=0, help="After how many, with extra holes.")] = 0,
    citation: Annotated[str, typer.Option(metavar="RULE", help="The Rule of a disqualification.")] = "",
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Enter the result of a match whose holes are not entered, or that was not played."""
    from marram.cli.event_matches import ResultTyped, enter_result

    typed = ResultTyped(stage, match, how, winner, up, left, holes, citation)
    enter_result(Where(records, event, course, by), typed)


@event_app.command("bracket-start")
def bracket_start(
    records: RecordsAt,
    stage: Annotated[int, typer.Argument(help="The round of the bracket, from 1.", metavar="ROUND")],
    round_: Round = 1,
    first: Annotated[str, typer.Option(metavar="HH:MM", help="The first starting time.")] = "08:00",
    minutes: Annotated[int, typer.Option(min=0, max=120, help="Between two groups of a tee.")] = 10,
    tee: Tees = None,
    event: OfEvent = None,
    course: OfCourse = None,
    by: By = None,
) -> None:
    """Put the matches of a round of the bracket on the starting sheet of a round of the event."""
    from marram.cli.event_matches import put_on_sheet

    put_on_sheet(Where(records, event, course, by), stage, round_, first, minutes, tee or [])
