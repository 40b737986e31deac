"""Facts about starting a hole and playing from the teeing area (Rules 6.1 and 6.2)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class TeeMarker(Enum):
    """What became of a tee-marker that was moved."""

    NOT_IMPROVED = "not_improved"
    IMPROVED_RESTORED = "improved_restored"
    IMPROVED_NOT_RESTORED = "improved_not_restored"
    MISSING = "missing"


class TeeImprovement(Enum):
    """What was changed in the teeing area."""

    GROUND_OR_GRASS = "ground_or_grass"
    OTHER_THINGS = "other_things"


class TeedOn(Enum):
    """What the ball was played from."""

    GROUND_OR_TEE = "ground_or_tee"
    OTHER_OBJECT = "other_object"


part_of_ball_in_teeing_area = yes_no(
    "part_of_ball_in_teeing_area",
    "Did any part of the ball touch the teeing area, or was any part above it?",
    help="Two club-lengths deep; its front and sides run through the outer edges of the tee-markers.",
    source="6.2b(1)",
    decided_by=DecidedBy.MAP,
)
tee_stroke_cancelled = yes_no(
    "tee_stroke_cancelled",
    "Did the opponent cancel the stroke promptly, before either player played again?",
    help="A cancellation cannot be withdrawn.",
    source="6.1b(1)",
)
tee_ball_struck = yes_no(
    "tee_ball_struck",
    "Did the player make a stroke at the ball as it was falling or after it had fallen?",
    help="A stroke is made if the player meant to strike the ball and did not stop the clubhead in time.",
    source="6.2b(5)",
)
ball_in_teeing_area = yes_no(
    "ball_in_teeing_area",
    "Does the ball in play lie in the teeing area of the hole?",
    help="Any part of it touching or above the teeing area: two club-lengths deep behind the markers.",
    source="6.2b(1), 6.2b(6)",
)
about_to_play_from_tee = yes_no(
    "about_to_play_from_tee",
    "Was the player about to play from the teeing area of that tee-marker?",
    help="On another teeing area, or after the tee shot, a tee-marker is a movable obstruction.",
    source="6.2b(4)",
)
tee_marker = choice(
    "tee_marker",
    "Did moving it improve lie, stance, swing or line, and was it put back?",
    {
        TeeMarker.NOT_IMPROVED: "it improved nothing",
        TeeMarker.IMPROVED_RESTORED: "it did, but it was put back before the stroke",
        TeeMarker.IMPROVED_NOT_RESTORED: "it did, and it was not put back before the stroke",
        TeeMarker.MISSING: "the player moved nothing: a tee-marker, or both, were missing",
    },
    help="Ask why it was moved and look where it stood.",
    source="6.2b(4), 8.1a",
)
tee_improvement = choice(
    "tee_improvement",
    "What was changed in the teeing area?",
    {
        TeeImprovement.GROUND_OR_GRASS: "ground, grass, weeds or other growth, sand, soil, dew or frost in the teeing area",
        TeeImprovement.OTHER_THINGS: "something else: a fixed object, or a branch or grass rooted outside it",
    },
    help="Things rooted outside the teeing area do not belong to it, even if they overhang.",
    source="6.2b(3)",
)
teed_on = choice(
    "teed_on",
    "From what was the ball played?",
    {
        TeedOn.GROUND_OR_TEE: "the ground, a heap of sand, or a conforming tee",
        TeedOn.OTHER_OBJECT: "a tee that does not conform, or another object",
    },
    help="A tee must not be longer than 4 inches (101.6 mm) nor help with the line of play.",
    source="6.2b(2)",
)
teed_wrongly_again = yes_no(
    "teed_wrongly_again",
    "Is it a second, separate breach of this kind in the round?",
    help="Ask whether a penalty for it was given before.",
    source="6.2b(2)",
)
