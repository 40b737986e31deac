"""Places of officials as they are proposed: by role, hour and group, the same for a seed, each readable as a duty."""

from datetime import time

from marram.competition.conditions.duties import duty_of, uncovered
from marram.competition.conditions.event_file import Official
from marram.competition.draw.officials import GroupStarts, proposed_places

GROUPS = [GroupStarts(at + 1, time(8, 10 * at), 1) for at in range(6)]
HOLES = list(range(1, 19))


def places(*roles: str, seed: str = "a", groups: list[GroupStarts] = GROUPS) -> dict[tuple[str, str], str]:
    officials = [(f"{role} {at}", role) for at, role in enumerate(roles)]
    return proposed_places(officials, groups, HOLES, minutes=270, seed=seed)


def test_referees_share_the_holes_by_the_hour() -> None:
    """Three referees for six groups: holes 1-6, 7-12, 13-18. At 15 minutes a hole (270 / 18) the first group, 8:00, reaches hole 7 after
    six holes at 9:30; the last, 8:50, leaves hole 12 after twelve at 11:50. So the second area is from 9:30 to 11:50."""
    found = places("referee", "referee", "referee")
    assert sorted(found.values()) == [
        "holes 1 to 6, 08:00–10:20",
        "holes 13 to 18, 11:00–13:20",
        "holes 7 to 12, 09:30–11:50",
    ]
    duties = [duty_of(Official(key[0], f"referee, {words}")) for key, words in found.items()]
    assert uncovered(duties, HOLES) == ()


def test_enough_referees_go_with_a_group_each_and_the_chief_roves() -> None:
    """Seven for six groups: the seventh roves. Every group has exactly one."""
    found = places("chief_referee", *["referee"] * 7)
    duties = [duty_of(Official(key[0], f"{key[1]}, {words}")) for key, words in found.items()]
    assert sorted(group for one in duties for group in one.groups) == [1, 2, 3, 4, 5, 6]
    assert sum(one.roving for one in duties) == 2
    assert all(one.has_place for one in duties)


def test_starters_are_at_their_tees_one_after_the_other() -> None:
    """Two of one tee have three groups each; of two tees one each, also where their groups start at the same times."""
    assert sorted(places("starter", "starter").values()) == ["tee 1, 08:00–08:20", "tee 1, 08:30–08:50"]
    two = [GroupStarts(at + 1, time(8, 10 * (at // 2)), 1 if at % 2 == 0 else 10) for at in range(6)]
    assert sorted(places("starter", "starter", groups=two).values()) == [
        "tee 1, 08:00–08:20",
        "tee 10, 08:00–08:20",
    ]


def test_one_scorer_takes_cards_and_the_others_walk_with_the_last_groups() -> None:
    """Cards come from 12:30, 270 minutes after 8:00, to 13:20; the other two go with groups 6 and 5."""
    found = places("scorer", "scorer", "scorer")
    assert sorted(found.values()) == [
        "group 5, 08:40–13:10",
        "group 6, 08:50–13:20",
        "scoring area, 12:30–13:20",
    ]


def test_the_seed_decides_who_and_the_order_given_does_not() -> None:
    """The same seed gives the same places however officials are listed; some other seed gives others; no groups, no places."""
    officials = [(f"r{at}", "referee") for at in range(5)]
    first = proposed_places(officials, GROUPS, HOLES, minutes=270, seed="a")
    assert proposed_places(officials[::-1], GROUPS, HOLES, minutes=270, seed="a") == first
    others = [proposed_places(officials, GROUPS, HOLES, minutes=270, seed=str(at)) for at in range(5)]
    assert any(one != first for one in others)
    assert proposed_places(officials, [], HOLES, minutes=270, seed="a") == {}
    many = proposed_places(
        [(f"r{at}", "referee") for at in range(40)],
        [GroupStarts(at, time(8), 1) for at in range(1, 99)],
        HOLES,
        minutes=270,
        seed="a",
    )
    assert len(many) == 40
