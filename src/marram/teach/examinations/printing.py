"""An examination as PDF and as a document: the candidate's paper never holds what the key holds."""

from collections.abc import Sequence
from hashlib import sha256
from typing import Any

from marram.paper.examination import examination_pdf
from marram.paper.paper_size import PaperSize
from marram.teach.examinations.blueprint import PASS
from marram.teach.examinations.item import Item
from marram.teach.examinations.kept_paper import KeptPapers
from marram.teach.examinations.paper import Examination, Form
from marram.teach.quizzes.told import letter, why_not
from marram.words.citations import named_all
from marram.words.texts import text


def form_pdf(
    exam: Examination, form: Form, course: str, *, key: bool, paper: PaperSize = PaperSize.A4
) -> bytes:
    """Return a form as PDF: the candidate's paper, or the key."""
    items = [_printed(one, number, course, key=key) for number, one in enumerate(form.items, start=1)]
    about = _about(exam, [one.ident for one in form.items], exam.seed if key else None)
    title = text("examinations.key" if key else "examinations.paper", letter=form.letter)
    words = () if key else instructions(exam, form)
    return examination_pdf(title, about, items, key=key, instructions=words, paper=paper)


def kept_pdf(papers: KeptPapers, form: str, *, key: bool, paper: PaperSize = PaperSize.A4) -> bytes:
    """Return a form of papers that are kept as PDF: the candidate's paper, or the key."""
    items = papers.forms[form]
    about = _about(papers, [one.ident for one in items], papers.seed if key else None)
    may = text("examinations.may_use" if papers.open_book else "examinations.may_not_use")
    words = (
        ()
        if key
        else (
            text("examinations.choose_one", count=len(items), percent=PASS),
            text("quizzes.choose_whole"),
            may,
        )
    )
    printed = [
        {
            "number": number,
            "told": one.told,
            "answers": [
                {
                    "letter": letter(place),
                    "words": answer,
                    "right": key and place == one.right,
                    "why": one.whys[place] if key and place != one.right else "",
                }
                for place, answer in enumerate(one.answers)
            ],
            "note": text("quizzes.rests_on", citations=named_all(one.citations)) if key else "",
        }
        for number, one in enumerate(items, start=1)
    ]
    title = text("examinations.key" if key else "examinations.paper", letter=form)
    return examination_pdf(title, about, printed, key=key, instructions=words, paper=paper)


def mark_of(items: Sequence[str]) -> str:
    """Return four characters by which a paper and its key are known to belong together; no item is found by them."""
    return sha256(" ".join(items).encode()).hexdigest()[:4].upper()


def _about(exam: Examination | KeptPapers, items: Sequence[str], seed: int | None) -> str:
    """Return what a form is, in one line; the seed, which draws its key as well, only where one is given."""
    book = text("examinations.open_book" if exam.open_book else "examinations.closed_book")
    told = {"level": exam.level, "count": len(items), "book": book, "mark": mark_of(items)}
    return text("examinations.about" if seed is None else "examinations.about_key", seed=seed, **told)


def instructions(exam: Examination, form: Form) -> tuple[str, ...]:
    """Return what candidates are told."""
    book = text("examinations.may_use" if exam.open_book else "examinations.may_not_use")
    return (
        text("examinations.choose_one", count=len(form.items), percent=PASS),
        text("quizzes.choose_whole"),
        book,
    )


def _printed(one: Item, number: int, course: str, *, key: bool) -> dict[str, Any]:
    answers = [
        {
            "letter": letter(place),
            "words": answer.words,
            "right": key and place == one.question.right,
            "why": why_not(one.question, answer) if key and place != one.question.right else "",
        }
        for place, answer in enumerate(one.question.answers)
    ]
    ruling = one.question.situation.ruling
    note = text("quizzes.rests_on", citations=named_all(ruling.citations)) if key else ""
    told = " ".join(one.question.situation.told(course))
    return {"number": number, "told": told, "answers": answers, "note": note}
