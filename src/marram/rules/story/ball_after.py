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
    StoryBall,
    about_ball,
    ball_settled,
    with_ball_corrected,
)
from marram.rules.penalty import strokes
from marram.rules.ruling import Action, Deadline, Ruling, Stroke
from marram.rules.story.bearing import says_who_bears
from marram.rules.story.breaches import Told
from marram.rules.story.deeds import NOTHING_DONE, Deed, disqualifies, only_strokes
from marram.rules.story.mistakes import (
    corrects_what_was_put_down,
    had_been_corrected,
    own_ball_waits,
    tells_the_correction,
)
from marram.rules.story.provisional import PROVISIONAL_BALLS, of_abandoned
from marram.rules.story.relief_taken import cost_of_relief, put_or_played, told_taken, with_option_taken
from marram.rules.story.standing import Standing, ask, joined, leaves_mistake

_LEAVES_IT = (None, Action.PLAY_ON, Action.PLAY_AS_IT_LIES)
_SAYS_NOTHING = (None, Action.PLAY_ON)
_HOLE_DONE = (Action.HOLED, Action.HOLE_OVER)
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
    Action.GO_ON_WITH_RELIEF,
    Action.CORRECT_MISTAKE,
)
_STAYS_TRUE = frozenset(
    {
        "strokes_with_wrong_ball_void",
        "strokes_from_outside_do_not_count",
        "strokes_on_wrong_hole_do_not_count",
        "original_out_of_play",
        "provisional_strokes_do_not_count",
        "first_ball_counts_second_ignored",
        "second_ball_counts_first_ignored",
        "go_on_with_substituted_ball",
    }
)
"""Notes that say which ball and which strokes count: they hold whatever happens later on the hole."""
_TRUE_WHEN_HOLED = frozenset({"do_not_correct_wrong_place"})
"""Notes about the last stroke told, which still hold of a ball holed with it."""
NOT_ABOUT_THE_BALL = frozenset({"take_club_out_of_play", "leave_club_or_take_out"})
"""Corrections that nothing done with the ball brings to an end."""
_PLAY_RESUMED = frozenset({"resumed_off_time", "played_after_suspension"})


def ball_after(
    case: Case, deeds: Sequence[Deed], taken: AbstractSet[int] = frozenset(), told: Told | None = None
) -> Standing:
    """Return what all incidents together leave to be done with the ball.

    Args:
        case: what is known between the incidents.
        deeds: the acts, in order.
        taken: the incidents, from 0, after which it was told what the player took of the relief offered.
        told: which ball an act was about, where that was told.
    """
    known = told or {}
    first = deeds[0].ruling
    standing = Standing.of(first.next(Action.HOLE_OVER) if disqualifies(first) else first)
    for gap, deed in enumerate(deeds[1:]):
        before = deeds[gap].ruling
        if deed is NOTHING_DONE or known.get(about_ball[gap + 1]) is StoryBall.OTHER_PLAYERS:
            continue  # what is to be done with that ball is said under its own name
        if of_abandoned(deeds, gap + 1, known):
            continue
        pending = any(one.starts_provisional for one in deeds[: gap + 1])
        provisional = _of_provisional(case, deeds, gap, standing, known)
        decided = (provisional and deed.abandons_provisional) or (pending and deed.puts_provisional_in_play)
        if decided and not standing.mistake_open and not disqualifies(standing.ruling):
            if deed.abandons_provisional:
                standing = replace(standing, ruling=replace(standing.ruling, notes=()))
            standing = _overtaken(case, gap, standing, deed, taken)
            if deed.abandons_provisional:
                standing = _without_relief_of_provisional(case, deeds, standing)
            continue
        void = (
            corrects_what_was_put_down(deed.ruling)
            and any(only_strokes(one) for one in before.penalties)
            and ask(case, "14.5c", with_ball_corrected[gap])
        )
        step = _overtaken if void else _after
        standing = step(case, gap, standing, deed, taken)
        if pending and deed.abandons_provisional:
            standing = _without_relief_of_provisional(case, deeds, standing)
    return with_option_taken(case, standing) if standing.place in taken else standing


def _after(case: Case, gap: int, before: Standing, deed: Deed, taken: AbstractSet[int]) -> Standing:
    part = deed.ruling
    if disqualifies(before.ruling):
        return before
    if disqualifies(part):
        return Standing.of(part.next(Action.HOLE_OVER), gap + 1)
    if says_who_bears(deed) and part.action in _LEAVES_IT:
        return before.with_words_of(part)
    if before.mistake_open:
        return _with_mistake_open(case, gap, before, deed, taken)
    if before.ruling.action is Action.STOP_PLAY:
        return _while_stopped(case, gap, before, deed, taken)
    if (
        part.action is Action.HOLE_OVER
        or deed.concedes
        or (leaves_mistake(part) and part.action in _SAYS_NOTHING)
    ):
        return _overtaken(case, gap, before, deed, taken)
    if before.ruling.action is Action.HOLE_OVER:
        return before.with_words_of(part)
    if before.ruling.action is Action.HOLED and part.action in _LEAVES_IT:
        return before.with_words_of(part)
    if not _open_with_ball(before):
        return _nothing_open(case, gap, before, deed, taken)
    if before.ruling.action is Action.TAKE_RELIEF and deed.wants_to_play_again:
        return replace(before.with_words_of(part), place=gap + 1)
    told_done = before.place in taken and put_or_played(case, gap, before, deed, taken)
    if part.action is Action.STOP_PLAY and not deed.has_a_stroke and not told_done:
        return _stopped_with_ball_open(before, part)
    must_go_back = leaves_mistake(part) and "18.2b" in (*part.citations, *before.ruling.citations)
    corrected = part.stroke is Stroke.DOES_NOT_COUNT and part.action is Action.PLAY_ON
    if deed.plays_the_ball or corrected or must_go_back or put_or_played(case, gap, before, deed, taken):
        return _overtaken(case, gap, before, deed, taken)
    if deed.finds_the_ball and before.ruling.action is Action.TAKE_RELIEF:
        not_taken = replace(before, ruling=replace(before.ruling, relief=()))
        return _overtaken(case, gap, not_taken, deed, taken)
    return _still_to_be_done(before, part)


def _of_provisional(case: Case, deeds: Sequence[Deed], gap: int, standing: Standing, told: Told) -> bool:
    """Whether what stands is about a provisional ball: asked where one was lost or out, and then the original is found."""
    place, following = standing.place, deeds[gap + 1]
    started = any(one.starts_provisional for one in deeds[:place])
    gone = standing.ruling.action is Action.TAKE_RELIEF and "18.2b" in standing.ruling.citations
    if started and gone and following.finds_the_ball:
        return _with_provisional(case, place)
    return told.get(about_ball[place]) in PROVISIONAL_BALLS


def _without_relief_of_provisional(case: Case, deeds: Sequence[Deed], standing: Standing) -> Standing:
    """Rule 18.3c(3): relief taken with a provisional ball that is then abandoned costs nothing."""
    start = next((place for place, deed in enumerate(deeds) if deed.starts_provisional), -1)
    kept = [
        (penalty, place)
        for penalty, place in zip(standing.relief_taken, standing.relief_of, strict=True)
        if place <= start or not _with_provisional(case, place)
    ]
    return replace(
        standing,
        relief_taken=tuple(penalty for penalty, _ in kept),
        relief_of=tuple(place for _, place in kept),
    )


def _with_provisional(case: Case, place: int) -> bool:
    case.enter("18.3c(3)")
    about = case.is_one_of(about_ball[place], *PROVISIONAL_BALLS)
    case.leave()
    return about


def _while_stopped(case: Case, gap: int, before: Standing, deed: Deed, taken: AbstractSet[int]) -> Standing:
    """Play that had to stop stays stopped, whatever is done meanwhile, until it is resumed."""
    part, open_then = deed.ruling, before.before_the_stop
    resumed = deed.incident in _PLAY_RESUMED
    if resumed and open_then is not None and part.action in _SAYS_NOTHING:
        if not open_then.relief and ask(case, "5.7d", ball_settled[gap]):
            return _overtaken(case, gap, before, deed, taken)
        return replace(before, ruling=open_then, before_the_stop=None).with_words_of(part)
    if resumed or deed.has_a_stroke or deed.follows_a_stroke:
        return _overtaken(case, gap, before, deed, taken)
    if part.action in _DEMANDS:
        still_open = replace(before, ruling=part, corrections=joined(before.corrections, part.corrections))
        return _stopped_with_ball_open(still_open, before.ruling)
    return before.with_words_of(part)


def _stopped_with_ball_open(before: Standing, part: Ruling) -> Standing:
    """Play stops; what was still to be done with the ball, and may be chosen, stays for when it is resumed."""
    stopped = replace(part, relief=before.ruling.relief).note(*before.ruling.notes)
    corrections = joined(before.corrections, part.corrections)
    return replace(before, ruling=stopped, corrections=corrections, before_the_stop=before.ruling)


def _with_mistake_open(
    case: Case, gap: int, before: Standing, deed: Deed, taken: AbstractSet[int]
) -> Standing:
    """Rules 6.1b(2), 6.3c(1), 14.7b(1) and 22.3: until the mistake is corrected nothing done with that ball counts."""
    mistake = before.mistake_of or before.ruling
    if tells_the_correction(mistake, deed.ruling):
        return _overtaken(case, gap, _without_its_deadline(before), deed, taken)
    had_been = had_been_corrected(case, gap, (mistake,))
    if had_been is EarlierMistake.SAME_BALL:
        return before
    if had_been is EarlierMistake.SOMETHING_ELSE:
        if own_ball_waits(mistake) and deed.ruling.relief:  # relief with the right ball corrects the mistake
            relieved = told_taken(case, gap + 1, deed, taken)
            return _overtaken(case, gap, _without_its_deadline(before) if relieved else before, deed, taken)
        return before.with_words_of(deed.ruling)
    corrected = _overtaken(case, gap, _without_its_deadline(before), deed, taken)
    paid = any(one.citation.startswith("18.") for one in (*corrected.relief_taken, *mistake.penalties))
    if "18.2b" not in mistake.citations or paid:
        return corrected
    return replace(
        corrected,
        relief_taken=(*corrected.relief_taken, strokes(1, "18.2b")),
        relief_of=(*corrected.relief_of, before.place),
    )


def _without_its_deadline(before: Standing) -> Standing:
    kept = tuple(one for one in before.corrections if one.until is not Deadline.BEFORE_NEXT_HOLE)
    return replace(before, corrections=kept)


def _nothing_open(case: Case, gap: int, before: Standing, deed: Deed, taken: AbstractSet[int]) -> Standing:
    """Nothing had to be done with the ball: what the later incident says of it holds, if it says anything."""
    part = deed.ruling
    keeps_ball = before.ruling.action in _OTHER_BALL and part.action in _LEAVES_IT and not deed.plays_the_ball
    if keeps_ball or part.action in _SAYS_NOTHING:
        return before.with_words_of(part)
    return _overtaken(case, gap, before, deed, taken)


def _overtaken(case: Case, gap: int, before: Standing, deed: Deed, taken: AbstractSet[int]) -> Standing:
    """The later incident alone says what happens with the ball; what cannot lapse with a stroke stays."""
    part = deed.ruling
    lasting = tuple(one for one in before.corrections if _lasts(one.what, one.until))
    undone = deed.voids_relief or deed.finds_the_ball
    true = _STAYS_TRUE | _TRUE_WHEN_HOLED if part.action in _HOLE_DONE else _STAYS_TRUE
    kept = tuple(
        key for key in before.ruling.notes if key in true and not (undone and key == "original_out_of_play")
    )
    spent = before.relief_taken
    if deed.voids_relief and spent and not before.ruling.relief:
        spent = spent[:-1]
    cost = cost_of_relief(case, before, deed, taken)
    return Standing(
        replace(part, notes=kept).note(*part.notes) if kept else part,
        joined(lasting, part.corrections),
        leaves_mistake(part),
        relief_taken=spent + cost,
        relief_of=before.relief_of[: len(spent)] + (before.place,) * len(cost),
        place=gap + 1,
        mistake_of=part if leaves_mistake(part) else None,
    )


def _lasts(what: str, until: Deadline) -> bool:
    return until is not Deadline.BEFORE_STROKE or what in NOT_ABOUT_THE_BALL


def _still_to_be_done(before: Standing, part: Ruling) -> Standing:
    """What the earlier incident requires has not been done, and the ball has not been played."""
    both = replace(
        before.with_words_of(part),
        mistake_open=leaves_mistake(part),
        mistake_of=part if leaves_mistake(part) else None,
    )  # a stroke at a wrong ball leaves the ball in play where it is
    if part.action in _LEAVES_IT:
        return both
    relief = joined(before.ruling.relief, part.relief)
    if part.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
        return replace(both, ruling=replace(both.ruling, relief=relief))
    which_ball = part.which_ball or before.ruling.which_ball
    return replace(both, ruling=replace(part, notes=both.ruling.notes, which_ball=which_ball, relief=relief))


def _open_with_ball(before: Standing) -> bool:
    return before.ruling.action in _DEMANDS or any(
        one.until is Deadline.BEFORE_STROKE and one.what not in NOT_ABOUT_THE_BALL
        for one in before.corrections
    )
