"""One question: a situation and rulings to choose from, exactly one of them right."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random

from marram.errors import InputError
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import incident
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Action, Ruling
from marram.said import said
from marram.teach.quizzes.near import Near, near_rulings
from marram.teach.situations.sampling import situations
from marram.teach.situations.situation import Situation
from marram.words.headline import headline, next_words, total_words
from marram.words.texts import capital, text

MOST_ANSWERS = 4
FEWEST_ANSWERS = 3
MOST_IN_VAIN = 60
"""Situations drawn one after the other of which none gives a question, before it is said that none can (own choice)."""
PARTNERS = "Other forms of play, partners and teams"
"""The theme whose rulings name a side or a partner."""


ASKS_FOR_FINDING = frozenset({"foursomes_whose_turn", "stableford_points", "whose_turn"})
"""Incidents of which a penalty, or what is to be done next, is no answer: whose turn, how many points."""


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
    """Yield questions without end, the same for the same seed; the arguments are those of :func:`situations`.

    Raises:
        InputError: of what was asked for no question can be made, as far as was tried; or as for :func:`situations`.
    """
    in_vain = 0
    drawn = situations(seed, incidents=incidents, provision=provision, level=level)
    for number, one in enumerate(drawn):
        found = question(one, Random(f"{seed} {number}"))  # noqa: S311 - a seed, no secret
        if found is not None:
            yield found
        in_vain = 0 if found is not None else in_vain + 1
        if in_vain == MOST_IN_VAIN:
            raise InputError(
                said(
                    "{count} situations of {incident} were drawn, and no question can be asked of them: too few other "
                    "rulings lie near. Ask about more incidents, another provision or another level.",
                    count=MOST_IN_VAIN,
                    incident=", ".join(incidents) or one.incident,
                )
            )


def question(one: Situation, lot: Random) -> Question | None:
    """Return the question about a situation; ``None`` where too few other rulings lie near it.

    Where nothing is penalised and the finding is what is asked for (whose turn, how many points), the answers are findings.
    """
    if decided_by_finding(one.ruling, one.form) and (found := _question(one, lot, by_finding=True)):
        return found
    return None if one.incident in ASKS_FOR_FINDING else _question(one, lot, by_finding=False)


def _question(one: Situation, lot: Random, *, by_finding: bool) -> Question | None:
    words = headline if by_finding else _words
    right = Answer(words(one.ruling, one.form), one.headline)
    chosen: dict[str, Answer] = {}
    kept: list[Near] = []
    unlikely: list[Near] = []

    def take(near: Near) -> None:
        others = [(one.ruling, one.form), *((each.ruling, each.form) for each in kept)]
        said = words(near.ruling, near.form)
        apart = said not in {right.words, *chosen}
        if apart and (by_finding or all(_told_apart((near.ruling, near.form), other) for other in others)):
            kept.append(near)
            chosen[said] = Answer(said, headline(near.ruling, near.form), near)

    for near in near_rulings(one, lot):
        if by_finding and (near.incident or not decided_by_finding(near.ruling, near.form)):
            continue
        if not by_finding and is_allowed_too(one.ruling, near.ruling):
            continue
        if eliminates_itself(one, near):
            unlikely.append(near)
            continue
        take(near)
        if len(chosen) == MOST_ANSWERS - 1:
            break
    for near in unlikely:
        if len(chosen) >= FEWEST_ANSWERS - 1:
            break
        take(near)
    if len(chosen) < FEWEST_ANSWERS - 1:
        return None
    answers = [right, *chosen.values()]
    lot.shuffle(answers)
    return Question(one, tuple(answers), answers.index(right))


def decided_by_finding(ruling: Ruling, form: FormOfPlay) -> bool:
    """Whether what a ruling finds is all it says: nothing is penalised, nothing is to be done with a ball."""
    silent = ruling.action in {None, Action.PLAY_ON, Action.HOLE_OVER, Action.HOLED}
    return silent and total_words(ruling, form).casefold() not in headline(ruling, form).casefold()


def eliminates_itself(one: Situation, near: Near) -> bool:
    """Whether an answer can be ruled out without a Rule: of the teeing area, partners or sand, where none is told of.

    So is playing out both balls in a match, where there is one ball (Rule 20.1c(3) is of stroke play).
    """
    area = one.facts.get(area_of_ball.name)
    moved = dict(near.otherwise).get(area_of_ball.name) == Area.TEEING_AREA.value
    here = area == Area.TEEING_AREA.value
    notes = set(near.ruling.notes) - set(one.ruling.notes)
    if "shape_the_lie_in_sand" in notes and area is not None and area != Area.BUNKER.value:
        return True
    if "play_out_both_balls" in notes and one.form is FormOfPlay.MATCH_PLAY:
        return True
    partners = bool(near.incident) and incident(near.incident).theme == PARTNERS
    return (moved and not here) or (partners and incident(one.incident).theme != PARTNERS)


def is_allowed_too(right: Ruling, other: Ruling) -> bool:
    """Whether what another ruling says is one of the things that the right one allows, and so not wrong.

    One of several relief options is; so is a ball played as it lies in the teeing area, where it may be moved too; and
    stroke and distance, which is open to whoever may play the ball as it lies (Rule 18.1).
    """
    if right.penalties or other.penalties:
        return False
    if right.action is Action.PLAY_AS_IT_LIES and other.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
        return all(option.kind is ReliefKind.STROKE_AND_DISTANCE for option in other.relief)
    if right.action is Action.PLAY_FROM_TEEING_AREA:
        return other.action is Action.PLAY_AS_IT_LIES and right.stroke is None
    offered = {(option.kind, option.penalty) for option in right.relief}
    taken = {(option.kind, option.penalty) for option in other.relief}
    return other.action is Action.TAKE_RELIEF and bool(taken) and taken < offered


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
