"""The invented field: 156 players, the same from the same seed, and read as any list is."""

from marram.competition.draw.solving import draw
from marram.competition.draw.wishes import Drawn, starts
from marram.competition.entries.reading import read_entries
from marram.demo.make_field import CLUBS, FIELD, invented_field


def test_the_field_is_what_its_script_makes() -> None:
    """The file holds what the seed gives, and is read without a fault."""
    found = read_entries(FIELD)

    assert found.faults == ()
    assert [(one.name, one.club, one.number) for one in found.entries] == [
        (name, club, number) for name, _index, club, _sex, _born, number in invented_field()
    ]
    assert len({one.name for one in found.entries}) == 156
    assert {one.club for one in found.entries} == set(CLUBS)
    assert all(one.handicap_index is not None for one in found.entries)
    assert any(one.handicap_index < 0 for one in found.entries if one.handicap_index is not None)


def test_the_field_goes_into_fifty_two_groups() -> None:
    """Threes from two tees."""
    from datetime import time

    players = [Drawn(one.key, one.club) for one in read_entries(FIELD).entries]

    found = draw(players, starts(time(7, 30), 52, minutes=10, tees=(1, 10)))

    assert {len(group) for group in found.groups} == {3}
