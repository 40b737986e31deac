"""After a ruling with options one tap tells which was taken; the total and the next stroke stand in the headline.

What it comes to: Rules of Golf 2019 and 2023, Rules 17.1d, 14.7a and 1.3c(4), last sentence (strokes for relief come
in addition to any other penalty).
"""

import re
from html import unescape

import pytest

from marram.words.texts import text as said
from tests.desk.asking import TestClient

CONDITIONS = {"on": "2024-06-01", "form": "stroke_play", "local": "none"}
IN_THE_BURN = {
    "what": "ball_in_penalty_area",
    "found_in_penalty_area": "yes",
    "last_stroke_from_penalty_area": "no",
    "penalty_area_colour": "red",
}
WRONG_PLACE = {
    "what": "played_from_wrong_place",
    "not_a_wrong_place": "neither",
    "serious_breach": "no",
    "balls_after_wrong_place": "not_corrected",
}


def heading(html: str) -> str:
    found = re.search(r"<h1[^>]*>(.*?)</h1>", html, re.DOTALL)
    assert found
    return unescape(found[1])


def choices(html: str) -> dict[str, str]:
    part = re.search(r'<details class="fold chosen\b.*?</details>', html, re.DOTALL)
    return (
        {
            unescape(words): unescape(url)
            for url, words in re.findall(r'<a [^>]*href="([^"]*)"[^>]*>(.*?)</a>', part[0])
        }
        if part
        else {}
    )


@pytest.fixture
def ruling(client: TestClient) -> str:
    """The page of a ruling with options."""
    return client.get("/case", params=IN_THE_BURN | CONDITIONS).text


def test_every_option_is_one_tap(ruling: str) -> None:
    """Each option, the ball played as it lies, and nothing yet are links, so they work without JavaScript."""
    found = choices(ruling)
    assert len(found) == 5, found
    assert "Took lateral relief" in found
    assert any(words.startswith("Nothing yet") for words in found)
    assert all(url.startswith("/together?") for url in found.values())


def test_the_total_stands_in_the_headline(client: TestClient, ruling: str) -> None:
    """Lateral relief taken: one penalty stroke, and nothing is asked any more."""
    page = client.get(choices(ruling)["Took lateral relief"])
    assert page.status_code == 200
    assert heading(page.text).startswith("One penalty stroke: play the ball put into play in taking relief.")
    assert not choices(page.text)


def test_nothing_yet_leaves_the_choice_open(client: TestClient, ruling: str) -> None:
    """Nothing taken: no stroke is spent, the options are still offered, and what was told is marked."""
    url = next(url for words, url in choices(ruling).items() if words.startswith("Nothing yet"))
    page = client.get(url).text
    assert len(choices(page)) == 5
    section = re.search(r'<details class="fold chosen\b.*?</details>', page, re.DOTALL)
    assert section
    marked = re.findall(r'aria-current="true">(.*?)</a>', section[0])
    assert [unescape(words)[:11] for words in marked] == ["Nothing yet"]


def test_the_next_act_goes_on_from_there(client: TestClient, ruling: str) -> None:
    """What happened next keeps the option: relief, then a wrong place, are three strokes; the sixth comes next."""
    page = client.get(choices(ruling)["Took lateral relief"]).text
    onwards = re.search(rf'href="([^"]*)">{re.escape(said("rulings.together.next"))}', page)
    assert onwards
    assert "option_taken_1=lateral" in unescape(onwards[1])
    numbered = {f"1.{key}": value for key, value in IN_THE_BURN.items()}
    second = {f"2.{key}": value for key, value in WRONG_PLACE.items()}
    told = {"option_taken_1": "lateral", "strokes_before": "1"}
    together = client.get("/together", params={**numbered, **second, **told, **CONDITIONS}).text
    assert heading(together) == (
        "Three penalty strokes: play on from where the ball came to rest. "
        "With the strokes told, the next one on this hole is the sixth."
    )
    assert 'name="strokes_before"' in together


def test_the_api_counts_too(client: TestClient) -> None:
    """The same address in JSON holds the strokes; the case it returns can be sent back."""
    numbered = {f"1.{key}": value for key, value in IN_THE_BURN.items()}
    told = {"option_taken_1": "lateral", "strokes_before": "1", "strokes_1": "1"}
    document = client.get("/api/situation", params={**numbered, **told, **CONDITIONS}).json()
    assert document["count"] == {
        "penalty_strokes": 1,
        "total": 1,
        "relief_to_come": 0,
        "made": 1,
        "before": 1,
        "next_stroke": 4,
        "stroke_missing": None,
        "strokes_untold": None,
        "gaps_untold": [],
    }
    assert client.post("/api/situation", json=document["case"]).json()["count"] == document["count"]


@pytest.mark.parametrize("told", ["-1", "two", "1.5", "1000"])
def test_strokes_that_are_no_number_are_refused(client: TestClient, told: str) -> None:
    """A number of strokes that cannot be is told with what to give; nothing is guessed."""
    numbered = {f"1.{key}": value for key, value in IN_THE_BURN.items()}
    page = client.get("/together", params={**numbered, **CONDITIONS, "strokes_before": told})
    assert page.status_code == 400
    assert "strokes_before" in page.text
