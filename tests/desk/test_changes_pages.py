"""The pages of what changed: for everybody, each change at an address that stays, drawn where there is ground."""

import re
from html import unescape

import pytest

from marram.rules.editions import EDITION_2019, EDITION_2023, as_clarified
from marram.teach.what_changed.kept import found
from tests.desk.asking import TestClient

BACK = "/book/changes/since/back_on_the_line?earlier=2019&later=2023"


def test_the_overview_leads_to_every_comparison(client: TestClient) -> None:
    """Editions, the days of clarifications, Local Rules; every address on it answers."""
    page = client.get("/book/changes").text
    links = {unescape(one) for one in re.findall(r'href="(/book/changes/[^"]+)"', page)}

    assert "/book/changes/since?earlier=2016&later=2019" in links
    assert "/book/changes/since?earlier=2024-12-31&later=2025-01-01" in links
    assert "/book/changes/local-rule/E-5" in links
    assert [one for one in sorted(links)[::9] if client.get(one).status_code != 200] == []
    assert 'href="/book/changes"' in client.get("/book").text


def test_every_change_is_listed_once_and_has_its_page(client: TestClient) -> None:
    """How it was and how it is stand in the list; the situation on its own page."""
    page = client.get("/book/changes/since?earlier=2019&later=2023").text
    days = as_clarified(EDITION_2019), as_clarified(EDITION_2023)
    for one in found(*days):
        assert page.count(f"/book/changes/since/{one.key}?") == 1

    own = client.get(BACK).text
    assert "Relief back on the line" in own
    assert "drop again" in own
    assert "play it as it lies" in own
    assert "<svg" in own


def test_for_those_who_know_the_list_is_turned_round(client: TestClient) -> None:
    """What players meet in most rounds comes last there."""
    keys = [
        re.findall(r"/book/changes/since/(\w+)\?", client.get(f"/book/changes/since?first={first}").text)
        for first in ("common", "rare")
    ]

    assert keys[0] == keys[1][::-1]
    assert keys[0][0] == "back_on_the_line"


def test_a_local_rule_is_shown_without_it_and_with_it(client: TestClient) -> None:
    """E-5 on the day of either edition; the first six places where it is met whole, the others to open."""
    page = client.get("/book/changes/local-rule/E-5").text
    assert page.count("Without the Local Rule") == 13
    assert page.count("<details") == 7
    assert client.get("/book/changes/local-rule/E-5?on=2019").status_code == 200


@pytest.mark.parametrize(
    "path",
    [
        "/book/changes/since?earlier=2024-01-01&later=2024-02-01",
        "/book/changes/since?earlier=2023&later=2019",
        "/book/changes/since?earlier=1999&later=2019",
        "/book/changes/since?earlier=soon&later=2019",
        "/book/changes/since/nonsense",
        "/book/changes/local-rule/Z-1",
        "/book/changes/local-rule/M-1?on=2019",
    ],
)
def test_what_cannot_be_told_is_said(client: TestClient, path: str) -> None:
    """No empty list, no fault without a sentence."""
    answer = client.get(path)
    assert answer.status_code == 400
    assert 'class="fault"' in answer.text or "fault" in answer.text
