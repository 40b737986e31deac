"""Whose act it was, which ball it was about, and the strokes until the next: told on the page of a story, by links and a form.

What they must come to: Rules of Golf 2019 and 2023, Rule 18.3c(3) (strokes with a provisional ball that is abandoned
do not count) and Rule 1.3c (a penalty is that of the player in breach).
"""

import re
from html import unescape

import pytest

from marram.words.texts import text as said
from tests.desk.asking import TestClient
from tests.desk.test_situation import LIFTED, UNPLAYABLE, numbered

CONDITIONS = {"on": "2024-06-01", "form": "stroke_play", "local": "none"}


def folds(html: str) -> list[str]:
    return re.findall(r'<details class="fold told-of-act">.*?</details>', html, re.DOTALL)


def links(html: str) -> dict[str, str]:
    found = re.findall(r'<a [^>]*href="([^"]*)"[^>]*>(.*?)</a>', html, re.DOTALL)
    return {unescape(words): unescape(url) for url, words in found}


def totals(html: str) -> str:
    found = re.search(r'<dl class="told totals">.*?</dl>', html, re.DOTALL)
    assert found, "the page has no total"
    return " ".join(unescape(re.sub(r"<[^>]*>", " ", found[0])).split())


@pytest.fixture
def page(client: TestClient) -> str:
    """The page of a story of two acts, each with a penalty or relief."""
    return client.get("/together", params={**numbered(LIFTED, UNPLAYABLE), **CONDITIONS}).text


def test_each_act_has_its_own_controls(page: str) -> None:
    """Every act of a story can be given to another player or to a ball with one link, without JavaScript."""
    found = folds(page)
    assert len(found) == 2
    for number, fold in enumerate(found, start=1):
        to = list(links(fold).values())
        assert len(to) == 7
        assert any(f"by_{number}=another_player" in url for url in to)
        for ball in ("in_play", "provisional", "second_provisional", "other_players"):
            assert any(f"about_ball_{number}={ball}" in url for url in to), ball
        assert f'name="strokes_{number}"' in fold


def test_an_act_given_to_another_player_costs_that_player(client: TestClient) -> None:
    """The stroke for a ball lifted without right falls on the other player once told so, and back again."""
    page = client.get("/together", params={**numbered(LIFTED), **CONDITIONS}).text
    assert totals(page).startswith("Total one penalty stroke")
    theirs = client.get(links(folds(page)[0])["Another player's; in a match the opponent's"]).text
    assert "Total for" in totals(theirs)
    assert "other player" in totals(theirs)
    back = client.get(links(folds(theirs)[0])["The player's"]).text
    assert totals(back) == totals(page)


def test_what_was_told_stands_with_its_act(client: TestClient, page: str) -> None:
    """What was told of an act is said beside it and marked in the fold; it can be taken back."""
    url = next(url for words, url in links(folds(page)[0]).items() if words.startswith("A ball of another"))
    told = client.get(url).text
    assert '<p class="soft">A ball of another player</p>' in told
    marked = re.findall(r'aria-current="true">(.*?)</a>', folds(told)[0])
    assert [unescape(one) for one in marked] == ["The player's", "A ball of another player"]
    again = client.get(links(folds(told)[0])["Not told: asked if it matters"]).text
    assert '<p class="soft">A ball of another player</p>' not in again


def test_strokes_until_the_next_act_are_counted(client: TestClient) -> None:
    """Two strokes made after the first act, one before it, and one of penalty: the next is the fifth."""
    acts = {**numbered(LIFTED), **CONDITIONS, "strokes_before": "1"}
    page = client.get("/together", params={**acts, "strokes_1": "2"})
    assert page.status_code == 200
    assert "fifth" in page.text
    assert "2 strokes made until the next incident" in page.text
    empty = client.get("/together", params={**acts, "strokes_1": ""})
    assert empty.status_code == 200
    assert said("rulings.act.strokes") in empty.text
