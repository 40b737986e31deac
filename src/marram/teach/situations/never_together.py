"""Answers that no course has seen together, whatever the incident: by geometry, by the order of time, by sense."""

from collections.abc import Mapping

_NOT_GENERAL = frozenset({"bunker", "penalty_area", "putting_green", "teeing_area"})
NEVER_TOGETHER: tuple[Mapping[str, frozenset[str | int]], ...] = (
    # A reference point is on the line behind the spot it starts from: whoever is not nearer than the one is not nearer
    # than the other.
    {
        "rest_nearer_than_chosen_point": frozenset({"no"}),
        "rest_nearer_than_start_of_line": frozenset({"yes"}),
    },
    # Who stood there until the stroke was there in the stance, and kept nobody waiting for a new one.
    {"left_before_stroke": frozenset({"no"}), "in_place_at_stance": frozenset({"no"})},
    {"left_before_stroke": frozenset({"no"}), "backed_away": frozenset({"yes"})},
    # Nothing on a putting green holds a ball off the ground.
    {"interference": frozenset({"ball_above_ground"}), "area_of_ball": frozenset({"putting_green"})},
    # In a penalty area no condition gives relief that a ball would be lifted to see.
    {
        "condition_found": frozenset({"abnormal_course_condition"}),
        "area_of_ball": frozenset({"penalty_area"}),
    },
    # Embedded in the general area is nowhere else (Rule 16.3a).
    {"condition_found": frozenset({"embedded"}), "area_of_ball": _NOT_GENERAL},
    # A ball off the ground is in something that grows in the ground under repair, or on something built.
    {
        "interference": frozenset({"ball_above_ground"}),
        "in_the_way": frozenset(
            {
                "animal_hole",
                "animal_track",
                "boundary_or_integral_object",
                "movable_obstruction",
                "natural_object",
                "temporary_water",
                "unmarked_ground",
                "water_of_penalty_area",
            }
        ),
    },
    # A ball in a condition has interference, whatever stroke is chosen (Rule 16.1a(1)).
    {
        "interference": frozenset({"ball", "ball_above_ground"}),
        "only_by_unreasonable_choice": frozenset({"yes"}),
    },
    {
        "local_interference": frozenset({"ball"}),
        "only_by_unreasonable_choice": frozenset({"yes"}),
    },
    # On the putting green a stroke can be made, whatever else is there.
    {"area_of_ball": frozenset({"putting_green"}), "stroke_unreasonable_anyway": frozenset({"yes"})},
    # On the putting green a ball may always be lifted (Rule 13.1b): what may be amiss there is the mark.
    {
        "area_of_ball": frozenset({"putting_green"}),
        "handling_allowed": frozenset({"no"}),
    },
    # A hole has one boundary inside the course of its own, whatever Local Rule sets it.
    {"local_rule_a_4": frozenset({"yes"}), "local_rule_a_4_2": frozenset({"yes"})},
    # What stands at the ball, the stance or the swing is within reach.
    {"stand_within_reach": frozenset({"no"}), "stand_interference": frozenset({"both", "physical"})},
    # The line of sight runs from the ball to the hole, whatever stroke is chosen (Model Local Rule F-23).
    {
        "stand_interference": frozenset({"line_of_sight", "both"}),
        "only_by_unreasonable_choice": frozenset({"yes"}),
    },
    # Sand has no trench covered with grass in it; and one Committee does not give with one Local Rule what another takes.
    {
        "temporary_line_thing": frozenset({"covered_trench"}),
        "area_of_ball": frozenset({"bunker"}),
        "interference": frozenset({"ball", "ball_above_ground"}),
    },
    {"stance_left_out": frozenset({"no"}), "condition_named_without_stance": frozenset({"yes"})},
    # What is tested for being loose is a natural object, and no ground; tee-markers are under no club and no foot.
    {
        "preparing_how": frozenset({"testing_whether_loose"}),
        "alteration": frozenset({"surface", "sand_or_soil", "dew_frost_water"}),
    },
    {
        "preparing_how": frozenset({"testing_whether_loose"}),
        "fixed_object": frozenset({"immovable_or_boundary", "tee_marker"}),
    },
    {
        "preparing_how": frozenset(
            {
                "searching",
                "marking_lifting_replacing",
                "grounding_club",
                "placing_feet",
                "backswing",
                "stroke",
                "taking_stance",
                "removing_loose_or_movable",
                "bunker_care_after_play",
            }
        ),
        "fixed_object": frozenset({"tee_marker"}),
    },
    {
        "preparing_how": frozenset({"bunker_care_after_play"}),
        "altered_place": frozenset({"own_teeing_area", "putting_green", "elsewhere"}),
    },
    # By a lightly grounded club no wire is bent, and what came off in the test is not back where it had grown.
    {"preparing_how": frozenset({"grounding_club"}), "fixed_object": frozenset({"immovable_or_boundary"})},
    {"natural_object_returned": frozenset({"no"}), "original_object_back": frozenset({"yes"})},
    # Wind blows sand and presses nothing down; what a caddie trod down on the green is damage that may be repaired.
    {"worsened_by": frozenset({"natural_forces"}), "alteration": frozenset({"surface"})},
    {"worsened_by": frozenset({"player_or_authorised"}), "was_damage_on_green": frozenset({"no"})},
    # A ball put down since has been lifted.
    {"put_in_play_by_hand": frozenset({"yes"}), "lifted_and_replaced_on_green": frozenset({"no"})},
    # The surface of a bunker is touched at the ball only by a ball that lies in it, and on the green no ball is searched for.
    {
        "altered_place": frozenset({"bunker"}),
        "preparing_how": frozenset({"grounding_club", "backswing", "practice_swing", "stroke"}),
        "area_of_ball": frozenset({"general_area", "penalty_area", "putting_green", "teeing_area"}),
    },
    {"altered_place": frozenset({"putting_green"}), "preparing_how": frozenset({"searching"})},
    {
        "altered_place": frozenset({"putting_green"}),
        "alteration": frozenset({"surface"}),
        "preparing_how": frozenset({"backswing", "practice_swing", "stroke"}),
    },
    {"altered_place": frozenset({"bunker"}), "alteration": frozenset({"dew_frost_water"})},
    # On a day without a round nothing is against a Local Rule about the days of the rounds.
    {"practised_before": frozenset({"on_other_day"}), "within_practice_limits": frozenset({"no"})},
    # Who was seen to stop a ball on purpose left nobody in doubt, and no provisional ball was played.
    {
        "whereabouts": frozenset({"deliberately_stopped"}),
        "provisional_state": frozenset({"found", "lost_or_out", "second_found", "both_lost_or_out"}),
    },
    # No ball is blown into a hole from there.
    {
        "new_place": frozenset({"in_the_hole"}),
        "area_of_ball": frozenset({"bunker", "penalty_area", "teeing_area"}),
    },
    # A ball that was found and is not known to be the player's tells nothing of where the player's is.
    {
        "identified_in_reasonable_time": frozenset({"no"}),
        "whereabouts": frozenset(
            {
                "abnormal_course_condition",
                "deliberately_stopped",
                "penalty_area_or_condition",
                "movable_obstruction",
                "out_of_bounds",
                "outside_influence",
                "penalty_area",
            }
        ),
    },
    # The third bad time disqualifies, unless another scale is in force: there is no fourth (Model Local Rule K-2).
    {"bad_time_number": frozenset({"fourth_or_later"}), "local_rule_k_3": frozenset({"no"})},
    # A green that is no wrong green has no fringe that belongs to it (Model Local Rules D-4.2 and D-5).
    {
        "excluded_green": frozenset({"under_repair", "played_as_it_lies"}),
        "fringe_interference": frozenset({"ball_on_it", "stance_only", "swing"}),
    },
    # Whether a caddie may lift it in the teeing area as the player may (Rule 6.2b(6)), no Rule says.
    {"who_lifted": frozenset({"caddie_without_authority"}), "area_of_ball": frozenset({"teeing_area"})},
    # Dropping zones are one way among others, or the only one.
    {"local_rule_e_1": frozenset({"yes"}), "local_rule_e_1_3": frozenset({"yes"})},
    {"local_rule_e_5": frozenset({"yes"}), "local_rule_e_1_3": frozenset({"yes"})},
    # Right behind a ball that lies outside the bunker there is no sand of it.
    {
        "sand_touch": frozenset({"club_by_ball"}),
        "ball_and_bunker": frozenset({"lies_elsewhere", "played_out", "relief_outside"}),
    },
    # Of a ball that is back on its spot, an answer that it is replaced would say it once more.
    {"preferred_lie": frozenset({"put_back"}), "local_rule_e_3": frozenset({"no"})},
    {"preferred_lie": frozenset({"put_back"}), "ball_in_preferred_area": frozenset({"no"})},
    # On the putting green, or off it, there is a spot near by where a ball stays.
    {"spot_that_stays_exists": frozenset({"no"}), "area_of_ball": frozenset({"putting_green"})},
    # What may still be holed comes to rest at the hole.
    {
        "could_be_holed": frozenset({"yes"}),
        "would_have_stopped": frozenset({"on_course", "out_of_bounds", "penalty_area"}),
    },
    # Only an opponent concedes by stopping the ball.
    {
        "deflector": frozenset({"own_side", "outsider"}),
        "why_stopped": frozenset({"stroke_conceded", "hole_or_match_conceded"}),
    },
    # Nothing on the putting green reaches out of bounds, and no wind takes a ball from there so far.
    {"interference": frozenset({"out_of_bounds_only"}), "area_of_ball": frozenset({"putting_green"})},
    {"new_place": frozenset({"out_of_bounds"}), "area_of_ball": frozenset({"putting_green"})},
    # A ball that is certain to have left its spot was not only touched.
    {"movement_certain": frozenset({"yes"}), "opponent_act": frozenset({"touched_on_purpose"})},
    {"found_in_obstruction": frozenset({"no"}), "obstruction_on_green": frozenset({"yes"})},
    # What lies on the green or on sand is seen, and no boundary fence stands there.
    {"crossed_area": frozenset({"putting_green"})},
    {
        "original_ball": frozenset({"in_movable_obstruction"}),
        "area_of_ball": frozenset({"putting_green", "teeing_area"}),
    },
    {
        "whereabouts": frozenset({"movable_obstruction"}),
        "area_of_ball": frozenset({"putting_green", "teeing_area"}),
    },
    {
        "spot_of_ball_known": frozenset({"no"}),
        "area_of_ball": frozenset({"bunker", "putting_green", "teeing_area"}),
    },
    {
        "in_the_way": frozenset({"boundary_or_integral_object"}),
        "area_of_ball": frozenset({"putting_green"}),
    },
    {"thing_in_the_way": frozenset({"boundary_object"}), "area_of_ball": frozenset({"putting_green"})},
    {"interference": frozenset({"out_of_bounds_only"}), "area_of_ball": frozenset({"putting_green"})},
    # Nor is damage on the green told of as something that gives no relief: it is repaired (Rule 13.1c(2)).
    {
        "in_the_way": frozenset({"animal_track", "unmarked_ground"}),
        "area_of_ball": frozenset({"putting_green"}),
    },
    {
        "in_the_way": frozenset({"immovable_obstruction"}),
        "interference": frozenset({"ball"}),
        "area_of_ball": frozenset({"putting_green"}),
    },
    # In a bunker that is ground under repair as a whole, the ball lies in it.
    {
        "bunker_taken_out_of_play": frozenset({"yes"}),
        "interference": frozenset({"line_of_play", "none", "stance_or_swing"}),
    },
    # From the teeing area, where it may be teed again, no ball is told of that wind took far away (Rule 6.2b(6)).
    {
        "new_place": frozenset({"another_area", "out_of_bounds"}),
        "area_of_ball": frozenset({"teeing_area"}),
    },
    # Nor is one replaced there.
    {"ball_when_removed": frozenset({"to_be_replaced"}), "area_of_ball": frozenset({"teeing_area"})},
    # One sentence says that it was an accident, and no other that it was none.
    {
        "movement_accidental": frozenset({"no"}),
        "opponent_act": frozenset({"moved_by_accident"}),
    },
    {
        "movement_accidental": frozenset({"yes"}),
        "opponent_act": frozenset({"lifted_or_moved_on_purpose", "touched_on_purpose"}),
    },
    # Whoever brought a club too many and began the round has made a stroke since.
    {"excess_noticed": frozenset({"brought_knowingly"}), "holes_with_breach": frozenset({0, "0"})},
    {"significantly_damaged": frozenset({"no"}), "cracked_or_loose": frozenset({"yes"})},
    # A boundary inside the course is set by its Local Rule.
    {"course_stake": frozenset({"internal_boundary"}), "local_rule_a_4": frozenset({"no"})},
    # What went on during several holes was on two of them at least.
    {"breach_when": frozenset({"several_holes"}), "holes_of_breach": frozenset({0, 1, "0", "1"})},
)
"""Answers that no course has seen together, whatever the incident: by geometry, or by the order of time."""
