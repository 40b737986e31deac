"""Sheets on a terminal: plain lines anywhere, with weight and colour where the terminal has them."""

import sys
import textwrap
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from marram.visible import escaped, visible
from marram.words.citations import named
from marram.words.language import translate
from marram.words.questions import QuestionWords
from marram.words.relief_options import OptionWords
from marram.words.sheet import Rather, Sheet
from marram.words.texts import text

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
    form, adopted = conditions["form_of_play"], conditions["local_rules"]
    return text(
        "cli.conditions",
        day=conditions["played_on"],
        edition=conditions["edition"][:4],
        clarified=conditions["clarified_to"],
        form=_form_words(form, conditions.get("sides")) if form else text("cli.form.open"),
        local_rules=text("cli.local.open")
        if adopted is None
        else text("cli.local", codes=", ".join(adopted) or text("cli.none")),
    )


def _form_words(form: str, who: str | None) -> str:
    from marram.rules.facts.conditions import Sides, form_of_play

    words = translate()(form_of_play.answers[form_of_play.parse(form)])
    if who in (None, Sides.INDIVIDUAL.value):
        return words
    return text("cli.form.of_sides", form=words, sides=text(f"conditions.sides.{who}"))


ON_THE_COMMAND_LINE = "cli.answer_with"
IN_THE_FILE = "cli.answer_in_file"


def sheet_lines(sheet: Sheet, how_to_answer: str = ON_THE_COMMAND_LINE) -> Iterator[Line]:
    """Yield the lines of a sheet: the answer first, then what to do, options, why."""
    yield "title", sheet.headline
    for caution in sheet.cautions:
        yield "caution", caution
    if sheet.question:
        yield from question_lines(sheet, how_to_answer)
    if sheet.kind == "ruling":
        yield from _section("tell", (sheet.tell,))
        yield from _section("penalty", sheet.penalties)
    yield from _section("what_to_do", sheet.further if sheet.kind == "ruling" else sheet.steps)
    if sheet.rather:
        yield "quiet", "  " + _command(sheet.rather)
    if sheet.decided_by:
        yield "text", text("cli.decided_by", who=sheet.decided_by)
    yield from _section("weigh", sheet.criteria)
    yield from _section("ends", sheet.outcomes)
    if sheet.options:
        yield "head", text("cli.options")
        for number, option in enumerate(sheet.options, start=1):
            yield "item", option_head(number, option)
            yield "text", f"     {'; '.join((option.area, *option.limits))}. {option.how}"
    yield from _section("missing", sheet.missing)
    yield from _section("if_wrong", sheet.if_wrong)
    yield from _section("settled", sheet.settled)
    yield from _section("why", (f"{one.question} {one.answer} ({named(one.citation)})" for one in sheet.why))
    yield from _section("provisions", (f"{named(one.citation)}: {one.statement}" for one in sheet.provisions))


def _command(rather: Rather) -> str:
    """Return the words to type for the incident that it rather is; the facts given so far go with them."""
    facts = "".join(f" --fact {name}={token}" for name, token in rather.facts.items())
    return text("cli.rather", incident=rather.incident, facts=facts)


def question_lines(sheet: Sheet, how_to_answer: str = ON_THE_COMMAND_LINE) -> Iterator[Line]:
    """Yield the question of a sheet: who decides, each answer and what it leads to, and how to give it."""
    question = sheet.question
    assert question is not None
    yield "text", f"  {question.help}"
    yield "quiet", "  " + text("cli.decided_by_source", who=question.decided_by, source=question.source)
    for answer in question.answers:
        stake = f"  → {answer.stake}" if answer.stake else ""
        yield (
            "item",
            f"{answer.token}: {answer.words}{stake}"
            if answer.words != answer.token
            else f"{answer.token}{stake}",
        )
    if question.kind != "choice":
        yield "item", amount_asked(question)
    example = question.answers[0].token if question.answers else "…"
    yield "quiet", "  " + text(how_to_answer, fact=question.fact, answer=example)
    if how_to_answer == ON_THE_COMMAND_LINE and question.fact.startswith("local_rule_"):
        yield "quiet", "  " + text("cli.answer_local_rules", code=question.source)


def option_head(number: int, option: OptionWords) -> str:
    """Return the head of an option: its number, title, cost and provision."""
    return text("cli.option", number=number, title=option.title, cost=option.cost, citation=option.citation)


def amount_asked(question: QuestionWords) -> str:
    """Return what a question without given answers asks for: a number or a date, in its unit."""
    kind = text(f"cli.kind.{question.kind}")
    return text("cli.kind.in_unit", kind=kind, unit=question.unit_words) if question.unit else kind


def _section(head: str, items: Iterable[str]) -> Iterator[Line]:
    first = True
    for item in items:
        if first:
            yield "head", text(f"cli.{head}")
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

    print(escaped(json.dumps(document, indent=2, ensure_ascii=False)))


def _wrapped(style: str, text: str, width: int) -> list[str]:
    text = visible(text)
    if style == "head":
        return ["", text]
    if style == "item":
        return textwrap.wrap(text, width, initial_indent="  - ", subsequent_indent="    ")
    indent = " " * (len(text) - len(text.lstrip()))
    return textwrap.wrap(text, width, subsequent_indent=indent) or [""]
