"""Handicaps in words: numbers as golfers write them, and the steps of a calculation as sentences."""

from fractions import Fraction

from marram.handicap.checking import decimal
from marram.handicap.worked import Step
from marram.words.texts import text

TENTHS = frozenset(("half_rounded", "differential_rounded", "index_rounded", "cap_rounded", "most_index"))
"""Steps that end in whole tenths."""
HANDICAPS = frozenset(
    ("course_rounded", "playing_rounded", "side_rounded", "par_added", "index_rounded", "cap_rounded")
)
"""Steps that end in a handicap, which is written with a plus where it is below zero."""


def number_words(value: Fraction | int | str) -> str:
    """Return a number in decimals; cut after four, with ``…``, where it goes on."""
    return value if isinstance(value, str) else decimal(Fraction(value))


def handicap_words(value: Fraction | int, *, tenths: bool = False) -> str:
    """Return a handicap as golfers write it: a plus one with its sign, ``tenths`` always with one decimal."""
    written = decimal(abs(Fraction(value)))
    if tenths and "." not in written:
        written += ".0"
    return f"+{written}" if value < 0 else written


def citation_words(citation: str) -> str:
    """Return a citation of the Rules of Handicapping in words: ``Rule 6.1a``, ``Appendix C``."""
    if citation.isalpha():
        return text("handicap.appendix", letter=citation)
    return text("handicap.rule", number=citation)


def differential_words(value: Fraction) -> str:
    """Return a Score Differential, always with one decimal."""
    written = decimal(value)
    return written if "." in written else f"{written}.0"


def step_words(step: Step) -> str:
    """Return one step of a calculation as a sentence with its citation."""
    values = {name: _in_a_sum(value) for name, value in step.values.items()}
    sentence = text(f"handicap.step.{step.key}", **values, result=_result_words(step))
    return text("handicap.cited", sentence=sentence, citation=citation_words(step.citation))


def _result_words(step: Step) -> str:
    """Return what came of a step: tenths with their decimal; of a handicap below zero also how it is written."""
    written = differential_words(step.result) if step.key in TENTHS else number_words(step.result)
    if step.result >= 0 or step.key not in HANDICAPS:
        return written
    key = "handicap.plus_index" if step.key in TENTHS else "handicap.plus"
    return text(key, number=written, plus=handicap_words(step.result, tenths=step.key in TENTHS))


def _in_a_sum(value: Fraction | int | str) -> str:
    """Return a number as it stands in a sum: one below zero in brackets, so that no two signs meet."""
    written = number_words(value)
    return f"({written})" if not isinstance(value, str) and value < 0 else written
