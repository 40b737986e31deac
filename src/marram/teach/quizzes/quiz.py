"""One question after another: drafted from situations, asked where its like was read and approved."""

from collections import deque
from collections.abc import Iterator
from dataclasses import replace
from functools import lru_cache
from random import Random

from marram.errors import InputError
from marram.said import said
from marram.teach.quizzes.approved import is_approved
from marram.teach.quizzes.drafting import Question, Told, draft, told_in
from marram.teach.situations.sampling import situations
from marram.teach.situations.situation import Situation
from marram.words.headline import costs_something
from marram.words.texts import worded

MOST_IN_VAIN = 400
"""Situations drawn one after the other of which none gives a question, before it is said that none can (own choice)."""
NOT_AGAIN = 300
"""Questions within which the same facts are not asked about again, whatever the player is called (own choice)."""
MOST_AGAIN = 6
"""Questions drawn one after the other that were asked before, after which there are taken to be no others (own choice)."""
A_QUIZ = 20
"""Questions of one sitting, among which none tells the same as another (own choice)."""
TAKEN_UP = 0.4
"""Of questions whose right answer costs nothing, how many are asked: about half of all rulings do, and most wrong answers
do not, so that whoever chose such an answer whatever was told was right in 45 of 100 questions, and is now in 29 (own
choice; one in four is chance)."""
TAKEN_UP_LONGEST = 0.75
"""Of questions whose right answer is longer than any other, how many are asked: else it would be right in 31 of 100 (own choice)."""


def questions(
    seed: int, *, incidents: tuple[str, ...] = (), provision: str = "", level: int | None = None
) -> Iterator[Question]:
    """Yield questions without end, the same for the same seed; the arguments are those of :func:`situations`.

    Raises:
        InputError: of what was asked for no question can be made, as far as was tried; or as for :func:`situations`.
    """
    in_vain = 0
    asked: deque[Told] = deque(maxlen=NOT_AGAIN)
    again = 0
    closed: set[Told] = set()  # facts that lead to no question: it would be drafted to the same end
    drawn = situations(seed, incidents=incidents, provision=provision, level=level)
    for number, one in enumerate(drawn):
        lot = Random(f"{seed} {number}")  # noqa: S311 - a seed, no secret
        found = None if told_in(one) in closed else question(one, lot)
        if found is None:
            closed.add(told_in(one))
        if found is not None and is_taken_up(found, lot):
            again = again + 1 if told_in(one) in asked else 0
            if again in (0, MOST_AGAIN):
                again = 0
                asked.append(told_in(one))
                yield found
        in_vain = 0 if found is not None else in_vain + 1
        if in_vain == MOST_IN_VAIN:
            raise InputError(
                said(
                    "{count} situations of {incident} were drawn, and no question can be asked of them: too few other "
                    "rulings lie near, or nobody has read such a question yet. Ask about more incidents, another provision "
                    "or another level.",
                    count=MOST_IN_VAIN,
                    incident=", ".join(incidents) or one.incident,
                )
            )


def numbered(seed: int, number: int, most: int) -> Question:
    """Return one question of a quiz by its number, which gives it again; within its :data:`A_QUIZ` none tells the same as another.

    Args:
        seed: the seed of the quiz.
        number: of the question, below ``most``.
        most: how many questions a quiz has at most, so that each has a seed of its own.
    """
    return _numbered(seed, number, most, worded())


@lru_cache(maxsize=2048)
def _numbered(seed: int, number: int, most: int, words: str) -> Question:
    """Return what :func:`numbered` does, held for the language and the place of its words."""
    before = range(number - (number - 1) % A_QUIZ, number)
    asked = {told_in(_numbered(seed, each, most, words).situation) for each in before}
    drawn = questions(seed * most + number)
    return next(one for one in drawn if told_in(one.situation) not in asked)


def is_taken_up(found: Question, lot: Random) -> bool:
    """Whether a question is asked, so that none can be taken for right as it costs nothing, or as it is the longest."""
    wrong = [answer.near.ruling for answer in found.answers if answer.near is not None]
    gives_away = not costs_something(found.situation.ruling) and any(costs_something(one) for one in wrong)
    if gives_away and lot.random() >= TAKEN_UP:
        return False
    *_, second, longest = sorted(len(each.words) for each in found.answers)
    stands_out = second < longest == len(found.answers[found.right].words)
    return not stands_out or lot.random() < TAKEN_UP_LONGEST


def question(one: Situation, lot: Random) -> Question | None:
    """Return the question about a situation, its answers in an order by lot; ``None`` where none can be asked or none was approved."""
    found = draft(one)
    if found is None or not is_approved(found):
        return None
    answers = list(found.answers)
    lot.shuffle(answers)
    return replace(found, answers=tuple(answers), right=answers.index(found.answers[found.right]))
