"""Every page by the rules of axe, bundled with the test tool: nothing serious or critical."""

import re

import pytest
from playwright.sync_api import Browser, expect

from tests.desk.axe import serious
from tests.desk.places import Ground

pytestmark = pytest.mark.browser

WIDTHS = [390, 1280]


def _in_the_burn() -> str:
    return "1.what=ball_in_penalty_area&1.found_in_penalty_area=yes&1.last_stroke_from_penalty_area=no&1.penalty_area_colour=red"


def pages(ground: Ground) -> dict[str, str]:
    burn = f"hole=9&ball={ground.in_the_burn()}"
    case = f"{burn}&what=ball_in_penalty_area"
    done = f"{case}&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    first = (
        "1.what=ball_lifted_by_player&1.area_of_ball=general_area&1.handled_as=lifted&1.handling_allowed=no"
    )
    second = "&".join(f"2.{one}" for one in done.split("&") if not one.startswith("hole"))
    third = (
        "3.what=ball_lifted_by_player&3.area_of_ball=general_area&3.handled_as=lifted&3.handling_allowed=no"
    )
    situation = f"hole=9&{first}&{second}&{third}"
    return {
        "the next ball": f"/ball?hole=9&{first.replace('1.what', f'1.ball={ground.fairway()}&1.what')}",
        "the phone's place": f"/ball?hole=9&ball={ground.in_the_burn(0)};u=6",
        "the next incident": f"/case?hole=9&{first}&number=2&what=ground_altered",
        "between incidents": f"/together?{situation}",
        "together": f"/together?{situation}&intervening_event_1=yes&intervening_event_2=yes",
        "together, one open": f"/together?{first}&2.what=ground_altered",
        "an option taken": f"/together?hole=9&{_in_the_burn()}&option_taken_1=nothing_yet&strokes_before=1",
        "the course": "/",
        "a hole": "/ball?hole=9",
        "the ball placed": f"/ball?{burn}",
        "in doubt": f"/ball?hole=9&ball={ground.in_the_burn(0)}",
        "the list": f"/what?{burn}",
        "nothing found": "/what?q=zeppelin",
        "a question": f"/case?{case}",
        "an answer again": f"/case?{done}&ask=found_in_penalty_area",
        "a number": "/case?what=ball_found_in_time&ask=search_minutes",
        "a ruling": f"/case?{done}",
        "a ruling explained": f"/explained?{done}",
        "a ruling drawn": f"/case?{done}&entry={ground.in_the_burn(0)}&previous={ground.fairway(along=230)}",
        "the conditions": "/settings",
        "a quiz": "/quiz?seed=7&number=2",
        "a quiz answered": "/quiz?seed=7&number=2&answer=1",
        "the book": "/book",
        "a Rule of the book": "/book/rule/14",
        "what changed": "/book/changes",
        "what changed since 2019": "/book/changes/since",
        "one change": "/book/changes/since/back_on_the_line",
        "a Local Rule adopted": "/book/changes/local-rule/E-5",
        "a provision": "/book/provision/9.3-Exception-2",
        "a situation": "/book/situation/ball_near_boundary?form=stroke_play&all_of_ball_out_of_bounds=no",
        "a fault": "/case?what=nonsense",
    }


@pytest.mark.parametrize("width", WIDTHS)
def test_no_page_has_a_serious_finding(chromium: Browser, address: str, ground: Ground, width: int) -> None:
    """axe finds nothing serious or critical on any page, opened folds included."""
    context = chromium.new_context(viewport={"width": width, "height": 850}, base_url=address)
    page = context.new_page()
    for name, path in pages(ground).items():
        page.goto(path)
        if page.locator("#map").count():
            expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
        assert not serious(page, unfolded=True), name
    context.close()


def test_each_page_has_one_main_heading_and_a_title_of_its_own(
    chromium: Browser, address: str, ground: Ground
) -> None:
    """A screen reader can tell the pages apart by title, and finds one first heading on each."""
    context = chromium.new_context(base_url=address)
    page = context.new_page()
    titles = {}
    for name, path in pages(ground).items():
        page.goto(path)
        assert page.locator("h1").count() == 1, name
        titles[name] = page.title()
        assert re.match(r".+ · marram$", titles[name]), titles[name]
    assert titles["a hole"] != titles["the list"] != titles["a question"] != titles["a ruling"]
    context.close()


def test_the_map_reads_out_no_bare_numbers_and_letters(
    chromium: Browser, address: str, ground: Ground
) -> None:
    """Its marks are for the eye: a listener would hear P, A, B, 1, 2, 3 … before the ruling; holes and options are named beside it."""
    case = f"hole=9&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&previous={ground.fairway(along=230)}"
    facts = (
        "found_in_penalty_area=yes&last_stroke_from_penalty_area=no&what=ball_in_penalty_area&handed=right"
    )
    page = chromium.new_page()
    page.goto(f"{address}/case?{case}&{facts}")
    seen = page.locator("#map .hole-number, #map .option-letter, #map .mark-previous")
    expect(page.locator("#map .option-letter").first).to_be_attached()
    heard = [line.strip() for line in page.locator("#map").aria_snapshot().splitlines()]
    expect(page.get_by_role("article", name=re.compile("^Option A"))).to_be_attached()

    assert {"9", "P", "A"} <= set(seen.all_inner_texts())
    said = [line for line in heard if line.startswith("- text:")]
    assert all(re.fullmatch(r"- text: \d+ k?m", line) for line in said), said  # the scale
    page.close()
