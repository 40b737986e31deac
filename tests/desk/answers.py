"""A case asked about by its incident and first question, and what the address of a page says is answered."""

import re
from urllib.parse import parse_qsl, urlsplit

from playwright.sync_api import Page

from marram.services.cases.conditions import KEYS
from tests.desk.settled import settled

Case = tuple[str, str, str]
"""An incident, its first question, the answer to be given."""


def asked(case: Case) -> str:
    """Return the address of its first question."""
    return f"/case?what={case[0]}&on=2025-06-21&form=stroke_play&sides=individual&local=none"


def answers(page: Page) -> dict[str, str]:
    """Return what the address says is answered, beside the conditions."""
    pairs = dict(parse_qsl(urlsplit(page.url).query))
    return {key: value for key, value in pairs.items() if key not in {"what", *KEYS}}


def answer(page: Page, words: str) -> None:
    """Give the answer that begins with these words, once the page takes taps everywhere: a page just come takes none."""
    settled(page)
    page.get_by_role("button", name=re.compile(f"^{words}", re.IGNORECASE)).first.click()
