"""A ruling of the report that was disputed: what was told, what was ruled, how it was asked about again, its relief as drawn."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from marram.words.texts import clock_words, count_text, text


@dataclass(frozen=True, slots=True)
class Asked:
    """A second opinion.

    Attributes:
        at: when it was asked, by the clock of the place.
        answered: when it was answered; ``None``: it was not.
        agrees: whether it is to be ruled as the official was shown.
        headline: what the Rules say of the case as it is to be ruled, where that is another one.
    """

    at: datetime
    answered: datetime | None = None
    agrees: bool = False
    headline: str = ""


@dataclass(frozen=True, slots=True)
class Disputed:
    """How a ruling was disputed: ruled otherwise than computed, asked about again, or unlike an earlier one.

    Attributes:
        told: what was told of the case, as sentences that name nobody.
        instead: what was given in place of what was computed, in words; empty where it was not said.
        asked: the second opinions, the first first.
        unlike: how many earlier rulings about the same situation went another way.
        drawing: the relief as it was drawn, as SVG; empty where there is none.
    """

    told: tuple[str, ...] = ()
    instead: str = ""
    asked: tuple[Asked, ...] = ()
    unlike: int = 0
    drawing: str = ""


def disputed_sentences(
    one: Disputed, headline: str, rules: tuple[str, ...], *, otherwise: bool
) -> Iterator[tuple[str, str]]:
    """Yield what the report says of a disputed ruling: what each sentence is about, and the sentence.

    Args:
        one: how it was disputed.
        headline: what was computed.
        rules: the Rules it rests on.
        otherwise: whether it was ruled otherwise than computed.
    """
    if one.told:
        yield text("paper.report.told"), " ".join(one.told)
    key = "paper.report.computed" if otherwise else "paper.report.ruled"
    said = text("paper.report.by_rules", ruling=headline, rules=", ".join(rules)) if rules else headline
    yield text(key), said
    if otherwise:
        yield (
            text("paper.report.ruled"),
            text("paper.report.instead", instead=one.instead)
            if one.instead
            else text("paper.report.instead.unsaid"),
        )
    for each in one.asked:
        yield text("paper.report.asked"), _asked_words(each)
    if one.unlike:
        yield text("paper.report.unlike"), count_text("paper.report.unlike_earlier", one.unlike)


def _asked_words(one: Asked) -> str:
    asked = clock_words(one.at)
    if one.answered is None:
        return text("paper.report.asked.open", asked=asked)
    answered = clock_words(one.answered)
    if one.agrees:
        return text("paper.report.asked.agreed", asked=asked, answered=answered)
    if one.headline:
        return text("paper.report.asked.other", asked=asked, answered=answered, ruling=one.headline)
    return text("paper.report.asked.otherwise", asked=asked, answered=answered)
