"""What a phone keeps for itself holds nothing personal but the names its official works with: traced by values found nowhere else."""

from pathlib import Path

from sqlalchemy import update

from marram.desk.offline.web_app import DATA
from marram.desk.people.roles import ROLES, sees
from marram.records.tables import Entrant, PersonalDetails
from tests.clubs import club
from tests.desk.signing_in import guarded, signed_in

BORN = 1_873_942_651
"""A year of birth that no other number can be taken for."""
TRACED = {"born": str(BORN), "club": "Traceclubber Hinterwick", "name": "Tracenamer Quill", "index": "73.19"}


def test_of_a_player_it_holds_the_name_at_most(tmp_path: Path) -> None:
    """For every role, in every document that is kept: no year of birth, club, or Handicap Index; a name only where the role sees it."""
    with club(tmp_path) as kept:
        app = guarded(kept)
        player = kept.groups_on(kept.event.played_on)[-1].players[-1].id  # type: ignore[arg-type]
        personal = {"born": BORN, "club": TRACED["club"], "name": TRACED["name"]}
        with kept.records.writing() as connection:
            connection.execute(
                update(PersonalDetails).where(PersonalDetails.person_id == player).values(**personal)
            )
            connection.execute(
                update(Entrant).where(Entrant.person_id == player).values(handicap_index=TRACED["index"])
            )
        for role in ROLES:
            phone = signed_in(app, kept, role)
            found = {
                (what, address)
                for address in DATA
                if (answer := phone.get(address)).status_code == 200
                for what, value in TRACED.items()
                if value in answer.text
            }
            named = {("name", "/api/offline/event")} if sees(role, "player_name") else set()
            assert found == named, role
