"""What a story tells of one act beside its facts: whose act it was, which ball it was about, the strokes until the next."""

from collections.abc import Sequence
from dataclasses import dataclass

from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.chosen import Choice
from marram.desk.rulings.story import together
from marram.rules.facts.several import StoryBall, about_ball
from marram.words.language import translate
from marram.words.texts import text


@dataclass(frozen=True)
class ToldOfAct:
    """What can be told of one act, and what was.

    Attributes:
        number: the act, from 1.
        whose: whose act it can have been, one tap each.
        balls: which ball it can have been about, one tap each.
        strokes: strokes made in it and until the next act, where they were told.
        hidden: what a form about its strokes must keep.
    """

    number: int
    whose: Sequence[Choice]
    balls: Sequence[Choice]
    strokes: int | None
    hidden: Sequence[tuple[str, str]]

    @property
    def strokes_key(self) -> str:
        """The key of an address that holds its strokes."""
        return f"strokes_{self.number}"

    @property
    def said(self) -> list[str]:
        """What was told, in words, beyond what goes without saying."""
        return [
            one.words
            for choices in (self.whose, self.balls)
            for one in choices
            if one.told and one.remarkable
        ]


def told_of_act(case: CaseAddress, number: int) -> ToldOfAct:
    """Return what can be told of an act of a story, and what was told.

    Args:
        case: the case, as a page about one of its acts or about all of them holds it.
        number: the act, from 1.
    """
    whole = together(case)
    return ToldOfAct(
        number,
        _whose(whole, number),
        _balls(whole, number),
        whole.strokes.get(number),
        whole.pairs(without=(f"strokes_{number}", "ask")),
    )


def _whose(case: CaseAddress, number: int) -> list[Choice]:
    another = number in case.by_another
    own_url = case.url("/together", by_another=case.by_another - {number}, ask=None)
    others_url = case.url("/together", by_another=case.by_another | {number}, ask=None)
    return [
        Choice(text("rulings.act.own"), own_url, not another, remarkable=False),
        Choice(text("rulings.act.another"), others_url, another),
    ]


def _balls(case: CaseAddress, number: int) -> list[Choice]:
    """Return the balls of a story; the first choice takes back what was told."""
    fact = about_ball[number - 1]
    told = case.between.get(fact.name)
    rest = {name: answer for name, answer in case.between.items() if name != fact.name}
    open_url = case.url("/together", between=rest, ask=None)
    return [
        Choice(text("rulings.act.ball.open"), open_url, told is None, remarkable=False),
        *(
            Choice(
                translate()(fact.answers[ball]),
                case.url("/together", between={**rest, fact.name: ball.value}, ask=None),
                told == ball.value,
            )
            for ball in StoryBall
        ),
    ]
