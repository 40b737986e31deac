"""An event of 312 players over three rounds, played through the web pages in Chromium by two scorers at once.

The list of entries with more names than places, the ballot, a withdrawal with the reserve who takes the place, three draws (the
third by score after the cut), every card by keyboard, an hour's suspension, a tie for the first place, the close, a
disqualification after it, every sheet. At the end the board is compared with totals that this script added up itself.

    python bench/event_in_browser.py [--players 312] [--shots FOLDER]
"""

import argparse
import asyncio
import os
import re
import sys
import tempfile
from collections.abc import Awaitable, Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from random import Random
from time import perf_counter

sys.path.insert(0, str(Path(__file__).parents[1]))

from playwright.async_api import Browser, Page, async_playwright

from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from tests.desk.serving import served
from tests.desk.settled import AT_WORK
from tests.services.scoring import PARS, scoring

EVENT = {
    "name": "Three Days at the Links",
    "club": "Quillsand Links",
    "round": "First",
    "played_on": "2025-06-20",
    "rounds": [
        {"name": "Second", "played_on": "2025-06-21"},
        {"name": "Third", "played_on": "2025-06-22"},
    ],
    "form_of_play": "stroke_play",
    "sides": "individual",
    "scores": ["gross"],
    "local_rules": [],
    "results_public": True,
    "ties": {"first_place": ["play_off"], "other_places": ["countback", "shared"]},
}
FIRST = [
    "Åse",
    "Bjørn",
    "Çelik",
    "D'Arcy",
    "Élodie",
    "Fíona",
    "Gülay",
    "Håkon",
    "Íris",
    "Jörg",
    "Kató",
    "Łucja",
    "Mñr",
    "Nuñez",
    "Øyvind",
    "Pál",
]
MORE, SCORERS, SEED = 6, 2, "20250614"
CHROMIUM = os.environ.get("CHROMIUM", "/usr/bin/chromium")
PLACES = 70
"""How many play on after the cut, and ties."""
_random = Random(312)


Shot = Callable[[str], Awaitable[None]]


class Played:
    """What is played, as this script knows it: by name the scores of each round, and who is out."""

    def __init__(self, players: int) -> None:
        self.names = [f"{FIRST[at % len(FIRST)]} Strand-Holt {at:03}" for at in range(players + MORE)]
        self.totals: dict[str, list[int]] = {}
        self.taken: list[float] = []

    def round(self, name: str) -> list[int]:
        """Return the scores of a round by lot, and count them."""
        scores = [max(2, par + _random.choice((-1, 0, 0, 0, 1, 1))) for par in PARS]
        self.totals.setdefault(name, []).append(sum(scores))
        return scores

    def of_total(self, name: str, total: int) -> list[int]:
        """Return scores of a round of this total, and count them."""
        scores = [total // 18 + (at < total % 18) for at in range(18)]
        self.totals[name].append(total)
        return scores


@contextmanager
def step(name: str) -> Iterator[None]:
    """Print how long a step took."""
    begun = perf_counter()
    yield
    print(f"{name:<66}{perf_counter() - begun:9.1f} s", flush=True)


async def settled(page: Page) -> None:
    """Wait until the page stands as it stays, as a person waits (``tests/desk/settled.py``)."""
    await page.wait_for_load_state()
    await page.wait_for_function("busy => !document.querySelector(busy)", arg=", ".join(AT_WORK))


async def new_page(browser: Browser, address: str) -> Page:
    """Return a page of a device of its own."""
    page = await (await browser.new_context(base_url=address)).new_page()
    page.set_default_timeout(120_000)
    return page


async def enter(page: Page, played: Played, folder: Path, players: int) -> None:
    """Take the list of entries, cast lots for places, withdraw one after the draw."""
    rows = "".join(f"{name};{_random.randint(0, 120) / 10};Club {name[-1]}\n" for name in played.names)
    path = folder / "entries.csv"
    path.write_bytes(f"Spieler;Vorgabe;Verein\n{rows}".replace(".", ",").encode("utf-8"))
    await page.goto("/entries")
    await page.locator("input[type=file]").set_input_files(path)
    async with page.expect_navigation():
        await page.locator("form[action='/entries/read'] button").click()
    async with page.expect_navigation():
        await page.locator("[formaction='/entries/take']").click()
    ballot = page.locator("form[action='/entries/ballot']")
    await page.locator("details", has=ballot).locator("summary").click()
    await ballot.locator("[name=seed]").fill(SEED)
    await ballot.locator("[name=places]").fill(str(players))
    async with page.expect_navigation():
        await ballot.locator("button").click()


async def withdraw(page: Page) -> str:
    """Withdraw the first of the field; the first reserve takes the place."""
    await page.goto("/entries")
    form = page.locator("form[action='/entries/withdraw']")
    await page.locator("details", has=form).locator("summary").click()
    name = await form.locator("option").nth(1).inner_text()
    await form.locator("[name=person]").select_option(label=name)
    async with page.expect_navigation():
        await form.locator("button").click()
    return name


async def draw(page: Page, number: int, order: str) -> None:
    """Draw a round from two tees, keep it and publish it."""
    await page.goto(f"/draw?round={number}")
    form = page.locator("form[action='/draw']")
    for name, value in (
        ("seed", f"{SEED}{number}"),
        ("first", "06:00"),
        ("minutes", "10"),
        ("tees", "1, 10"),
    ):
        await form.locator(f"[name={name}]").fill(value)
    await form.locator("[name=order]").select_option(order)
    async with page.expect_navigation():
        await form.locator("button").click()
    for action in ("/draw/keep", "/published"):
        async with page.expect_navigation():
            await page.locator(f"form[action='{action}'] button").click()


async def card(page: Page, played: Played, number: int, name: str, scores: list[int]) -> None:
    """Enter one card by keyboard: the name found, 36 figures, certified, returned."""
    begun = perf_counter()
    if not await page.locator("#q").count():
        await page.goto(f"/cards?round={number}")
    await settled(page)
    await page.locator("#q").fill(name)
    async with page.expect_navigation():
        await page.locator("#q").press("Enter")
    await settled(page)
    first = page.locator("input[data-by=player]").first
    await first.focus()
    await page.keyboard.type("".join(map(str, scores * 2)))
    async with page.expect_navigation():
        await page.locator("#save").press("Enter")
    await settled(page)
    for by in ("player", "marker"):
        await page.locator(f"[name={by}_certified][value=true]").check()
    async with page.expect_navigation():
        await page.locator("form.return").first.locator("button").click()
    await settled(page)
    assert "done=" in page.url, (name, page.url)  # the card is in, with nothing open
    played.taken.append(perf_counter() - begun)


async def whole_round(browser: Browser, address: str, played: Played, number: int, names: list[str]) -> None:
    """Enter the cards of a round, two scorers at once."""
    waiting = [(name, played.round(name)) for name in names]

    async def scorer() -> None:
        page = await new_page(browser, address)
        await page.goto(f"/cards?round={number}")
        while waiting:
            await card(page, played, number, *waiting.pop())
        await page.context.close()

    await asyncio.gather(*(scorer() for _ in range(SCORERS)))


async def suspend(page: Page) -> None:
    """Stop play and let it go on."""
    await page.goto("/suspension")
    async with page.expect_navigation():
        await page.locator("button[name=how][value=immediate]").click()
    await page.goto("/suspension")
    form = page.locator("form[action='/suspension/resume']")
    await form.locator("[name=at]").fill("23:30")
    async with page.expect_navigation():
        await form.locator("button").click()


async def end(page: Page, number: int, name: str, how: str, citation: str = "") -> None:
    """End a round without a card that counts."""
    await page.goto(f"/cards?round={number}&q={name.rsplit(maxsplit=1)[-1]}")
    if await page.locator("#q").count():
        await page.get_by_role("link", name=re.compile(name)).click()
    form = page.locator("form[action$='/end']")
    await page.locator("details", has=form).locator("summary").click()
    await form.locator("[name=how]").select_option(how)
    await form.locator("[name=citation]").fill(citation)
    async with page.expect_navigation():
        await form.locator("button").click()


async def on_cards(page: Page, number: int) -> list[str]:
    """Return who has a card in a round."""
    await page.goto(f"/cards?round={number}")
    return [one.strip() for one in await page.locator(".group-of-cards .who").all_inner_texts()]


async def board(page: Page) -> list[tuple[str, str]]:
    """Return place and name of everybody on the public board, in its order."""
    await page.goto("/board")
    rows = await page.locator(".board tbody tr").evaluate_all(
        "rows => rows.map(row => [row.cells[0].innerText.trim(), row.querySelector('th').childNodes[0].textContent.trim()])"
    )
    return [(place, name) for place, name in rows]


async def sheets(page: Page) -> int:
    """Fetch every sheet of every round, as a page and on both papers."""
    await page.goto("/papers")
    links = await page.locator(".sheets a").evaluate_all(
        "links => links.map(one => one.getAttribute('href'))"
    )
    for link in links:
        answer = await page.request.get(link, timeout=120_000)
        assert answer.ok, (link, answer.status)
    return len(links)


async def close(page: Page) -> None:
    """Close the competition."""
    await page.goto("/results/close")
    async with page.expect_navigation():
        await page.locator("form[action='/results/close'] button").click()


async def disqualify_after(page: Page, name: str) -> None:
    """Reopen the result, as Rule 20.2e allows it for a player who knew, disqualify, and close again."""
    await page.goto("/results/close")
    async with page.expect_navigation():
        await page.locator("[name=change][value=breach]").click()
    async with page.expect_navigation():
        await page.locator("button.answer[value=known_disqualification]").click()
    await page.locator("[name=note]").fill("Knew before the close of a penalty left out.")
    async with page.expect_navigation():
        await page.locator("[name=do]").click()
    await end(page, 3, name, "disqualified", "1.3b(1)")
    await close(page)


async def before_play(page: Page, folder: Path, played: Played, players: int, shot: Shot) -> list[str]:
    """Take the entries, draw two rounds, replace one who withdraws; return the field."""
    with step(f"{players + MORE} entries, the ballot"):
        await enter(page, played, folder, players)
        await shot("entries")
    with step("two draws of the whole field, kept and published"):
        await draw(page, 1, "seed")
        await draw(page, 2, "seed")
        await shot("draw")
    with step("one withdrawn, the reserve in the place"):
        out = await withdraw(page)
    field = await on_cards(page, 1)
    assert len(field) == players
    assert out not in field
    return field


async def last_round(
    browser: Browser, page: Page, played: Played, through: list[str], shot: Shot
) -> list[str]:
    """Draw the third round by score and play it so that two tie; return them, and then one who is third (others may tie)."""
    totals = {name: sum(played.totals[name]) for name in through}
    await draw(page, 3, "score")
    drawn = set(await on_cards(page, 3))
    assert drawn == set(through), drawn ^ set(through)
    await shot("cards")
    one, other = sorted(through, key=totals.__getitem__)[:2]
    others = [name for name in through if name not in (one, other)]
    address = page.url.partition("/cards")[0]
    await whole_round(browser, address, played, 3, others)
    third = min(others, key=lambda name: sum(played.totals[name]))
    best = sum(played.totals[third]) - 3
    scorer = await new_page(browser, address)
    for name in (one, other):
        await card(scorer, played, 3, name, played.of_total(name, best - totals[name]))
    return [one, other, third]


async def end_of_event(page: Page, played: Played, first: list[str], through: list[str], shot: Shot) -> None:
    """Decide the tie, close, disqualify the third after it, and compare the board with the totals of this script."""
    one, other, third = first
    await page.goto("/results")
    await shot("tie")
    fields = page.locator("form[action='/results/tie'] input[name^=order-]")
    assert await fields.count() == 2
    for at in range(2):
        await fields.nth(at).fill(str(2 - at))
    async with page.expect_navigation():
        await page.locator("form[action='/results/tie'] button").click()
    await close(page)
    before = await board(page)
    cheat = before[2][1]
    assert sum(played.totals[cheat]) == sum(played.totals[third]), (cheat, third)
    await disqualify_after(page, cheat)
    after = await board(page)
    await shot("board")
    assert {before[0][1], before[1][1]} == {one, other}
    assert cheat not in [name for place, name in after if place]
    sums = [sum(played.totals[name]) for place, name in after if place and len(played.totals[name]) == 3]
    assert sums == sorted(sums)
    assert len(sums) == len(through) - 1


async def play(browser: Browser, address: str, folder: Path, players: int, shots: Path | None) -> None:
    """Play the event."""
    played = Played(players)
    page = await new_page(browser, address)

    async def shot(name: str) -> None:
        for width in (390, 1280) if shots else ():
            await page.set_viewport_size({"width": width, "height": 900})
            await page.screenshot(path=Path(shots or "") / f"{name}_{width}.png", full_page=width == 1280)

    field = await before_play(page, folder, played, players, shot)
    gone = field[5]
    with step(f"round 1, {SCORERS} scorers at once"):
        await whole_round(browser, address, played, 1, field)
    with step("an hour's suspension"):
        await suspend(page)
    with step("round 2, one withdrawn"):
        await end(page, 2, gone, "withdrawn")
        await whole_round(browser, address, played, 2, [one for one in field if one != gone])
    totals = {name: sum(some) for name, some in played.totals.items() if name != gone}
    line = sorted(totals.values())[min(PLACES, players // 4) - 1]
    through = [name for name in field if totals.get(name, line + 1) <= line]
    with step(f"round 3: {len(through)} through the cut, drawn by score"):
        first = await last_round(browser, page, played, through, shot)
    with step("a tie for the first place, decided; the close; a disqualification"):
        await end_of_event(page, played, first, through, shot)
    with step("every sheet as a page, on A4 and on Letter"):
        count = await sheets(page)
    taken = sorted(played.taken)
    print(f"{count} sheets")
    print(
        f"a card, {SCORERS} scorers at once: p50 {taken[len(taken) // 2]:.2f} s, "
        f"p95 {taken[len(taken) * 95 // 100]:.2f} s ({len(taken)} cards)"
    )


async def main() -> None:
    asked = argparse.ArgumentParser()
    asked.add_argument("--players", type=int, default=312)
    asked.add_argument("--shots", type=Path)
    given = asked.parse_args()
    cut = {"after_round": 2, "places": min(PLACES, given.players // 4), "ties": True}
    empty = {**EVENT, "cut": cut, "players": [], "starting_times": [], "officials": []}
    with (
        tempfile.TemporaryDirectory() as name,
        scoring(Path(name), empty) as found,
        served(create_app(kept_here=keep_here(found.records))) as address,
    ):
        async with async_playwright() as tool:
            browser = await tool.chromium.launch(executable_path=CHROMIUM)
            await play(browser, address, Path(name), given.players, given.shots)
            await browser.close()


if __name__ == "__main__":
    asyncio.run(main())
