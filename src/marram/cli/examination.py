"""``marram examination``: papers drawn, printed, marked; their items judged."""

import json
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from marram.cli.examination_papers import drawn_again, form_of, kept_beside, kept_papers, same_paper
from marram.cli.paper_given import paper_given
from marram.cli.show import Line, print_json, show_lines
from marram.cli.writing import write_files
from marram.demo.plan import COURSE_NAME
from marram.errors import InputError
from marram.said import said
from marram.schema import read_json
from marram.teach.book.permanent import address_of
from marram.teach.examinations.equality import equality
from marram.teach.examinations.item import Item
from marram.teach.examinations.kept_paper import KeptItem
from marram.teach.examinations.paper import Examination, Form, examination
from marram.teach.examinations.printing import form_pdf, mark_of
from marram.teach.examinations.report import Sitting, judged, read_answers
from marram.teach.examinations.retiring import FEWEST_CANDIDATES
from marram.teach.quizzes.told import letter
from marram.words.spoken import spoken
from marram.words.texts import text

KIND = "examination_retired"
CANDIDATES = 2000
"""Simulated candidates (own choice: a standard error of about 0.07 items with 60 items)."""


def draw(
    *,
    seed: int,
    count: int,
    level: int,
    forms: int,
    open_book: bool,
    retired: Path | None,
    records: str | None,
    folder: Path | None,
    paper: str,
    as_json: bool,
) -> None:
    """Draw an examination; print what it covers, write papers and keys, and beside them what they are marked from."""
    size = paper_given(paper)
    out = _retired(retired, records)
    exam = examination(seed, count, level=level, forms=forms, open_book=open_book, retired=out)
    if folder is not None:
        files = kept_beside(exam, folder)
        for form in exam.forms:
            name = form.letter.lower()
            files[folder / f"form-{name}.pdf"] = form_pdf(exam, form, COURSE_NAME, key=False, paper=size)
            files[folder / f"form-{name}-key.pdf"] = form_pdf(exam, form, COURSE_NAME, key=True, paper=size)
        write_files(files)
    if as_json:
        print_json(_document(exam))
        return
    show_lines(_lines(exam))


def mark(
    answers: Path,
    *,
    papers: Path | None,
    paper_mark: str | None,
    seed: int,
    count: int,
    level: int,
    forms: int,
    form: str,
    retired: Path | None,
    records: str | None,
    retire: Path | None,
    as_json: bool,
) -> None:
    """Mark candidates' answers; judge the items; add bad ones, with the reason, to a file."""
    out = _retired(retired, records)
    if papers is None:
        items = form_of(drawn_again(seed, count, level=level, forms=forms, retired=out), form)
    else:
        items = form_of(kept_papers(papers), form)
    same_paper(items, paper_mark, kept=papers is not None)
    try:
        given = answers.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as error:
        raise InputError(said("{path} cannot be read: {why}.", path=answers, why=str(error))) from None
    choices = [len(one.answers) for one in items]
    rows, right = read_answers(given, form.upper(), choices), [one.right for one in items]
    found = judged(right, choices, rows)
    if gone := {at for at, one in enumerate(items) if one.ident in out}:  # retired since the paper was drawn
        found = judged(right, choices, rows, gone | set(found.retired))
    if retire is not None:
        known = _reasons(retire) if retire.exists() else {}
        known.update({items[at].ident: [spoken(one) for one in why] for at, why in found.retired.items()})
        document = {"marram": 1, "kind": KIND, "items": known}
        write_files({retire: (json.dumps(document, indent=2) + "\n").encode()})
    if as_json:
        print_json(
            {"marram": 1, "kind": "examination_marks", "form": form.upper(), **figures_of(items, found)}
        )
    else:
        show_lines(figures_lines(found))


def _retired(path: Path | None, records: str | None) -> frozenset[str]:
    """Return the items that are not asked any more: those of a file, and those that records keep."""
    out = frozenset() if path is None else frozenset(_reasons(path))
    if records is None:
        return out
    from marram.records.database import opened
    from marram.records.retired_items import retired as kept

    with opened(records) as there:
        return out | frozenset(kept(there))


def _reasons(path: Path) -> dict[str, list[str]]:
    document = read_json(path, str(path))
    if document.get("kind") != KIND or not isinstance(document.get("items"), dict):
        raise InputError(
            said(
                "{path} holds no retired items: give a file that 'marram examination mark --retire' wrote.",
                path=path,
            )
        )
    return {str(name): list(why) for name, why in document["items"].items()}


def _document(exam: Examination) -> dict[str, Any]:
    return {
        "marram": 1,
        "kind": "examination",
        "seed": exam.seed,
        "level": exam.level,
        "open_book": exam.open_book,
        "forms": [
            {
                "form": one.letter,
                "mark": mark_of([each.ident for each in one.items]),
                "provisions": sorted(one.provisions),
                "items": [
                    {
                        "item": each.ident,
                        "rule": each.rule,
                        "level": each.level,
                        "address": address_of(each.question.situation),
                        "situation": " ".join(each.question.situation.told(COURSE_NAME)),
                        "answers": [answer.words for answer in each.question.answers],
                        "right": letter(each.question.right),
                    }
                    for each in one.items
                ],
            }
            for one in exam.forms
        ],
    }


def _lines(exam: Examination) -> Iterator[Line]:
    for one in exam.forms:
        yield "title", text("examinations.paper", letter=one.letter)
        for number, each in enumerate(one.items, start=1):
            key = "item" if each.rule else "item_local"
            yield "head", text(f"examinations.{key}", number=number, rule=each.rule)
            yield "text", " ".join(each.question.situation.told(COURSE_NAME))
            for place, answer in enumerate(each.question.answers):
                yield "item", text("quizzes.option", letter=letter(place), words=answer.words)
    for one in exam.forms:
        yield "head", text("examinations.key", letter=one.letter)
        yield "text", " ".join(f"{at}{letter(each.question.right)}" for at, each in enumerate(one.items, 1))
        yield "quiet", text("examinations.mark_of_form", mark=mark_of([each.ident for each in one.items]))
        yield "quiet", _covered(one)
    if len(exam.forms) > 1:
        found = equality(exam.forms[0], exam.forms[1], CANDIDATES)
        yield (
            "quiet",
            text(
                "examinations.equality",
                candidates=CANDIDATES,
                count=len(exam.forms[0].items),
                first=f"{found.means[0]:.2f}",
                second=f"{found.means[1]:.2f}",
                difference=f"{found.difference:.2f}",
                error=f"{found.error:.2f}",
                correlation=f"{found.correlation:.2f}",
                one=f"{found.reliability[0]:.2f}",
                other=f"{found.reliability[1]:.2f}",
            ),
        )
    yield "quiet", text("examinations.known")
    yield "quiet", text("examinations.weights")
    yield (
        "quiet",
        text(
            "examinations.again",
            seed=exam.seed,
            count=len(exam.forms[0].items),
            level=exam.level,
            forms=len(exam.forms),
        ),
    )


def _covered(one: Form) -> str:
    levels = ", ".join(
        f"{text(f'situations.level.{grade}')} {many}" for grade, many in sorted(one.levels.items())
    )
    return text(
        "examinations.covered",
        letter=one.letter,
        count=len(one.items),
        provisions=len(one.provisions),
        rules=len({each.rule for each in one.items}),
        levels=levels,
    )


def figures_of(items: Sequence[Item | KeptItem], found: Sitting) -> dict[str, Any]:
    """Return what came of a form as data: marks, reliability, and what the answers say of each item."""
    return {
        "reliability": found.reliability,
        "reliability_kept": found.reliability_kept,
        "marks": {
            name: {"right": one.right, "of": one.of, "percent": one.percent, "grade": one.grade}
            for name, one in found.marks.items()
        },
        "items": [
            {
                "item": items[at].ident,
                "difficulty": one.difficulty,
                "discrimination": one.discrimination,
                "chosen": {
                    letter(place) if place >= 0 else "": many for place, many in sorted(one.chosen.items())
                },
                "distractors": {letter(place): value for place, value in one.distractors.items()},
                "retired": [spoken(why) for why in found.retired.get(at, ())],
            }
            for at, one in enumerate(found.items)
        ],
    }


def figures_lines(found: Sitting) -> Iterator[Line]:
    """Yield what came of a form as lines."""
    for name, one in found.marks.items():
        grade = text(f"examinations.grade.{one.grade}")
        yield "text", text("examinations.mark", name=name, right=one.right, of=one.of, percent=one.percent, grade=grade)  # fmt: skip
    yield (
        "head",
        text("examinations.reliability", all=_two(found.reliability), kept=_two(found.reliability_kept)),
    )
    for at, each in enumerate(found.items):
        chosen = ", ".join(
            f"{letter(place) if place >= 0 else text('examinations.nothing')} {many}"
            for place, many in sorted(each.chosen.items())
        )
        yield (
            "text",
            text(
                "examinations.statistics",
                number=at + 1,
                difficulty=round(100 * each.difficulty),
                discrimination=_two(each.discrimination),
                chosen=chosen,
            ),
        )
        if at in found.retired:
            yield (
                "item",
                text("examinations.retired", why="; ".join(spoken(one) for one in found.retired[at])),
            )
    if len(found.marks) < FEWEST_CANDIDATES:
        yield "quiet", text("examinations.none_retired", count=FEWEST_CANDIDATES)


def _two(value: float | None) -> str:
    return text("examinations.unknown") if value is None else f"{value:.2f}"
