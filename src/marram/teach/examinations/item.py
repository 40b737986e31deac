"""An item of a paper: a question of the book with what tells it from others."""

from dataclasses import dataclass, replace
from hashlib import sha256

from marram.teach.book.permanent import address_of
from marram.teach.quizzes.drafting import Question


@dataclass(frozen=True, slots=True)
class Item:
    """A question with the place it has in the blueprint.

    Attributes:
        question: the situation with its answers.
        rule: the Rule it stands for; 0 for the Model Local Rules.
        level: its difficulty, 1 to 3: the grade of the situation (facts that decide, provisions, exceptions, how
            rare it is), until candidates have answered it.
    """

    question: Question
    rule: int
    level: int

    @property
    def ident(self) -> str:
        """What names the item for ever: the same situation with the same answers is the same item."""
        words = "|".join(
            (address_of(self.question.situation), *sorted(one.words for one in self.question.answers))
        )
        return sha256(words.encode()).hexdigest()[:10]

    @property
    def weight(self) -> tuple[int, int]:
        """How much there is to weigh, and how few answers there are to guess from: what tells items of a level apart."""
        return self.question.situation.points, -len(self.question.answers)

    def at(self, place: int) -> "Item":
        """Return the item with its right answer at another place."""
        answers = list(self.question.answers)
        right = answers.pop(self.question.right)
        place = min(place, len(answers))
        answers.insert(place, right)
        return replace(self, question=replace(self.question, answers=tuple(answers), right=place))
