"""The sizes of paper that a document can be set on."""

from enum import Enum


class PaperSize(Enum):
    """A size of paper; the value is the one that is typed and stands in addresses."""

    A4 = "a4"
    LETTER = "letter"

    @property
    def in_typst(self) -> str:
        """Its name for the typesetter."""
        return "us-letter" if self is PaperSize.LETTER else self.value
