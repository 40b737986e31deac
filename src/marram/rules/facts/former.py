"""Facts that only the former Rules (until 2018) turned on, or that teaching asks to show what changed in 2019."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class DropHeight(Enum):
    """The height a ball was dropped from."""

    SHOULDER = "shoulder"
    KNEE = "knee"
    OTHER = "other"


class SearchPlace(Enum):
    """What a ball lay in or under when it was moved during a search."""

    SAND = "sand"
    PROBED_WATER = "probed_water"
    CONDITION = "condition"
    LOOSE_IN_HAZARD = "loose_in_hazard"
    ELSEWHERE = "elsewhere"


class Likelihood(Enum):
    """How likely it is that the player made the ball move."""

    NOT_LIKELIER = "not_likelier"
    LIKELIER = "likelier"
    CERTAIN = "certain"


class RepairedMark(Enum):
    """What was repaired on the putting green."""

    BALL_MARK_OR_PLUG = "ball_mark_or_plug"
    SHOE_DAMAGE = "shoe_damage"


drop_height = choice(
    "drop_height",
    "From which height did the player drop the ball?",
    {
        DropHeight.SHOULDER: "shoulder height, with the arm held out",
        DropHeight.KNEE: "knee height",
        DropHeight.OTHER: "another height",
    },
    help="Take the player standing upright as the measure.",
    source="14.3b(2); former Rule 20-2a",
)
rolled_too_far = yes_no(
    "rolled_too_far",
    "Did it roll nearer the hole, over two club-lengths, into or out of a hazard, or to where it may not stay?",
    help="Former Rules: also onto a putting green, out of bounds, or back to what relief was taken from.",
    source="former Rule 20-2c",
)
moved_in_allowed_act = yes_no(
    "moved_in_allowed_act",
    "Did it move in the very act of marking, lifting, measuring, repairing a mark or removing a loose thing?",
    help="Former Rules: moving it while walking up, or by dropping a club on it, is no such act.",
    source="former Rules 16-1, 18-6, 20-1, 23-1",
)
green_movement_rule_adopted = yes_no(
    "green_movement_rule_adopted",
    "Had the Committee adopted the Local Rule of 2017 on accidental movement on the putting green?",
    help="It was offered to Committees from 1 January 2017; look at the notice to players.",
    source="former Rules, Local Rule of 2017",
)
search_place = choice(
    "search_place",
    "How did the ball lie when the player's side moved it in the search?",
    {
        SearchPlace.SAND: "covered by sand, which was being moved to find it",
        SearchPlace.PROBED_WATER: "in water in a penalty area (water hazard), and the water was being probed",
        SearchPlace.CONDITION: "in or on an obstruction or an abnormal ground condition",
        SearchPlace.LOOSE_IN_HAZARD: "under leaves or the like in a bunker or penalty area (hazard)",
        SearchPlace.ELSEWHERE: "in none of these ways, such as in long grass",
    },
    help="Former Rules: only the first three took the penalty away.",
    source="former Rule 12-1",
)
likelihood_player_moved_ball = choice(
    "likelihood_player_moved_ball",
    "How likely is it, on all the evidence, that the player made the ball at rest move?",
    {
        Likelihood.NOT_LIKELIER: "no likelier than that something else did",
        Likelihood.LIKELIER: "likelier than not, but not virtually certain",
        Likelihood.CERTAIN: "known or virtually certain (about 95 %)",
    },
    help="Weigh what was done, how near the ball, when it moved, the lie, slope and wind.",
    source="9.2b; former Decision 18-2/0.5",
)
attended_unasked = yes_no(
    "attended_unasked",
    "Did an opponent or another player attend, remove or raise it unasked, in the stroke or with the ball moving?",
    help="Or a caddie of theirs; the player neither knew of it nor had asked for it.",
    source="former Rule 17-2",
)
touch_allowed_before_2019 = yes_no(
    "touch_allowed_before_2019",
    "Was it only a growing thing or obstruction, or in falling, measuring, lifting, marking or setting clubs down?",
    help="Former Rules: those touches were free as long as nothing was tested or improved.",
    source="former Rule 13-4 Exceptions",
)
relief_cost_a_stroke = yes_no(
    "relief_cost_a_stroke",
    "Was it relief for a penalty stroke (penalty area, unplayable ball, lost ball)?",
    help="Relief from an obstruction, abnormal condition or wrong green is free.",
    source="former Rule 15-2",
)
repaired_mark = choice(
    "repaired_mark",
    "What was repaired on the putting green?",
    {
        RepairedMark.BALL_MARK_OR_PLUG: "a mark made by a ball, or an old hole plug",
        RepairedMark.SHOE_DAMAGE: "a spike mark or other damage by shoes",
    },
    help="Ask the player what the mark was, and look at its shape.",
    source="13.1c(2); former Rule 16-1c",
)
repair_might_help = yes_no(
    "repair_might_help",
    "Might the repair have helped the player in playing the rest of the hole?",
    help="On or near the line of putt, or around the hole before holing out, it might.",
    source="former Rule 16-1c",
)
line_touch_listed = yes_no(
    "line_touch_listed",
    "Was the touch on the former list: loose thing, address, measuring, ball or marker, ball-mark, by accident?",
    help="By accident means walking on the line without meaning to, and without improving it.",
    source="former Rule 16-1a",
)
closely_mown = yes_no(
    "closely_mown",
    "Was the ball in ground cut to fairway height or less?",
    help="Fairways, fringes and mown paths through the rough.",
    source="former Rule 25-2",
)
embedded_rule_adopted = yes_no(
    "embedded_rule_adopted",
    "Had the Committee adopted the Local Rule that extends embedded ball relief through the green?",
    help="Through the green: everywhere but hazards, and the teeing ground and putting green of the hole.",
    source="former Rules, Appendix I-A-3a",
)
announced_and_observed = yes_no(
    "announced_and_observed",
    "Did the player announce the lifting first, and let another player watch the lifting and replacing?",
    help="To the opponent in match play, to the marker or a fellow-competitor in stroke play.",
    source="former Rule 12-2",
)
former_time_to_hole_out_over = yes_no(
    "former_time_to_hole_out_over",
    "Had the player played from the next tee or, on the last hole, left the putting green?",
    help="Former Rules: until then the player could go back and hole out.",
    source="former Rule 3-2",
)
club_lay_in_stroke = yes_no(
    "club_lay_in_stroke",
    "Did the club still lie there when the stroke was made?",
    help="Former Rules: off the putting green it was enough to take it away before the stroke.",
    source="former Rule 8-2a",
)
fell_in_when_drawn = yes_no(
    "fell_in_when_drawn",
    "When the flagstick was moved or drawn, did the ball fall into the hole?",
    help="Former Rules: a ball wedged between flagstick and hole was not holed until all of it was below the lip.",
    source="former Rule 17-4",
)
