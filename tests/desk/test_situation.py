"""Several incidents of one situation: kept in the address, ruled one by one, combined under Rule 1.3c(4).

What the combined penalties must be: Rules of Golf 2023, Rule 1.3c(4) (an intervening event, a stroke completed
or a breach become known, separates breaches; otherwise the higher penalty counts), and Rules of Golf 2019,
Rule 1.3c(4) (single or related acts cost one penalty, unrelated acts each their own).
"""

import re
from html import unescape
from urllib.parse import parse_qsl, urlsplit

import pytest

from marram.desk.rulings.case_address import CaseAddress, read_address
from marram.desk.rulings.story import at_incident, next_incident, together, without_incident
from marram.rules.penalty import Who
from marram.services.cases.event import Event
from marram.words.texts import text as said
from tests.desk.asking import TestClient
from tests.desk.places import Ground

LIFTED = {
    "what": "ball_lifted_by_player",
    "area_of_ball": "general_area",
    "handled_as": "lifted",
    "handling_allowed": "no",
}
"""One penalty stroke (Rule 9.4b)."""

IMPROVED = {
    "what": "ground_altered",
    "altered_place": "elsewhere",
    "conditions_improved": "yes",
    "preparing_how": "none_of_these",
    "alteration": "surface",
}
"""The general penalty (Rule 8.1a)."""

UNPLAYABLE = {
    "what": "ball_in_penalty_area",
    "found_in_penalty_area": "yes",
    "last_stroke_from_penalty_area": "no",
    "penalty_area_colour": "red",
}
"""No penalty, and relief that costs one penalty stroke (Rule 17.1d)."""


def numbered(*incidents: dict[str, str]) -> dict[str, str]:
    return {f"{number}.{key}": value for number, one in enumerate(incidents, 1) for key, value in one.items()}


def read(query: dict[str, str]) -> CaseAddress:
    return read_address(query.items(), "", Event())


def link(page: str, words: str) -> str:
    """The address of the link whose text starts with ``words``."""
    for address, text in re.findall(r'<a [^>]*href="([^"]*)"[^>]*>(.*?)</a>', page, re.DOTALL):
        if re.sub(r"<[^>]*>", "", text).strip().startswith(words):
            return unescape(address)
    pytest.fail(f"There is no link {words!r}.")


def test_from_one_ruling_to_the_combined_one(client: TestClient, ground: Ground) -> None:
    """Something else happened: the first ruling stays, the ball's place and the facts are asked anew, then both count."""
    first = client.get("/case", params={"hole": "9", "ball": ground.fairway(), **LIFTED})
    placing = client.get(link(first.text, said("rulings.ruling.more")))
    assert placing.context["place"] is None, "the ball may lie elsewhere by now"
    listed = client.get(link(placing.text, said("rulings.ball.without_place")))
    address = dict(parse_qsl(urlsplit(str(listed.url)).query))
    second = client.get("/case", params={**address, **IMPROVED})
    assert second.context["sheet"].kind == "ruling"

    asked = client.get(link(second.text, said("rulings.ruling.together", count="2")))
    assert asked.context["question"].fact == "intervening_event_1"
    known = [("intervening_event_1", "yes"), ("ball_settled_1", "no")]
    both = client.get("/together", params=[*asked.context["hidden"], *known])

    assert both.context["view"].totals == {Who.PLAYER: 3}
    assert "three penalty strokes" in both.text


@pytest.mark.parametrize(
    ("day", "fact", "answer", "strokes"),
    [
        ("2025-06-21", "intervening_event_1", "yes", 3),
        ("2025-06-21", "intervening_event_1", "no", 2),
        ("2021-05-01", "acts_related_1", "no", 3),
        ("2021-05-01", "acts_related_1", "yes", 2),
    ],
)
def test_each_edition_asks_its_own_question(
    client: TestClient, day: str, fact: str, answer: str, strokes: int
) -> None:
    """2023: was there an intervening event? 2019: are the acts related? Until it is answered nothing is added up."""
    query = {**numbered(LIFTED, IMPROVED), "on": day, "ball_settled_1": "yes"}
    if fact == "acts_related_1":
        query["intervening_event_1"] = "no"
    asked = client.get("/api/situation", params=query).json()
    assert asked["combined"]["question"]["fact"] == fact
    assert asked["total_strokes"] == {}

    told = client.get("/api/situation", params={**query, fact: answer}).json()
    assert told["marram"] == 1
    assert [one["result"]["kind"] for one in told["incidents"]] == ["ruling", "ruling"]
    assert told["total_strokes"] == {"player": strokes}


def test_match_play_has_no_total_of_strokes(client: TestClient) -> None:
    """In match play penalties are not added up into strokes: loss of hole is said as such."""
    query = {**numbered(LIFTED, IMPROVED), "form": "match_play", "intervening_event_1": "yes"}
    told = client.get("/api/situation", params=query).json()

    assert told["total_strokes"] == {}
    assert any("oss of hole" in one for one in told["combined"]["penalties"])


@pytest.mark.parametrize(("form", "counted"), [("stroke_play", True), ("match_play", False)])
def test_strokes_are_asked_for_only_while_they_count(client: TestClient, form: str, counted: bool) -> None:
    """Once the hole of a match is lost no stroke counts on it (Rule 1.3c(2)), and none is asked for."""
    query = {**numbered(LIFTED, IMPROVED), "form": form, "intervening_event_1": "yes", "ball_settled_1": "no"}
    page = client.get("/together", params=query).text

    assert ('id="strokes-before"' in page) is counted


def test_relief_and_corrections_are_told_with_their_incident(client: TestClient) -> None:
    """What relief costs comes on top and is said; each correction names its incident and its deadline."""
    page = client.get("/together", params={**numbered(LIFTED, UNPLAYABLE), "ball_settled_1": "no"})
    view = page.context["view"]

    assert view.totals == {Who.PLAYER: 1}
    assert list(view.parts[1].relief_costs) == ["one penalty stroke"]
    assert "if relief is taken in incident 2" in page.text
    assert {tuple(numbers) for numbers in view.corrections.values()} == {(1,), (2,)}
    assert "Before making a stroke" in page.text


def test_a_provisional_ball_that_must_be_played_is_in_the_total(client: TestClient) -> None:
    """Its stroke is no choice: it stands in the total, and not once more on top (Rule 18.3c(2))."""
    out = {"what": "provisional_ball", "original_ball": "out_of_bounds"}
    page = client.get("/together", params=numbered(out, IMPROVED))

    assert page.context["view"].totals == {Who.PLAYER: 3}
    assert page.context["view"].on_top == []


def test_an_earlier_incident_s_word_on_the_ball_is_not_lost(client: TestClient) -> None:
    """A ball lifted has to go back although the later breach leaves the ball alone (Rule 9.4b, 14.2), unless it was."""
    query = {**numbered(LIFTED, IMPROVED), "intervening_event_1": "no"}
    asked = client.get("/api/situation", params=query).json()
    assert asked["combined"]["question"]["fact"] == "ball_settled_1"

    page = client.get("/together", params={**query, "ball_settled_1": "no"})
    assert "eplace the ball" in page.context["view"].headline
    assert list(page.context["view"].corrections.values()) == [[1]]

    done = client.get("/api/situation", params={**query, "ball_settled_1": "yes"}).json()
    assert "eplace the ball" not in done["combined"]["headline"]
    assert done["corrections"] == []


def test_a_question_between_incidents_is_answered_once(client: TestClient) -> None:
    """Whatever lies between incidents is kept as such, so that its page does not ask it again (Rule 6.3c)."""
    wrong_ball = {
        "what": "wrong_ball_played", "ball_struck": "wrong", "wrong_ball_moving_in_water": "no",
        "wrong_ball_corrected": "no", "next_hole_started": "no",
    }  # fmt: skip
    query = numbered(wrong_ball, LIFTED)
    asked = client.get("/together", params=query)
    assert asked.context["question"].fact == "earlier_mistake_1"

    ruled = client.get("/together", params=[*asked.context["hidden"], ("earlier_mistake_1", "same_ball")])
    assert ruled.context["view"].totals == {Who.PLAYER: 2}


def test_nothing_is_combined_while_an_incident_is_open(client: TestClient) -> None:
    """An open incident leads back to its question; a total is not given."""
    page = client.get("/together", params=numbered(LIFTED, {"what": "ground_altered"}))

    assert page.context["view"].sheet is None
    assert said("rulings.together.not_all") in page.text
    goes_on = client.get(link(page.text, said("rulings.together.go_on")))
    assert goes_on.context["question"].fact == "altered_place"
    assert goes_on.context["case"].number == 2


def test_an_incident_can_be_changed_and_removed(client: TestClient) -> None:
    """Opening the first keeps the others; removing it leaves the second, on a page of its own, without numbers."""
    page = client.get("/together", params={**numbered(LIFTED, IMPROVED), "intervening_event_1": "yes"})

    opened = client.get(link(page.text, "Open"))
    assert opened.context["case"].what == LIFTED["what"]
    assert [one.what for one in opened.context["case"].kept.values()] == [IMPROVED["what"]]
    assert opened.context["case"].between == {"intervening_event_1": "yes"}

    left = client.get(link(page.text, "Remove"))
    assert left.context["case"].what == IMPROVED["what"]
    assert "1.what" not in str(left.url)
    assert "number=" not in str(left.url)
    assert "intervening_event" not in str(left.url)


def test_what_is_known_between_incidents_follows_them() -> None:
    """Removing the second of four: only what is known between the third and fourth still holds, one place earlier."""
    known = {f"intervening_event_{gap}": answer for gap, answer in ((1, "no"), (2, "no"), (3, "yes"))}
    case = read({**numbered(LIFTED, IMPROVED, UNPLAYABLE, LIFTED), **known})

    assert without_incident(case, 2).between == {"intervening_event_2": "yes"}
    assert without_incident(case, 4).between == {"intervening_event_1": "no", "intervening_event_2": "no"}


def test_moving_between_incidents_loses_nothing() -> None:
    """To each incident and back: the same situation, with the answers about the competition shared by all."""
    case = together(read({**numbered(LIFTED, IMPROVED, UNPLAYABLE), "form_of_play": "match_play"}))

    for number in case.kept:
        there = at_incident(case, number)
        assert there.facts["form_of_play"] == "match_play"
        assert together(there) == case


def test_a_situation_ends_at_six(client: TestClient) -> None:
    """After six incidents none can be started, and a seventh is refused in the one error shape."""
    assert next_incident(read(numbered(*[LIFTED] * 5))) is not None
    assert next_incident(read(numbered(*[LIFTED] * 6))) is None

    refused = client.get("/api/situation", params=numbered(*[LIFTED] * 7))
    assert refused.status_code == 400
    assert refused.json().keys() == {"marram", "error"}
    assert "one to 6 incidents" in refused.json()["error"]["message"]


def test_a_situation_without_incidents(client: TestClient) -> None:
    """The page leads to the list of incidents; a program is told where the names are."""
    assert client.get("/together").status_code == 303
    assert client.get("/together").headers["location"].startswith("/what")
    assert client.get("/api/situation").status_code == 404
    assert "/api/incidents" in client.get("/api/situation").json()["error"]["message"]


def test_one_incident_is_a_situation_too(client: TestClient) -> None:
    """An address of a single incident, as it always was, can be asked for its total."""
    told = client.get("/api/situation", params=LIFTED).json()

    assert told["total_strokes"] == {"player": 1}
    assert told["combined"]["headline"] == told["incidents"][0]["result"]["headline"]


def test_choosing_another_incident_forgets_what_was_said_of_its_neighbours(client: TestClient) -> None:
    """What lay between the incidents was said of the one that is replaced; it is asked again."""
    page = client.get(
        "/what", params={**numbered(LIFTED), "number": "2", **IMPROVED, "intervening_event_1": "yes"}
    )
    chosen = client.get(link(page.text, "The player treats the ball as unplayable"))

    assert chosen.context["case"].between == {}
    assert chosen.context["case"].kept[1].what == LIFTED["what"]


def test_the_conditions_can_be_changed_without_losing_an_incident(client: TestClient) -> None:
    """Going to the conditions and back keeps the whole situation."""
    page = client.get("/together", params={**numbered(LIFTED, IMPROVED), "intervening_event_1": "no"})
    back = unescape(page.context["here"])
    kept = client.post(
        "/settings", data={"on": "2021-05-01", "form": "stroke_play", "back": back, "club": "1.1"}
    )
    again = client.get(kept.headers["location"])

    assert again.context["question"].fact == "acts_related_1"
    assert len(again.context["view"].parts) == 2
