"""How well incidents are found: the shares that are reported, and how sharply a score tells."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy.optimize import minimize_scalar


@dataclass(frozen=True, slots=True)
class Shares:
    """In how many of the sentences the incident was first, among three, among five, and missing from twelve."""

    sentences: int
    first: float
    three: float
    five: float
    missing: float

    def __str__(self) -> str:
        return (
            f"{self.sentences} sentences: first {self.first:.1%}, among three {self.three:.1%}, "
            f"among five {self.five:.1%}, missing from twelve {self.missing:.1%}"
        )


def shares(orders: Sequence[Sequence[str]], meant: Sequence[frozenset[str]]) -> Shares:
    """Return the shares for incidents in the order offered, with those that are right for each sentence."""

    def within(most: int) -> float:
        return sum(
            not right.isdisjoint(order[:most]) for order, right in zip(orders, meant, strict=True)
        ) / len(meant)

    return Shares(len(meant), within(1), within(3), within(5), 1 - within(12))


def orders(scores: np.ndarray, incidents: Sequence[str]) -> list[list[str]]:
    """Return the incidents in order of their scores; of equals the earlier first."""
    return [[incidents[at] for at in row] for row in np.argsort(-scores, axis=1, kind="stable")]


def sharpness(scores: np.ndarray, lengths: np.ndarray, right: Sequence[int]) -> float:
    """Return by how much scores, over the length of their text, must be multiplied to be logarithms of odds.

    It makes the incidents that were right the likeliest, over all texts.
    """
    scaled = scores / lengths[:, None]

    def surprise(factor: float) -> float:
        odds = factor * (scaled - scaled.max(axis=1, keepdims=True))
        chosen = odds[np.arange(len(right)), right]
        return float(np.mean(np.log(np.exp(odds).sum(axis=1)) - chosen))

    return float(minimize_scalar(surprise, bounds=(1e-3, 10), method="bounded").x)
