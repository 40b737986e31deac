"""Rule 11.1: a ball in motion accidentally hits a person, an animal, an outside influence or equipment."""

from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.deflection import (
    PuttHit,
    RestsOn,
    both_on_green,
    hit_on_green_certain,
    on_green_when_at_rest,
    putt_hit,
    rests_on,
)
from marram.rules.penalty import general
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption
from marram.rules.ruling import Action, Deadline, Ruling, WhichBall, general_penalty, no_penalty

_PLAYED_AS_IT_LIES = (PuttHit.BALL_MARKER, PuttHit.ANYTHING_ELSE)
_REPLAYED_IN_2019_ONLY = (PuttHit.PLAYER, PuttHit.CLUB_USED, PuttHit.INSECT)


@provision("11.1b(1)")
def deflected_off_green(case: Case) -> Ruling:
    """Played from off the green: as it lies, unless it rests on a person, animal or moving outside influence."""
    where = case[rests_on]
    as_it_lies = no_penalty("11.1a").stroke_counts().play_as_it_lies()
    if where is RestsOn.ON_COURSE:
        return as_it_lies
    if where is RestsOn.ON_COURSE_BALL_MOVED:
        return as_it_lies.under("9.6").note("other_ball_is_replaced")
    if where is RestsOn.AGAINST_ONE_THAT_MOVED:
        return moved_after_resting_against(case)
    return rests_on_person_or_moving_thing(case)


@provision("Clarification 11.1b/2")
def moved_after_resting_against(_case: Case) -> Ruling:
    """A ball that moves with the person or thing it rested against is replaced, without penalty."""
    return (
        no_penalty("Clarification 11.1b/2")
        .stroke_counts()
        .replace_ball()
        .correct("replace_where_it_rested", Deadline.BEFORE_STROKE, general("14.7a"))
    )


@provision("11.1b(1)")
def rests_on_person_or_moving_thing(case: Case) -> Ruling:
    """Relief is taken right under where the ball first came to rest: dropped, or placed on the green."""
    citation = "11.1b(1)" if case.played_since(EDITION_2023) else "11.1b Exception 1"
    if case[on_green_when_at_rest]:
        return (
            no_penalty(citation)
            .stroke_counts()
            .next(Action.PLACE, WhichBall.ORIGINAL_OR_ANOTHER)
            .note("place_right_under")
            .correct("relief_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
        )
    option = ReliefOption(
        ReliefKind.UNDER_WHERE_IT_CAME_TO_REST,
        citation,
        Reference.UNDER_BALL,
        1,
        (Limit.NOT_NEARER, Limit.SAME_AREA_AS_REFERENCE),
    )
    return (
        no_penalty(citation)
        .stroke_counts()
        .with_options(option, may_play_as_it_lies=False)
        .next(Action.TAKE_RELIEF, WhichBall.ORIGINAL_OR_ANOTHER)
        .correct("relief_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
    )


@provision("11.1b(2)")
def putt_hit_something(case: Case) -> Ruling:
    """Played from the green: as it lies, except that the stroke is replayed after certain hits on the green."""
    hit = case[putt_hit]
    if hit is PuttHit.BALL_AT_REST:
        return putt_hit_ball_at_rest(case)
    if hit is PuttHit.FLAGSTICK_OR_ATTENDANT:
        return no_penalty("13.2b(2)").stroke_counts().play_as_it_lies().note("unless_stopped_on_purpose")
    if hit in _PLAYED_AS_IT_LIES:
        return _as_it_lies(case)
    if not case[hit_on_green_certain]:
        return _as_it_lies(case)
    if hit in _REPLAYED_IN_2019_ONLY:
        return putt_hit_player_club_or_insect(case)
    return replay_from_green(case)


@provision("11.1b(2)")
def putt_hit_player_club_or_insect(case: Case) -> Ruling:
    """Hitting the player, the club used or an insect: replayed in 2019 (unless D-7 is in force), not since 2023."""
    if case.played_since(EDITION_2023):
        return _as_it_lies(case)
    if case.local_rule("D-7"):
        return _as_it_lies(case).under("D-7")
    return replay_from_green(case)


@provision("11.1a Exception")
def putt_hit_ball_at_rest(case: Case) -> Ruling:
    """In stroke play, hitting a ball at rest with both on the green costs the general penalty."""
    ruling = no_penalty("11.1a")
    if not case.match_play and case[both_on_green]:
        ruling = general_penalty("11.1a Exception")
    return ruling.stroke_counts().play_as_it_lies().note("other_ball_is_replaced")


@provision("11.1b(2)")
def replay_from_green(case: Case) -> Ruling:
    """The stroke does not count and is played again from the same spot."""
    if case.played_since(EDITION_2023):
        ruling = no_penalty("11.1b(2)").correct(
            "replay_the_putt", Deadline.BEFORE_STROKE, general("11.1b(2)")
        )
    else:
        ruling = no_penalty("11.1b Exception 2").correct(
            "replay_the_putt", Deadline.BEFORE_STROKE, general("14.7a")
        )
    return ruling.stroke_does_not_count().next(Action.REPLAY, WhichBall.ORIGINAL_OR_ANOTHER)


@provision("Clarification 11.1b/1")
def stroke_from_green_not_replayed(case: Case) -> Ruling:
    """Since 2023 the stroke counts, with the general penalty; in 2019 the next one is from a wrong place."""
    breach = general_penalty("Clarification 11.1b/1")
    if case.match_play:
        return breach.next(Action.HOLE_OVER)
    if case.played_since(EDITION_2023):
        counts = breach.under("11.1b(2)", "11.2c(2)").stroke_counts().play_as_it_lies()
        return counts.note("putt_and_next_stroke_count")
    wrong_place = played_from_wrong_place(case).under("Clarification 11.1b/1")
    return wrong_place.note("putt_to_be_replayed_does_not_count")


def _as_it_lies(case: Case) -> Ruling:
    citation = "11.1b(2)" if case.played_since(EDITION_2023) else "11.1b"
    return no_penalty(citation).stroke_counts().play_as_it_lies()
