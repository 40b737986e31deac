"""Sheets on a terminal: plain lines anywhere, with weight and colour where the terminal has them."""

import sys
import textwrap
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from marram.words.sheet import Sheet

Line = tuple[str, str]
"""A style (``title``, ``head``, ``text``, ``item``, ``quiet``, ``caution``) and its text."""

_STYLES = {"title": "bold", "head": "bold underline", "quiet": "dim", "caution": "bold reverse"}


def show_sheet(sheet: Sheet, conditions: Mapping[str, Any]) -> None:
    """Print a sheet with the conditions it was given under."""
    show_lines(
        [*sheet_lines(sheet), ("text", ""), ("quiet", conditions_line(conditions)), ("quiet", sheet.reminder)]
    )


def conditions_line(conditions: Mapping[str, Any]) -> str:
    """Return the conditions of a ruling in one line."""
    form = (conditions["form_of_play"] or "form of play not given").replace("_", " ")
    adopted = conditions["local_rules"]
    rules = "Local Rules not given" if adopted is None else f"Local Rules: {', '.join(adopted) or 'none'}"
    return f"Played on {conditions['played_on']} (edition {conditions['edition'][:4]}), {form}, {rules}."


ON_THE_COMMAND_LINE = "Answer with --fact {fact}={answer}"
IN_THE_FILE = 'Answer it in the file, under "between": "{fact}": "{answer}"'


def sheet_lines(sheet: Sheet, how_to_answer: str = ON_THE_COMMAND_LINE) -> Iterator[Line]:
    """Yield the lines of a sheet: the answer first, then what to do, options, why."""
    yield "title", sheet.headline
    for caution in sheet.cautions:
        yield "caution", caution
    if sheet.question:
        yield from _question_lines(sheet, how_to_answer)
    if sheet.kind == "ruling":
        yield from _section("Penalty", sheet.penalties)
    yield from _section("What to do", sheet.steps)
    if sheet.decided_by:
        yield "text", f"Decided by {sheet.decided_by}."
    yield from _section("What to weigh", sheet.criteria)
    yield from _section("It can end in", sheet.outcomes)
    if sheet.options:
        yield "head", "Options"
        for number, option in enumerate(sheet.options, start=1):
            yield "item", f"{number}. {option.title}: {option.cost} ({option.citation})"
            yield "text", f"     {'; '.join((option.area, *option.limits))}. {option.how}"
    yield from _section("If it is done wrong", sheet.if_wrong)
    yield from _section("Already settled", sheet.settled)
    yield from _section("Why", (f"{one.question} {one.answer} ({one.citation})" for one in sheet.why))
    yield from _section("Provisions", (f"{one.citation}: {one.statement}" for one in sheet.provisions))


def _question_lines(sheet: Sheet, how_to_answer: str) -> Iterator[Line]:
    question = sheet.question
    assert question is not None
    yield "text", f"  {question.help}"
    yield "quiet", f"  Decided by {question.decided_by} ({question.source})."
    for answer in question.answers:
        stake = f"  → {answer.stake}" if answer.stake else ""
        yield (
            "item",
            f"{answer.token}: {answer.words}{stake}"
            if answer.words != answer.token
            else f"{answer.token}{stake}",
        )
    if question.kind != "choice":
        yield "item", f"a {question.kind}{f' ({question.unit})' if question.unit else ''}"
    example = question.answers[0].token if question.answers else "…"
    yield "quiet", "  " + how_to_answer.format(fact=question.fact, answer=example)


def _section(head: str, items: Iterable[str]) -> Iterator[Line]:
    first = True
    for item in items:
        if first:
            yield "head", head
            first = False
        yield "item", item


def show_lines(lines: Iterable[Line]) -> None:
    """Print lines, wrapped; styled when standard output is a terminal."""
    if not sys.stdout.isatty():
        for style, text in lines:
            print("\n".join(_wrapped(style, text, 100)))
        return
    from rich.console import Console
    from rich.text import Text

    console = Console(highlight=False)
    for style, text in lines:
        for row in _wrapped(style, text, min(console.width, 100)):
            console.print(Text(row, style=_STYLES.get(style, "")))


def print_json(document: Mapping[str, Any]) -> None:
    """Print a document as JSON."""
    import json

    print(json.dumps(document, indent=2, ensure_ascii=False))


def _wrapped(style: str, text: str, width: int) -> list[str]:
    if style == "head":
        return ["", text]
    if style == "item":
        return textwrap.wrap(text, width, initial_indent="  - ", subsequent_indent="    ")
    indent = " " * (len(text) - len(text.lstrip()))
    return textwrap.wrap(text, width, subsequent_indent=indent) or [""]
