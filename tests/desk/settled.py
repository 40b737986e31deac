"""Waiting as a person waits: until the page has taken in what was done, before anything on it is measured.

``expect`` waits for one thing to be so. What is read once - a box, a text, a count, a value of the address - is read
from a page that may be about to be drawn anew. Between an action and such a reading stands ``settled(page)``.
"""

from playwright.sync_api import Page, expect

AT_WORK = (
    "[aria-busy=true]",  # the page says so itself: an answer of the desk is awaited
    ".htmx-request, .htmx-swapping, .htmx-settling, .htmx-added",  # one part is being put in another's place
    ".leaflet-pan-anim, .leaflet-zoom-anim",  # the map is moving
    "#panel.still",  # taps are not taken yet
)
"""What of a page tells that it is about to change, or not taken over yet."""


def settled(page: Page) -> None:
    """Wait until the page is loaded, awaits no answer, puts nothing in another's place and moves no map."""
    page.wait_for_load_state()
    expect(page.locator(", ".join(AT_WORK))).to_have_count(0)
