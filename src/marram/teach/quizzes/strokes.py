"""Questions about a story: which stroke is next? The engine counts; wrong answers are the mistakes that are made in counting."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from random import Random
from typing import Any

from marram.errors import InputError
from marram.rules.facts.cause import stroke_was_made
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.movement import put_in_play_by_hand
from marram.rules.facts.several import Taken, option_taken, taken_as
from marram.rules.result import Result
from marram.rules.ruling import Action, Ruling
from marram.rules.story.story import Happened, StoryResult, rule_story
from marram.rules.story.strokes import StrokeCount
from marram.teach.quizzes.approved import is_approved_act
from marram.teach.quizzes.miscounting import OFTEN, PENALTIES, Counted, answers_to
from marram.teach.quizzes.one_after_another import can_follow
from marram.teach.situations.order_of_telling import in_order
from marram.teach.situations.reaching import TODAY
from marram.teach.situations.sampling import HOLES, NAMES, situation
from marram.teach.situations.situation import ruled
from marram.words.headline import headline
from marram.words.language import translate
from marram.words.telling import telling
from marram.words.texts import count_text, text

GOES_ON = (
    "abnormal_course_condition",
    "ball_in_penalty_area",
    "dangerous_animal",
    "embedded_ball",
    "no_play_zone",
    "unplayable_ball",
)
"""Incidents after which the player goes on with a ball whose place is known, so that another may follow."""
MAY_END = (
    *GOES_ON,
    "ball_lifted_by_player",
    "another_ball_played",
    "ball_moved_by_player",
    "ball_not_found",
    "ball_moved_by_natural_forces",
    "dropped_where_lost",
    "ground_altered",
    "provisional_ball",
    "wrong_ball_played",
)
"""Incidents that such a story may end with; none that only tells what became of a stroke, which may be one told before."""
UNPLAYABLE = "unplayable_ball"
"""An incident in which the player has said so already (Rule 19.1), and does not play the ball as it lies."""
STILL_OPEN = frozenset({"another_ball_played", "provisional_ball", "wrong_ball_played"})
"""Incidents after which it is open, where play just goes on, whether the stroke told of counts: it was at a second ball."""
_UNCOUNTED: Mapping[str, frozenset[str]] = {
    "after_lifting": frozenset({"went_elsewhere"}),
    "altered_place": frozenset({"own_teeing_area"}),
    "balls_after_wrong_place": frozenset({"corrected_ball_only", "two_balls"}),
    "preparing_how": frozenset({"stroke"}),
    "wrong_ball_corrected": frozenset({"yes"}),
}
"""By fact: answers that tell of strokes without their number (with the right ball, in passing) or of relief without its price;
and of ground that no ball comes back to."""
_TELLS_ITS_STROKE = frozenset({"another_ball_played", "provisional_ball"})
"""Incidents that begin with the stroke at the provisional ball."""
_OPEN_NOTES = frozenset({"go_on_under_that_rule", "play_out_both_balls"})
MOST_BEFORE, MOST_BETWEEN = 4, 2
_TRIES = 40


@dataclass(frozen=True, slots=True)
class StrokesQuestion:
    """A story in stroke play, with numbers to choose from.

    Attributes:
        happened: what happened, in order, with the options taken.
        player: the first name of the player, invented.
        hole: the hole.
        result: what the Rules say of it.
        answers: the answers as they are shown.
        right: the place of the right one.
    """

    happened: tuple[Happened, ...]
    player: str
    hole: int
    result: StoryResult
    answers: tuple[Counted, ...]
    right: int

    @property
    def count(self) -> StrokeCount:
        """The strokes as the engine counts them."""
        assert self.result.count is not None
        return self.result.count

    def told(self, course: str) -> tuple[str, ...]:
        """Return the story as sentences: the scene, the strokes so far, each act, the option taken, the strokes between."""
        form = text("situations.form.stroke_play")
        said = [
            text("situations.scene.on_hole", player=self.player, hole=self.hole, course=course, form=form)
        ]
        key = "before_provisional" if self._provisional_before else "before"
        said.append(count_text(f"quizzes.strokes.{key}", self.count.before or 0, player=self.player))
        for one, ruling in zip(self.happened, self.result.parts, strict=True):
            said += act_told(one, ruling, self.player)
        return tuple(said)

    @property
    def _provisional_before(self) -> bool:
        """Whether the first act looks back at a provisional ball, the strokes at which come on top of those before."""
        first = self.happened[0]
        return first.incident not in _TELLS_ITS_STROKE and first.option == Taken.PROVISIONAL.value

    @property
    def headlines(self) -> tuple[str, ...]:
        """The ruling of each act in one line."""
        return tuple(
            headline(one, FormOfPlay.STROKE_PLAY) for one in self.result.parts if isinstance(one, Ruling)
        )

    @property
    def citations(self) -> tuple[str, ...]:
        """The provisions that the rulings rest on."""
        cited = [each for one in self.result.parts if isinstance(one, Ruling) for each in one.citations]
        return tuple(dict.fromkeys(cited))


def act_told(one: Happened, ruling: Result, player: str) -> tuple[str, ...]:
    """Return an act as sentences: what happened, the option taken, the strokes until the next."""
    said = telling(one.incident, in_order(one.facts), player, FormOfPlay.STROKE_PLAY)
    if one.option == Taken.AS_IT_LIES.value:  # that is a stroke itself: told once, with those that followed
        return *said, count_text("quizzes.strokes.as_it_lay", one.strokes or 1, player=player)
    if one.option is not None:
        words = translate()(option_taken[0].answers[Taken(one.option)])
        where = _which_of_two(Taken(one.option), ruling)
        said = *said, text(f"quizzes.strokes.took{where}", player=player, what=words)
    if one.strokes:
        key = "with_provisional" if one.option == Taken.PROVISIONAL.value else "between"
        said = *said, count_text(f"quizzes.strokes.{key}", one.strokes, player=player)
    return said


def strokes_questions(seed: int) -> Iterator[StrokesQuestion]:
    """Yield questions without end, the same for the same seed; the first of them of one act, then of one or two."""
    lot = Random(f"strokes {seed}")  # noqa: S311 - a seed, no secret
    while True:
        wanted = lot.choices(PENALTIES, OFTEN)[0]
        found = next((one for _ in range(10 * _TRIES) if (one := _question(lot, wanted)) is not None), None)
        if found is not None:
            yield found


def _which_of_two(option: Taken, ruling: Result) -> str:
    """Return which text tells relief of which there are two at different prices (Rules 17.2b and 19.3), and never the price."""
    offered = {taken_as(one) for one in ruling.relief} if isinstance(ruling, Ruling) else set()
    if option is Taken.BACK_ON_THE_LINE_OUTSIDE_BUNKER:
        return "_outside_bunker"
    if option is Taken.BACK_ON_THE_LINE and Taken.BACK_ON_THE_LINE_OUTSIDE_BUNKER in offered:
        return "_in_bunker"
    if option is Taken.BACK_ON_THE_LINE and Taken.BACK_ON_THE_LINE_FROM_PENALTY_AREA in offered:
        return "_line_from_ball"
    if option is Taken.LATERAL and Taken.LATERAL_FROM_PENALTY_AREA in offered:
        return "_lateral_from_ball"
    return ""


def _question(lot: Random, penalties: int) -> StrokesQuestion | None:
    acts = [_act(MAY_END, lot)]
    if lot.random() < 0.6:
        acts.insert(0, _act(GOES_ON, lot, followed=True))
    happened = tuple(one for one in acts if one is not None)
    if len(happened) < len(acts) or any(
        one.facts.get(put_in_play_by_hand.name) == "yes" for one in happened[1:]
    ):
        return None  # a stroke was told since the ball was put down
    before = lot.randint(1, MOST_BEFORE)
    if not can_follow(happened, before):
        return None
    try:
        found = rule_story(
            happened,
            played_on=TODAY,
            form_of_play=FormOfPlay.STROKE_PLAY,
            strokes_before=before,
        )
    except InputError:  # these cannot both have happened
        return None
    if found.count is None or found.next_stroke is None:
        return None
    if min(found.count.total or 0, PENALTIES[-1]) != penalties:
        return None
    answers = answers_to(found.count, lot)
    right = answers.index(Counted(found.next_stroke, None))
    return StrokesQuestion(happened, lot.choice(NAMES), lot.randint(1, HOLES), found, answers, right)


def _act(names: tuple[str, ...], lot: Random, *, followed: bool = False) -> Happened | None:
    """Return an act that was approved, with the option taken; ``None`` where the lot draws none that a story can go on from."""
    drawn = (each for _ in range(_TRIES) if (each := drafted_act(names, lot, followed=followed)) is not None)
    return next((one for one, ruling in drawn if is_approved_act(one, ruling)), None)


def drafted_act(
    names: tuple[str, ...], lot: Random, *, followed: bool = False
) -> tuple[Happened, Ruling] | None:
    """Return an act with the option taken and its ruling, read or not; ``None`` where the lot draws none that tells its strokes.

    Args:
        names: of the incidents it is drawn from.
        lot: draws it.
        followed: whether another act comes after it.
    """
    for _ in range(_TRIES):
        name = lot.choice(names)
        drawn = situation(name, lot)
        found = drawn and ruled(name, drawn.facts, FormOfPlay.STROKE_PLAY, TODAY)
        if drawn is None or not isinstance(found, Ruling) or "sides" in drawn.facts:
            continue
        if _leaves_open(name, drawn.facts, found):
            continue
        options = list(dict.fromkeys(taken_as(one) for one in found.relief))
        if found.action is not Action.PLAY_PROVISIONAL:  # what became of its strokes is not told
            options = [one for one in options if one is not Taken.PROVISIONAL]
        if (
            options
            and found.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF
            and name != UNPLAYABLE
            and lot.random() < 0.3
        ):
            options = [Taken.AS_IT_LIES]
        if followed and (found.stroke is not None or found.action in (Action.HOLED, Action.HOLE_OVER)):
            continue
        option = lot.choice(options).value if options else None
        strokes = lot.randint(1, MOST_BETWEEN) if followed else None
        return Happened(name, drawn.facts, option=option, strokes=strokes), found
    return None


def _leaves_open(name: str, facts: Mapping[str, Any], found: Ruling) -> bool:
    """Whether the next stroke depends on what is not told: which ball counts, strokes in passing, the price of relief to come."""
    if not _OPEN_NOTES.isdisjoint(found.notes):
        return True
    if any(facts.get(fact) in answers for fact, answers in _UNCOUNTED.items()):
        return True
    if found.stroke is not None:
        return False
    told_in_passing = facts.get(stroke_was_made.name) == "yes"
    return told_in_passing or (name in STILL_OPEN and found.action is Action.PLAY_ON)
