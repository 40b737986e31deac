"""``marram story``: several incidents that happened one after the other, from a file."""

import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from marram.cli.exits import MORE_FACTS_NEEDED
from marram.cli.ruling import exit_code
from marram.cli.show import IN_THE_FILE, Line, print_json, sheet_lines, show_lines
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import incident
from marram.rules.plain import as_plain
from marram.rules.ruling import Ruling
from marram.rules.story.story import Happened, StoryResult
from marram.services.cases.case_file import read_case_file
from marram.services.cases.made_with import book_digest, made_with
from marram.services.cases.stories import happened, rule_case
from marram.words.language import translate
from marram.words.messages import say
from marram.words.penalties import strokes_words
from marram.words.sheet import sheet
from marram.words.story import ball_words, story_sheet
from marram.words.texts import text


def rule_on_story(path: Path, as_json: bool) -> None:
    """Print the ruling on each incident of a story and the combined one."""
    case = read_case_file(path)
    if case.made_with is not None and case.made_with.book != book_digest():
        print(
            text("cli.story.other_book", file=path, program=case.made_with.program),
            file=sys.stderr,
        )
    result = rule_case(case)
    if as_json:
        told = replace(case, made_with=made_with()).document()
        words = story_sheet(result, form_of_play=case.form_of_play, given=case.between)
        print_json(
            {
                "marram": 1,
                "kind": "situation",
                **as_plain(result),
                "words": None if words is None else as_plain(words),
                "case": told,
            }
        )
    else:
        show_lines(_lines(happened(case), result, case.form_of_play))
    raise SystemExit(MORE_FACTS_NEEDED if result.combined is None else exit_code(result.combined))


def _named(one: Happened) -> str:
    """Return in brackets which ball an act was about, and that it was another player's, where that was told."""
    names = [ball_words(one.ball), say("TERMS", "situation.by_another") if one.by else ""]
    told = ", ".join(name for name in names if name)
    return f" ({told})" if told else ""


def _lines(happened: list[Happened], result: StoryResult, form: FormOfPlay | None) -> Iterator[Line]:
    for place, (one, part) in enumerate(zip(happened, result.parts, strict=True), start=1):
        yield "head", f"{place}. {translate()(incident(one.incident).title)}{_named(one)}"
        words = sheet(part, form_of_play=form, given=one.facts)
        yield "text", f"   {words.headline}"
        if words.question:
            yield "quiet", "   " + text("cli.story.add", number=place, fact=words.question.fact)
    together = story_sheet(result, form_of_play=form)
    if together is None or result.combined is None:
        return
    yield "head", say("TERMS", "situation.together")
    yield from sheet_lines(together, IN_THE_FILE)
    to_come = result.count.relief_to_come if result.count else 0
    total = result.count.penalty_strokes if result.count else None
    if isinstance(result.combined, Ruling) and form is not FormOfPlay.MATCH_PLAY and total is not None:
        key = "situation.total_and_relief" if result.combined.relief and not to_come else "situation.total"
        yield "title", say("TERMS", key).format(strokes=strokes_words(total + to_come))
    yield "quiet", say("TERMS", "reminder")
