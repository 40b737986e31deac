"""The commands of ``marram handicap``."""

from typing import Annotated

import typer

from marram.cli.shared_options import Json

handicap_app = typer.Typer(
    help="Work out handicaps, with every step and its Rule.",
    rich_markup_mode=None,
    no_args_is_help=True,
)

Slope = Annotated[str | None, typer.Option(help="Slope Rating of the holes played, 55 to 155.")]
CourseRating = Annotated[str | None, typer.Option(help="Course Rating of the holes played.")]
Par = Annotated[str | None, typer.Option(help="Par of the holes played.")]
Holes = Annotated[int, typer.Option(help="18 or 9.")]
Basis = Annotated[
    str, typer.Option(help="What the allowance is applied to: unrounded (the text) or rounded_first.")
]


@handicap_app.command("course")
def handicap_course(
    index: Annotated[str, typer.Argument(help="Handicap Index; '+1.4' for a plus one.")],
    slope: Slope = None,
    course_rating: CourseRating = None,
    par: Par = None,
    holes: Holes = 18,
    formula: Annotated[
        str, typer.Option(help="with_rating (the text), or slope_only (a national option until 2024).")
    ] = "with_rating",
    half_index: Annotated[
        str,
        typer.Option(
            help="Half of the index, for nine holes: exact (the text), or to_a_tenth (guidance of the USGA)."
        ),
    ] = "exact",
    json: Json = False,
) -> None:
    """Work out a Course Handicap (Rule 6.1)."""
    from marram.cli.handicap import GivenTee, tell_course_handicap

    tell_course_handicap(index, GivenTee(slope, course_rating, par, holes), formula, half_index, json)


@handicap_app.command("playing")
def handicap_playing(
    players: Annotated[
        list[str], typer.Argument(help="Handicap Index of each player; '+1.4' for a plus one.")
    ],
    format: Annotated[
        str | None, typer.Option(help="Format of play of Appendix C, e.g. stroke_play or greensomes.")
    ] = None,
    allowance: Annotated[
        str | None, typer.Option(help="The allowance of the Terms in per cent, e.g. 95, or 60/40 of a side.")
    ] = None,
    course_handicaps: Annotated[
        bool, typer.Option("--course-handicaps", help="What is given are Course Handicaps.")
    ] = False,
    slope: Slope = None,
    course_rating: CourseRating = None,
    par: Par = None,
    holes: Holes = 18,
    basis: Basis = "unrounded",
    match: Annotated[
        bool, typer.Option("--match", help="Also the strokes that each receives from the lowest.")
    ] = False,
    method: Annotated[
        str,
        typer.Option(
            help="For a match: playing_handicaps (the text), unrounded_difference or rounded_difference."
        ),
    ] = "playing_handicaps",
    edition: Annotated[str, typer.Option(help="2020 or 2024.")] = "2024",
    json: Json = False,
) -> None:
    """Work out Playing Handicaps, of players or of a side, and the strokes of a match (Rule 6.2, Appendix C)."""
    from marram.cli.handicap import GivenTee, Terms, tell_playing_handicaps

    terms = Terms(format, allowance, basis, method if match else None, edition)
    tee = None if course_handicaps else GivenTee(slope, course_rating, par, holes)
    tell_playing_handicaps(players, tee, terms, json)


@handicap_app.command("strokes")
def handicap_strokes(
    playing_handicap: Annotated[str, typer.Argument(help="Playing Handicap; '+2' for a plus one.")],
    stroke_indexes: Annotated[
        str, typer.Option(metavar="7,11,17,…", help="Stroke indexes of the holes, in their order.")
    ],
    given_back: Annotated[
        str, typer.Option(help="Where a plus handicap gives back: from_highest (the text) or from_lowest.")
    ] = "from_highest",
    json: Json = False,
) -> None:
    """Tell on which holes strokes are received or given back (Appendices C and E)."""
    from marram.cli.handicap import tell_strokes

    tell_strokes(playing_handicap, stroke_indexes, given_back, json)


@handicap_app.command("differential")
def handicap_differential(
    score: Annotated[str, typer.Argument(help="Adjusted gross score.")],
    slope: Slope = None,
    course_rating: CourseRating = None,
    par: Par = None,
    holes: Holes = 18,
    pcc: Annotated[str, typer.Option(help="Playing conditions calculation of the day, -1 to 3.")] = "0",
    second_score: Annotated[
        str | None, typer.Option(help="2020, nine holes: the other 9-hole score, on the same ratings.")
    ] = None,
    expected: Annotated[
        str | None, typer.Option(help="2024, nine holes: the expected Score Differential, as published.")
    ] = None,
    edition: Annotated[str, typer.Option(help="2020 or 2024.")] = "2024",
    json: Json = False,
) -> None:
    """Work out a Score Differential (Rule 5.1)."""
    from marram.cli.handicap import GivenTee, Nine, tell_differential

    tee = GivenTee(slope, course_rating, par, holes)
    tell_differential(score, tee, pcc, Nine(second_score, expected, edition), json)


@handicap_app.command("index")
def handicap_index(
    differentials: Annotated[
        list[str], typer.Argument(help="Score Differentials, the latest last; put -- before them.")
    ],
    low: Annotated[str | None, typer.Option(help="Low Handicap Index, where there is one.")] = None,
    json: Json = False,
) -> None:
    """Work out a Handicap Index from Score Differentials (Rules 5.2, 5.3, 5.8)."""
    from marram.cli.handicap import tell_index

    tell_index(differentials, low, json)
