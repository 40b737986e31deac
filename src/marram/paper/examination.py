"""A paper of an examination, or its key, as PDF."""

from collections.abc import Sequence
from typing import Any

from marram.paper.paper_size import PaperSize
from marram.paper.typeset import typeset
from marram.words.language import language
from marram.words.texts import text


def examination_pdf(
    title: str,
    about: str,
    items: Sequence[dict[str, Any]],
    *,
    key: bool,
    instructions: Sequence[str],
    paper: PaperSize = PaperSize.A4,
) -> bytes:
    """Return a paper as PDF.

    Args:
        title: its name.
        about: level, with the book or without, by what its key is known.
        items: each with ``number``, ``told``, ``answers`` (``letter``, ``words``, ``right``, ``why``) and ``note``.
        key: whether it is the key, which is not for candidates.
        instructions: what candidates are told, a sentence each.
        paper: the size of the pages.
    """
    data = {
        "language": language().code,
        "paper": paper.in_typst,
        "title": title,
        "about": about,
        "key": key,
        "candidate": "" if key else text("examinations.candidate"),
        "date": text("examinations.date"),
        "instructions": list(instructions),
        "items": list(items),
        "foot": text("examinations.key_foot" if key else "examinations.foot"),
    }
    return typeset("examination", data)
