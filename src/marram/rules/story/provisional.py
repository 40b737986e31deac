"""A provisional ball in a story: what it cost counts if it comes into play, and leaves nothing behind if not."""

from collections.abc import Sequence
from dataclasses import replace

from marram.rules.engine.case import Case
from marram.rules.facts.several import StoryBall, Taken, about_ball, option_taken, same_provisional
from marram.rules.penalty import Penalty, strokes
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Action, Ruling
from marram.rules.story.breaches import Told
from marram.rules.story.deeds import Deed, only_strokes
from marram.rules.story.standing import ask

PROVISIONAL_BALLS = (StoryBall.PROVISIONAL, StoryBall.SECOND_PROVISIONAL)


def in_play_at_its_cost(part: Ruling) -> Ruling:
    """A provisional ball that must be played on costs its stroke whatever follows: it is no choice among options."""
    if part.action is not Action.PLAY_PROVISIONAL or len(part.relief) != 1:
        return part
    (forced,) = part.relief
    if forced.kind is not ReliefKind.PROVISIONAL:
        return part
    return replace(part.also(strokes(forced.penalty, forced.citation)), relief=())


def with_provisional_chosen(deeds: Sequence[Deed], told: Told) -> list[Deed]:
    """Return acts that know where the player, having another way too, went on with the provisional ball."""
    chose = [told.get(option_taken[place]) is Taken.PROVISIONAL for place in range(len(deeds))]
    return [replace(deed, chose_provisional=one) for deed, one in zip(deeds, chose, strict=True)]


def without_abandoned(
    case: Case, deeds: Sequence[Deed], counting: Sequence[tuple[Penalty, ...]], told: Told
) -> list[tuple[Penalty, ...]]:
    """Rule 18.3c(3): strokes solely from playing a provisional ball do not count once it is abandoned."""
    left = list(counting)
    pending: int | None = None
    for place, deed in enumerate(deeds):
        if of_abandoned(deeds, place, told):
            left[place] = tuple(one for one in left[place] if not only_strokes(one))
        if deed.starts_provisional:
            pending = place if pending is None else pending
        elif deed.abandons_provisional and (pending is not None or "18.3c(3)" in deed.ruling.citations):
            for between in range(0 if pending is None else pending + 1, place):
                if about_provisional(case, deeds, between):
                    left[between] = tuple(one for one in left[between] if not only_strokes(one))
            pending = None
        elif deed.puts_provisional_in_play:
            pending = None
    return left


def of_abandoned(deeds: Sequence[Deed], place: int, told: Told) -> bool:
    """Whether an act was told to be with a provisional ball that an earlier act abandons, other than a stroke at it.

    It is out of play then, and may be picked up (Rule 18.3c(3)); a stroke at it is one at a wrong ball (Rule 6.3c(1)).
    """
    if told.get(about_ball[place]) not in PROVISIONAL_BALLS or deeds[place].has_a_stroke:
        return False
    for earlier in reversed(deeds[:place]):
        if earlier.abandons_provisional:
            return True
        if earlier.starts_provisional or earlier.puts_provisional_in_play:
            return False
    return False


def about_provisional(case: Case, deeds: Sequence[Deed], place: int) -> bool:
    """Read whether the penalty of an act came solely from playing a provisional ball."""
    if not deeds[place].solely_from_a_ball:
        return False
    case.enter("18.3c(3)")
    about = case.is_one_of(about_ball[place], *PROVISIONAL_BALLS)
    case.leave()
    return about


def with_stroke_and_distance_once(
    case: Case, deeds: Sequence[Deed], counting: Sequence[tuple[Penalty, ...]]
) -> list[tuple[Penalty, ...]]:
    """Rule 18.3c(2): a provisional ball comes into play once, at one stroke, however often the story says so."""
    left = list(counting)
    counted = False
    for place, deed in enumerate(deeds):
        if not deed.puts_provisional_in_play:
            continue
        own = any(_its_stroke(one) for one in left[place])
        if counted and own and ask(case, "18.3c(2)", same_provisional[place]):
            left[place] = tuple(one for one in left[place] if not _its_stroke(one))
        elif not counted and not own and any(one.starts_provisional for one in deeds[:place]):
            left[place] = (*left[place], strokes(1, "18.3c(2)"))
        counted = True
    return left


def _its_stroke(penalty: Penalty) -> bool:
    return only_strokes(penalty) and penalty.citation.startswith("18.3c")
