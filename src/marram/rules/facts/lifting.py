"""Facts about marking, lifting and cleaning a ball (Rule 14.1)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class Lifter(Enum):
    """Who lifted the player's ball."""

    PLAYER_OR_AUTHORISED = "player_or_authorised"
    CADDIE_WITHOUT_AUTHORITY = "caddie_without_authority"
    SOMEONE_ELSE = "someone_else"


class ReasonForLifting(Enum):
    """Why a ball was lifted."""

    TAKING_RELIEF = "taking_relief"
    RELIEF_GIVEN_UP = "relief_given_up"
    SEE_IF_RELIEF = "see_if_relief"
    IDENTIFY = "identify"
    CUT_OR_CRACKED = "cut_or_cracked"
    ASKED_AS_INTERFERING = "asked_as_interfering"
    NO_RULE_ALLOWED = "no_rule_allowed"


class Marking(Enum):
    """How the spot was marked before the ball was lifted."""

    RIGHT = "right"
    WRONG = "wrong"
    NOT_MARKED = "not_marked"


who_lifted = choice(
    "who_lifted",
    "Who lifted the ball?",
    {
        Lifter.PLAYER_OR_AUTHORISED: "the player, a partner, or someone the player authorised this time",
        Lifter.CADDIE_WITHOUT_AUTHORITY: "the caddie, without being authorised this time",
        Lifter.SOMEONE_ELSE: "someone else, without being authorised",
    },
    help="Authority must be given each time; a general one for the round does not count.",
    source="14.1b",
)
reason_for_lifting = choice(
    "reason_for_lifting",
    "Why was the ball lifted?",
    {
        ReasonForLifting.TAKING_RELIEF: "to take relief, or to see whether it is allowed, and relief was then taken",
        ReasonForLifting.RELIEF_GIVEN_UP: "to take relief that was allowed, but the player then took none",
        ReasonForLifting.SEE_IF_RELIEF: "to see whether it lay in a condition that gives relief; none was taken",
        ReasonForLifting.IDENTIFY: "to identify it",
        ReasonForLifting.CUT_OR_CRACKED: "to see whether it was cut or cracked",
        ReasonForLifting.ASKED_AS_INTERFERING: "another player asked for it, because it might interfere",
        ReasonForLifting.NO_RULE_ALLOWED: "for a reason that no Rule allows there",
    },
    help="Ask the player what the ball was lifted for; on the putting green any reason will do.",
    source="14.1",
)
reason_was_reasonable = yes_no(
    "reason_was_reasonable",
    "Did the player have good reason to lift it (need to identify, real doubt about damage or relief)?",
    help="Could the question have been settled without lifting? Did anything point to damage or to the condition?",
    source="4.2c(1), 7.3, 16.4",
)
spot_marking = choice(
    "spot_marking",
    "How was the spot marked before the ball was lifted?",
    {
        Marking.RIGHT: "with a ball-marker, or a club held on the ground, right at the ball (behind, beside or in front)",
        Marking.WRONG: "in a wrong way (a natural object, or not right at the ball)",
        Marking.NOT_MARKED: "not at all",
    },
    help="A ball-marker is an artificial object; a leaf or a twig is none. Any side of the ball will do.",
    source="14.1a",
)
cleaned_when_lifted = yes_no(
    "cleaned_when_lifted",
    "Was the lifted ball cleaned (more than was needed to identify it)?",
    help="A towel, a pocket, rolling it in the grass count. No: where a Rule let it be cleaned (8.1d, 5.7b, a Local Rule).",
    source="14.1c",
)
