"""The page that hands out the club's authority speaks the reader's language, but for the name of the authority."""

from pathlib import Path

from marram.desk.secure.authority import secured
from marram.desk.secure.handing_out import handed_out, handing_out
from tests.desk.asking import TestClient
from tests.words.made_up import speaking
from tests.words.unmarked import seen_in, unmarked


def test_the_page_that_hands_out_the_authority_says_nothing_of_its_own(tmp_path: Path, locales: Path) -> None:
    """Every word but the name that the authority was given when it was made."""
    held = secured(tmp_path / "authority", ["desk.local"], "Quillsand Links")
    phone = TestClient(handing_out(held.authority, handed_out(held, "desk.local", 8123)))

    with speaking(locales):
        said = unmarked(seen_in(phone.get("/").text), {"Quillsand Links (marram, local network only)"})
    assert said == set()
