"""Which two answers cannot both be right: what makes a wrong answer wrong in law, not less complete or otherwise said."""

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.finding_of import finding_of
from marram.rules.findings import Finding
from marram.rules.penalty import PenaltyKind, Who
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Action, Ruling
from marram.teach.quizzes.prices_of_relief import (
    costs,
    is_free,
    is_only_free,
    priced_apart,
    prices_by_family,
    step_families,
)
from marram.words.headline import forced_costs, next_words, total_words

_CHOICE = Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF
_ALIKE = frozenset({Action.PLAY_ON, Action.PLAY_AS_IT_LIES})
"""What comes to the same for somebody who is asked."""
_PUT_DOWN = frozenset({Action.REPLACE, Action.PLACE})
"""Where the lie is altered or the spot not known, a ball is replaced by placing it on the nearest or estimated spot (Rule 14.2)."""
_HOLE_ENDS = frozenset({Action.PLAY_ON, Action.HOLE_OVER})
"""Whoever plays on does so on the next hole, where this one is over."""
_WHETHER_OVER = frozenset({Finding.HOLE_COMPLETED, Finding.HOLE_GOES_ON})
"""Findings by which a hole is over, or goes on (Rule 6.5)."""
_WHETHER_STROKE = {Finding.STROKE_MADE, Finding.NO_STROKE}
"""Findings by which a swing was a stroke, or was none: what costs nothing either way is one stroke more or less."""
_SAME_BALL = frozenset({Action.PLAY_OTHER_BALL, Action.PLAY_PROVISIONAL})
"""Both go on with the second ball, by whatever name."""
_LESS_EXACT = frozenset({Action.PLAY_FROM_TEEING_AREA, Action.GO_ON_WITH_RELIEF, Action.STOP_PLAY})
"""What somebody may call playing on: it says less of the next step, and nothing wrong."""
_OF_SIDE = frozenset({Who.SIDE, Who.ONE_PARTNER, Who.OTHER_PARTNER, Who.EACH_PARTNER})
"""Those who bear a penalty among partners: one that names nobody may be any of theirs."""
_NO_SCORE = "other_partners_score_counts"
"""The note that one partner has no score for a hole in Four-Ball."""
_HOLED = "holed_provisional_not_yet_in_play"
"""The note of what may be done with a provisional ball in the hole."""
_AT_ONE_MORE = "correct_wrong_ball_when_lost"
"""The correction that costs a stroke itself: a wrong ball where the right one is lost (Rules 6.3c(1) and 18.2b)."""
_IN_PLAY = frozenset({"correct_with_ball_in_play", "go_on_with_substituted_ball"})
"""The ball to be gone on with is the ball in play: whoever plays on does so with that one (Rules 6.3b(2) and 6.3c(1))."""
_UNDER_WAY = frozenset({Action.GO_ON_WITH_RELIEF, Action.TAKE_RELIEF})
"""Relief that is taken, and relief that is gone on with."""
_BY_HAND = frozenset({Action.DROP, Action.PLACE})
"""How a ball is put down, which relief at large does not say."""
_AT_WILL = (None, *_ALIKE, Action.PLAY_FROM_TEEING_AREA, _CHOICE)
"""Where a ball may be played as it lies, relief with a penalty is the player's own choice (Rules 17.1d, 18.1 and 19.1)."""

MAY_BE_TAKEN_AWAY = frozenset({"may_remove_loose_impediment", "may_remove_movable_obstruction"})
"""Notes of rulings by which what is in the way is moved, and the ball is not."""


def is_allowed_too(right: Ruling, other: Ruling) -> bool:
    """Whether what another ruling says is one of the things that the right one allows, and so not wrong.

    One of several relief options is; so is a ball played as it lies in the teeing area, where it may be moved too; and
    relief for a penalty, which is open to whoever may play the ball as it lies (stroke and distance: Rule 18.1).
    """
    if (
        right.action is Action.PLAY_ON
        and other.action is Action.STOP_PLAY
        and not (right.penalties or other.penalties)
    ):
        return True  # whoever is excused for playing on may stop now (Rule 5.7b Exception)
    if _says_it_in_general(right, other) or _replaces_another(right, other) or _of_one_of_them(right, other):
        return True
    if _NO_SCORE in right.notes and not right.penalties and _NO_SCORE in other.notes:
        return True  # without a score for the hole a partner is out of it, by whatever name (Rules 21.1c and 23.2a)
    if _is_the_second_ball(right, other) or _lets_holed_ball_count(right, other):
        return True
    if (
        right.action is _CHOICE
        and is_free(right)
        and other.action is Action.TAKE_RELIEF
        and is_only_free(other)
    ):
        return _levels(right) == _levels(other)  # the free part of what is left to the player
    if _is_put_right_already(right, other) or _corrected_at_one_more(right, other):
        return True
    if _levels(right) != _levels(other):
        return False
    if "or_penalty_area_relief_at_once" in right.notes and other.action is Action.TAKE_RELIEF:
        return all(option.penalty == 1 for option in other.relief)  # one way of it (Rule 11.2c(1) Exception)
    if "first_ball_counts_second_ignored" in right.notes and other.action in _ALIKE:
        return True  # whoever gave that ball up plays it out (Rule 14.7b(1))
    if _is_playing_on(right, other):
        return True
    if "use_ball_on_list" in right.notes and other.action is Action.CORRECT_MISTAKE:
        return True  # a ball that must not be used is put aside for another (Model Local Rule G-3)
    if MAY_BE_TAKEN_AWAY.intersection(right.notes) and (is_free(other) or other.action in _ALIKE):
        # relief from what can be moved is to move it (Rules 15.1a and 15.2a); relief for the ball besides is another thing,
        # save in the teeing area, where the ball may be moved anyhow (Rule 6.2b(6))
        at_will = right.action is Action.PLAY_FROM_TEEING_AREA
        return (
            is_free(right) or at_will or not (is_free(other) and MAY_BE_TAKEN_AWAY.intersection(other.notes))
        )
    if right.action in _BY_HAND and other.action is Action.TAKE_RELIEF and costs(other) and is_free(other):
        return True  # relief is taken by dropping or placing a ball (Rule 14.3)
    if right.action in _AT_WILL and other.action is _CHOICE and not is_free(other):
        return not is_free(right) and costs(right) <= costs(other)
    if right.action is Action.PLAY_FROM_TEEING_AREA:
        if other.action in (Action.DROP, Action.PLACE, Action.REPLACE):
            return True  # in the teeing area a ball may be put down in any way (Rule 6.2b)
        if {option.kind for option in other.relief} == {ReliefKind.STROKE_AND_DISTANCE}:
            return True  # open at any time (Rule 18.1)
        return other.action is Action.PLAY_AS_IT_LIES and right.stroke is None
    if right.action is _CHOICE and other.action in _ALIKE:
        return not is_free(right) or "free" not in step_families(
            right
        )  # else an answer says "no free relief" (Rule 8.1d(1))
    if {right.action, other.action} == {Action.TAKE_RELIEF} and len(step_families(other)) > 1:
        prices = [{option.penalty for option in each.relief} for each in (right, other)]
        if len(step_families(right)) == 1 and prices[0] <= prices[1] and 0 not in prices[1]:
            return True  # named in general, relief for one stroke or two is relief under one Rule for one as well
    offered = {(option.kind, option.penalty) for option in right.relief}
    taken = {(option.kind, option.penalty) for option in other.relief}
    if other.action is not Action.TAKE_RELIEF or not taken:
        return False
    if _is_the_free_part(right, other):
        return True
    return taken <= offered if right.action in (_CHOICE, Action.REPLACE) else taken < offered


def _is_playing_on(right: Ruling, other: Ruling) -> bool:
    """Whether playing on says it too: with the ball that is in play, or on the next hole once it is known that this one is over."""
    steps = {right.action, other.action}
    if steps == _HOLE_ENDS:
        return not {finding_of(right), finding_of(other)} <= _WHETHER_OVER
    return other.action is Action.PLAY_ON and not _IN_PLAY.isdisjoint(
        (*right.notes, *(each.what for each in right.corrections))
    )


def _is_the_free_part(right: Ruling, other: Ruling) -> bool:
    """Whether relief may be taken free or paid for, and the other ruling names what is free alone."""
    costs = [{option.penalty for option in one.relief} for one in (right, other)]
    return right.action is Action.TAKE_RELIEF and costs[1] == {0} and 0 in costs[0] and len(costs[0]) > 1


def differs_by_price_of_relief(right: Ruling, other: Ruling) -> bool:
    """Whether two rulings lead to one step, and one of them costs a stroke or two more: those of relief under way may be meant."""
    if right.action is not other.action:
        return False
    paid = [
        sum(each.strokes for each in one.penalties if each.kind is PenaltyKind.STROKES)
        for one in (right, other)
    ]
    only = all(each.kind is PenaltyKind.STROKES for one in (right, other) for each in one.penalties)
    if right.action is not Action.TAKE_RELIEF:  # there the price is what is asked
        price = [min((option.penalty for option in one.relief), default=0) for one in (right, other)]
        return only and (paid[0] != paid[1] or price[0] != price[1])
    return only and paid[0] != paid[1]


def _levels(ruling: Ruling) -> set[tuple[PenaltyKind, int, Who]]:
    return {(each.kind, each.strokes, each.who) for each in ruling.penalties}


def _says_it_in_general(right: Ruling, other: Ruling) -> bool:
    """Whether relief is to be taken, and the other ruling says to take it rightly: a mistake in it is put right so (Rule 14.5b)."""
    rightly = {"correct_relief_before_stroke"} & {each.what for each in other.corrections}
    return right.action is Action.TAKE_RELIEF and other.action is Action.CORRECT_MISTAKE and bool(rightly)


def _is_the_second_ball(right: Ruling, other: Ruling) -> bool:
    """Whether the second ball may be gone on with at a price, and the other ruling says so, by whatever name (Local Rule B-3)."""
    prices = {option.penalty for option in right.relief if option.kind is ReliefKind.PROVISIONAL}
    paid = sum(each.strokes for each in other.penalties) or sum(option.penalty for option in other.relief)
    may_choose = (_CHOICE, Action.TAKE_RELIEF, Action.REPLACE)
    return right.action in may_choose and other.action in _SAME_BALL and paid in prices


def _lets_holed_ball_count(right: Ruling, other: Ruling) -> bool:
    """Whether a holed provisional ball may count, and the other ruling says how: what that costs, it says or leaves out.

    Where a Rule gives relief for the original though it was not found, the player may go on with the provisional ball instead
    (Rule 18.3c(2)); and the stroke that it costs to let it count is not owed before (Clarification 18.3c(2)/4).
    """
    may = any(option.kind is ReliefKind.PROVISIONAL for option in right.relief) or _HOLED in right.notes
    strokes_paid = [each.kind is PenaltyKind.STROKES and each.strokes == 1 for each in other.penalties]
    return may and _HOLED in other.notes and all(strokes_paid)


def _is_put_right_already(right: Ruling, other: Ruling) -> bool:
    """Whether a mistake has been put right, and the other ruling says to do so for nothing more."""
    if right.action is not Action.PLAY_ON or other.action is not Action.CORRECT_MISTAKE:
        return False
    return _levels(right) == _levels(other) and _AT_ONE_MORE not in {each.what for each in other.corrections}


def _corrected_at_one_more(right: Ruling, other: Ruling) -> bool:
    """Whether a ruling counts the stroke that the other says the correction costs: the sum is the same (Rule 6.3c(1))."""
    paid, left = (sum(each.strokes for each in one.penalties) for one in (right, other))
    corrects = _AT_ONE_MORE in {each.what for each in other.corrections}
    return corrects and right.action is Action.PLAY_ON and paid == left + 1


def _of_one_of_them(right: Ruling, other: Ruling) -> bool:
    """Whether each of several players bears a penalty, and the other ruling says it of one: less, and not wrong."""
    each = [(one.kind, one.strokes) for one in right.penalties if one.who in (Who.EACH_PLAYER, Who.EACH_SIDE)]
    alone = [(one.kind, one.strokes) for one in other.penalties if one.who in (Who.PLAYER, Who.SIDE)]
    steps = {right.action, other.action}
    return bool(each) and each == alone and (len(steps) == 1 or steps <= _ALIKE)


def _replaces_another(right: Ruling, other: Ruling) -> bool:
    """Whether a ball is played as it lies and another one replaced: which of them an answer means, it does not say."""
    return "other_ball_is_replaced" in right.notes and other.action is Action.REPLACE


def told_apart(one: tuple[Ruling, FormOfPlay], other: tuple[Ruling, FormOfPlay]) -> bool:
    """Whether rulings say different things, not one less than the other: what they cost differs, or what is done next."""
    both = {one[0].action, other[0].action}
    if priced_apart(one[0]) or priced_apart(other[0]):
        of_both = [prices_by_family(each) for each, _ in (one, other)]
        if of_both[0].keys() == of_both[1].keys() and both == {Action.TAKE_RELIEF}:
            return of_both[0] != of_both[1]  # which relief costs what is all that is asked
    if _same_but_for_side(one[0], other[0]):
        return False
    if {finding_of(one[0]), finding_of(other[0])} == _WHETHER_STROKE:
        return True
    if total_words(*one) != total_words(*other):
        if next_words(*one) == next_words(*other) and None is not _strokes_in_all(*one) == _strokes_in_all(
            *other
        ):
            return False  # two strokes, and two strokes that are called the general penalty
        # "one penalty stroke" beside "one or two": the relief that must be taken is the same
        prices = [{option.penalty for option in each.relief} for each, _ in (one, other)]
        if both == {Action.TAKE_RELIEF} and _only_strokes(one[0], other[0]):
            return True  # the same relief after balls played before at another price
        if both != {Action.TAKE_RELIEF} or not prices[0] & prices[1] or (0 in prices[0]) != (0 in prices[1]):
            return True
        if 0 in prices[0]:
            return not (prices[0] <= prices[1] or prices[1] <= prices[0])  # only one kind of relief less
        return not costs(one[0]) & costs(other[0])
    if both == {_CHOICE}:
        paid = [{option.penalty for option in each.relief if option.penalty} for each, _ in (one, other)]
        return is_free(one[0]) != is_free(other[0]) or bool(
            paid[0] and paid[1] and paid[0].isdisjoint(paid[1])
        )
    if both == {Action.PLAY_ON, Action.CORRECT_MISTAKE} and "go_on_with_right_ball" in (
        *one[0].notes,
        *other[0].notes,
    ):
        return False  # whoever plays on does so with the right ball
    if Action.PLAY_ON in both and both & _LESS_EXACT and _is_vague(one[0], other[0]):
        return False
    if _puts_back_by(one[0], other[0]):
        return False
    if both == _HOLE_ENDS and {finding_of(one[0]), finding_of(other[0])} & _WHETHER_OVER:
        return True  # that is what is asked
    said = next_words(*one) and next_words(*other)
    alike = (_ALIKE, _SAME_BALL, _UNDER_WAY, _PUT_DOWN, _HOLE_ENDS)
    return bool(said) and len(both) > 1 and not any(both <= each for each in alike)


def _only_strokes(one: Ruling, other: Ruling) -> bool:
    """Whether two rulings give the same relief, and the strokes counted before it differ: those of balls lost one after another."""
    every = [each for found in (one, other) for each in found.penalties]
    alike = bool(one.relief) and one.relief == other.relief
    return (
        alike and _levels(one) != _levels(other) and all(each.kind is PenaltyKind.STROKES for each in every)
    )


def _same_but_for_side(one: Ruling, other: Ruling) -> bool:
    """Whether the same penalties are said to be the side's in one ruling, and nobody's by name in the other."""
    if {each.who for each in one.penalties} == {each.who for each in other.penalties}:
        return False
    if Who.PLAYER not in {each.who for found in (one, other) for each in found.penalties}:
        return False  # this partner alone, and each of them: two answers
    levels = [
        [
            (each.kind, each.strokes, Who.PLAYER if each.who in _OF_SIDE else each.who)
            for each in found.penalties
        ]
        for found in (one, other)
    ]
    return levels[0] == levels[1]


def _strokes_in_all(ruling: Ruling, form: FormOfPlay) -> tuple[int, frozenset[Who]] | None:
    """Return what a ruling costs in strokes, and whom; ``None`` where it is another penalty, or relief at several prices."""
    counted = (
        (PenaltyKind.STROKES,)
        if form is FormOfPlay.MATCH_PLAY
        else (PenaltyKind.STROKES, PenaltyKind.GENERAL)
    )
    relief = forced_costs(ruling, form) or {0}
    if len(relief) > 1 or any(each.kind not in counted for each in ruling.penalties):
        return None
    bearing = frozenset(each.who for each in ruling.penalties) or frozenset({Who.PLAYER})
    return sum(each.strokes for each in ruling.penalties) + min(relief), bearing


def _is_vague(one: Ruling, other: Ruling) -> bool:
    """Whether playing on is all that is said: after a hole that may be finished, no more is to be played (Rule 5.7b(2))."""
    return "hole_finished_now_stop" not in (*one.notes, *other.notes)


def _puts_back_by(one: Ruling, other: Ruling) -> bool:
    """Whether a ball is to be replaced, and to be replaced by somebody named: less, and not wrong."""
    corrected = {each.what for found in (one, other) for each in found.corrections}
    replaced = Action.REPLACE in (one.action, other.action)
    return replaced and "player_replaces_again" in corrected and one.action is not other.action
