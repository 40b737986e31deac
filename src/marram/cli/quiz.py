"""``marram quiz``: multiple-choice questions from the book, the answers after all of them."""

from collections.abc import Iterator
from itertools import islice

from marram.cli.show import Line, print_json, show_lines
from marram.cli.situations import as_document
from marram.demo.plan import COURSE_NAME
from marram.rules.former_names import incident_now
from marram.teach.quizzes.drafting import Question
from marram.teach.quizzes.quiz import questions
from marram.teach.quizzes.told import letter, why_not
from marram.words.citations import named_all
from marram.words.texts import text


def ask_quiz(
    count: int, *, seed: int, incidents: list[str], provision: str, level: int | None, as_json: bool
) -> None:
    """Print questions, and their answers after the last."""
    names = tuple(incident_now(name) for name in incidents)
    found = list(islice(questions(seed, incidents=names, provision=provision, level=level), count))
    if as_json:
        print_json(
            {"marram": 1, "kind": "quiz", "seed": seed, "questions": [_document(one) for one in found]}
        )
        return
    show_lines(_lines(found))
    show_lines(
        [("quiet", text("situations.again", command="quiz", seed=seed)), ("quiet", text("quizzes.whole"))]
    )


def _document(one: Question) -> dict[str, object]:
    answers = [
        {"words": answer.words, "headline": answer.headline, "why": why_not(one, answer)}
        for answer in one.answers
    ]
    return {**as_document(one.situation), "answers": answers, "right": one.right}


def _lines(found: list[Question]) -> Iterator[Line]:
    for number, one in enumerate(found, start=1):
        level = text(f"situations.level.{one.situation.level}")
        yield "head", text("situations.title", number=number, level=level)
        yield "text", " ".join(one.situation.told(COURSE_NAME))
        for place, answer in enumerate(one.answers):
            yield "item", text("quizzes.option", letter=letter(place), words=answer.words)
    yield "head", text("quizzes.solutions")
    for number, one in enumerate(found, start=1):
        yield (
            "text",
            text(
                "quizzes.solution", number=number, letter=letter(one.right), headline=one.situation.headline
            ),
        )
        for place, answer in enumerate(one.answers):
            if place != one.right:
                yield "quiet", "   " + text("quizzes.wrong", letter=letter(place), why=why_not(one, answer))
        yield "quiet", "   " + text("quizzes.rests_on", citations=named_all(one.situation.ruling.citations))
