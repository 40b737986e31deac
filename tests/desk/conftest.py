"""A desk on the demonstration course: in-process for pages, on a free port for the browser."""

import os
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from fastapi import FastAPI

from marram.course.model import Course
from marram.desk.app import create_app
from tests.desk.asking import TestClient
from tests.desk.places import Ground
from tests.desk.serving import served
from tests.desk.settled import PATIENCE

CHROMIUM = Path("/usr/bin/chromium")
QUIET = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"]


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Refuse a test that drives Chromium and is not marked so: it would run beside all the others."""
    for item in items:
        if "chromium" in getattr(item, "fixturenames", ()) and not item.get_closest_marker("browser"):
            raise pytest.UsageError(f"{item.nodeid} drives a browser: mark it with pytest.mark.browser.")


@pytest.fixture(scope="session")
def app() -> FastAPI:
    return create_app()


@pytest.fixture
def client(app: FastAPI) -> TestClient:
    return TestClient(app, follow_redirects=False)


@pytest.fixture(scope="session")
def course(app: FastAPI) -> Course:
    return app.state.workplace.course


@pytest.fixture(scope="session")
def ground(course: Course) -> Ground:
    return Ground(course)


@pytest.fixture(scope="session")
def address(app: FastAPI) -> Iterator[str]:
    """The address of a running desk."""
    with served(app) as running:
        yield running


@pytest.fixture
def phone(chromium: Any, address: str) -> Iterator[Any]:
    """A phone at the desk."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, has_touch=True, base_url=address)
    yield context
    context.close()


@pytest.fixture
def editing(tmp_path: Path) -> FastAPI:
    """A desk of its own, whose map can be edited."""
    return create_app(maps=tmp_path / "maps")


@pytest.fixture
def editor(editing: FastAPI, chromium: Any) -> Iterator[Any]:
    """A phone at a desk whose map can be edited, on the editor's page. Any error of a script fails the test."""
    faults: list[str] = []
    with served(editing) as running:
        context = chromium.new_context(
            viewport={"width": 390, "height": 844},
            has_touch=True,
            base_url=running,
            geolocation={"latitude": 55.0041, "longitude": 4.00015, "accuracy": 6.2},
            permissions=["geolocation"],
        )
        page = context.new_page()
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.goto("/map")
        page.locator("#editor-map[data-ready=yes]").wait_for(state="attached")
        yield page
        context.close()
    assert not faults


@pytest.fixture(scope="session")
def chromium() -> Iterator[object]:
    """Chromium as the system has it. Without it browser tests are skipped, but never where CI runs them."""
    from playwright.sync_api import expect, sync_playwright

    expect.set_options(timeout=PATIENCE)

    if not CHROMIUM.exists():
        if os.environ.get("CI") == "true":
            pytest.fail(f"{CHROMIUM} is missing; CI must install the chromium package.")
        pytest.skip(f"{CHROMIUM} is missing; install the chromium package to run browser tests.")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=str(CHROMIUM), args=QUIET)
        hurried = browser.new_context

        def new_context(**how: Any) -> Any:
            how.setdefault(
                "service_workers", "block"
            )  # each test meets the desk itself, not what a phone kept
            how.setdefault("locale", "en-GB")  # times and days follow the place of the browser
            context = hurried(**how)
            context.set_default_timeout(PATIENCE)
            return context

        browser.new_context = new_context
        yield browser
        browser.close()
