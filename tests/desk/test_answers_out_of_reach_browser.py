"""An answer given while the desk is out of reach is kept, said to be, and sent once when the desk is back."""

import re

import pytest
from playwright.sync_api import BrowserContext, expect

from tests.desk.answers import answers, asked
from tests.desk.settled import settled

pytestmark = pytest.mark.browser

CASE = ("club_damaged", "after_damage", "repaired")
"""An incident, its first question and an answer to it that leads to another question."""


def test_an_answer_given_out_of_reach_is_kept_and_sent(phone: BrowserContext) -> None:
    """The page says that the desk is out of reach; once it is back the answer arrives without another tap."""
    page, (what, fact, value) = phone.new_page(), CASE
    page.goto(asked((what, fact, value)))
    phone.set_offline(True)
    page.locator(f"button[name={fact}][value={value}]").click()
    alert = page.locator("#reach[role=alert]")
    expect(alert).to_contain_text("cannot be reached")
    expect(page.locator("button.taken")).to_have_count(1)
    assert answers(page) == {}

    phone.set_offline(False)
    page.wait_for_url(re.compile(f"[?&]{fact}={value}"))
    expect(alert).to_be_empty()
    assert answers(page) == {fact: value}


def test_another_answer_out_of_reach_replaces_the_kept_one(phone: BrowserContext) -> None:
    """Only the last choice is sent."""
    page, case = phone.new_page(), CASE
    page.goto(asked(case))
    phone.set_offline(True)
    page.locator(f"button[name={case[1]}][value={case[2]}]").click()
    expect(page.get_by_role("alert")).to_contain_text("cannot be reached")
    other = page.locator(f"button[name={case[1]}]:not([value={case[2]}])").first
    value = other.get_attribute("value")
    other.click()
    expect(other).to_have_class(re.compile("taken"))
    phone.set_offline(False)
    page.wait_for_url(re.compile(f"[?&]{case[1]}="))

    assert answers(page) == {case[1]: value}


def test_an_answer_given_out_of_reach_survives_a_reload_and_arrives_once(phone: BrowserContext) -> None:
    """Whoever loads the page anew before the answer could be sent finds it sent, once, when the desk is back."""
    page, (what, fact, value) = phone.new_page(), CASE
    page.goto(asked((what, fact, value)))
    settled(page)
    answer = re.compile(f"[?&]{fact}={value}")
    page.route(answer, lambda route: route.abort("internetdisconnected"))
    page.locator(f"button[name={fact}][value={value}]").click()
    expect(page.locator("#reach")).to_contain_text("cannot be reached")
    page.unroute(answer)

    sent: list[str] = []
    page.on("request", lambda request: answer.search(request.url) and sent.append(request.url))
    page.reload()
    page.wait_for_url(answer)
    settled(page)
    assert answers(page) == {fact: value}
    page.reload()
    settled(page)
    assert len(sent) == 2  # the answer, and the page it led to loaded anew
    assert answers(page) == {fact: value}
