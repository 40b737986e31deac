"""The commands ``marram briefing …``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.paper_given import PaperOption
from marram.cli.shared_options import Json

briefing_app = typer.Typer(
    help="Briefings: one situation a page, with drawing, question, ruling and why.",
    rich_markup_mode=None,
    no_args_is_help=True,
)
Course = Annotated[Path | None, typer.Option(help="The course map; default that of the demonstration.")]
Pdf = Annotated[Path | None, typer.Option(help="Write the pages here, as PDF.")]
Handout = Annotated[Path | None, typer.Option(help="Write the handout here, one page as PDF.")]


@briefing_app.command("draw-up")
def draw_up(
    kind: Annotated[
        str,
        typer.Argument(
            metavar="KIND",
            help="topics, beginners, changes (between editions), local-rules (of an event), event (from its log).",
        ),
    ],
    given: Annotated[
        list[str] | None,
        typer.Argument(
            help="Topics: incidents, Rules or provisions. Changes: two years. Local Rules: codes."
        ),
    ] = None,
    seed: Annotated[int, typer.Option(help="The same number gives the same briefing.", min=0)] = 1,
    count: Annotated[int, typer.Option(help="Pages at most.", min=1, max=100)] = 20,
    title: Annotated[str, typer.Option(help="The name of the briefing.")] = "",
    course: Course = None,
    event: Annotated[
        str | None, typer.Option(help="The event: a JSON file; with --records its name there.")
    ] = None,
    records: Annotated[str | None, typer.Option(help="Records that keep the event's log.")] = None,
    deck: Annotated[
        Path | None,
        typer.Option(help="Keep the briefing in this file; words put otherwise in it stay."),
    ] = None,
    pdf: Pdf = None,
    handout: Handout = None,
    paper: PaperOption = "a4",
    json: Json = False,
) -> None:
    """Draw up a briefing: print it, keep it in a file, write it as PDF."""
    from marram.cli.briefing import draw_up as work
    from marram.teach.briefings.deck import Topic

    topic = Topic(kind.replace("-", "_"), tuple(given or ()), seed, count)
    work(
        topic,
        title=title,
        course=course,
        event=event,
        records=records,
        deck=deck,
        pdf=pdf,
        handout=handout,
        paper=paper,
        as_json=json,
    )


@briefing_app.command("edit")
def edit(
    deck: Annotated[Path, typer.Argument(help="The file of the briefing.")],
    page: Annotated[int, typer.Argument(help="The number of the page.", min=1)],
    title: Annotated[str | None, typer.Option(help="Its title.")] = None,
    told: Annotated[str | None, typer.Option(help="What happened.")] = None,
    question: Annotated[str | None, typer.Option(help="The question.")] = None,
    ruling: Annotated[str | None, typer.Option(help="The ruling.")] = None,
    why: Annotated[str | None, typer.Option(help="Why.")] = None,
) -> None:
    """Put parts of a page into words of your own; they stay when the briefing is drawn up again."""
    from marram.cli.briefing import put_otherwise

    parts = {"title": title, "told": told, "question": question, "ruling": ruling, "why": why}
    put_otherwise(deck, page, {name: words for name, words in parts.items() if words is not None})


@briefing_app.command("renew")
def renew(
    deck: Annotated[Path, typer.Argument(help="The file of the briefing.")],
    confirm: Annotated[
        list[int] | None, typer.Option(help="Take the flag off this page: its new ruling was seen. Repeat.")
    ] = None,
    course: Course = None,
    pdf: Pdf = None,
    handout: Handout = None,
    paper: PaperOption = "a4",
    json: Json = False,
) -> None:
    """Rule every page anew; what is decided otherwise now is flagged."""
    from marram.cli.briefing import renew as work

    work(deck, course=course, confirm=confirm or [], pdf=pdf, handout=handout, paper=paper, as_json=json)
