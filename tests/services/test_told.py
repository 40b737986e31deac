"""A sentence is heard: the incidents it may be, its acts in order, and answers that are only proposed."""

import pytest

from marram.rules.facts import vocabulary
from marram.rules.facts.ball import Area
from marram.rules.finding.cues import CUES
from marram.rules.finding.told_facts import told_facts
from marram.rules.local_rules.register import REGISTER
from marram.services.cases.told import Sentence, told


def read(incident: str, words: str) -> dict[str, str]:
    return {one.fact: one.answer for one in told_facts(incident, words)}


@pytest.mark.parametrize(
    ("incident", "words", "expected"),
    [
        ("ball_moved_by_player", "She accidentally kicked it in the rough", {"movement_accidental": "yes", "area_of_ball": "general_area"}),
        ("ball_moved_by_player", "He nudged it on purpose in the bunker", {"movement_accidental": "no", "area_of_ball": "bunker"}),
        ("ball_moved_by_player", "I moved it, not on purpose", {"movement_accidental": "yes"}),
        ("started_off_time", "Four minutes late for her tee time in the medal", {"off_time": "late", "minutes_off": "4", "form_of_play": "stroke_play"}),
        ("ball_found_in_time", "found after 2 minutes", {"search_minutes": "2"}),
        ("caddie_behind_ball", "he did not step away before the stroke", {"backed_away": "no"}),
        ("ball_in_penalty_area", "beyond the yellow stakes", {"penalty_area_colour": "yellow"}),
        ("ball_in_penalty_area", "found it in the pond after two minutes", {"found_in_penalty_area": "yes"}),
        ("ball_in_penalty_area", "The ball was found in the pond after four minutes of searching", {"found_in_penalty_area": "no"}),
        ("ball_in_penalty_area", "After 5 minutes they found the ball in the ditch", {"found_in_penalty_area": "no"}),
        ("abnormal_course_condition", "The ball lies on a cart path that is flooded with casual water", {"in_the_way": "two_conditions"}),
        ("equipment_used", "She took out a wind gauge", {"equipment_use": "wind_measured"}),
        ("equipment_used", "He held up a handkerchief to see the wind", {"equipment_use": "wind_measured"}),
        ("equipment_used", "He tossed some grass up to see the wind", {"equipment_use": "grass_tossed"}),
        ("equipment_used", "She looked at the weather forecast", {"equipment_use": "weather_report"}),
        ("practised_during_round", "After the hole she hit one out of the bunker", {"when_practised": "between_holes", "practised_from_bunker": "yes"}),
        ("practised_during_round", "chipping at the green they had just finished", {"when_practised": "between_holes"}),
    ],
)  # fmt: skip
def test_answers_are_read_in_a_sentence(incident: str, words: str, expected: dict[str, str]) -> None:
    """What a sentence says of the questions of its incident is read."""
    found = read(incident, words)
    assert {name: found.get(name) for name in expected} == expected


@pytest.mark.parametrize(
    ("incident", "words", "fact"),
    [
        ("ball_moved_by_player", "was it on purpose or by accident?", "movement_accidental"),
        ("ball_moved_by_player", "from the bunker onto the green", "area_of_ball"),
        ("ball_moved_by_player", "it was not in the bunker", "area_of_ball"),
        ("ball_found_in_time", "found after two or 4 minutes, some say 5 minutes", "search_minutes"),
        ("ball_found_in_time", "found after three and a half minutes", "search_minutes"),
    ],
)
def test_what_is_not_plain_is_not_read(incident: str, words: str, fact: str) -> None:
    """Two answers, a denied one, or a number that is no whole one are left to be asked."""
    assert fact not in read(incident, words)


def test_every_cue_is_for_an_answer_that_exists() -> None:
    """A renamed fact or answer takes its cues along."""
    known = vocabulary()
    assert [
        (name, answer)
        for name, said in CUES.items()
        for answer in said
        if name not in known or answer not in known[name].tokens()
    ] == []


def test_what_is_known_already_is_not_read() -> None:
    """An answer, or the map, outweighs the sentence."""
    words = "She accidentally kicked it in the rough"
    assert not {one.fact for one in told_facts("ball_moved_by_player", words, {"area_of_ball"})} & {
        "area_of_ball"
    }


def test_several_acts_are_offered_in_order() -> None:
    """A story told in one sentence is taken apart where it goes on, each act with its incidents."""
    found = told(
        Sentence(
            "He swung and stopped before the ball, the twig broke, then he dropped it outside the relief area and played"
        )
    )
    firsts = [{one.incident.name for one in act.offered[:3]} for act in found.acts]
    left = iter(firsts)
    for meant in ("swing_in_doubt", "fixed_object_moved", "dropped_ball_played"):
        assert any(meant in offered for offered in left), (meant, firsts)


def test_one_act_is_not_taken_apart() -> None:
    """A sentence of one act has no list of acts, and one incident covers it."""
    found = told(Sentence("My ball moved when I removed a leaf on the green"))
    assert found.acts == ()
    assert found.one_covers


@pytest.mark.parametrize(
    "words",
    [
        "water in the bunker",
        "sprinkler head in my swing",
        "tee shot out of bounds",
        "ant hill beside the ball",
    ],
)
def test_a_local_rule_not_in_force_comes_after_the_ordinary_incidents(words: str) -> None:
    """Where it is known that none is in force, no Local Rule stands before what the Rules themselves rule on."""
    found = told(Sentence(words, local_rules=frozenset(), read=0))
    of_local_rules = [one.incident.rule in REGISTER for one in found.offered]
    assert of_local_rules == sorted(of_local_rules)
    assert not of_local_rules[0]


@pytest.mark.parametrize(
    ("words", "incident", "area", "other"),
    [
        ("I removed a leaf", "thing_removed_from_bunker", Area.BUNKER, Area.PUTTING_GREEN),
        ("he brushed away sand", "sand_touched", Area.BUNKER, Area.PUTTING_GREEN),
        ("she tapped it down", "green_repaired", Area.PUTTING_GREEN, Area.BUNKER),
    ],
)
def test_where_the_ball_lies_ranks_what_was_said(words: str, incident: str, area: Area, other: Area) -> None:
    """The same words are heard with the area of the course that the ball lies in."""

    def likelihood(lies: Area) -> float:
        offered = told(Sentence(words, area=lies, read=0)).offered
        return next((one.likelihood for one in offered if one.incident.name == incident), 0.0)

    assert likelihood(area) > 1.5 * likelihood(other)


def test_a_list_that_is_only_near_does_not_sound_sure() -> None:
    """Words that nobody taught, or that say little, are told to be near only."""
    assert not told(Sentence("the ball", read=0)).sure
    assert not told(Sentence("zyxw qqqq vvvv bunker", read=0)).sure
    assert told(Sentence("my ball hit the flagstick left in the hole", read=0)).sure
