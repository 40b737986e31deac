"""What the rules of axe find on a page that is serious: axe-core (Deque, MPL 2.0), bundled with the test tool."""

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

SERIOUS = frozenset({"serious", "critical"})
"""The impacts, as axe-core names them, that no page may have."""


def serious(page: Page, *, unfolded: bool = False) -> list[tuple[str, str, str]]:
    """Return each serious finding: its rule, the first mark-up it concerns, and what axe says of it.

    Args:
        page: the page as it stands.
        unfolded: whether its folds are opened first.
    """
    if unfolded:
        page.evaluate("document.querySelectorAll('details').forEach(one => one.open = true)")
    return [
        (one["id"], one["nodes"][0]["html"][:160], one["nodes"][0]["failureSummary"][:300])
        for one in Axe().run(page).response["violations"]
        if one["impact"] in SERIOUS
    ]
