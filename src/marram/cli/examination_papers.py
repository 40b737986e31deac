"""The file beside a printed examination: its papers as they were drawn, from which they are marked whatever the book says later."""

import json
from pathlib import Path

from marram.demo.plan import COURSE_NAME
from marram.errors import InputError, shown
from marram.said import said
from marram.schema import read_json
from marram.teach.examinations.kept_paper import VERSION, KeptItem, KeptPapers, read_papers, written
from marram.teach.examinations.paper import Examination, examination
from marram.teach.examinations.printing import mark_of

NAME = "papers.json"
MARK = 4
"""Characters that tell a paper."""


def kept_beside(exam: Examination, folder: Path) -> dict[Path, bytes]:
    """Return the file that keeps an examination in a folder.

    Raises:
        InputError: the folder keeps other papers, whose answers could then not be marked any more.
    """
    file = folder / NAME
    now = written(exam, COURSE_NAME)
    if file.exists() and _forms(kept_papers(file)) != _forms(read_papers(now)):
        raise InputError(
            said("{path} keeps other papers, which are marked from it: name another folder.", path=file)
        )
    return {file: now.encode()}


def kept_papers(path: Path) -> KeptPapers:
    """Return the papers of a file.

    Raises:
        InputError: the file cannot be read, is another kind, or a later program wrote it.
    """
    document = read_json(path, str(path))
    if document.get("kind") != "examination_papers":
        raise InputError(
            said("{path} keeps no papers: give the {name} beside the printed papers.", path=path, name=NAME)
        )
    if document.get("marram") != VERSION:
        raise InputError(
            said(
                "{path} was written by a later version of this program: update it, and mark again.", path=path
            )
        )
    try:
        found = read_papers(json.dumps(document))
    except (KeyError, TypeError, AttributeError):
        found = None
    if found is None or not all(_whole(one) for items in found.forms.values() for one in items):
        raise InputError(said("{path} is not whole: take it again from where it was drawn.", path=path))
    return found


def drawn_again(seed: int, count: int, *, level: int, forms: int, retired: frozenset[str]) -> KeptPapers:
    """Return the papers of a seed as they are drawn today."""
    return read_papers(
        written(examination(seed, count, level=level, forms=forms, retired=retired), COURSE_NAME)
    )


def form_of(papers: KeptPapers, form: str) -> tuple[KeptItem, ...]:
    """Return the items of a form.

    Raises:
        InputError: there is no such form.
    """
    found = papers.forms.get(form.upper())
    if found is None:
        raise InputError(said("There is no form {form} of this examination.", form=form))
    return found


def same_paper(items: tuple[KeptItem, ...], mark: str | None, *, kept: bool) -> None:
    """Check that a form is the one that was printed.

    Args:
        items: the form.
        mark: the characters under the title of the printed paper; ``None`` where they were not given.
        kept: whether the form was kept, and not drawn again.

    Raises:
        InputError: the form bears another mark, or was drawn again and no mark was given.
    """
    bears = mark_of([one.ident for one in items])
    if mark is None and kept:
        return
    if mark is None:
        raise InputError(
            said(
                "Which paper was sat? Give --papers with the {name} that was written beside it, or --paper-mark "
                "with the {count} characters after 'paper' under its title.",
                name=NAME,
                count=MARK,
            )
        )
    if mark.strip().upper() == bears:
        return
    if kept:
        raise InputError(
            said(
                "The kept form bears {bears}, not {mark}: give its own file, or its form.",
                bears=bears,
                mark=shown(mark),
            )
        )
    raise InputError(
        said(
            "Drawn today, this form bears {bears}, not {mark}: the book has changed, or seed, count, level, forms or "
            "retired items are others. Give --papers with the {name} that was written beside the paper; where "
            "there is none, mark by the printed key.",
            bears=bears,
            mark=shown(mark),
            name=NAME,
        )
    )


def _forms(papers: KeptPapers) -> list[list[str]]:
    return [[one.ident for one in items] for items in papers.forms.values()]


def _whole(one: KeptItem) -> bool:
    right = one.right
    return isinstance(right, int) and isinstance(one.ident, str) and 0 <= right < len(one.answers)
