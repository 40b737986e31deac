"""A round drawn out of the event as it stands: nobody again with whom they played in any round before."""

from datetime import time
from pathlib import Path

from marram.demo import EVENT
from marram.records.field_changes import GroupSet, set_groups
from marram.schema import read_json
from marram.services.field.draw_kept import Asked
from marram.services.field.draw_round import draw_of_round
from marram.services.results.scored import scored_in
from tests.services.scoring import scoring


def test_three_rounds_of_four_players_leave_one_way_to_meet(tmp_path: Path) -> None:
    """Where A met B and then C, only D is left; with the last round alone B would be free again."""
    event = {**read_json(EVENT, "event"), "scores": ["gross"], "starting_times": []}
    event["players"] = event["players"][:4]
    event["rounds"] = [
        {"name": name, "played_on": f"2025-06-2{day}"} for name, day in (("Second", 2), ("Third", 3))
    ]
    with scoring(tmp_path, event) as club:
        rounds = club.competition.rounds
        a, b, c, d = (one.person for one in club.competition.entries)
        for at, pairs in ((0, ((a, b), (c, d))), (1, ((a, c), (b, d)))):
            groups = [GroupSet(time(8, 10 * number), 1, pair) for number, pair in enumerate(pairs)]
            set_groups(club.records, club.event, rounds[at].id, groups)
        asked = Asked("20250623", time(8), places=2, not_again=True)

        found = draw_of_round(scored_in(club.records), 3, asked)

    assert len(rounds) == 3
    assert {frozenset(one.people) for one in found.groups} == {frozenset((a, d)), frozenset((b, c))}
