"""Equal things kept once, each named by its place: what a document of many rulings repeats most."""

from collections.abc import Hashable
from typing import Any


class Pool:
    """Things in the order they first came, each once.

    Attributes:
        rows: what is kept, as it is written into the document.
    """

    def __init__(self) -> None:
        self.rows: list[Any] = []
        self._places: dict[Hashable, int] = {}

    def place(self, row: Any, key: Hashable | None = None) -> int:
        """Return the place of a row, which is added if it is new.

        Args:
            row: what is kept.
            key: what makes it the same as another; the row itself where that can be hashed.
        """
        key = row if key is None else key
        if key not in self._places:
            self._places[key] = len(self.rows)
            self.rows.append(row)
        return self._places[key]

    def keyed(self, key: Hashable) -> int | None:
        """Return the place of what was added under a key; ``None`` if nothing was."""
        return self._places.get(key)
