"""An official finds an incident by the words people use on the course.

The words are those of rules columns, quizzes of unions and clubs, and everyday talk (common practice).
"""

import pytest

from marram.rules.finding import MOST, find
from marram.rules.finding.acts import acts

EVERYDAY = {
    "double hit": "ball_struck_unfairly",
    "snooker": "ball_struck_unfairly",
    "broomhandle": "club_anchored",
    "between legs": "stood_across_line",
    "what club did you hit": "advice_exchanged",
    "caddie lined up": "caddie_behind_ball",
    "held the umbrella": "helped_in_stroke",
    "serious misconduct": "conduct",
    "bad language": "conduct",
    "spectator moved": "other_person_acted",
    "caddie conceded": "concession",
    "how many strokes": "strokes_told",
    "no score for hole": "hole_score_wrong",
    "marker did not sign": "scorecard_fault",
    "fourteen clubs": "too_many_clubs",
    "tape on hands": "equipment_used",
    "undue delay": "unreasonable_delay",
    "tee markers missing": "tee_marker_moved",
    "someone played my ball": "ball_played_by_another_player",
    "gimme": "did_not_hole_out",
    "gimmes": "ignored_a_rule",
    "good pick it up": "concession",
    "scorecard signed": "scorecard_fault",
    "signed wrong": "hole_score_wrong",
    "threw club": "conduct",
    "15 clubs": "too_many_clubs",
    "club snapped": "club_damaged",
    "DMD": "equipment_used",
    "slope laser": "equipment_used",
    "headphones": "equipment_used",
    "warm up": "practised_before_round",
    "hit another ball": "practised_during_round",
    "bad time": "stroke_took_long",
    "siren": "played_after_suspension",
    "airswing": "ball_in_play_in_teeing_area",
    "whiff": "ball_in_play_in_teeing_area",
    "knocked off the tee": "fell_off_tee",
    "wrong tees": "began_outside_teeing_area",
    "switched balls": "balls_found_exchanged",
    "stepped on ball": "ball_moved_by_player",
    "kicked the ball": "ball_moved_in_search",
    "buggy": "ball_moved_by_player",
    "dog": "ball_moved_by_outside_influence",
    "mower": "ball_moved_by_outside_influence",
    "rolled back": "ball_moved_by_natural_forces",
    "hit own bag": "deflected_off_green",
    "hit my bag": "deflected_off_green",
    "hit himself": "deflected_off_green",
    "swatted": "deliberately_deflected",
    "raked": "sand_touched",
    "hit sand in temper": "sand_touched",
    "apple": "thing_removed_from_bunker",
    "leaves in bunker": "thing_removed_from_bunker",
    "spike marks": "green_repaired",
    "plugmark": "green_repaired",
    "pin": "ball_hit_flagstick",
    "jammed": "ball_against_flagstick",
    "lip": "ball_overhung_hole",
    "improved lie": "ground_altered",
    "broke branch": "fixed_object_moved",
    "kneel": "object_put_in_position",
    "plugged": "embedded_ball",
    "OB": "ball_near_boundary",
    "mulligan": "play_again_from_previous_spot",
    "breakfast ball": "play_again_from_previous_spot",
    "reload": "another_ball_played",
    "tee it up again": "another_ball_played",
    "cart path": "abnormal_course_condition",
    "nearest point of relief": "abnormal_course_condition",
    "burrowing animal": "abnormal_course_condition",
    "GUR": "abnormal_course_condition",
    "flower bed": "no_play_zone",
    "goose droppings": "natural_thing_removed",
    "drop from knee": "ball_dropped",
    "drop twice": "ball_dropped",
    "coin left": "ball_put_back",
    "drop zone": "ball_in_penalty_area",
    "water hazard": "ball_in_penalty_area",
    "stuck in a tree": "unplayable_ball",
    "lost ball local rule": "alternative_to_stroke_and_distance",
    "winter rules": "lie_preferred",
    "lift clean and place": "lie_preferred",
    "TV tower": "temporary_immovable_obstruction",
    "wrong ruling": "ruling_was_wrong",
    "best ball": "four_ball_hole",
    "blind golfer": "blind_player",
    "one arm": "amputee_player",
    "buggy ban": "rode_during_round",
    "9.4": "ball_moved_by_player",
    "Rule 13.1c": "green_repaired",
}


def found(words: str) -> list[str]:
    return [one.name for one in find(words).incidents]


@pytest.mark.parametrize(("words", "name"), EVERYDAY.items(), ids=EVERYDAY)
def test_everyday_words_find_the_incident(words: str, name: str) -> None:
    """The words an official hears lead to the incident, on the first screen of a phone."""
    assert name in [one for one in found(words) if not one.startswith("teaching_")][:8]


@pytest.mark.parametrize(
    ("words", "not_found"),
    [
        ("pin", "ball_dropped"),
        ("aim", "ruling_requested_in_match"),
        ("three minutes late", "three_ball_out_of_turn"),
        ("four strokes", "four_ball_card"),
    ],
)
def test_a_word_is_not_found_inside_another(words: str, not_found: str) -> None:
    """Letters in the middle of a word lead nobody to an incident that has nothing to do with it."""
    assert not_found not in found(words)


def test_endings_and_little_words_do_not_count() -> None:
    """How a word is bent, and the articles around it, do not change what comes first, nor hide the three likeliest."""
    lists = [found(words) for words in ("raked the bunker", "rake bunker", "raking in a bunker")]
    assert {one[0] for one in lists} == {"sand_touched"}
    assert all(set(one[:3]) <= set(other) for one in lists for other in lists)


def test_a_word_nobody_uses_finds_nothing() -> None:
    """What nobody says leads nowhere; beside a word that is known it leaves what that word finds, and says so."""
    assert found("zzz") == []
    assert set(found("rake")) <= set(found("rake zzz"))
    assert not find("rake zzz").sure
    assert find("rake").sure


def test_a_word_that_is_not_known_is_said_and_a_few_words_with_one_are_only_near() -> None:
    """In a few words the unknown one may be what matters; in a sentence it is said, and the rest speaks for itself."""
    few = find("my ball zeppelin")
    assert (few.unknown, few.sure) == (("zeppelin",), False)
    whole = find("Zorvel's ball is lost in the trees after a long search")
    assert (whole.unknown, whole.sure) == (("zorvel",), True)
    assert find("flagstik").unknown == ()


def test_the_likeliest_comes_first() -> None:
    """A word in the title outweighs the same word among others, and rare words outweigh common ones."""
    assert found("lost ball")[0] == "ball_not_found"
    assert found("wrong green")[0] == "wrong_green"
    assert found("ball moved by wind on green")[0] == "ball_moved_by_natural_forces"


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("caddie removed the flagstick while the ball was rolling to avoid it hitting", "flagstick_moved"),
        ("player lifted ball to check whether it was his provisional without marking", "ball_lifted_to_identify"),
        ("dropped a ball beside red penalty area, then original found outside", "found_after_penalty_area_relief"),
        ("lifted ball lying on the fringe while another's ball was rolling towards it", "helped_ball_in_motion"),
        ("caddie stepped on player's ball when searching in the rough", "ball_moved_in_search"),
        ("moved the towel on another player's bag to see the club", "advice_exchanged"),
        ("partner stood behind line of putt to read it in foursomes", "partner_stood_behind"),
        ("player's driver cracked hitting a ball normally; replace it?", "club_damaged"),
    ],
)  # fmt: skip
def test_a_whole_sentence_finds_the_incident(words: str, name: str) -> None:
    """Words beside the point do not hide an incident from an official who types a sentence."""
    assert name in found(words)[:5]


def test_a_sub_rule_finds_what_its_rule_is_about() -> None:
    """A number finer than the one an incident begins from still leads to it."""
    assert found("17.1d(2)")[0] == "ball_in_penalty_area"


def test_a_misspelt_word_is_read_as_the_nearest_and_said() -> None:
    """A slip of the thumb does not end the search."""
    assert find("flagstik").read_as == (("flagstik", "flagstick"),)
    assert found("flagstik") == found("flagstick")


def test_the_list_stays_short_and_without_words_it_is_whole() -> None:
    """A phone shows a dozen; who asks for nothing gets everything."""
    assert len(found("ball")) <= MOST
    assert len(found("")) == len(found("the of")) > 200


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("he lost his ball and did not play a provisional", "ball_not_found"),
        ("it went out of bounds and she never hit a provisional", "ball_near_boundary"),
        ("we both hit same brand, I think I hit his", "wrong_ball_played"),
        ("played from the wrong tee box", "began_outside_teeing_area"),
        ("picked it up before holing out", "did_not_hole_out"),
    ],
)
def test_what_did_not_happen_is_not_offered_first(words: str, name: str) -> None:
    """What is denied does not lead, and what it is about comes first."""
    assert find(words).incidents[0].name == name


def test_a_drop_after_a_penalty_area_is_a_drop() -> None:
    """The second act of a sentence is ranked with the first beside it: a drop, not an unplayable ball."""
    told = acts("he went in the pond, then dropped two club-lengths back").acts
    assert [one.found.incidents[0].name for one in told] == ["ball_in_penalty_area", "ball_dropped"]
