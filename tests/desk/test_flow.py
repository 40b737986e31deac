"""The way of a case through the pages, as HTML and template context; no browser."""

import re
from html import unescape

import pytest

from marram.words.texts import text as said
from tests.desk.asking import TestClient
from tests.desk.places import Ground

CONDITIONS = "on=2025-06-21&form=stroke_play&sides=individual&local=none"


def links(html: str) -> list[str]:
    return [unescape(one) for one in re.findall(r'href="([^"]+)"', html)]


def test_the_first_page_offers_every_hole(client: TestClient) -> None:
    """Eighteen holes, each a link that keeps the conditions."""
    page = client.get("/")

    assert page.status_code == 200
    found = [link for link in links(page.text) if link.startswith("/ball?hole=")]
    assert len(found) == 18
    assert all("on=2025-06-21" in link and "local=E-5" in link for link in found)


def test_a_tapped_place_becomes_facts_from_the_map(client: TestClient, ground: Ground) -> None:
    """The page says which area of the course the ball lies in, and how far the hole is."""
    page = client.get(f"/ball?hole=9&ball={ground.in_the_burn()}")

    assert said("rulings.ball.lies", where="in a penalty area") in page.text
    assert "red penalty area: The Burn" in page.text
    assert page.context["place"].facts["penalty_area_colour"] == "red"
    assert page.context["place"].metres == pytest.approx(250, abs=5)


def test_the_hole_is_found_from_the_place(client: TestClient, ground: Ground) -> None:
    """A tap on the whole course needs no hole chosen before: the nearest line of play decides."""
    page = client.get(f"/ball?ball={ground.fairway(hole=14, along=200)}")

    assert page.context["hole"].number == 14


def test_likely_themes_stand_open_first(client: TestClient, ground: Ground) -> None:
    """For a ball in a penalty area the list begins with what is likely there, then penalty areas, open; nothing twice."""
    likely, first, *others = client.get(f"/what?hole=9&ball={ground.in_the_burn()}").context["themes"]
    assert likely.incidents[0].name == "ball_in_penalty_area"
    assert likely.open
    every = [one.name for theme in (likely, first, *others) for one in theme.incidents]
    assert len(every) == len(set(every))

    assert first.title == "Penalty areas"
    assert first.open


def test_search_finds_by_word_and_by_rule_number(client: TestClient) -> None:
    """The likeliest comes first: by words of the title, theme or keywords, or by the Rule."""
    by_word = client.get("/what?q=provisional holed").context["themes"]
    by_rule = client.get("/what?q=16.3").context["themes"]

    assert next(one.name for theme in by_word for one in theme.incidents) == "provisional_ball_holed"
    assert "embedded_ball" in [one.name for theme in by_rule for one in theme.incidents]
    assert all(one.rule.startswith("16.3") for theme in by_rule for one in theme.incidents)


def test_a_search_without_a_hit_says_so(client: TestClient) -> None:
    """An empty list is explained, and what was typed stays in the box."""
    page = client.get("/what?q=zeppelin")

    assert "Nothing found for “zeppelin”" in page.text
    assert 'value="zeppelin"' in page.text


def test_only_what_the_map_does_not_know_is_asked(client: TestClient, ground: Ground) -> None:
    """The area and the colour come from the map, so the first question is another one."""
    without = client.get(
        "/case?what=ball_in_penalty_area&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )
    with_map = client.get(
        f"/case?hole=9&ball={ground.in_the_burn()}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )

    assert without.context["question"].fact == "penalty_area_colour"
    assert with_map.context["sheet"].kind == "ruling"
    told = {one.fact: one.from_map for one in with_map.context["sheet"].why}
    assert told["penalty_area_colour"] is True
    assert told["found_in_penalty_area"] is False


def test_the_answer_of_the_official_outweighs_the_map(client: TestClient, ground: Ground) -> None:
    """Yellow stakes on the ground beat a red area on the map: lateral relief goes (Rule 17.1d(3) is for red)."""
    base = (
        f"/case?hole=9&ball={ground.in_the_burn()}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )
    red = [one.words.kind for one in client.get(base).context["options"]]
    yellow = [one.words.kind for one in client.get(base + "&penalty_area_colour=yellow").context["options"]]

    assert red == ["stroke_and_distance", "back_on_the_line", "lateral"]
    assert yellow == ["stroke_and_distance", "back_on_the_line"]


def test_a_question_shows_help_who_decides_and_big_answers(client: TestClient) -> None:
    """The question page is a form that works without JavaScript and keeps the whole case."""
    page = client.get("/case?what=ball_moved_by_player")
    question = page.context["question"]

    assert question.help in unescape(page.text)
    assert question.decided_by in page.text
    assert '<form class="answers" method="get" action="/case">' in page.text
    assert '<input type="hidden" name="what" value="ball_moved_by_player">' in page.text
    for answer in question.answers:
        assert f'name="{question.fact}" value="{answer.token}"' in page.text


def test_answers_lead_to_a_ruling_by_following_the_form(client: TestClient) -> None:
    """Sending the form of each question with its first answer ends in a ruling; every step is an address."""
    page = client.get("/case?what=ball_moved_by_player")
    steps = 0
    while page.context["sheet"].kind == "need_facts":
        question = page.context["question"]
        fields = [*page.context["hidden"], (question.fact, question.answers[0].token)]
        page = client.get("/case", params=fields)
        steps += 1
        assert steps < 20
    assert page.context["sheet"].kind == "ruling"
    assert page.context["sheet"].headline in unescape(page.text)
    assert "the referee and the Committee decide" in page.text


def test_an_answer_can_be_changed(client: TestClient) -> None:
    """Asked again, a fact shows its answer, and the rest of the case stays."""
    page = client.get("/case?what=ball_moved_by_player&cause_known=no&ask=cause_known")

    assert page.context["question"].fact == "cause_known"
    assert re.search(r'name="cause_known" value="no" aria-current="true"', page.text)
    assert "cause_known" not in [key for key, _ in page.context["hidden"]]


def test_what_is_settled_already_is_said(client: TestClient) -> None:
    """Where no answer changes the cost any more, the page says it before the answer, with what relief costs that is up to the player."""
    page = client.get("/case?what=ball_in_penalty_area&found_in_penalty_area=yes")

    assert page.context["sheet"].settled[0].startswith("One penalty stroke if relief is taken")
    assert said("rulings.question.settled") in page.text


def test_a_number_is_asked_with_its_unit(client: TestClient) -> None:
    """A question about minutes is a number field, with the unit as its label."""
    page = client.get("/case?what=ball_found_in_time&ask=search_minutes")

    assert 'type="number"' in page.text
    assert '<label for="number">Minutes</label>' in page.text


def test_a_case_without_an_incident_goes_to_the_list(client: TestClient) -> None:
    """The address of a case that says nothing of what happened leads to the list, keeping the hole."""
    answer = client.get("/case?hole=7")

    assert answer.status_code == 303
    assert answer.headers["location"].startswith("/what?hole=7")


@pytest.mark.parametrize("path", ["/", "/ball?hole=1", "/what", "/case?what=unplayable_ball", "/settings"])
def test_no_page_asks_for_anything_from_elsewhere(client: TestClient, path: str) -> None:
    """Styles, scripts, fonts and pictures come from the desk itself."""
    page = client.get(path).text

    assert not re.findall(r'(?:src|href|action)="(?:https?:)?//', page)


def test_all_of_the_case_is_in_the_address(client: TestClient, ground: Ground) -> None:
    """The same address gives the same page to somebody without any cookie: nothing is kept elsewhere."""
    address = (
        f"/case?hole=9&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no&on=2022-05-01&form=match_play&local=none"
    )
    first = client.get(address)
    client.cookies.set("marram_conditions", "on=2025-01-01&form=stroke_play")

    assert client.get(address).text == first.text


def test_a_no_play_zone_under_the_ball_is_never_missed(client: TestClient, ground: Ground) -> None:
    """Whatever incident was chosen, the page points at the no play zone that the map shows (Rule 2.4)."""
    place = f"hole=15&ball={ground.in_feature('Orchid ground')}"
    other = client.get(f"/case?{place}&what=unplayable_ball").text
    zone = client.get(f"/case?{place}&what=no_play_zone")

    assert said("shell.here.no_play_zone") in other
    assert said("shell.here.no_play_zone") not in zone.text
    assert zone.context["sheet"].why[0].answer == "the ball lies in the zone"
    assert zone.context["sheet"].why[0].from_map


def test_a_ball_on_another_holes_green_is_never_missed(client: TestClient, ground: Ground) -> None:
    """Whatever incident was chosen, the page points at the wrong green, and knows how it interferes (Rule 13.1f)."""
    green = ground.course.hole(1).green
    middle = green.geometry.representative_point()
    place = f"hole=9&ball={ground.at((middle.x, middle.y))}"
    other = client.get(f"/case?{place}&what=unplayable_ball").text
    chosen = client.get(
        f"/case?{place}&what=wrong_green&local=none&handed=right&played_despite_wrong_green=no"
    )

    assert said("shell.here.wrong_green") in other
    assert "relief must be taken." not in chosen.text
    assert chosen.context["sheet"].why[0].answer == "the ball touches it"
    assert any(one.drawn for one in chosen.context["options"])


def test_a_ball_in_ground_under_repair_is_known_to_be_interfered_with(
    client: TestClient, ground: Ground
) -> None:
    """The map tells that the ball lies in the condition, so it is not asked (Rule 16.1a(1))."""
    page = client.get(
        f"/case?hole=10&ball={ground.in_feature('Reseeded fairway')}&what=abnormal_course_condition"
    )

    assert page.context["question"].fact != "interference"
    assert ("interference", True) in [(one.fact, one.from_map) for one in page.context["sheet"].why]


def test_a_matter_of_judgement_says_who_decides_and_what_to_weigh(client: TestClient) -> None:
    """No ruling is made up: the page names who decides, what counts, and what it can end in."""
    page = client.get(
        "/case?what=scorecard_fault&card_fault=marker_knew_score_wrong&conduct_finding=not_decided"
    )

    assert page.context["sheet"].kind == "judgement"
    assert page.context["judge"] == "the Committee"
    assert said("rulings.ruling.weigh") in page.text
    assert said("rulings.ruling.ends") in page.text
    assert all(outcome in unescape(page.text) for outcome in page.context["sheet"].outcomes)


def test_a_spot_that_was_shown_is_not_asked_for(client: TestClient, ground: Ground) -> None:
    """An unplayable ball shown on the map has a known spot (Rule 19.2); it is said to come from the map, and can be changed."""
    shown = f"/case?hole=9&ball={ground.fairway()}&what=unplayable_ball&{CONDITIONS}"
    asked = client.get(shown).context["question"]
    assert asked.fact == "last_stroke_from_penalty_area"
    ruling = client.get(f"{shown}&last_stroke_from_penalty_area=no").context["sheet"]
    assert {one.fact: one.from_map for one in ruling.why}["spot_of_ball_known"]
    unknown = client.get(f"{shown}&spot_of_ball_known=no&last_stroke_from_penalty_area=no").context["sheet"]
    assert [one.kind for one in unknown.options] == ["stroke_and_distance"]
    unseen = client.get(f"/case?hole=9&what=unplayable_ball&area_of_ball=general_area&{CONDITIONS}")
    assert unseen.context["question"].fact == "spot_of_ball_known"


def test_a_green_of_another_hole_is_called_a_wrong_green(client: TestClient, ground: Ground) -> None:
    """A ball on the green of the third while the ninth is played lies on a wrong green, which is in the general area (Rule 13.1f)."""
    third = ground.course.hole(3).location
    page = client.get(f"/ball?hole=9&ball={ground.at((third.x, third.y))}&{CONDITIONS}").context["place"]
    assert "wrong green" in page.sentence
    assert "wrong green" in page.words
    own = client.get(f"/ball?hole=3&ball={ground.at((third.x, third.y))}&{CONDITIONS}").context["place"]
    assert "wrong" not in own.sentence + own.words


def test_what_the_conditions_settle_is_folded_behind_what_was_answered(
    client: TestClient, ground: Ground
) -> None:
    """A Local Rule in force stands open among the reasons; the day and a Local Rule that is not in force do not."""
    page = client.get(
        f"/case?hole=9&ball={ground.fairway()}&what=unplayable_ball&last_stroke_from_penalty_area=no"
        "&on=2025-06-21&form=stroke_play&sides=individual&local=E-1"
    )
    case, why = page.context["case"], page.context["sheet"].why
    answered, held = case.parted(why)
    assert {"local_rule_e_1", "area_of_ball", "spot_of_ball_known"} <= {one.fact for one in answered}
    assert "date_of_play" in {one.fact for one in held}
    assert sorted(map(id, answered + held)) == sorted(map(id, why))
