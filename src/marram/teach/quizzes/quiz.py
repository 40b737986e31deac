"""One question: a situation and rulings to choose from, exactly one of them right."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.ruling import Action, Ruling
from marram.teach.quizzes.near import Near, near_rulings
from marram.teach.situations.sampling import situations
from marram.teach.situations.situation import Situation
from marram.words.headline import headline, next_words, total_words
from marram.words.texts import capital, text

MOST_ANSWERS = 4
FEWEST_ANSWERS = 3


@dataclass(frozen=True, slots=True)
class Answer:
    """One answer that can be chosen.

    Attributes:
        words: the ruling, in what it costs and what is to be done next; what it finds would give it away.
        headline: the ruling in one line, with what it finds.
        near: what would have to be otherwise for it to be right; ``None`` for the right one.
    """

    words: str
    headline: str
    near: Near | None = None


@dataclass(frozen=True, slots=True)
class Question:
    """A situation, its answers as they are shown, and the place of the right one."""

    situation: Situation
    answers: tuple[Answer, ...]
    right: int


def questions(
    seed: int, *, incidents: tuple[str, ...] = (), provision: str = "", level: int | None = None
) -> Iterator[Question]:
    """Yield questions without end, the same for the same seed; the arguments are those of :func:`situations`."""
    drawn = situations(seed, incidents=incidents, provision=provision, level=level)
    for number, one in enumerate(drawn):
        found = question(one, Random(f"{seed} {number}"))  # noqa: S311 - a seed, no secret
        if found is not None:
            yield found


def question(one: Situation, lot: Random) -> Question | None:
    """Return the question about a situation; ``None`` where too few other rulings lie near it."""
    right = Answer(_words(one.ruling, one.form), one.headline)
    chosen: dict[str, Answer] = {}
    kept: list[Near] = []
    for near in near_rulings(one, lot):
        words = _words(near.ruling, near.form)
        others = [(one.ruling, one.form), *((each.ruling, each.form) for each in kept)]
        if all(_told_apart((near.ruling, near.form), other) for other in others):
            kept.append(near)
            chosen[words] = Answer(words, headline(near.ruling, near.form), near)
            if len(chosen) == MOST_ANSWERS - 1:
                break
    if len(chosen) < FEWEST_ANSWERS - 1:
        return None
    answers = [right, *chosen.values()]
    lot.shuffle(answers)
    return Question(one, tuple(answers), answers.index(right))


def _told_apart(one: tuple[Ruling, FormOfPlay], other: tuple[Ruling, FormOfPlay]) -> bool:
    """Whether rulings say different things, not one less than the other: what they cost differs, or what is done next."""
    if total_words(*one) != total_words(*other):
        return True
    said = next_words(*one) and next_words(*other)
    both = {one[0].action, other[0].action}
    return bool(said) and len(both) > 1 and not both <= _ALIKE


_ALIKE = {Action.PLAY_ON, Action.PLAY_AS_IT_LIES}
"""What comes to the same for somebody who is asked."""


def _words(ruling: Ruling, form: FormOfPlay) -> str:
    """Return what a ruling comes to and what follows, alike in form for every answer, so that none stands out."""
    total = capital(total_words(ruling, form))
    then = next_words(ruling, form)
    return (
        text("quizzes.answer", total=total, next=then) if then else text("quizzes.answer_alone", total=total)
    )
