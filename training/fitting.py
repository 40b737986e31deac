"""From texts to weights: a linear model fitted with scikit-learn, rounded to small integers and pruned."""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import log

import numpy as np
from scipy import sparse
from sklearn.linear_model import LogisticRegression

from marram.rules.finding.features import DENIED, features
from marram.rules.finding.model import BELOW, MOST
from marram.rules.finding.sentence import Tables, words
from training.material import Told

KINDS: Mapping[str, float] = {
    "stem": 1.0,
    "denied": 0.8,
    "thing": 0.8,
    "pair": 0.6,
    "near": 0.4,
    "beside": 0.6,
}
"""What a feature of each kind counts (our choice, by the held-out sentences)."""
FEWEST: Mapping[str, int] = {"stem": 1, "denied": 2, "thing": 1, "pair": 3, "near": 4, "beside": 4}
"""In how many texts a feature of each kind must stand to be weighed."""
LARGEST = MOST - BELOW
"""The largest weight that the file has a sign for."""


def kind(feature: str) -> str:
    """Return of which kind a feature is."""
    if feature.startswith(DENIED):
        return "denied"
    if "<" in feature:
        return "thing" if feature.startswith("<") and feature.endswith(">") else "beside"
    return "pair" if " " in feature else "near" if "~" in feature else "stem"


@dataclass(frozen=True)
class Features:
    """The features that are weighed, with the value of each in a text that has it."""

    places: Mapping[str, int]
    values: np.ndarray

    @classmethod
    def of(cls, texts: Sequence[Sequence[str]]) -> "Features":
        """Return the features of texts; a rare one is worth more."""
        having = Counter(one for text in texts for one in text)  # a feature stands once in each
        kept = sorted(one for one, count in having.items() if count >= FEWEST[kind(one)])
        values = [KINDS[kind(one)] * (log(len(texts) / having[one]) + 1) for one in kept]
        return cls({one: place for place, one in enumerate(kept)}, np.array(values))

    def matrix(self, texts: Iterable[Sequence[str]]) -> sparse.csr_matrix:
        """Return texts as rows of length one."""
        rows, columns, cells = [], [], []
        for row, text in enumerate(texts):
            known = [self.places[one] for one in text if one in self.places]
            length = np.sqrt((self.values[known] ** 2).sum()) or 1.0
            rows += [row] * len(known)
            columns += known
            cells += list(self.values[known] / length)
        return sparse.csr_matrix((cells, (rows, columns)), shape=(row + 1, len(self.places)))


def taken_apart(told: Iterable[str], tables: Tables) -> list[list[str]]:
    """Return the features of each text."""
    return [features(words(text, tables)) for text in told]


@dataclass(frozen=True)
class Fitted:
    """Weights by feature and incident, with what they were fitted on."""

    features: Features
    incidents: tuple[str, ...]
    weights: np.ndarray

    def scores(self, texts: Iterable[Sequence[str]]) -> np.ndarray:
        """Return the score of each incident for each text."""
        found: np.ndarray = self.features.matrix(texts) @ self.weights
        return found


CLOSENESS = 20.0
"""How closely the model follows the texts (the inverse of the penalty on its weights; by the held-out sentences)."""
LIKENESS = 6.0
"""What likeness to the mean text of an incident counts beside that (our choice, by held-out blocks of sentences)."""


def fit(told: Sequence[Told], tables: Tables, parts: Sequence[Told] = ()) -> Fitted:
    """Return the weights that tell incidents apart best.

    Args:
        told: what is learned from.
        tables: the tables of words.
        parts: parts of it, learned from beside the whole; which features are weighed, the whole decides.

    A multinomial logistic regression, which looks for what differs, and beside it the likeness to the mean text of each
    incident (nearest centroid, Rocchio), which looks for what is common: the sum of two linear models is one. What a feature
    says of every incident alike tells nothing and is taken off: its median, so that most of its weights become nothing.
    """
    texts = taken_apart((one.text for one in told), tables)
    found = Features.of(texts)
    told = [*told, *parts]
    texts += taken_apart((one.text for one in parts), tables)
    learner = LogisticRegression(C=CLOSENESS, fit_intercept=False, tol=1e-5, max_iter=300)
    matrix, named, weights = (
        found.matrix(texts),
        [one.incident for one in told],
        [one.weight for one in told],
    )
    learner.fit(matrix, named, weights)
    incidents = tuple(learner.classes_)
    fitted = learner.coef_.T + LIKENESS * _means(matrix, [incidents.index(one) for one in named], weights)
    return Fitted(found, incidents, fitted - np.median(fitted, axis=1, keepdims=True))


def _means(matrix: sparse.csr_matrix, of: Sequence[int], weights: Sequence[float]) -> np.ndarray:
    """Return the mean text of each incident, of length one, as columns."""
    shares = sparse.csr_matrix((weights, (np.arange(len(of)), of)), shape=(len(of), max(of) + 1))
    sums: np.ndarray = (matrix.T @ shares).toarray()
    lengths: np.ndarray = np.linalg.norm(sums, axis=0)
    return sums / lengths


@dataclass(frozen=True)
class Rounded:
    """Weights as small integers: the value of a feature is in them, only the length of a text is not.

    Attributes:
        features: the features that are left, in order.
        values: the squared value of each, as a small integer.
        weights: by feature and incident.
        unit: what 1 is worth.
    """

    features: tuple[str, ...]
    incidents: tuple[str, ...]
    values: np.ndarray
    weights: np.ndarray
    unit: float

    def scores(self, texts: Iterable[Sequence[str]]) -> np.ndarray:
        """Return the score of each incident for each text, as the program computes it."""
        places = {one: place for place, one in enumerate(self.features)}
        known = [[places[one] for one in text if one in places] for text in texts]
        return np.array([self.weights[one].sum(axis=0) for one in known])


LEAST: Mapping[str, int] = {"stem": 1, "denied": 1, "thing": 1, "pair": 2, "near": 2, "beside": 2}
"""The smallest weights that ship, in steps: coarse steps and many weights tell more than fine steps and few of the same
size; the file is to stay below 300 kB compressed."""
LEAST_AGAINST = 2
"""The smallest weight against an incident that ships, in steps."""
LEAST_ROW: Mapping[str, int] = {"stem": 0, "denied": 2, "thing": 0, "pair": 4, "near": 5, "beside": 4}
"""What the weights of a feature must come to together, in steps: a third fewer features find as well (by the held-out
sentences)."""
VALUE_UNIT = 0.5
"""Steps to 1 in the squared value of a feature."""


def rounded(fitted: Fitted, steps: float) -> Rounded:
    """Return the weights as integers.

    Args:
        fitted: the weights as fitted.
        steps: the largest weights but one in ten thousand become this many steps.
    """
    exact = fitted.weights * fitted.features.values[:, None]
    unit = float(np.quantile(np.abs(exact), 0.9999)) / steps
    whole = np.clip(np.rint(exact / unit), -BELOW, LARGEST).astype(np.int16)
    named = list(fitted.features.places)
    leasts = np.array([LEAST[kind(one)] for one in named])
    whole[np.abs(whole) < leasts[:, None]] = 0
    whole[(whole < 0) & (whole > -LEAST_AGAINST)] = 0
    whole[np.abs(whole).sum(axis=1) < np.array([LEAST_ROW[kind(one)] for one in named])] = 0
    kept = np.flatnonzero(whole.any(axis=1))
    values = np.clip(np.rint(fitted.features.values[kept] ** 2 * VALUE_UNIT), 1, MOST).astype(np.int16)
    return Rounded(tuple(named[one] for one in kept), fitted.incidents, values, whole[kept], unit)
