"""Facts about the conditions affecting a stroke, and about altering them (Rule 8)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class Preparing(Enum):
    """What the player was doing when the conditions changed (Rule 8.1b)."""

    SEARCHING = "searching"
    REMOVING_LOOSE_OR_MOVABLE = "removing_loose_or_movable"
    MARKING_LIFTING_REPLACING = "marking_lifting_replacing"
    GROUNDING_CLUB = "grounding_club"
    PLACING_FEET = "placing_feet"
    TAKING_STANCE = "taking_stance"
    PRACTICE_SWING = "practice_swing"
    BACKSWING = "backswing"
    STROKE = "stroke"
    TESTING_WHETHER_LOOSE = "testing_whether_loose"
    BUNKER_CARE_AFTER_PLAY = "bunker_care_after_play"
    NONE_OF_THESE = "none_of_these"


class FixedObject(Enum):
    """What was moved, bent or broken (Rule 8.1a(1))."""

    GROWING_OR_ATTACHED = "growing_or_attached"
    IMMOVABLE_OR_BOUNDARY = "immovable_or_boundary"
    TEE_MARKER = "tee_marker"


class Alteration(Enum):
    """What was done to the ground or what lies on it (Rule 8.1a(3) to (5))."""

    SURFACE = "surface"
    SAND_OR_SOIL = "sand_or_soil"
    DEW_FROST_WATER = "dew_frost_water"


class AlteredPlace(Enum):
    """Where the ground was altered."""

    OWN_TEEING_AREA = "own_teeing_area"
    PUTTING_GREEN = "putting_green"
    BUNKER = "bunker"
    ELSEWHERE = "elsewhere"


class WorsenedBy(Enum):
    """Who or what worsened the conditions after the ball came to rest (Rule 8.1d)."""

    SOMEBODY_ELSE_OR_ANIMAL = "somebody_else_or_animal"
    PLAYER_OR_AUTHORISED = "player_or_authorised"
    NATURAL_FORCES = "natural_forces"


class Purpose(Enum):
    """Why conditions were altered on purpose (Rules 8.2 and 8.3)."""

    AFFECT_PLAY = "affect_play"
    CARE_FOR_COURSE = "care_for_course"


class DeliberateAct(Enum):
    """What was done on purpose to other physical conditions (Rules 8.2 and 8.3)."""

    MOVED_FIXED_OBJECT = "moved_fixed_object"
    PUT_OBJECT_IN_POSITION = "put_object_in_position"
    ALTERED_GROUND_SAND_OR_WATER = "altered_ground_sand_or_water"
    ALLOWED_BY_RULE_8 = "allowed_by_rule_8"
    """What Rules 8.1b and 8.1d let a player do, whomever it helps."""
    NONE_OF_THESE = "none_of_these"


conditions_improved = yes_no(
    "conditions_improved",
    "Did it improve the conditions affecting the stroke the player meant to make?",
    help="Lie, intended stance and swing, line of play, relief area: a potential advantage is enough, whatever stroke was then played.",
    source="8.1a, Definitions: improve, Clarification 8.1a/3",
)
meant_for_later_play = yes_no(
    "meant_for_later_play",
    "Was it done on purpose to affect where the ball might go or a later stroke, not this one?",
    help="For example to keep a ball played short from rolling back, or to get a rock out of the way of the ball's roll.",
    source="8.2a",
)
preparing_how = choice(
    "preparing_how",
    "What was the player doing when the conditions changed?",
    {
        Preparing.SEARCHING: "searching for the ball or identifying it",
        Preparing.REMOVING_LOOSE_OR_MOVABLE: "removing a loose impediment or movable obstruction",
        Preparing.MARKING_LIFTING_REPLACING: "marking the ball, lifting or replacing it under Rule 14",
        Preparing.GROUNDING_CLUB: "grounding the club right in front of or behind the ball",
        Preparing.PLACING_FEET: "placing the feet firmly for the stance",
        Preparing.TAKING_STANCE: "getting to the ball and taking a stance",
        Preparing.PRACTICE_SWING: "making a practice swing",
        Preparing.BACKSWING: "making the backswing for the stroke",
        Preparing.STROKE: "making the stroke itself",
        Preparing.TESTING_WHETHER_LOOSE: "testing whether a natural object is loose",
        Preparing.BUNKER_CARE_AFTER_PLAY: "smoothing a bunker after the ball was played out of it",
        Preparing.NONE_OF_THESE: "none of these, such as clearing the way",
    },
    help="Caddie, partner and anyone acting for the player count as the player.",
    source="8.1b",
)
least_intrusive_course = yes_no(
    "least_intrusive_course",
    "Did the player take the least intrusive way of reaching the ball and taking a stance?",
    help="The player is not entitled to a normal stance or swing and must make do with what the place allows.",
    source="8.1b(6)",
)
grounded_lightly = yes_no(
    "grounded_lightly",
    "Was the club grounded lightly, with no more than its own weight?",
    help="Grass, soil or sand may bear the weight of the club; pressing down is not allowed.",
    source="8.1b(4)",
)
natural_object_returned = yes_no(
    "natural_object_returned",
    "Did the object stay attached, and was it returned to where it had been?",
    help="As nearly as possible, once it proved to be growing or attached.",
    source="8.1b(11)",
)
fixed_object = choice(
    "fixed_object",
    "What was moved, bent or broken?",
    {
        FixedObject.GROWING_OR_ATTACHED: "a growing or attached natural object (grass, branch, bush)",
        FixedObject.IMMOVABLE_OR_BOUNDARY: "an immovable obstruction, integral object or boundary object (stake, fence)",
        FixedObject.TEE_MARKER: "a tee-marker of the teeing area being played from",
    },
    help="Loose impediments and movable obstructions may be taken away under Rule 15.",
    source="8.1a(1)",
)
original_object_back = yes_no(
    "original_object_back",
    "Before the next stroke: was the original object put back so that the improvement is gone?",
    help="Only the object itself will do: no tape, no prop. A broken branch cannot be put back.",
    source="8.1c(1)",
)
placed_object_removed = yes_no(
    "placed_object_removed",
    "Before the next stroke: was the object taken away again so that the improvement is gone?",
    help="For example the towel knelt on, the stone stood on.",
    source="8.1c(2)",
)
alteration = choice(
    "alteration",
    "What was altered?",
    {
        Alteration.SURFACE: "the surface: divots replaced, taken out or pressed down; holes or uneven places made or smoothed",
        Alteration.SAND_OR_SOIL: "sand or loose soil, removed or pressed down",
        Alteration.DEW_FROST_WATER: "dew, frost or water, removed",
    },
    help="See what the player did, then ask what for.",
    source="8.1a(3), 8.1a(4), 8.1a(5)",
)
altered_place = choice(
    "altered_place",
    "Where was it altered?",
    {
        AlteredPlace.OWN_TEEING_AREA: "in the teeing area the player plays from",
        AlteredPlace.PUTTING_GREEN: "on the putting green",
        AlteredPlace.BUNKER: "in a bunker",
        AlteredPlace.ELSEWHERE: "elsewhere on or off the course",
    },
    help="The place of the change, not of the ball. For what grows, where it is rooted. A mark partly on the green: see 8.1b/7.",
    source="8.1b, Clarification 8.1b/7",
)
was_damage_on_green = yes_no(
    "was_damage_on_green",
    "Was it damage on the putting green that may be repaired?",
    help="Caused by persons, animals, maintenance, hail and the like; not wear of the hole, aeration holes, or natural faults.",
    source="13.1c(2)",
)
worsened_by = choice(
    "worsened_by",
    "Who or what worsened the conditions after the ball came to rest?",
    {
        WorsenedBy.SOMEBODY_ELSE_OR_ANIMAL: "another person, a referee, an animal, or an artificial object",
        WorsenedBy.PLAYER_OR_AUTHORISED: "the player, caddie or partner, or someone acting with the player's authority",
        WorsenedBy.NATURAL_FORCES: "wind, water or other natural forces, or a natural object that fell there",
    },
    help="What was there when the ball came to rest is not worsened.",
    source="8.1d",
)
worsened_after_rest = yes_no(
    "worsened_after_rest",
    "Were the conditions worsened after the ball had come to rest?",
    help="Not what the ball found there. Lie altered while the ball was lifted or moved: 14.2d, but here if play was stopped.",
    source="8.1d(1)",
)
improved_what_was_worsened = yes_no(
    "improved_what_was_worsened",
    "Has the player already put the conditions right?",
    help="Loose impediments and movable obstructions taken away, or the player's own moved object put back, do not count.",
    source="8.1d(2)",
)
easily_restored = yes_no(
    "easily_restored",
    "Can the original conditions easily be restored?",
    help="As nearly as possible; the ball may be marked, lifted, cleaned and replaced to do so.",
    source="8.1d(1)",
)
deliberate_act = choice(
    "deliberate_act",
    "What was done on purpose?",
    {
        DeliberateAct.MOVED_FIXED_OBJECT: "something growing, attached or fixed was moved, bent or broken",
        DeliberateAct.PUT_OBJECT_IN_POSITION: "a loose impediment or movable obstruction was put in position",
        DeliberateAct.ALTERED_GROUND_SAND_OR_WATER: "the ground, sand, soil, dew, frost or water was altered",
        DeliberateAct.ALLOWED_BY_RULE_8: "only what 8.1b or 8.1d allows: damage or sand on the green put right, worsened conditions restored",
        DeliberateAct.NONE_OF_THESE: "none of these, or nothing on purpose",
    },
    help="These Rules speak of deliberate acts only.",
    source="8.2b, 8.3b",
)
purpose_of_act = choice(
    "purpose_of_act",
    "What was it done for?",
    {
        Purpose.AFFECT_PLAY: "to affect a stroke, or where a ball at rest or to be played might go",
        Purpose.CARE_FOR_COURSE: "to care for the course (raking a bunker, replacing a divot)",
    },
    help="Ask the player; look at whether it could help or hinder anybody.",
    source="8.2b Exception, 8.3b Exception",
)
other_player_let_it_happen = yes_no(
    "other_player_let_it_happen",
    "Did the player whose play it improves ask for it, or see it coming and do nothing to stop it?",
    help="Then that player is in breach as well. Answer no if the act worsened that player's conditions.",
    source="8.3, Clarification 8.3/1",
)
