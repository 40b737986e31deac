"""How soon a tap on a phone shows the next question: on the desk, and in the book the phone holds, without a network.

Taps go through real questions of many incidents, in Chromium at 390 px with touch; each figure is from the finger going
down to the next question standing in the page, and to its being painted. Run ``python bench/taps_on_phone.py``; it needs Chromium.
"""

import argparse
import os
import statistics
import sys
from pathlib import Path

from playwright.sync_api import Browser, Page, expect, sync_playwright

sys.path.insert(0, str(Path(__file__).parent))
from desk_weight import CHROMIUM, PHONE, SLOWED, served, slowed

INCIDENTS = (
    "ball_in_penalty_area",
    "unplayable_ball",
    "ball_not_found",
    "ball_lifted_by_player",
    "match_score_wrong",
    "ball_doubtful",
    "club_damaged",
    "embedded_ball",
    "sand_touched",
    "wrong_ball_played",
)
UNDER = "on=2025-06-21&form=stroke_play&sides=individual&local=none"
WATCH = """
  addEventListener("pointerdown", () => {
    window.downAt = performance.now(); window.shownAt = window.nextAt = window.paintedAt = null;
    delete document.documentElement.dataset.painted;
    const asked = document.querySelector("#panel h1")?.textContent;
    new MutationObserver((all, seen) => {
      if (window.shownAt === null && document.querySelector(".taken, .fresh")) window.shownAt = performance.now();
      const now = document.querySelector("#panel h1")?.textContent;
      if (!now || now === asked) return;
      window.nextAt = performance.now(); window.shownAt ??= window.nextAt; seen.disconnect();
      requestAnimationFrame(() => setTimeout(() => {
        window.paintedAt = performance.now(); document.documentElement.dataset.painted = "yes"; }));
    }).observe(document.documentElement, { subtree: true, childList: true, attributes: true, attributeFilter: ["class"] });
  }, true);
"""
"""Notes when the finger goes down, when the page first shows it, when the next question is there, and when it is painted."""

Times = tuple[float, float, float]


def tapped(page: Page, answer: str) -> Times:
    """Tap an answer; return milliseconds until it is shown as taken, until the next page is there, and is painted."""
    page.locator(answer).last.tap()
    page.locator("html[data-painted]").wait_for()
    down, *then = page.evaluate("[window.downAt, window.shownAt, window.nextAt, window.paintedAt]")
    first, next_page, painted = (one - down for one in then)
    return first, next_page, painted


def walked(page: Page, start: str, answer: str, busy: str) -> list[Times]:
    """Answer an incident's questions to its ruling; return the times of each tap."""
    page.goto(start)
    found: list[Times] = []
    while True:
        expect(page.locator(busy)).to_have_count(0, timeout=60_000)
        page.locator("#panel h1").first.wait_for()
        if not page.locator(answer).count():
            return found
        found.append(tapped(page, answer))


def on_phone(browser: Browser, address: str, slow: bool, count: int) -> list[Times]:
    """Return the times of taps in the book on the phone, cut off from every network and loaded anew there."""
    context = browser.new_context(base_url=address, **PHONE)
    page = context.new_page()
    page.add_init_script(WATCH)
    page.goto("/offline")
    page.locator("#held:not(:empty)").wait_for(timeout=240_000)
    context.set_offline(True)
    page.reload()
    page.locator("#panel:not([aria-busy])").wait_for(timeout=120_000)
    if slow:
        context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": SLOWED})
    found: list[Times] = []
    for turn in range(count):
        if len(found) >= count:
            break
        start = f"/offline#/{INCIDENTS[turn % len(INCIDENTS)]}"
        found += walked(page, start, ".answers a", "#panel[aria-busy], #panel.fresh, .held")
    context.close()
    return found


def at_desk(browser: Browser, address: str, network: str | None, slow: bool, count: int) -> list[Times]:
    """Return the times of taps at the desk."""
    context = browser.new_context(base_url=address, **PHONE)
    page = context.new_page()
    page.add_init_script(WATCH)
    session = slowed(context, page, network, SLOWED if slow else 1.0)
    if slow and network is None:
        session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWED})
    found: list[Times] = []
    for turn in range(count):
        if len(found) >= count:
            break
        start = f"/case?what={INCIDENTS[turn % len(INCIDENTS)]}&{UNDER}"
        found += walked(page, start, "button.answer", "#panel[aria-busy], #panel.fresh, #panel.still, .held")
    context.close()
    return found


def told(name: str, found: list[Times]) -> None:
    """Print the median and the 95th percentile of each time."""
    said = []
    for what, values in zip(("shown", "next question", "painted"), zip(*found, strict=True), strict=True):
        p95 = statistics.quantiles(values, n=20)[-1]
        said.append(f"{what} {statistics.median(values):5.0f} ms p50 {p95:5.0f} ms p95")
    print(f"{name}: {len(found)} taps; {'; '.join(said)}; load {os.getloadavg()[0]:.1f}", flush=True)


def main() -> None:
    """Print the figures."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--taps", type=int, default=120, help="taps measured of each kind, at least")
    given = parser.parse_args()
    with served() as address, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox", "--disable-gpu"])
        at_desk(
            browser, address, None, slow=False, count=len(INCIDENTS)
        )  # the trees grow as they are first walked
        for slow in (False, True):
            processor = f"processor {SLOWED:g} times slower" if slow else "this processor"
            told(f"without a network, {processor}", on_phone(browser, address, slow, given.taps))
            told(f"on the desk, {processor}", at_desk(browser, address, None, slow, given.taps))
        told(
            "on the desk, fast 3G, processor slow", at_desk(browser, address, "fast 3G", slow=True, count=20)
        )
        browser.close()


if __name__ == "__main__":
    main()
