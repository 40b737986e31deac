"""One question: a situation and rulings to choose from, exactly one of them right."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random

from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.ruling import Ruling
from marram.teach.situations.sampling import situations
from marram.teach.situations.situation import Situation, ruled
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
        fact: the fact that would have to be otherwise for it to be right; empty for the right one and another edition's.
        token: that fact's other answer.
        edition: the year of the edition that ruled so; 0 for the one in force.
    """

    words: str
    headline: str
    fact: str = ""
    token: str = ""
    edition: int = 0


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
    right = Answer(_words(one.ruling, one), one.headline)
    wrong = _wrong_answers(one)
    lot.shuffle(wrong)
    wrong.sort(key=lambda other: not other.edition)  # what an older edition ruled is the likeliest mistake
    kept: dict[str, Answer] = {}
    for other in wrong:
        if other.words != right.words:
            kept.setdefault(other.words, other)
    chosen = list(kept.values())[: MOST_ANSWERS - 1]
    if len(chosen) < FEWEST_ANSWERS - 1:
        return None
    answers = [right, *chosen]
    lot.shuffle(answers)
    return Question(one, tuple(answers), answers.index(right))


def _wrong_answers(one: Situation) -> list[Answer]:
    found = []
    before = one.ruled_otherwise_before
    if before is not None:
        found.append(Answer(_words(before, one), headline(before, one.form), edition=2019))
    for name, given in one.facts.items():
        fact = fact_named(name)
        if fact is the_sides:  # another kind of play is no mistake about what happened
            continue
        for token in fact.tokens():
            near = None if token == given else _near(one, name, token)
            if near is not None:
                found.append(Answer(_words(near, one), headline(near, one.form), name, token))
    return found


def _near(one: Situation, name: str, token: str) -> Ruling | None:
    """Return the ruling with one fact otherwise and all else told alike; ``None`` where more would have to be told."""
    other = ruled(one.incident, {**one.facts, name: token}, one.form, one.played_on)
    return other if isinstance(other, Ruling) else None


def _words(ruling: Ruling, one: Situation) -> str:
    """Return what a ruling comes to and what follows, alike in form for every answer, so that none stands out."""
    total = capital(total_words(ruling, one.form))
    then = next_words(ruling, one.form)
    return (
        text("quizzes.answer", total=total, next=then) if then else text("quizzes.answer_alone", total=total)
    )
