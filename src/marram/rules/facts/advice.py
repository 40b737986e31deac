"""Facts about advice and about caddies (Rules 10.2a and 10.3)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class AdviceDeed(Enum):
    """What the player did."""

    GAVE = "gave"
    ASKED = "asked"
    TOUCHED_EQUIPMENT = "touched_equipment"
    RECEIVED_UNASKED = "received_unasked"
    ONLY_LOOKED = "only_looked"


class AdvicePerson(Enum):
    """Who was at the other end."""

    OWN_SIDE = "own_side"
    ADVICE_GIVER = "advice_giver"
    PLAYER_ON_COURSE = "player_on_course"
    ANYONE_ELSE = "anyone_else"


class OngoingAdvice(Enum):
    """Whether unasked advice went on, and what the player did about it."""

    ONCE = "once"
    WENT_ON_AND_OBJECTED = "went_on_and_objected"
    WENT_ON_UNOPPOSED = "went_on_unopposed"


class HelperRole(Enum):
    """What the second person did."""

    CADDIE_TOO = "caddie_too"
    CARRIES_OTHER_THINGS = "carries_other_things"
    COURTESY = "courtesy"
    SWAPPED_IN_FOR_ADVICE = "swapped_in_for_advice"
    REPLACED_CADDIE = "replaced_caddie"
    PLAYER_NOT_PLAYING = "player_not_playing"


class CaddieDeed(Enum):
    """What the caddie did for the player."""

    ROUTINE_HELP = "routine_help"
    MARKED_AND_LIFTED_ON_GREEN = "marked_and_lifted_on_green"
    LIFTED_FOR_RELIEF = "lifted_for_relief"
    LIFTED_TO_BE_REPLACED = "lifted_to_be_replaced"
    RESTORED_CONDITIONS = "restored_conditions"
    REPLACED_BALL_OTHERS_LIFTED = "replaced_ball_others_lifted"
    DROPPED_OR_PLACED = "dropped_or_placed"
    DECIDED_ON_RELIEF = "decided_on_relief"
    CONCEDED = "conceded"


class SharedCaddie(Enum):
    """For whom a shared caddie acted."""

    DIRECTED_BY_ONE = "directed_by_one"
    BALL_OF_ONE = "ball_of_one"
    NEITHER = "neither"


class BreachLevel(Enum):
    """The level of the penalty for what was done."""

    ONE_STROKE = "one_stroke"
    GENERAL = "general"


advice_deed = choice(
    "advice_deed",
    "What did the player (or the player's caddie) do?",
    {
        AdviceDeed.GAVE: "told or showed somebody something",
        AdviceDeed.ASKED: "asked somebody for something",
        AdviceDeed.TOUCHED_EQUIPMENT: "touched the equipment of another player, not a partner, to learn something",
        AdviceDeed.RECEIVED_UNASKED: "was told something without asking",
        AdviceDeed.ONLY_LOOKED: "only looked or listened: at another player's bag or club, at a stroke, at talk of others",
    },
    help="What the caddie does for the player counts as done by the player.",
    source="10.2a",
)
was_advice = yes_no(
    "was_advice",
    "Was it meant to tell or to learn which club, how to swing or how to play (not distance, wind direction, where things are, the Rules)?",
    help="Ask what it was said, shown, asked or touched for. Public information is not advice; what the wind will do to the ball is.",
    source="Definitions: advice",
)
during_round = yes_no(
    "during_round",
    "Did it happen during the round, with play going on?",
    help="Rule 10.2a does not apply before a round, between rounds, or while play is stopped under Rule 5.7a.",
    source="10.2a",
)
advice_to_or_from = choice(
    "advice_to_or_from",
    "To whom was it given, or who was asked?",
    {
        AdvicePerson.OWN_SIDE: "own caddie (shared or not), partner, or partner's caddie",
        AdvicePerson.ADVICE_GIVER: "an advice giver named for the team by Local Rule",
        AdvicePerson.PLAYER_ON_COURSE: "another player of the competition who was playing, or that player's caddie",
        AdvicePerson.ANYONE_ELSE: "anyone else",
    },
    help="Team members who are not partners count as other players.",
    source="10.2a, 22, 23, 24.4",
)
ongoing_advice = choice(
    "ongoing_advice",
    "Did the unasked advice go on, and what did the player do about it?",
    {
        OngoingAdvice.ONCE: "it was given once",
        OngoingAdvice.WENT_ON_AND_OBJECTED: "it went on, and the player took reasonable steps to stop it",
        OngoingAdvice.WENT_ON_UNOPPOSED: "it went on, and the player did nothing about it",
    },
    help="Ask whether the player told the person to stop.",
    source="Clarification 10.2a/2",
)
second_helper = choice(
    "second_helper",
    "What did the second person do for the player?",
    {
        HelperRole.CADDIE_TOO: "carried or handled clubs, or was named as caddie, while the caddie did the same",
        HelperRole.CARRIES_OTHER_THINGS: "walked along or carried other things (umbrella, clothing, food)",
        HelperRole.COURTESY: "moved clubs out of the way or fetched a club, as a courtesy",
        HelperRole.SWAPPED_IN_FOR_ADVICE: "took over as caddie for a moment, to give advice",
        HelperRole.REPLACED_CADDIE: "took over as caddie for good",
        HelperRole.PLAYER_NOT_PLAYING: "was the only caddie: a player of the competition who was not playing then",
    },
    help="A caddie is somebody who carries, transports or handles clubs, or whom the player names as such.",
    source="10.3a(1), Definitions: caddie",
)
caddie_deed = choice(
    "caddie_deed",
    "What did the caddie do for the player?",
    {
        CaddieDeed.ROUTINE_HELP: "carried, searched, advised, cleaned, raked, repaired the green, attended, removed loose things",
        CaddieDeed.MARKED_AND_LIFTED_ON_GREEN: "marked and lifted the player's ball on the putting green",
        CaddieDeed.LIFTED_FOR_RELIEF: "lifted the ball because the player was about to take relief",
        CaddieDeed.LIFTED_TO_BE_REPLACED: "lifted the ball off the green under a Rule that requires it to be replaced",
        CaddieDeed.RESTORED_CONDITIONS: "restored conditions that were worsened after the ball came to rest",
        CaddieDeed.REPLACED_BALL_OTHERS_LIFTED: "replaced a ball that somebody else had lifted or moved",
        CaddieDeed.DROPPED_OR_PLACED: "dropped or placed a ball in taking relief",
        CaddieDeed.DECIDED_ON_RELIEF: "decided that relief is taken, without the player",
        CaddieDeed.CONCEDED: "conceded a stroke, a hole or the match, or agreed the match score",
    },
    help="Ask caddie and player separately.",
    source="10.3b",
)
caddie_authorised = yes_no(
    "caddie_authorised",
    "Had the player authorised the caddie to do this, this time?",
    help="A general permission for the round is not enough.",
    source="10.3b(2)",
)
relief_evident = yes_no(
    "relief_evident",
    "Was it reasonable to conclude from what the player did or said that relief would be taken?",
    help="A gesture, a word, or starting to measure is enough.",
    source="10.3b(1), 14.1b Exception",
)
for_whom_shared_caddie_acted = choice(
    "for_whom_shared_caddie_acted",
    "For which of the players did the shared caddie act?",
    {
        SharedCaddie.DIRECTED_BY_ONE: "for the player who told the caddie to do it",
        SharedCaddie.BALL_OF_ONE: "nobody told the caddie; the ball of one of the players was involved",
        SharedCaddie.NEITHER: "nobody told the caddie, and no ball of theirs was involved",
    },
    help="Ask the caddie who gave the instruction.",
    source="10.3a(2)",
)
shared_caddie_breach = choice(
    "shared_caddie_breach",
    "Which penalty does the Rule broken by that action carry?",
    {BreachLevel.ONE_STROKE: "one penalty stroke", BreachLevel.GENERAL: "the general penalty"},
    help="Look the action up first as if the player had done it.",
    source="10.3c",
)
