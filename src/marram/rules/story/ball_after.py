"""What several incidents of one story leave to be done with the ball, and until when.

Each ruling by itself says what happens next with the ball. Something that happens later may overtake that
(the ball was played in the meantime), may leave it standing (a player who lifted the ball without a right
and then asks for advice still has to replace it), or may not matter at all (whatever was done in playing a
wrong ball, until that is corrected, Rule 6.3c).
"""

from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from dataclasses import replace

from marram.rules.engine.case import Case
from marram.rules.facts.several import (
    EarlierMistake,
    earlier_mistake,
    with_ball_corrected,
)
from marram.rules.ruling import (
    Action,
    Deadline,
    Penalty,
    PenaltyKind,
    Ruling,
    Who,
)
from marram.rules.story.relief_taken import cost_of_relief, put_or_played, with_option_taken
from marram.rules.story.standing import VOID_UNTIL_CORRECTED, Standing, ask, joined, leaves_mistake

_LEAVES_IT = (None, Action.PLAY_ON, Action.PLAY_AS_IT_LIES)
_SAYS_NOTHING = (None, Action.PLAY_ON)
_OTHER_BALL = (Action.PLAY_PROVISIONAL, Action.PLAY_OTHER_BALL)
_DEMANDS = (
    Action.REPLACE,
    Action.TAKE_RELIEF,
    Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF,
    Action.DROP,
    Action.DROP_AGAIN,
    Action.PLACE,
    Action.REPLAY,
    Action.PLAY_FROM_TEEING_AREA,
    Action.LIFT,
    Action.STOP_PLAY,
    Action.CORRECT_MISTAKE,
)
_OWN = (Who.PLAYER, Who.SIDE, Who.EACH_PLAYER)
_STAYS_TRUE = frozenset(
    {
        "strokes_with_wrong_ball_void",
        "strokes_from_outside_do_not_count",
        "do_not_correct_wrong_place",
        "original_out_of_play",
        "provisional_strokes_do_not_count",
        "first_ball_counts_second_ignored",
        "second_ball_counts_first_ignored",
        "go_on_with_substituted_ball",
    }
)
"""Notes that say which ball and which strokes count: they hold whatever happens later on the hole."""


def ball_after(case: Case, parts: Sequence[Ruling], told: AbstractSet[int] = frozenset()) -> Standing:
    """Return what all incidents together leave to be done with the ball.

    Args:
        case: what is known between the incidents.
        parts: the rulings on them, in order.
        told: the incidents, from 0, after which it was told what the player took of the relief offered.
    """
    first = parts[0].next(Action.HOLE_OVER) if _disqualifies(parts[0]) else parts[0]
    standing = Standing.of(first)
    for gap, part in enumerate(parts[1:]):
        void = (
            _corrects_what_was_put_down(part)
            and any(_only_strokes(one) for one in parts[gap].penalties)
            and ask(case, "14.5c", with_ball_corrected[gap])
        )
        step = _overtaken if void else _after
        standing = step(case, gap, standing, part, told)
    return with_option_taken(case, standing) if standing.place in told else standing


def penalties_that_count(case: Case, parts: Sequence[Ruling]) -> list[tuple[Penalty, ...]]:
    """Return the penalties of each incident, less those that came solely from playing a ball that does not count."""
    counting = [parts[0].penalties]
    mistake_open = leaves_mistake(parts[0])
    for gap, part in enumerate(parts[1:]):
        penalties = part.penalties
        if mistake_open:
            had_been = _had_been_corrected(case, gap, parts[: gap + 1])
            if had_been is EarlierMistake.CORRECTED:
                mistake_open = False
            elif had_been is EarlierMistake.SAME_BALL:
                penalties = tuple(one for one in penalties if not _only_strokes(one))
        counting.append(penalties)
        mistake_open = mistake_open or leaves_mistake(part)
        if _corrects_what_was_put_down(part):
            counting[: gap + 1] = [
                _void_by_correction(case, place, counted) for place, counted in enumerate(counting[: gap + 1])
            ]
    return counting


def _void_by_correction(case: Case, place: int, penalties: tuple[Penalty, ...]) -> tuple[Penalty, ...]:
    """Rule 14.5c: strokes solely from acts with a ball wrongly put down do not count once that is corrected."""
    if any(_only_strokes(one) for one in penalties) and ask(case, "14.5c", with_ball_corrected[place]):
        return tuple(one for one in penalties if not _only_strokes(one))
    return penalties


def _corrects_what_was_put_down(part: Ruling) -> bool:
    return "14.5c" in part.citations


def _had_been_corrected(case: Case, gap: int, earlier: Sequence[Ruling]) -> EarlierMistake:
    """Read whether the mistake had been corrected, under the provision that demands it."""
    demanding = [
        rule
        for part in earlier
        for rule in VOID_UNTIL_CORRECTED
        if leaves_mistake(part) and any(citation.startswith(rule) for citation in part.citations)
    ]
    return ask(case, demanding[-1], earlier_mistake[gap])


def _after(case: Case, gap: int, before: Standing, part: Ruling, told: AbstractSet[int]) -> Standing:
    if _disqualifies(before.ruling):
        return before
    if _disqualifies(part):
        return Standing.of(part.next(Action.HOLE_OVER), gap + 1)
    if before.mistake_open:
        return _with_mistake_open(case, gap, before, part, told)
    if part.action is Action.HOLE_OVER or (leaves_mistake(part) and part.action in _SAYS_NOTHING):
        return _overtaken(case, gap, before, part, told)
    if before.ruling.action is Action.HOLE_OVER:
        return before.with_words_of(part)
    if before.ruling.action is Action.HOLED and part.action in _LEAVES_IT:
        return before.with_words_of(part)
    if not _open_with_ball(before):
        return _nothing_open(case, gap, before, part, told)
    if _plays_the_ball(part) or put_or_played(case, gap, before, told):
        return _overtaken(case, gap, before, part, told)
    return _still_to_be_done(before, part)


def _with_mistake_open(
    case: Case, gap: int, before: Standing, part: Ruling, told: AbstractSet[int]
) -> Standing:
    """Rules 6.1b(2), 6.3c(1), 14.7b(1) and 22.3: until the mistake is corrected nothing done with that ball counts."""
    had_been = _had_been_corrected(case, gap, (before.mistake_of or before.ruling,))
    if had_been is EarlierMistake.SAME_BALL:
        return before
    if had_been is EarlierMistake.SOMETHING_ELSE:
        return before.with_words_of(part)
    return _overtaken(
        case,
        gap,
        replace(
            before,
            corrections=tuple(
                one for one in before.corrections if one.until is not Deadline.BEFORE_NEXT_HOLE
            ),
        ),
        part,
        told,
    )


def _nothing_open(case: Case, gap: int, before: Standing, part: Ruling, told: AbstractSet[int]) -> Standing:
    """Nothing had to be done with the ball: what the later incident says of it holds, if it says anything."""
    keeps_ball = before.ruling.action in _OTHER_BALL and part.action in _LEAVES_IT
    if keeps_ball or part.action in _SAYS_NOTHING:
        return before.with_words_of(part)
    return _overtaken(case, gap, before, part, told)


def _overtaken(case: Case, gap: int, before: Standing, part: Ruling, told: AbstractSet[int]) -> Standing:
    """The later incident alone says what happens with the ball; what cannot lapse with a stroke stays."""
    lasting = tuple(one for one in before.corrections if one.until is not Deadline.BEFORE_STROKE)
    kept = tuple(key for key in before.ruling.notes if key in _STAYS_TRUE)
    return Standing(
        replace(part, notes=kept).note(*part.notes),
        joined(lasting, part.corrections),
        leaves_mistake(part),
        before.relief_taken + cost_of_relief(case, before, part, told),
        gap + 1,
        part if leaves_mistake(part) else None,
    )


def _still_to_be_done(before: Standing, part: Ruling) -> Standing:
    """What the earlier incident requires has not been done, and the ball has not been played."""
    both = replace(
        before.with_words_of(part),
        mistake_open=leaves_mistake(part),
        mistake_of=part if leaves_mistake(part) else None,
    )  # a stroke at a wrong ball leaves the ball in play where it is
    if part.action in _LEAVES_IT or before.ruling.action is Action.STOP_PLAY:
        return both  # play that had to stop stays stopped, whatever is to be done once it goes on
    relief = joined(before.ruling.relief, part.relief)
    if part.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
        return replace(both, ruling=replace(both.ruling, relief=relief))
    which_ball = part.which_ball or before.ruling.which_ball
    return replace(both, ruling=replace(part, notes=both.ruling.notes, which_ball=which_ball, relief=relief))


def _open_with_ball(before: Standing) -> bool:
    return before.ruling.action in _DEMANDS or any(
        one.until is Deadline.BEFORE_STROKE for one in before.corrections
    )


def _plays_the_ball(part: Ruling) -> bool:
    """Whether the incident itself is, or ends in, a stroke at the player's ball."""
    if any(citation.startswith("6.3c(1)") for citation in part.citations):
        return False
    return part.stroke is not None or any(one.citation.startswith("14.7a") for one in part.penalties)


def _disqualifies(part: Ruling) -> bool:
    return any(one.kind is PenaltyKind.DISQUALIFICATION and one.who in _OWN for one in part.penalties)


def _only_strokes(penalty: Penalty) -> bool:
    return penalty.who in _OWN and penalty.kind in (PenaltyKind.STROKES, PenaltyKind.GENERAL)
