"""The former Rules at the desk: for teaching incidents only, clearly refused for everything else.

What they ruled is tested in ``tests/rules/test_former_rules.py`` and with the published cases; the double hit
here is the best known: one penalty stroke until 2018 (Rule 14-4 of the former Rules), none since (Rule 10.1a).
"""

import pytest

from marram.words.texts import text as said
from tests.desk.asking import TestClient
from tests.desk.places import Ground

TAUGHT = "what=teaching_double_hit&form=stroke_play"
FORMER, PRESENT = "on=2018-12-31", "on=2023-06-01"


def test_the_same_case_is_ruled_under_the_former_rules_and_the_present(client: TestClient) -> None:
    """The page names the Rules it follows, and the penalty stroke is there until 2018 only."""
    former, present = (client.get(f"/case?{TAUGHT}&{day}") for day in (FORMER, PRESENT))

    assert former.context["sheet"].headline.endswith("one penalty stroke; play it as it lies.")
    assert said("conditions.former", year="2018") in former.text
    assert present.context["sheet"].headline.endswith("no penalty; play it as it lies.")
    assert "Rules 2023" in present.text


@pytest.mark.parametrize("day", [FORMER, PRESENT])
def test_a_teaching_incident_leads_to_the_rules_of_another_time(client: TestClient, day: str) -> None:
    """The former Rules and both editions are one step away, each link answering; the one shown is no link."""
    offered = client.get(f"/case?{TAUGHT}&{day}").context["taught"]

    assert [one.name for one in offered] == [
        said("conditions.former", year="2018"),
        "Rules 2019",
        "Rules 2023",
    ]
    assert [one.here for one in offered].count(True) == 1
    for one in offered:
        assert one.name in client.get(one.url).text


def test_other_incidents_offer_no_former_rules(client: TestClient) -> None:
    """Only incidents for teaching have the choice."""
    page = client.get(f"/case?what=unplayable_ball&{PRESENT}")

    assert page.status_code == 200
    assert page.context["taught"] == []
    assert "Former Rules" not in page.text


@pytest.mark.parametrize("path", ["/case?what=unplayable_ball&", "/api/rule?what=unplayable_ball&"])
def test_any_other_incident_before_2019_is_refused(client: TestClient, path: str) -> None:
    """The refusal names the day and the first one covered; the former Rules never stand in for others."""
    answer = client.get(f"{path}{FORMER}")

    assert answer.status_code == 400
    assert "2018-12-31 is not covered" in answer.text
    assert "on or after 2019-01-01" in answer.text


def test_a_situation_with_another_incident_before_2019_is_refused(client: TestClient) -> None:
    """One incident for teaching does not open the door for the others of its situation."""
    answer = client.get(f"/together?1.what=teaching_double_hit&2.what=unplayable_ball&{FORMER}")

    assert answer.status_code == 400
    assert "not covered" in answer.text


def test_the_list_before_2019_holds_incidents_for_teaching_only(client: TestClient, ground: Ground) -> None:
    """Also with a ball in a no play zone, which otherwise points at an incident of its own."""
    page = client.get(f"/what?hole=9&ball={ground.fairway()}&{FORMER}")

    (theme,) = page.context["themes"]
    assert theme.title == "Teaching: before and after 2019"
    assert "only incidents for teaching" in page.text
    assert page.context["hints"] == []


@pytest.mark.parametrize("day", ["2018-12-31", "2015-06-01"])
def test_a_competition_is_not_set_before_2019(client: TestClient, day: str) -> None:
    """The conditions refuse it, say where the former Rules are shown, and keep nothing."""
    answer = client.post("/settings", data={"on": day, "form": "stroke_play"})

    assert answer.status_code == 400
    assert "on or after 2019-01-01" in answer.text
    assert "incident for teaching" in answer.text
    assert "set-cookie" not in answer.headers


def test_a_day_before_the_former_rules_covered_is_refused_even_there(client: TestClient) -> None:
    """The teaching incidents begin with 2016."""
    assert client.get(f"/case?{TAUGHT}&on=2016-01-01").status_code == 200
    assert client.get(f"/case?{TAUGHT}&on=2015-12-31").status_code == 400
