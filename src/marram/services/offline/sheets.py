"""Sheets in words, written with every sentence once: rulings say the same few thousand sentences in many ways."""

from typing import Any

from marram.rules.plain import as_plain
from marram.services.offline.pool import Pool
from marram.words.sheet import Sheet

TEXT = ("headline", "tell", "finding", "decided_by")
LINES = ("penalties", "steps", "further", "if_wrong", "cautions", "criteria", "outcomes")
FLAGS = ("free", "penalty_said")
OPTION = ("kind", "title", "cost", "reference", "size", "how", "citation", "area")
"""The parts of a sheet and of its options, by how they are written."""


class Sheets:
    """Sheets, their sentences and their relief options, each once.

    Attributes:
        sentences: every sentence.
        options: every relief option.
        sheets: every sheet.
    """

    def __init__(self) -> None:
        self.sentences, self.options, self.sheets = Pool(), Pool(), Pool()

    def place(self, sheet: Sheet) -> int:
        """Return the place of a sheet; what led to it, and the next question, are told by the walk itself."""
        say = self.sentences.place
        written: dict[str, Any] = {"kind": say(sheet.kind)}
        for name in TEXT:
            if words := getattr(sheet, name):
                written[name] = say(words)
        for name in LINES:
            if lines := getattr(sheet, name):
                written[name] = [say(line) for line in lines]
        for name in FLAGS:
            if getattr(sheet, name):
                written[name] = 1
        if sheet.options:
            written["options"] = [self._option(one) for one in sheet.options]
        if sheet.provisions:
            written["provisions"] = [[say(one.citation), say(one.statement)] for one in sheet.provisions]
        if sheet.rather is not None:
            written["rather"] = as_plain(sheet.rather)
        return self.sheets.place(written, repr(written))

    def _option(self, option: Any) -> int:
        say = self.sentences.place
        written: dict[str, Any] = {name: say(getattr(option, name)) for name in OPTION}
        written["limits"] = [say(limit) for limit in option.limits]
        written["free"] = int(option.free)
        return self.options.place(written, repr(written))
