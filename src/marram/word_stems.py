"""Words without their endings, by the Snowball project's English stemmer, loaded when a word is first looked for."""

from collections.abc import Callable
from functools import lru_cache


@lru_cache(maxsize=8192)
def stem(word: str) -> str:
    """Return the stem of an English word in lower case: "raked", "raking" and "rakes" have one.

    What holds a digit or a mark, such as the number of a Rule, is its own stem.
    """
    return _stemmer()(word) if word.isalpha() else word


@lru_cache(maxsize=1)
def _stemmer() -> Callable[[str], str]:
    from snowballstemmer import EnglishStemmer  # noqa: PLC0415 - a ruling needs no stemmer

    found: Callable[[str], str] = EnglishStemmer().stemWord
    return found
