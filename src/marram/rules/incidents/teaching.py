"""Incidents for teaching: what the former Rules ruled until 2018, and what the Rules have ruled since."""

from marram.rules.editions import FORMER_RULES
from marram.rules.incidents.incident import Incident

THEME = "Teaching: before and after 2019"


def _taught(name: str, title: str, rule: str, entry: str, keywords: str) -> Incident:
    return Incident(name, title, rule, THEME, f"book.former_rules.{entry}", keywords, FORMER_RULES)


INCIDENTS: tuple[Incident, ...] = (
    _taught(
        "teaching_cause_of_movement",
        "The ball at rest in the general area moved a little: did the player make it move?",
        "9.2b",
        "ball:who_moved_ball_in_general_area",
        "standard of proof weight of evidence known or virtually certain",
    ),
    _taught(
        "teaching_ball_moved_on_green",
        "The player moved their own ball on the putting green by accident",
        "13.1d",
        "ball:own_ball_moved_on_green",
        "knocked dropped marker putter practice swing",
    ),
    _taught(
        "teaching_ball_blown_on_green",
        "Wind, water or the slope moved the ball at rest to another spot on the putting green",
        "13.1d(2)",
        "ball:ball_moved_by_nature_on_green",
        "replaced marked rolled gust",
    ),
    _taught(
        "teaching_ball_moved_in_search",
        "The player's side moved the player's ball by accident while searching",
        "7.4",
        "ball:own_ball_moved_in_search",
        "kicked trod probing",
    ),
    _taught(
        "teaching_search_time",
        "The ball was found after some minutes of searching",
        "18.2a",
        "ball:ball_found_after_search",
        "lost three five minutes",
    ),
    _taught(
        "teaching_lifted_to_identify",
        "The player lifted their own ball to identify it",
        "7.3",
        "ball:own_ball_lifted_to_be_identified",
        "announce mark",
    ),
    _taught(
        "teaching_caddie_lifted_on_green",
        "The caddie lifted the player's ball on the putting green",
        "14.1b",
        "ball:caddie_lifted_on_green",
        "authority marked",
    ),
    _taught(
        "teaching_ball_hit_own_side",
        "A ball not played from the green hit the player, caddie or equipment by accident",
        "11.1",
        "ball:ball_hit_own_side",
        "deflected rebounded trolley bag partner",
    ),
    _taught(
        "teaching_double_hit",
        "The club hit the ball more than once in one swing, by accident",
        "10.1a",
        "play:ball_hit_twice",
        "double hit",
    ),
    _taught(
        "teaching_thing_removed_from_bunker",
        "A leaf, stone or movable object was removed from the bunker the ball lay in",
        "12.2a",
        "play:thing_removed_in_own_bunker",
        "loose impediment hazard",
    ),
    _taught(
        "teaching_sand_touched",
        "The sand of the bunker the ball lay in was touched",
        "12.2b",
        "play:sand_touched_in_own_bunker",
        "grounded club hazard leaning",
    ),
    _taught(
        "teaching_penalty_area_touched",
        "With the ball in a penalty area (water hazard), something there was touched or removed",
        "17.1b",
        "play:done_in_water_hazard",
        "grounded club hazard loose impediment",
    ),
    _taught(
        "teaching_out_of_turn",
        "A player played out of turn",
        "6.4",
        "play:played_before_turn",
        "ready golf order honour",
    ),
    _taught(
        "teaching_picked_up",
        "The player picked the ball up before holing out",
        "3.3c",
        "play:picked_up_before_holing_out",
        "maximum score form of play",
    ),
    _taught(
        "teaching_flagstick",
        "The ball hit the flagstick",
        "13.2",
        "green:ball_hit_the_flagstick",
        "attended removed left in putt",
    ),
    _taught(
        "teaching_against_flagstick",
        "The ball rests against the flagstick in the hole",
        "13.2c",
        "green:ball_rests_against_flagstick",
        "wedged holed",
    ),
    _taught(
        "teaching_green_repaired",
        "A ball-mark, old hole plug or spike mark on the putting green was repaired",
        "13.1c",
        "green:mark_repaired_on_green",
        "tapped down spike",
    ),
    _taught(
        "teaching_line_touched",
        "The line of play on the putting green was touched",
        "8.1a",
        "green:line_on_green_touched",
        "line of putt",
    ),
    _taught(
        "teaching_line_shown",
        "The player's side showed the line of play on the putting green",
        "10.2b",
        "green:line_on_green_shown",
        "caddie touched pointed",
    ),
    _taught(
        "teaching_caddie_behind",
        "The caddie stood on the line behind the ball",
        "10.2b",
        "green:caddie_lined_player_up",
        "alignment aiming lining up",
    ),
    _taught(
        "teaching_club_laid_down",
        "A club was laid on the ground to help with aiming or taking the stance",
        "10.2b(3)",
        "green:club_laid_down_for_aim",
        "alignment rod feet object set down",
    ),
    _taught(
        "teaching_wrong_green",
        "A wrong green interferes",
        "13.1f",
        "green:interference_by_wrong_green",
        "stance swing",
    ),
    _taught(
        "teaching_dropped",
        "The player dropped a ball in taking relief",
        "14.3",
        "relief:ball_was_dropped",
        "shoulder knee height rolled drop again",
    ),
    _taught(
        "teaching_club_length",
        "A club-length was measured",
        "14.3b",
        "relief:club_used_to_measure",
        "longest club putter",
    ),
    _taught(
        "teaching_substitution",
        "Another ball was used in taking relief",
        "14.3a",
        "relief:another_ball_used_for_relief",
        "changed substituted",
    ),
    _taught(
        "teaching_penalty_area_relief",
        "The ball is in a penalty area (water hazard)",
        "17.1",
        "relief:relief_from_penalty_area",
        "lateral opposite side red yellow",
    ),
    _taught(
        "teaching_lost_or_out",
        "The ball is lost or out of bounds",
        "18.2",
        "relief:ball_lost_or_out",
        "stroke and distance local rule",
    ),
    _taught(
        "teaching_embedded",
        "The ball is embedded",
        "16.3",
        "relief:ball_was_embedded",
        "plugged pitch-mark closely mown rough",
    ),
    _taught(
        "teaching_unplayable",
        "The player decides that the ball is unplayable",
        "19",
        "relief:ball_unplayable",
        "bunker two strokes",
    ),
)
