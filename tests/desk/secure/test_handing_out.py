"""The club's authority handed to phones before they trust it, and shown on the chief referee's desk."""

import re
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes

from marram.desk.app import create_app
from marram.desk.people.door import Door
from marram.desk.secure.authority import Secured, secured
from marram.desk.secure.handing_out import handed_out, handing_out
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.signing_in import signed_in

HERE = "192.168.7.4"


@pytest.fixture
def held(tmp_path: Path) -> Secured:
    return secured(tmp_path / "authority", [HERE], "Quillsand Links")


@pytest.fixture
def phone(held: Secured) -> TestClient:
    page = handing_out(held.authority, handed_out(held, HERE, 8123))
    return TestClient(page, base_url=f"http://{HERE}:8124", follow_redirects=False)


def test_a_phone_gets_the_authority_and_what_to_compare(phone: TestClient, held: Secured) -> None:
    """The file is the authority whose fingerprint is compared elsewhere; the page leads to the desk by its secure address."""
    page, file = phone.get("/"), phone.get("/authority.crt")
    given = x509.load_der_x509_certificate(file.content)

    assert given.fingerprint(hashes.SHA256()).hex(":").upper() == held.fingerprint
    assert held.fingerprint[:8] not in page.text
    assert f'href="https://{HERE}:8123/"' in page.text
    assert file.headers["content-type"] == "application/x-x509-ca-cert"
    assert "Ending it" in page.text


def test_nothing_else_is_handed_out(phone: TestClient) -> None:
    """Any other address leads to the page, no key is in reach, nothing can be sent, and no page of others holds it."""
    assert all(
        phone.get(path).headers["location"] == "/"
        for path in ("/authority.key", "/../authority.key", "/log", "/api/course", "/people")
    )
    assert "PRIVATE KEY" not in phone.get("/").text + phone.get("/authority.crt").text
    assert "frame-ancestors 'none'" in phone.get("/").headers["content-security-policy"]
    assert phone.post("/").status_code == 405


def test_the_chief_referee_has_the_code_and_the_fingerprint(tmp_path: Path, held: Secured) -> None:
    """On the page of who is signed in; on a desk without a secure connection nothing of it."""
    with club(tmp_path) as kept:
        told = handed_out(held, HERE, 8123)
        door = Door(kept.records, kept.event_id)
        page, bare = (
            signed_in(create_app(kept_here=kept, door=door, handed_out=one), kept, "chief_referee")
            .get("/people")
            .text
            for one in (told, None)
        )

    assert held.fingerprint.replace(":", ": ") in page
    assert told.address == f"http://{HERE}:8124/"
    assert told.address in page
    assert re.search(r'<img src="data:image/svg[^"]*" alt="The address of the certificate', page)
    assert "fingerprint" not in bare
