"""What was made of maps and is held for whoever needs it next: the last used, as far as they are not too large together."""

from collections.abc import Hashable
from threading import Lock
from typing import Generic, TypeVar

MOST_FEATURES = 60_000
"""How many features all that is held together may have; the last one used is held however large it is (own choice:
as course and document, 50,000 features take some hundred megabytes)."""

K = TypeVar("K", bound=Hashable)
V = TypeVar("V")


class Held(Generic[K, V]):
    """Values by key, the last used first to stay.

    Args:
        most: how many are held at most.
    """

    def __init__(self, most: int) -> None:
        self._most = most
        self._values: dict[K, tuple[V, int]] = {}
        self._lock = Lock()

    def get(self, key: K) -> V | None:
        """Return what is held under a key, which is thereby the last used."""
        with self._lock:
            found = self._values.pop(key, None)
            if found is None:
                return None
            self._values[key] = found
            return found[0]

    def hold(self, key: K, value: V, features: int) -> V:
        """Hold a value made of a map of so many features, and let go of the longest unused beyond what may be held."""
        with self._lock:
            self._values.pop(key, None)
            self._values[key] = value, features
            while len(self._values) > 1 and (
                len(self._values) > self._most or sum(n for _, n in self._values.values()) > MOST_FEATURES
            ):
                self._values.pop(next(iter(self._values)))
        return value

    def __len__(self) -> int:
        return len(self._values)
