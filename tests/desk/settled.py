"""Waiting as a person waits: until the page has taken in what was done, before anything on it is read once.

``expect`` waits for one thing to be so. A box, a count, a list of what is too small, the element with the focus are
read once, from a page that may be about to be drawn anew. So a test first expects the outcome of what it did, then
calls ``settled(page)``, then measures. A tap (``.tap()``) arrives after the call has returned: expect its outcome.
"""

from playwright.sync_api import Page, expect

PATIENCE = 60_000
"""Milliseconds that anything waited for may take on a machine with much else to do; only a failing test waits so long."""

AT_WORK = (
    "[aria-busy=true]",  # the page says so itself: an answer of the desk is awaited
    ".htmx-request, .htmx-swapping, .htmx-settling, .htmx-added",  # one part is being put in another's place
    ".leaflet-pan-anim, .leaflet-zoom-anim",  # the map is moving
    "#panel.still, #panel.fresh, #incidents.new",  # some tap is not taken yet
    "html:not(.no-js) [inert]",  # a part whose content is awaited
)
"""What of a page tells that it is about to change, or not taken over yet."""

TWO_FRAMES = "() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))"
"""In one frame a part learns its new size, in the next what depends on it is drawn."""


def settled(page: Page) -> None:
    """Wait until the page is loaded, awaits no answer, puts nothing in another's place and moves no map."""
    page.wait_for_load_state()
    expect(page.locator(", ".join(AT_WORK))).to_have_count(0)


def drawn(page: Page) -> None:
    """Wait until the page has settled and is painted, so that places on it hold."""
    settled(page)
    page.evaluate(TWO_FRAMES)
