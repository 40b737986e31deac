"""A sitting: every candidate's answers marked by the engine's key, the items judged, what is retired left out."""

import csv
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from io import StringIO

from marram.errors import InputError, shown
from marram.said import said
from marram.teach.examinations.blueprint import DISTINCTION, MERIT, PASS
from marram.teach.examinations.paper import Form
from marram.teach.examinations.retiring import FEWEST_CANDIDATES, why_retired
from marram.teach.examinations.statistics import ItemStatistics, items, kr20, marked

Answers = Mapping[str, Sequence[int | None]]


@dataclass(frozen=True, slots=True)
class Mark:
    """What a candidate reached: right answers, of how many that count, in per cent rounded down, and the grade's key."""

    right: int
    of: int
    percent: int
    grade: str


@dataclass(frozen=True, slots=True)
class Sitting:
    """What came of a sitting.

    Attributes:
        marks: by candidate; items that are retired do not count.
        items: what the answers say of each item of the form, in its order.
        retired: why the answers speak against an item, by its place from 0; empty with fewer candidates than say anything.
        reliability: KR-20 of the whole form; ``None`` where it cannot be had.
        reliability_kept: KR-20 of the items that are not retired.
    """

    marks: Mapping[str, Mark]
    items: Sequence[ItemStatistics]
    retired: Mapping[int, Sequence[str]]
    reliability: float | None
    reliability_kept: float | None


def read_answers(given: str, form: str, choices: Sequence[int]) -> dict[str, list[int | None]]:
    """Return answers from CSV: a candidate a row, the name first, then a letter for each item; empty for none.

    Args:
        given: the CSV.
        form: the letter of the form.
        choices: how many answers each of its items has.

    Raises:
        InputError: a row has too many or too few answers, a letter that the item has not, or a name twice; every
            fault is listed.
    """
    found: dict[str, list[int | None]] = {}
    faults: list[str] = []
    for number, row in enumerate(csv.reader(StringIO(given)), start=1):
        if not any(cell.strip() for cell in row) or (number == 1 and _is_heading(row)):
            continue
        name, *cells = (cell.strip() for cell in row)
        if len(cells) != len(choices):
            faults.append(
                said(
                    "Row {row}: {given} answers; form {form} has {count} items. Leave a cell empty where nothing was chosen.",
                    row=number,
                    given=len(cells),
                    form=form,
                    count=len(choices),
                )
            )
            continue
        if not name or name in found:
            faults.append(said("Row {row}: give each candidate a name of their own.", row=number))
        chosen: list[int | None] = []
        for at, cell in enumerate(cells):
            letters = "ABCDEFGH"[: choices[at]]
            if (
                cell
                and cell.upper() not in letters.split()
                and (len(cell) != 1 or cell.upper() not in letters)
            ):
                faults.append(
                    said(
                        "Row {row}, item {item}: {given}; give one of {letters}, or nothing.",
                        row=number,
                        item=at + 1,
                        given=shown(cell),
                        letters=", ".join(letters),
                    )
                )
            chosen.append(letters.find(cell.upper()) if cell else None)
        found[name] = chosen
    if not found and not faults:
        faults.append(said("There are no answers: give a row for each candidate."))
    if faults:
        raise InputError(*faults)
    return found


def _is_heading(row: Sequence[str]) -> bool:
    return [cell.strip() for cell in row[1:3]] == ["1", "2"][: len(row[1:3])]


def sitting(form: Form, answers: Answers) -> Sitting:
    """Return what came of a sitting.

    Args:
        form: the form that was sat.
        answers: the place chosen for each item, by candidate; ``None`` for none.
    """
    return judged(
        [one.question.right for one in form.items], [len(one.question.answers) for one in form.items], answers
    )


def judged(
    right: Sequence[int], choices: Sequence[int], answers: Answers, out: Collection[int] | None = None
) -> Sitting:
    """Return what came of a sitting of a form by its key.

    Args:
        right: the place of the right answer of each item.
        choices: how many answers each item has.
        answers: the place chosen for each item, by candidate; ``None`` for none. At least one candidate.
        out: the items that do not count, by place from 0; ``None`` for those that the answers speak against.
    """
    rows = list(answers.values())
    scores = marked(rows, right)
    found = items(rows, right, choices)
    enough = len(rows) >= FEWEST_CANDIDATES
    retired = {at: why for at, one in enumerate(found) if enough and (why := why_retired(one))}
    uncounted = retired if out is None else out
    kept = [at for at in range(len(right)) if at not in uncounted]
    kept_scores = [[row[at] for at in kept] for row in scores]
    marks = {name: _mark(row) for name, row in zip(answers, kept_scores, strict=True)}
    return Sitting(marks, found, retired, kr20(scores), kr20(kept_scores) if kept else None)


def _mark(row: Sequence[int]) -> Mark:
    right, of = sum(row), len(row)
    percent = 100 * right // of if of else 0
    grade = "fail"
    for bound, name in ((PASS, "pass"), (MERIT, "merit"), (DISTINCTION, "distinction")):
        if of and 100 * right >= bound * of:
            grade = name
    return Mark(right, of, percent, grade)
