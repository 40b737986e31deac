"""How many strokes a story costs the player, and which stroke comes next on the hole."""

from collections.abc import Sequence
from dataclasses import dataclass

from marram.rules.facts.lost import StrokeAtProvisional
from marram.rules.facts.several import (
    EarlierMistake,
    StoryBall,
    Taken,
    about_ball,
    ball_settled,
    earlier_mistake,
    option_taken,
)
from marram.rules.penalty import OWN, Penalty, PenaltyKind
from marram.rules.ruling import Action, Ruling, Stroke
from marram.rules.story.breaches import Told
from marram.rules.story.deeds import Deed, disqualifies
from marram.rules.story.kinds_of_acts import AT_THE_BOUNDARY
from marram.rules.story.mistakes import own_ball_waits
from marram.rules.story.provisional import PROVISIONAL_BALLS
from marram.rules.story.relief_taken import cost_still_to_come, names_relief_due

_PLAYED = (Taken.AS_IT_LIES, Taken.REPLAY)
_NO_STROKE_FOLLOWS = (Action.HOLED, Action.HOLE_OVER)
_COUNTED = (PenaltyKind.STROKES, PenaltyKind.GENERAL)
_NEARER_STROKE = (
    ("nearer_stroke_at_provisional", (True,)),
    ("stroke_at_provisional", (StrokeAtProvisional.NEARER_BEFORE,)),
)
"""Answers that tell of a second stroke at a provisional ball, by which it came into play."""
_GONE = AT_THE_BOUNDARY | {"ball_not_found"}
"""Where a ball that was to be replaced may have been moved to, or may have been played to once it was replaced."""
_IN_WATER = ("ball_in_penalty_area", "ball_in_watercourse")
"""Where a ball may have lain when it was moved, and still lies once it is replaced."""
_PUT_DOWN = (
    Action.DROP,
    Action.DROP_AGAIN,
    Action.GO_ON_WITH_RELIEF,
    Action.PLACE,
    Action.PLAY_FROM_TEEING_AREA,
    Action.REPLACE,
    Action.REPLAY,
)
"""After these a ball is put down, and may be played before the next act or not."""
_PLAYED_AGAIN = (Action.REPLAY, Action.PLAY_FROM_TEEING_AREA)
_OF_TWO_BALLS = frozenset(
    {
        "first_ball_counts",
        "original_ball_counts",
        "chosen_ball_counts",
        "other_ball_counts",
        "ball_played_out_counts",
        "first_ball_counts_second_ignored",
        "second_ball_counts_first_ignored",
    }
)
"""Notes that say which of two balls counts that were played: how often it was played, the act does not tell."""


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
        strokes_untold: the act, from 1, between which and the next a stroke may have been made or not, the ball having
            been dropped or played: the next stroke is not known before that is told; ``None`` where there is none.
        gaps_untold: all such acts that are about a ball put down anew: they can be told together.
        stroke_missing: the act, from 1, that is about a ball that had been played though no stroke of this hole was
            told until then: the next stroke is not known before that stroke is told; ``None`` where there is none.
    """

    penalty_strokes: int | None
    total: int | None = None
    relief_to_come: int = 0
    made: int | None = None
    before: int | None = None
    next_stroke: int | None = None
    stroke_missing: int | None = None
    strokes_untold: int | None = None
    gaps_untold: tuple[int, ...] = ()


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
    missing = stroke_missing(deeds, told, before, said)
    untold = () if before is None or missing is not None else _strokes_untold(deeds, told, said)
    comes = None
    if (
        missing is None
        and before is not None
        and made is not None
        and ruling.action not in _NO_STROKE_FOLLOWS
    ):
        comes = before + made + penalties + to_come + 1
    return StrokeCount(
        penalties,
        penalties + to_come,
        to_come,
        made,
        before,
        comes,
        missing,
        min(untold, default=None),
        untold,
    )


def stroke_missing(
    deeds: Sequence[Deed], told: Told, before: int | None, said: Sequence[int | None] = ()
) -> int | None:
    """Return the act, from 1, about a ball that had been played where no stroke was told until then.

    A ball cannot be out of bounds, lost or in a penalty area before it was struck.
    """
    if before != 0:
        return None
    for place, deed in enumerate(deeds):
        if told.get(about_ball[place]) is StoryBall.OTHER_PLAYERS:
            continue
        if deed.ruling.stroke is not None:
            return None
        if deed.follows_a_stroke:
            return place + 1
        if _strokes_of(deeds, place, told, said) != 0:
            return None
    return None


def strokes_made(deeds: Sequence[Deed], told: Told, said: Sequence[int | None] = ()) -> int | None:
    """Return the strokes made in the acts, at balls that count; ``None`` where an act does not tell how many."""
    counted, waiting, begun = 0, 0, 0
    for place, deed in enumerate(deeds):
        own = _strokes_of(deeds, place, told, said)
        about = told.get(about_ball[place])
        if about is StoryBall.OTHER_PLAYERS or _void(told, place):
            continue
        if own is None:
            return None
        if about in PROVISIONAL_BALLS:
            waiting += own
        elif deed.starts_provisional:
            begun += own
        elif deed.puts_provisional_in_play:
            counted += waiting + max(
                own, begun
            )  # what was told of the first strokes is not counted beside them
            waiting, begun = 0, 0
        else:
            counted += own
    return counted


def _strokes_of(deeds: Sequence[Deed], place: int, told: Told, said: Sequence[int | None]) -> int | None:
    """Return the strokes made in an act and until the next: as told, else as the act itself shows."""
    own = said[place] if place < len(said) else None
    return _shown(deeds, place, told, said) if own is None else own


def _strokes_untold(deeds: Sequence[Deed], told: Told, said: Sequence[int | None]) -> tuple[int, ...]:
    """Return the acts, from 1, between which and the next it was not told whether the ball was played.

    Of two gaps after one ball put down only the first: what is told of it may settle the other.
    """
    found: list[int] = []
    with_it = _with_a_ball(deeds, told)
    for place in range(len(deeds) - 1):
        about = told.get(about_ball[place])
        counts = about is not StoryBall.OTHER_PLAYERS and not _void(told, place)
        open_still = place >= len(said) or said[place] is None
        anew = with_it[place] or not found
        if counts and open_still and anew and _put_down_then(deeds, place, told, said):
            found.append(place + 1)
    return tuple(found)


def _with_a_ball(deeds: Sequence[Deed], told: Told) -> list[bool]:
    """Tell of each act whether the player's ball in play has a part in it."""
    aside = (StoryBall.OTHER_PLAYERS, *PROVISIONAL_BALLS)
    return [
        deed.is_with_a_ball and told.get(about_ball[each]) not in aside for each, deed in enumerate(deeds)
    ]


def _put_down_then(deeds: Sequence[Deed], place: int, told: Told, said: Sequence[int | None]) -> bool:
    """Whether a ball was to be put down, something befell a ball at rest, and neither shows a stroke between, or none.

    A ball dropped in taking relief, or put back, may be moved or lie where there is relief before it was played, or after.
    Acts that need no ball may lie between.
    """
    has_it = _with_a_ball(deeds, told)
    begun = place
    while begun and not has_it[begun] and not _told_strokes(said, begun - 1):
        begun -= 1
    ended = place + 1
    while ended < len(deeds) and not has_it[ended]:
        ended += 1
    if ended >= len(deeds):
        return False
    taken = told.get(option_taken[begun])
    earlier, following = deeds[begun].ruling, deeds[ended]
    put_down = bool(earlier.relief) or earlier.action in _PUT_DOWN
    waits = taken is Taken.NOTHING_YET or told.get(ball_settled[begun]) is False
    if waits or taken in (*_PLAYED, Taken.PROVISIONAL) or not put_down:
        return False
    if earlier.action is Action.REPLACE and _gone_or_moved_there(deeds[begun], following):
        return (
            told.get(ball_settled[begun]) is not True
        )  # replaced and played there, or where it was moved to
    shown = following.follows_a_stroke or following.follows_relief or following.has_a_stroke
    shown = shown or following.takes_stroke_and_distance or following.is_replacing
    shown = shown or (taken is None and names_relief_due(earlier, following))
    return following.befalls_a_ball_at_rest and not shown


def _gone_or_moved_there(earlier: Deed, following: Deed) -> bool:
    """Whether a ball to be replaced is then out, lost or in a penalty area that it did not lie in before."""
    return following.incident in _GONE or (following.incident in _IN_WATER and earlier.lay_dry)


def _told_strokes(said: Sequence[int | None], place: int) -> int:
    """Return the strokes told from an act until the next; 0 where none were told."""
    return (said[place] or 0) if place < len(said) else 0


def _void(told: Told, place: int) -> bool:
    return place > 0 and told.get(earlier_mistake[place - 1]) is EarlierMistake.SAME_BALL


def _shown(deeds: Sequence[Deed], place: int, told: Told, said: Sequence[int | None]) -> int | None:
    """Return the strokes that an act shows by itself."""
    deed = deeds[place]
    ruling = deed.ruling
    if deed.plays_the_ball and ruling.stroke is None:
        return None  # a second ball was played after a stroke from a wrong place
    if _OF_TWO_BALLS & set(ruling.notes):
        return None
    told_before = deed.incident == "ball_not_found" and (place == 0 or _told_strokes(said, place - 1) > 0)
    own = int(ruling.stroke is Stroke.COUNTS and not told_before)  # it was searched for after that stroke
    own += "putt_and_next_stroke_count" in ruling.notes
    if deed.puts_provisional_in_play and not any(one.puts_provisional_in_play for one in deeds[:place]):
        own += 1 + any((one.fact, one.answers) in _NEARER_STROKE for one in ruling.reasons)
        own += "second_provisional_counts" in ruling.notes  # the stroke at the first one
    if deed.pays_stroke_and_distance and (
        deed.incident == "another_ball_played" or ruling.action is Action.TAKE_RELIEF
    ):
        own += 1 + (
            "both_provisionals_lost_too" in ruling.notes
        )  # the second ball was played, and the one for it
    following = deeds[place + 1] if place + 1 < len(deeds) else None
    if following is not None and told.get(earlier_mistake[place]) is EarlierMistake.CORRECTED:
        return _until_corrected(deed, following, own)
    if following is not None and following.ruling.stroke is Stroke.COUNTS:
        same = deed.incident == "dropped_ball_played" and following.looks_back_at_the_stroke
        return 0 if same else own  # what was played then is told there
    taken = told.get(option_taken[place])
    if _put_down_then(deeds, place, told, said):
        return None
    if following is not None and taken is None and ruling.action in _PLAYED_AGAIN:
        return own + (following.follows_a_stroke and not _void(told, place + 1))
    return own + _played_in_between(deed, taken, following)


def _until_corrected(deed: Deed, following: Deed, own: int) -> int | None:
    """Return the strokes of a mistake and its correction: a ball put in play for it was played once.

    A player's own ball that had been lying where it was (Rule 6.3c(1)) may have been played or not, and a stroke told
    next may be the one that corrected: how many there were is not known then.
    """
    unknown = own_ball_waits(deed.ruling) or following.ruling.stroke is Stroke.COUNTS
    return None if unknown else own + 1


def _played_in_between(deed: Deed, taken: Taken | None, following: Deed | None) -> int:
    """Return the stroke made after an act where what was chosen, or what happened next, shows that one was."""
    if taken in _PLAYED:
        return 1
    if following is None or taken is Taken.NOTHING_YET or following.has_a_stroke:
        return 0
    put_back = deed.is_replacing and not deed.has_a_stroke
    if not deed.ruling.relief and not put_back and deed.ruling.action is not Action.REPLACE:
        return 0
    if not deed.ruling.relief and following.incident in _IN_WATER and not deed.lay_dry:
        return 0  # the ball lies in the penalty area where it was moved, as it did before
    return int(following.follows_a_stroke)


def _own(ruling: Ruling) -> list[Penalty]:
    return [one for one in ruling.penalties if one.who in OWN]
