"""How often something may fail: so many tries in so many seconds, for each address or name."""

from collections import OrderedDict
from collections.abc import Callable
from threading import Lock

MOST_KEPT = 10_000
"""Addresses or names that are counted at a time (own choice); beyond them the oldest is forgotten."""


class Limit:
    """A leaking bucket for each key: a failure fills it, time empties it, and a full one refuses.

    Args:
        most: failures it holds.
        seconds: in which a full one is empty again.
        ticking: tells seconds.
    """

    def __init__(self, most: int, seconds: float, ticking: Callable[[], float]) -> None:
        self.most, self.seconds, self._ticking = most, seconds, ticking
        self._filled: OrderedDict[str, tuple[float, float]] = OrderedDict()
        self._lock = Lock()

    def wait(self, key: str) -> float:
        """Return the seconds until another try is taken; 0 for at once."""
        with self._lock:
            level = self._level(key)
        leak = self.most / self.seconds
        return max(0.0, (level + 1 - self.most) / leak)

    def failed(self, key: str) -> None:
        """Count a failure."""
        with self._lock:
            self._filled[key] = self._level(key) + 1, self._ticking()
            self._filled.move_to_end(key)
            while len(self._filled) > MOST_KEPT:
                self._filled.popitem(last=False)

    def _level(self, key: str) -> float:
        level, at = self._filled.get(key, (0.0, 0.0))
        return max(0.0, level - (self._ticking() - at) * self.most / self.seconds)
