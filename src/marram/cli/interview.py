"""Asking on a terminal: what happened, then one question at a time."""

from collections.abc import Sequence

import typer

from marram.cli.show import show_lines
from marram.errors import BadAnswer
from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.finding import find
from marram.rules.result import NeedFacts
from marram.rules.ruling import HandOver
from marram.services.cases.usual import UsualAnswer
from marram.words.language import translate
from marram.words.questions import question_words
from marram.words.sheet import sheet
from marram.words.spoken import spoken
from marram.words.texts import text


def choose_incident() -> str:
    """Ask what happened and return the incident's name."""
    while True:
        words = typer.prompt(text("cli.ask.what"), default="", show_default=False)
        found = find(words).incidents
        if not found:
            typer.echo(text("cli.ask.nothing", words=words))
            continue
        for number, one in enumerate(found, start=1):
            typer.echo(
                f"{number:3}  {text('cli.incident.numbered', title=translate()(one.title), rule=one.rule)}"
            )
        chosen = typer.prompt(text("cli.ask.which"), type=int, default=1 if len(found) == 1 else 0)
        if 1 <= chosen <= len(found):
            return str(found[chosen - 1].name)


def tell_hand_over(result: HandOver) -> None:
    """Say which incident it rather is, before asking on about that one."""
    show_lines([("text", ""), ("title", sheet(result).headline)])


def confirm_usual(usual: Sequence[UsualAnswer]) -> bool:
    """Offer the routine questions with their usual answers; tell whether all were confirmed."""
    show_lines(
        [
            ("text", ""),
            ("title", text("cli.usual")),
            *(("item", f"{one.question} {one.answer}") for one in usual),
        ]
    )
    return typer.confirm(text("cli.usual.confirm"), default=True)


def ask(need: NeedFacts, form: FormOfPlay | None) -> str:
    """Ask the next question until it has an answer; return the answer as given."""
    fact = fact_named(need.fact)
    words = question_words(fact, need.stakes, form, need.citation)
    show_lines(
        [
            ("text", ""),
            ("title", words.question),
            ("quiet", f"  {words.help} ({words.source}; {words.decided_by})"),
        ]
    )
    for number, answer in enumerate(words.answers, start=1):
        typer.echo(f"{number:3}  {answer.words}")
    while True:
        given = str(typer.prompt(text("cli.ask.answer"), default=None))
        if words.answers and given.isdigit() and 1 <= int(given) <= len(words.answers):
            return str(words.answers[int(given) - 1].token)
        try:
            fact.parse(given)
        except BadAnswer as error:
            typer.echo("\n".join(spoken(one) for one in error.faults))
            continue
        return given
