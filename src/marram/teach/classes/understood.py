"""What a class misunderstood, by provision: of all answers to questions that rest on it, how many were wrong."""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from marram.teach.quizzes.drafting import Question
from marram.words.provisions import cited


@dataclass(frozen=True, slots=True)
class Understood:
    """A provision as a class understood it.

    Attributes:
        citation: the provision.
        statement: what it says, in words of our own.
        answered: answers to questions whose ruling rests on it.
        wrong: how many of them were wrong.
    """

    citation: str
    statement: str
    answered: int
    wrong: int

    @property
    def share(self) -> float:
        """The share of wrong answers, 0 to 1."""
        return self.wrong / self.answered


def understood(asked: Iterable[tuple[Question, Mapping[int, int]]]) -> list[Understood]:
    """Return the provisions that questions rested on, the one misunderstood by most first.

    Args:
        asked: each question with how often each place of its answers was chosen; unanswered ones count for nothing.
    """
    answered: Counter[str] = Counter()
    wrong: Counter[str] = Counter()
    for question, chosen in asked:
        many = sum(chosen.values())
        for citation in question.situation.ruling.citations:
            answered[citation] += many
            wrong[citation] += many - chosen.get(question.right, 0)
    found = [
        Understood(citation, cited(citation).statement, many, wrong[citation])
        for citation, many in answered.items()
        if many
    ]
    return sorted(found, key=lambda one: (-one.share, -one.wrong, one.citation))
