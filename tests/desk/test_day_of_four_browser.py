"""A day with four officials: one away for an hour, one whose phone dies twice, the chief at a laptop; all of it is there, once."""

import socket
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect

from marram.desk.log.kept import KeptHere
from marram.desk.people.door import Door
from marram.records.verifying import verified
from marram.services.log.opinions import opinions
from tests.clubs import club
from tests.desk.offline.test_phone_killed import CASE, phone, reached, record
from tests.desk.settled import PATIENCE, settled
from tests.desk.signing_in import guarded, secret_of

pytestmark = pytest.mark.browser

PHONE = {"width": 390, "height": 844}
LAPTOP = {"width": 1280, "height": 800}
IN_THE_BOOK = "/offline#/" + CASE.removeprefix("what=").replace("&", "?", 1)


@dataclass
class Day:
    """The officials of the day by their pages."""

    kept: KeptHere
    desk: str
    chief: Any
    near: Any
    away: Any


@contextmanager
def day(chromium: Any, kept: KeptHere, desk: str) -> Iterator[Day]:
    pages = [
        chromium.new_context(base_url=desk, viewport=screen, service_workers="allow").new_page()
        for screen in (LAPTOP, PHONE, PHONE)
    ]
    first = Door(kept.records, kept.event_id).first_link()
    names = ("Ottiline Brackmere", "Jorund Saltwick", "Perpetua Dunsey")
    for page, name in zip(pages, names, strict=True):
        secret = first if name == names[0] else secret_of(kept, "referee")
        join(page, f"{desk}/join/{secret}", name)
    yield Day(kept, desk, *pages)
    for page in pages:
        page.context.close()


def join(page: Any, link: str, name: str) -> None:
    """Join by a link, by a name on the list or a new one."""
    page.goto(link)
    known = page.get_by_label(name, exact=True)
    if known.count():
        known.check()
    else:
        page.get_by_label("Your name").fill(name)
    page.get_by_role("button", name="Join").click()
    settled(page)


def hold_the_book(page: Any, desk: str) -> None:
    page.goto(f"{desk}/offline")
    expect(page.locator("#held")).not_to_be_empty(timeout=3 * PATIENCE)


def rule_and_die_twice(chromium: Any, disk: Path, desk: str) -> None:
    """Each death takes the phone's memory, not its disk."""
    for number in (1, 2):
        with phone(chromium, disk) as dying:
            dying.goto(desk + IN_THE_BOOK)
            record(dying, f"dying {number}")


def live_again(chromium: Any, disk: Path, kept: KeptHere, desk: str) -> None:
    """In reach once more: whatever the deaths took of the sign-in, the same person signs in and all that waited is sent."""
    with phone(chromium, disk) as dying:
        join(dying, f"{desk}/join/{secret_of(kept, 'referee')}", "Bente Marlow")
        dying.goto(f"{desk}/offline")
        expect(dying.locator("#waits")).to_have_text("Nothing waits on this phone.")


def rule_for_an_hour_away(here: Day) -> None:
    """Three rulings, twenty minutes apart by the phone's clock."""
    hold_the_book(here.away, here.desk)
    here.away.context.set_offline(True)
    here.away.clock.install()
    for number in (1, 2, 3):
        here.away.goto(f"{IN_THE_BOOK}&hole={number}")
        record(here.away, f"away {number}")
        here.away.clock.fast_forward("00:20:00")


def ask_and_hand_over(here: Day) -> None:
    """The near one asks and waits at the case; the chief answers; it appears over the case; the near one hands the case to the one who is away."""
    near, chief = here.near, here.chief
    chief.goto("/log")
    expect(chief.locator("#asked")).to_be_hidden()
    near.goto("/begin")
    near.locator("details.theme summary").first.click()
    near.locator("details.theme[open] button").first.click()
    settled(near)
    begun = near.url.split("begun=")[1]
    near.goto(f"/opinions/ask?hole=9&{CASE}&begun={begun}")
    near.get_by_label("What you think").fill("the edge as mapped")
    near.get_by_role("button", name="Ask the chief referee").click()
    settled(near)
    expect(chief.locator("#asked")).to_have_text(
        "A second opinion is asked for: Jorund Saltwick"
    )  # at whatever page
    near.goto(f"/case?hole=9&{CASE}&begun={begun}")
    expect(near.locator(".begun")).to_contain_text("Second opinion asked")
    chief.goto("/opinions")
    chief.get_by_role("button", name="Rule it so").click()
    expect(near.locator(".begun")).to_contain_text("Rule it so")  # where the near one waits, without a tap
    expect(chief.locator("#asked")).to_be_hidden()
    near.goto("/open-cases")
    near.get_by_text("Hand over, set aside").click()
    near.get_by_label("Who goes on with it").select_option(label="Perpetua Dunsey")
    near.get_by_role("button", name="Hand over").click()
    settled(near)


def stop_and_resume(here: Day) -> None:
    """Whoever is at a page hears it there; whoever comes back finds it."""
    near, away, chief = here.near, here.away, here.chief
    near.goto(f"/case?hole=9&{CASE}")
    chief.goto("/suspension")
    chief.get_by_role("button", name="Stop at once").click()
    for page in (near, chief):
        expect(page.locator("#play")).to_contain_text("stop at once")
    away.context.set_offline(False)
    away.goto("/offline")
    expect(away.locator("#waits")).to_have_text("Nothing waits on this phone.")
    away.goto("/open-cases")
    expect(away.locator(".card")).to_contain_text("by Perpetua Dunsey")
    expect(away.locator("#play")).to_contain_text("stop at once")
    chief.get_by_label("Play goes on at").fill("23:59")
    chief.get_by_role("button", name="Tell everybody").click()
    for page in (near, away, chief):
        expect(page.locator("#play")).to_have_text("Play goes on at 23:59")


def test_a_day_of_four_officials_ends_whole(chromium: Any, tmp_path: Path) -> None:
    """What was recorded is in the log once, in the order of its phone, the chain whole; an opinion is answered, a case handed
    over, and all hear that play is stopped and goes on, whatever page they are at."""
    with club(tmp_path) as kept:
        with socket.create_server(("127.0.0.1", 0)) as free:
            port = free.getsockname()[1]
        app, desk, disk = guarded(kept), f"http://127.0.0.1:{port}", tmp_path / "disk"
        with reached(app, port), phone(chromium, disk) as dying:
            join(dying, f"{desk}/join/{secret_of(kept, 'referee')}", "Bente Marlow")
            hold_the_book(dying, desk)
        rule_and_die_twice(chromium, disk, desk)
        with reached(app, port), day(chromium, kept, desk) as here:
            rule_for_an_hour_away(here)
            ask_and_hand_over(here)
            stop_and_resume(here)
            live_again(chromium, disk, kept, desk)
        rulings = [one for one in kept.log.entries(kept.event_id) if one.kind == "ruling"]
        notes = [part.content.decode() for one in rulings for part in kept.log.parts(one.id) if part]
        (opinion,) = opinions(kept.log, kept.event_id)

        assert sorted(notes) == ["away 1", "away 2", "away 3", "dying 1", "dying 2"]
        assert [one for one in notes if one < "b"] == ["away 1", "away 2", "away 3"]
        assert [one for one in notes if one > "b"] == ["dying 1", "dying 2"]
        assert [one.content["agrees"] for one in opinion.answers] == [True]
        assert all(one.broken is None for one in verified(kept.records))
