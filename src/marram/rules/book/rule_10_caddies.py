"""Rule 10.3: caddies."""

from marram.rules.book.hole_by_hole import hole_by_hole
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.book.rule_14_lifting import lifted_off_the_green
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.advice import (
    BreachLevel,
    CaddieDeed,
    HelperRole,
    SharedCaddie,
    caddie_authorised,
    caddie_deed,
    for_whom_shared_caddie_acted,
    relief_evident,
    second_helper,
    shared_caddie_breach,
)
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.penalty import Who, general, strokes
from marram.rules.ruling import (
    Action,
    Deadline,
    HandOver,
    Judgement,
    Ruling,
    general_penalty,
    no_penalty,
    penalty,
)


@provision("10.3a(1)")
def second_caddie(case: Case) -> Ruling:
    """One caddie at a time; caddies may be changed, but not just to get advice."""
    role = case[second_helper]
    if role is HelperRole.SWAPPED_IN_FOR_ADVICE:
        return general_penalty("10.3a(1)").next(Action.PLAY_ON)
    if role is HelperRole.PLAYER_NOT_PLAYING:
        return another_player_as_caddie(case)
    if role is not HelperRole.CADDIE_TOO:
        return no_penalty("10.3a(1)").next(Action.PLAY_ON)
    return hole_by_hole(case, "10.3a")


@provision("Clarification 10.3a/2")
def another_player_as_caddie(_case: Case) -> Ruling:
    """A player who is not playing at the time may caddie for another player of the competition."""
    return no_penalty("Clarification 10.3a/2").next(Action.PLAY_ON).note("local_rule_may_limit_caddies")


@provision("10.3a(2)")
def shared_caddie_in_breach(case: Case) -> Ruling | Judgement:
    """A shared caddie acts for the one who gave the instruction, else for the one whose ball it was."""
    acted_for = case[for_whom_shared_caddie_acted]
    if acted_for is SharedCaddie.NEITHER and not case.played_since(EDITION_2023):
        return caddie_of_nobody(case)
    who = Who.EACH_PLAYER if acted_for is SharedCaddie.NEITHER else Who.PLAYER
    level = case[shared_caddie_breach]
    cost = strokes(1, "10.3a(2)", who) if level is BreachLevel.ONE_STROKE else general("10.3a(2)", who)
    ruling = Ruling().also(cost).under("10.3c").next(Action.PLAY_ON)
    if acted_for is SharedCaddie.NEITHER:
        return ruling
    if acted_for is SharedCaddie.DIRECTED_BY_ONE:
        return ruling.note("penalty_to_player_who_directed")
    return ruling.note("penalty_to_player_whose_ball")


@provision("20.3")
def caddie_of_nobody(case: Case) -> Judgement:
    """The 2019 text is silent where nobody gave the instruction and no ball was involved: the Committee decides.

    In 2016 it was decided in equity that each of the players who shared the caddie got the penalty (Decisions on the
    Rules of Golf, under Rule 30, on a caddie shared by opponents); the text of 2023 says so for all.
    """
    one = case[shared_caddie_breach] is BreachLevel.ONE_STROKE
    cost = strokes(1, "10.3a(2)", Who.EACH_PLAYER) if one else general("10.3a(2)", Who.EACH_PLAYER)
    each = Ruling().also(cost).under("20.3").next(Action.PLAY_ON)
    return Judgement(
        "20.3", "committee", ("shared_caddie_for_nobody_2019", "treat_like_similar_cases"), (each,)
    )


@provision("10.3b")
def caddie_acted(case: Case) -> Ruling | Judgement | HandOver:
    """What the caddie may always do, may do when authorised, and may not do."""
    deed = case[caddie_deed]
    if deed is CaddieDeed.ROUTINE_HELP:
        return no_penalty("10.3b(1)").next(Action.PLAY_ON).note("caddie_bound_by_same_limits")
    if deed is CaddieDeed.MARKED_AND_LIFTED_ON_GREEN:
        return no_penalty("14.1b Exception").replace_ball()
    if deed in (
        CaddieDeed.LIFTED_FOR_RELIEF,
        CaddieDeed.LIFTED_TO_BE_REPLACED,
        CaddieDeed.RESTORED_CONDITIONS,
    ):
        return caddie_needs_authority(case)
    return caddie_not_allowed(case)


@provision("10.3b(2)")
def caddie_needs_authority(case: Case) -> Ruling | Judgement:
    """Lifting off the green and restoring worsened conditions need the player's authority each time."""
    deed = case[caddie_deed]
    if deed is CaddieDeed.RESTORED_CONDITIONS:
        return restored_by_caddie(case)
    if deed is CaddieDeed.LIFTED_FOR_RELIEF:
        return lifted_for_relief_by_caddie(case)
    if case[caddie_authorised]:
        return lifted_off_the_green(case).under("10.3b(2)")
    return must_go_back(penalty(1, "14.1b"))


@provision("10.3b(2)")
def restored_by_caddie(case: Case) -> Ruling | Judgement:
    """Restoring conditions needs authority; the Rule names no penalty for a caddie who had none."""
    restored = no_penalty("10.3b(2)").play_as_it_lies()
    if case[caddie_authorised]:
        return restored
    improved = general_penalty("8.1a").under("10.3b(2)").play_as_it_lies()
    return Judgement(
        "10.3b(2)",
        "committee",
        ("unauthorised_restoring_improves", "unauthorised_restoring_gains_nothing"),
        (restored, improved),
    )


@provision("10.3b(1)")
def lifted_for_relief_by_caddie(case: Case) -> Ruling:
    """The caddie may lift where it is reasonable to conclude that the player takes relief.

    The 2019 book said so by a clarification of December 2018 to Rule 10.3b(2).
    """
    if case[relief_evident]:
        citation = "10.3b(1)" if case.played_since(EDITION_2023) else "10.3b(2)"
        return no_penalty(citation).next(Action.PLAY_ON).note("player_takes_the_relief")
    if case[caddie_authorised]:
        return no_penalty("10.3b(2)").next(Action.PLAY_ON).note("player_takes_the_relief")
    return penalty(1, "14.1b").replace_ball().note("replace_unless_relief_taken")


@provision("10.3b(3)")
def caddie_not_allowed(case: Case) -> Ruling | HandOver:
    """Some things only the player may do; once the ball was played, what it costs stands in Rule 14."""
    deed = case[caddie_deed]
    if deed is CaddieDeed.CONCEDED:
        return caddie_conceded(case)
    if deed is CaddieDeed.DECIDED_ON_RELIEF:
        citation = "10.3b" if case.played_since(EDITION_2023) else "10.3b(3)"
        return no_penalty(citation).next(Action.PLAY_ON).note("player_decides_on_relief")
    if case[played_since_put_down]:
        return played_as_caddie_put_it(case)
    if deed is CaddieDeed.REPLACED_BALL_OTHERS_LIFTED:
        return (
            no_penalty("10.3b(3)")
            .next(Action.CORRECT_MISTAKE)
            .correct("player_replaces_again", Deadline.BEFORE_STROKE, strokes(1, "14.2b"))
        )
    return (
        no_penalty("10.3b(3)")
        .next(Action.CORRECT_MISTAKE)
        .correct("player_drops_again", Deadline.BEFORE_STROKE, strokes(1, "14.3b"))
    )


@provision("10.3b(3)")
def caddie_conceded(case: Case) -> Ruling | HandOver:
    """A caddie's word concedes nothing in a match; in stroke play nobody's does, and the ball has to be holed."""
    if not case.match_play:
        return HandOver("concession", "3.3c")
    return no_penalty("10.3b(3)").next(Action.PLAY_ON).note("caddies_concession_is_void")


@provision("10.3b(3)")
def played_as_caddie_put_it(case: Case) -> HandOver:
    """A ball was played as the caddie put it back, dropped or placed it: Rule 14.2b or 14.3b says what that costs."""
    if case.is_one_of(caddie_deed, CaddieDeed.REPLACED_BALL_OTHERS_LIFTED):
        return HandOver("ball_put_back", "14.2b(1)", (("replaced_by", "someone_else"),))
    return HandOver("dropped_ball_played", "14.3b")
