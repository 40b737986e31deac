"""The club's own certificate authority: a secure connection to this machine, and to nothing else."""

import socket
import ssl
import stat
import threading
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography import x509

from marram.cli.serving import CLUB_UNKNOWN, club_in
from marram.desk.secure.authority import OF_MACHINE, RENEWED, Secured, secured
from marram.errors import InputError
from marram.records.database import opened
from marram.records.events import new_club
from marram.records.making import made

HERE = "127.0.0.2"
"""An address that is not the loopback of the desk, and needs no network of its own."""


def greeted(held: Secured, authority: Path, name: str) -> str:
    """Return what a machine says over a connection that a phone with this authority trusts."""
    told = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    told.load_cert_chain(held.certificate, held.key)
    with socket.create_server((HERE, 0)) as listening:

        def answer() -> None:
            raw, _ = listening.accept()
            try:
                with told.wrap_socket(raw, server_side=True) as connection:
                    connection.sendall(b"hello")
            except (ssl.SSLError, ConnectionError):
                pass

        thread = threading.Thread(target=answer)
        thread.start()
        phone = ssl.create_default_context(cafile=str(authority))
        try:
            with (
                socket.create_connection(listening.getsockname()) as raw,
                phone.wrap_socket(raw, server_hostname=name) as connection,
            ):
                return connection.recv(5).decode()
        finally:
            thread.join()


def test_a_phone_that_trusts_the_authority_trusts_this_machine_by_address_and_name(tmp_path: Path) -> None:
    """By each address and name it was made for, and by no other."""
    held = secured(tmp_path, [HERE, "desk.local"], "Quillsand Links")

    assert greeted(held, held.authority, HERE) == "hello"
    assert greeted(held, held.authority, "desk.local") == "hello"
    with pytest.raises(ssl.SSLCertVerificationError):
        greeted(held, held.authority, "other.local")


def test_another_authority_is_not_trusted(tmp_path: Path) -> None:
    """Each club has its own."""
    held = secured(tmp_path / "one", [HERE], "Quillsand Links")
    other = secured(tmp_path / "other", [HERE], "Quillsand Links")

    with pytest.raises(ssl.SSLCertVerificationError):
        greeted(held, other.authority, HERE)


@pytest.mark.parametrize("name", ["93.184.216.34", "example.com", "2001:db8::1", "notlocal"])
def test_it_signs_for_nothing_public(tmp_path: Path, name: str) -> None:
    """A public address or name is refused, and nothing is made."""
    with pytest.raises(InputError, match="private addresses"):
        secured(tmp_path / "new", [name], "Quillsand Links")

    assert not (tmp_path / "new").exists()


def test_keys_are_their_owners_alone_and_the_authority_stays(tmp_path: Path) -> None:
    """Nobody else can read a key; made anew, the machine's certificate changes, the authority does not."""
    now = datetime.now(UTC)
    first = secured(tmp_path, [HERE], "Quillsand Links", now)
    authority, machine = first.authority.read_bytes(), first.certificate.read_bytes()

    assert {stat.S_IMODE(one.stat().st_mode) for one in tmp_path.glob("*.key")} == {0o600}
    assert secured(tmp_path, [HERE], "x", now).certificate.read_bytes() == machine
    later = secured(tmp_path, [HERE], "x", now + OF_MACHINE - RENEWED + timedelta(days=1))
    assert later.certificate.read_bytes() != machine
    assert later.authority.read_bytes() == authority
    assert later.fingerprint == first.fingerprint


def test_the_authority_is_named_for_the_club_of_the_records(tmp_path: Path) -> None:
    """Phones show this name when they are asked to trust it; with two clubs in the records none is picked."""
    with made(tmp_path / "club.db") as records:
        new_club(records, "Quillsand Links")
    club = club_in(str(tmp_path / "club.db"))
    held = secured(tmp_path / "own", [HERE], club)
    subject = x509.load_pem_x509_certificate(held.authority.read_bytes()).subject

    assert "Quillsand Links" in subject.rfc4514_string()
    with opened(tmp_path / "club.db") as records:
        new_club(records, "Other Links")
    assert club_in(str(tmp_path / "club.db")) == club_in(None) == CLUB_UNKNOWN
