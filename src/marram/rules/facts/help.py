"""Facts about help other than advice: line of play, objects, positions, physical help (Rule 10.2b)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class LineShownBy(Enum):
    """How the line of play was shown."""

    PERSON = "person"
    OBJECT = "object"
    TOUCH = "touch"


class ObjectKind(Enum):
    """What was set down or done."""

    CLUB_OR_OTHER_OBJECT = "club_or_other_object"
    MARK_IN_GROUND = "mark_in_ground"
    CLUBHEAD_STILL_HELD = "clubhead_still_held"
    SELF_STANDING_PUTTER = "self_standing_putter"
    BALL_AT_REST = "ball_at_rest"
    BALL_MARKER = "ball_marker"
    ALIGNMENT_BALL_MARKER = "alignment_ball_marker"


class HelpInStroke(Enum):
    """What help the player had while making the stroke."""

    PHYSICAL_HELP = "physical_help"
    PROTECTION_FROM_ELEMENTS = "protection_from_elements"
    DISTRACTIONS_KEPT_OFF = "distractions_kept_off"
    OWN_PROTECTION = "own_protection"
    CHANCE_BYSTANDER = "chance_bystander"
    ENDED_BEFORE_STROKE = "ended_before_stroke"


line_shown_by = choice(
    "line_shown_by",
    "How was the line of play shown?",
    {
        LineShownBy.PERSON: "a person stood on or close to it, or pointed at a spot",
        LineShownBy.OBJECT: "an object was set down to show it",
        LineShownBy.TOUCH: "hand, foot or club touched the ground",
    },
    help="Ask what was meant to mark the line.",
    source="10.2b(1), 10.2b(2)",
)
still_there_in_stroke = yes_no(
    "still_there_in_stroke",
    "Was the person or object still there, showing the line, while the stroke was made?",
    help="Standing there for another reason, such as attending the flagstick, is not showing the line.",
    source="10.2b(1), 10.2b(2)",
)
shown_by_own_side = yes_no(
    "shown_by_own_side",
    "Was it the player, the caddie, the partner or the partner's caddie who showed it?",
    help="Only they may point out the line of a ball on the putting green.",
    source="10.2b(2)",
)
asked_or_allowed = yes_no(
    "asked_or_allowed",
    "Did the player ask for it, or know that it is not allowed and do nothing to stop it?",
    help="A player answers for others' acts only when they asked for them or let them happen knowingly.",
    source="1.3c(1)",
)
touch_improved_green = yes_no(
    "touch_improved_green",
    "Did touching the green improve the conditions affecting the stroke?",
    help="Pressing down a spike mark while pointing is repairing damage and allowed; making a track is not.",
    source="8.1a",
)
attending_flagstick = yes_no(
    "attending_flagstick",
    "Was the caddie attending the flagstick?",
    help="An attendant may stand on or close to the line of play.",
    source="10.2b(2)",
)
meant_to_help_aim = yes_no(
    "meant_to_help_aim",
    "Was it set down or made to help with aiming, taking a stance or swinging?",
    help="A club simply laid aside is no help, wherever it lies.",
    source="10.2b(3)",
)
what_was_set_down = choice(
    "what_was_set_down",
    "What was set down or made?",
    {
        ObjectKind.CLUB_OR_OTHER_OBJECT: "a club, rod or other object, let go of",
        ObjectKind.MARK_IN_GROUND: "a mark in sand, dew or turf",
        ObjectKind.CLUBHEAD_STILL_HELD: "the clubhead behind the ball, the club still held",
        ObjectKind.SELF_STANDING_PUTTER: "a putter that stands by itself, let go of",
        ObjectKind.BALL_AT_REST: "the ball itself, with a line on it",
        ObjectKind.BALL_MARKER: "an ordinary ball-marker at the spot of the ball",
        ObjectKind.ALIGNMENT_BALL_MARKER: "a ball-marker that is an alignment device under the Equipment Rules",
    },
    help="An object is set down when it touches the ground and the player does not touch it.",
    source="10.2b(3)",
)
stance_with_object = yes_no(
    "stance_with_object",
    "Did the player take the stance for the stroke while it lay there?",
    help="Backing away afterwards and removing it does not help.",
    source="10.2b(3) (2019)",
)
in_place_at_stance = yes_no(
    "in_place_at_stance",
    "Did the caddie stand on or close to the line behind the ball once the player had begun the stance?",
    help="The stance is begun with one foot in position. Partner and asked advice giver count; others may follow the ball there.",
    source="10.2b(4)",
)
stood_there_deliberately = yes_no(
    "stood_there_deliberately",
    "Did the caddie stand there deliberately, aware of the stance and of the line?",
    help="Not deliberate: busy with something else, not noticing that the player had begun the stance.",
    source="10.2b(4)",
)
stood_there_for_aim = yes_no(
    "stood_there_for_aim",
    "Was the caddie helping with aiming?",
    help="Moving away without a word, as a sign that the aim is right, is help with aiming.",
    source="10.2b(4)",
)
backed_away = yes_no(
    "backed_away",
    "Did the player back away, and begin the stance again only after the caddie had left that place?",
    help="Backing away: feet and body are out of a position where guidance on aim could help.",
    source="10.2b(4)",
)
left_before_stroke = yes_no(
    "left_before_stroke",
    "Did the caddie leave that place before the stroke was made?",
    help="Watch where the caddie stood when the club went forward.",
    source="10.2b(4)",
)
regular_routine = yes_no(
    "regular_routine",
    "Was standing there part of a regular routine?",
    help="Ask how often it happened during the round.",
    source="10.2b(4)",
)
help_in_stroke = choice(
    "help_in_stroke",
    "What help or protection did the player have while making the stroke?",
    {
        HelpInStroke.PHYSICAL_HELP: "physical help from a caddie or another person",
        HelpInStroke.PROTECTION_FROM_ELEMENTS: "a person or object placed to keep off sun, rain or wind",
        HelpInStroke.DISTRACTIONS_KEPT_OFF: "a person or object placed to keep distractions off",
        HelpInStroke.OWN_PROTECTION: "their own: clothing, or an umbrella held over their own head",
        HelpInStroke.CHANCE_BYSTANDER: "a person who happened to stand there, asked to stay or move",
        HelpInStroke.ENDED_BEFORE_STROKE: "help that ended before the stroke",
    },
    help="What matters is what was there during the stroke, and whether it had been put there on purpose.",
    source="10.2b(5)",
)
