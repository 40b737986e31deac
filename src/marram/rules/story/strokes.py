"""How many strokes a story costs the player, and which stroke comes next on the hole."""

from collections.abc import Sequence
from dataclasses import dataclass

from marram.rules.facts.several import (
    EarlierMistake,
    StoryBall,
    Taken,
    about_ball,
    earlier_mistake,
    option_taken,
)
from marram.rules.ruling import OWN, Action, Penalty, PenaltyKind, Ruling, Stroke
from marram.rules.story.breaches import Told
from marram.rules.story.deeds import Deed, disqualifies
from marram.rules.story.provisional import PROVISIONAL_BALLS
from marram.rules.story.relief_taken import cost_still_to_come

_PLAYED = (Taken.AS_IT_LIES, Taken.REPLAY)
_NO_STROKE_FOLLOWS = (Action.HOLED, Action.HOLE_OVER)
_COUNTED = (PenaltyKind.STROKES, PenaltyKind.GENERAL)


@dataclass(frozen=True, slots=True)
class StrokeCount:
    """The strokes of a story, for the player it is about (of a side: for the side).

    Attributes:
        penalty_strokes: penalty strokes, those of relief that was taken included; ``None`` where no strokes count:
            disqualified, or the hole of a match lost.
        total: those strokes and the ones of relief that must still be taken: what the story comes to.
        relief_to_come: penalty strokes of relief that must be taken and has not been, all of it at one price; else 0.
        made: strokes made in the acts that count; ``None`` where the acts do not tell.
        before: strokes on the hole before the first act, penalty strokes included; ``None`` where not told.
        next_stroke: which stroke comes next on the hole; ``None`` where none comes, or a number is not known.
    """

    penalty_strokes: int | None
    total: int | None = None
    relief_to_come: int = 0
    made: int | None = None
    before: int | None = None
    next_stroke: int | None = None


def count_strokes(
    ruling: Ruling,
    deeds: Sequence[Deed],
    told: Told,
    *,
    before: int | None = None,
    said: Sequence[int | None] = (),
    match: bool = False,
) -> StrokeCount:
    """Return the strokes of a story.

    Args:
        ruling: the ruling on all acts together.
        deeds: the acts, in order.
        told: what is known between them.
        before: strokes on the hole before the first act, penalty strokes included.
        said: for each act, strokes made from then until the next act, where they were told: they replace what the
            act itself shows.
        match: whether it is a match, where the general penalty is the hole.
    """
    lost = match and any(one.kind in (PenaltyKind.GENERAL, PenaltyKind.LOSS_OF_HOLE) for one in _own(ruling))
    if disqualifies(ruling) or lost:
        return StrokeCount(None, before=before)
    penalties = sum(one.strokes for one in _own(ruling) if one.kind in _COUNTED)
    to_come = cost_still_to_come(ruling)
    made = strokes_made(deeds, told, said)
    comes = None
    if before is not None and made is not None and ruling.action not in _NO_STROKE_FOLLOWS:
        comes = before + made + penalties + to_come + 1
    return StrokeCount(penalties, penalties + to_come, to_come, made, before, comes)


def strokes_made(deeds: Sequence[Deed], told: Told, said: Sequence[int | None] = ()) -> int | None:
    """Return the strokes made in the acts, at balls that count; ``None`` where an act does not tell how many."""
    counted, waiting = 0, 0
    for place, deed in enumerate(deeds):
        own = said[place] if place < len(said) and said[place] is not None else _shown(deeds, place, told)
        about = told.get(about_ball[place])
        if about is StoryBall.OTHER_PLAYERS or _void(told, place):
            continue
        if own is None:
            return None
        if about in PROVISIONAL_BALLS:
            waiting += own
            continue
        if deed.puts_provisional_in_play:
            counted, waiting = counted + waiting, 0
        counted += own
    return counted


def _void(told: Told, place: int) -> bool:
    return place > 0 and told.get(earlier_mistake[place - 1]) is EarlierMistake.SAME_BALL


def _shown(deeds: Sequence[Deed], place: int, told: Told) -> int | None:
    """Return the strokes that an act shows by itself."""
    deed = deeds[place]
    ruling = deed.ruling
    if deed.plays_the_ball and ruling.stroke is None:
        return None  # a second ball was played after a stroke from a wrong place
    own = int(ruling.stroke is Stroke.COUNTS)
    if deed.puts_provisional_in_play and not any(one.puts_provisional_in_play for one in deeds[:place]):
        own += 1 + any(
            one.fact == "nearer_stroke_at_provisional" and one.answers == (True,) for one in ruling.reasons
        )
        own += "second_provisional_counts" in ruling.notes  # the stroke at the first one
    if deed.pays_stroke_and_distance and (
        deed.incident == "another_ball_played" or ruling.action is Action.TAKE_RELIEF
    ):
        own += 1  # the second ball was played
    following = deeds[place + 1] if place + 1 < len(deeds) else None
    if following is not None and following.ruling.stroke is Stroke.COUNTS:
        return own  # what was played then is told there
    return own + _played_in_between(ruling, told.get(option_taken[place]), following)


def _played_in_between(ruling: Ruling, taken: Taken | None, following: Deed | None) -> int:
    """Return the stroke made after an act where what was chosen, or what happened next, shows that one was."""
    if taken in _PLAYED:
        return 1
    if following is None or not ruling.relief or taken is Taken.NOTHING_YET:
        return 0
    went_back = taken is Taken.STROKE_AND_DISTANCE and bool(following.ruling.relief)
    return int(following.follows_a_stroke or went_back)


def _own(ruling: Ruling) -> list[Penalty]:
    return [one for one in ruling.penalties if one.who in OWN]
