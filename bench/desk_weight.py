"""What the desk weighs and how soon it answers, on a phone with a slow processor and a slow network.

The networks are those of Chromium's developer tools ("Fast 3G", "Slow 3G": rates and latencies with the factors that
the tools apply), the processor is slowed down four times. Run ``python bench/desk_weight.py``; it needs Chromium.
"""

import argparse
import os
import re
import socket
import statistics
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from urllib.request import urlopen

import uvicorn
from playwright.sync_api import Browser, BrowserContext, CDPSession, Page, sync_playwright

from marram.desk.app import create_app

CHROMIUM = os.environ.get("CHROMIUM", "/usr/bin/chromium")
NETWORKS = {
    "fast 3G": {"latency": 562.5, "downloadThroughput": 1.44e6 / 8, "uploadThroughput": 675e3 / 8},
    "slow 3G": {"latency": 2000.0, "downloadThroughput": 400e3 / 8, "uploadThroughput": 400e3 / 8},
}
"""Latency in milliseconds, rates in bytes a second."""
SLOWED = 4.0
"""How many times slower than this machine the processor is."""
SCREENS = {"start": "/", "hole": "/ball?hole=9", "what": "/what?hole=9"}
"""The first screens measured, each with nothing in the phone's cache."""
CASE = "/case?what=ball_in_penalty_area&on=2025-06-21&form=stroke_play&sides=individual&local=none"
PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "device_scale_factor": 2}
WATCH = """
  window.readyAt = null; window.takenAt = null; window.tappedAt = null;
  new MutationObserver((all) => {
    if (window.readyAt === null && document.querySelector("[data-ready=yes]")) window.readyAt = performance.now();
    if (window.takenAt === null && document.querySelector(".taken")) window.takenAt = performance.now();
  }).observe(document, { subtree: true, childList: true, attributes: true });
  addEventListener("pointerdown", () => (window.tappedAt = performance.now()), true);
"""


@contextmanager
def served() -> Iterator[str]:
    """Yield the address of a desk on the demonstration course."""
    listening = socket.create_server(("127.0.0.1", 0))
    server = uvicorn.Server(uvicorn.Config(create_app(), log_level="error", lifespan="off", ws="none"))
    thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]}, daemon=True)
    thread.start()
    try:
        yield f"http://127.0.0.1:{listening.getsockname()[1]}"
    finally:
        server.should_exit = True
        thread.join(timeout=20)


def slowed(context: BrowserContext, page: Page, network: str | None, rate: float = SLOWED) -> CDPSession:
    """Slow a page down, and return the session that tells its traffic."""
    session = context.new_cdp_session(page)
    session.send("Network.enable")
    if network:
        session.send("Network.emulateNetworkConditions", {"offline": False, **NETWORKS[network]})
        session.send("Emulation.setCPUThrottlingRate", {"rate": rate})
    return session


def first_screen(
    browser: Browser, address: str, path: str, network: str, rate: float
) -> tuple[float, int, int, int, int]:
    """Return seconds until the map is ready; requests and bytes until then, and until the page is quiet."""
    context = browser.new_context(base_url=address, **PHONE)
    page = context.new_page()
    page.add_init_script(WATCH)
    told: list[int] = []
    session = slowed(context, page, network, rate)
    session.on("Network.loadingFinished", lambda event: told.append(round(event["encodedDataLength"])))
    page.goto(path, wait_until="commit", timeout=120_000)
    page.locator("[data-ready=yes]").wait_for(state="attached", timeout=120_000)
    requests, weight = len(told), sum(told)
    page.wait_for_load_state("networkidle", timeout=120_000)
    ready = page.evaluate("window.readyAt")
    found = ready / 1000, requests, weight, len(told), sum(told)
    context.close()
    return found


def taps(browser: Browser, address: str, network: str | None, count: int) -> tuple[list[float], list[float]]:
    """Return milliseconds from a tap until it is shown as taken, and until the next question stands there."""
    context = browser.new_context(base_url=address, **PHONE)
    page = context.new_page()
    page.add_init_script(WATCH)
    slowed(context, page, network)
    taken, answered = [], []
    for _ in range(count):
        page.goto(CASE)
        page.locator("#map[data-ready=yes]").wait_for(state="attached")
        page.wait_for_timeout(1200)
        asked = page.locator("#heading").inner_text()
        page.evaluate("window.takenAt = null")
        page.evaluate(
            """(asked) => { window.nextAt = null; new MutationObserver((all, seen) => {
               const now = document.getElementById("heading");
               if (now && now.textContent.trim() !== asked.trim()) {
                 window.nextAt = performance.now(); seen.disconnect(); document.body.dataset.nextQuestion = "yes"; }
             }).observe(document.body, { subtree: true, childList: true }); }""",
            asked,
        )
        page.locator("button.answer").first.tap()
        page.locator("body[data-next-question=yes]").wait_for(state="attached", timeout=60_000)
        tapped, first, then = page.evaluate("[window.tappedAt, window.takenAt, window.nextAt]")
        taken.append(first - tapped)
        answered.append(then - tapped)
    context.close()
    return taken, answered


def spread(values: list[float]) -> str:
    """Return the median and the 95th percentile, in milliseconds."""
    return f"{statistics.median(values):6.0f} ms p50 {statistics.quantiles(values, n=20)[-1]:6.0f} ms p95"


def main() -> None:
    """Print the figures."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--runs", type=int, default=3, help="runs of each first screen; the median is told")
    parser.add_argument("--taps", type=int, default=20, help="taps measured")
    parser.add_argument(
        "--slowed", type=float, default=SLOWED, help="how many times slower the processor is made"
    )
    given = parser.parse_args()
    with served() as address, sync_playwright() as playwright:
        for path in SCREENS.values():  # what the desk makes once, for whoever comes first
            page = urlopen(address + path).read().decode()  # noqa: S310 - our own address
            for part in re.findall(r'/api/course/[^"?]+\?on=[0-9-]+', page):
                urlopen(address + part).read()  # noqa: S310 - the same
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox", "--disable-gpu"])
        for network in NETWORKS:
            for name, path in SCREENS.items():
                runs = sorted(
                    first_screen(browser, address, path, network, given.slowed) for _ in range(given.runs)
                )
                seconds, requests, weight, every, whole = runs[len(runs) // 2]
                print(
                    f"{network}, {name:5}: map ready in {seconds:5.2f} s; {requests} requests, {weight / 1000:.0f} kB"
                    f" until then, {every} and {whole / 1000:.0f} kB in all"
                )
        for network in (None, *NETWORKS):
            taken, answered = taps(browser, address, network, given.taps if network is None else 3)
            print(f"{network or 'this machine'}: tap shown {spread(taken)}; next question {spread(answered)}")
        browser.close()


if __name__ == "__main__":
    main()
