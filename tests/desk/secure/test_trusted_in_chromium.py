"""A phone in Chromium that was given the club's authority: a secure connection to an address that is not its own."""

import os
import shutil
import socket
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from ipaddress import ip_address
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Error

from marram.desk.app import create_app
from marram.desk.secure.authority import PRIVATE, secured
from tests.desk.conftest import CHROMIUM, QUIET
from tests.desk.serving import served

NAME = "desk.home.arpa"
"""A name of a local network; the browser is told where it leads, as the router of a course would."""
NOBODY = (("10.255.255.255", socket.AF_INET), ("fd00::ffff", socket.AF_INET6))
"""Private addresses: asked which of its own it would send there from, a machine sends nothing."""


def own_addresses() -> list[str]:
    """The private addresses of this machine in its networks; none where it has none."""
    found = []
    for address, family in NOBODY:
        with socket.socket(family, socket.SOCK_DGRAM) as asking:
            try:
                asking.connect((address, 9))
            except OSError:
                continue
            own = ip_address(asking.getsockname()[0])
        if not own.is_loopback and any(own in one for one in PRIVATE if one.version == own.version):
            found.append(str(own))
    return found


def trusting(home: Path, authority: Path | None) -> Path:
    """A home of its own for a browser, whose store of certificates (NSS) holds the authority, or nothing."""
    store = home / ".pki" / "nssdb"
    store.mkdir(parents=True)
    calls = [["-N", "--empty-password"]]
    calls += [["-A", "-n", "club", "-t", "C,,", "-i", str(authority)]] if authority else []
    for call in calls:
        subprocess.run(["certutil", "-d", f"sql:{store}", *call], check=True)
    return home


@contextmanager
def phone(chromium: Browser, home: Path) -> Iterator[BrowserContext]:
    """A browser with a home of its own."""
    told = {name: value for name, value in os.environ.items() if not name.startswith("XDG_")}
    browser = chromium.browser_type.launch(
        executable_path=str(CHROMIUM),
        args=[*QUIET, f"--host-resolver-rules=MAP {NAME} 127.0.0.1"],
        env={**told, "HOME": str(home)},
    )
    yield browser.new_context()
    browser.close()


@pytest.fixture
def certutil() -> None:
    """The tool that fills a store of certificates; without it the test is skipped, but never where CI runs it."""
    if shutil.which("certutil"):
        return
    if os.environ.get("CI") == "true":
        pytest.fail("certutil is missing; CI must install the libnss3-tools package.")
    pytest.skip("certutil is missing; install the libnss3-tools package to run this test.")


@pytest.mark.browser
@pytest.mark.usefixtures("certutil")
def test_a_phone_with_the_authority_has_a_secure_connection_and_one_without_has_none(
    chromium: Browser, tmp_path: Path
) -> None:
    """By the machine's address in its network and by a local name: a secure context in which the service worker runs;
    without the authority the browser refuses, and without encryption it offers neither."""
    own = own_addresses()
    held = secured(tmp_path / "authority", [*own, NAME], "Quillsand Links")
    app = create_app(hosts=[*own, NAME])
    both = socket.has_dualstack_ipv6()
    everywhere = socket.create_server(
        ("::" if both else "", 0), family=socket.AF_INET6 if both else socket.AF_INET, dualstack_ipv6=both
    )
    secure = [f"https://{f'[{one}]' if ':' in one else one}" for one in (*own, NAME)]

    with served(app, held, everywhere) as running:
        port = running.rpartition(":")[2]
        with phone(chromium, trusting(tmp_path / "trusts", held.authority)) as trusts:
            for address in secure:
                page = trusts.new_page()
                page.goto(f"{address}:{port}/")
                assert page.evaluate("isSecureContext"), address
                script = "navigator.serviceWorker.ready.then((one) => one.active.scriptURL)"
                assert page.evaluate(script) == f"{address}:{port}/service-worker.js"
        with (
            phone(chromium, trusting(tmp_path / "knows nothing", None)) as another,
            served(app) as open_to_all,
        ):
            for address in secure:
                with pytest.raises(Error, match="ERR_CERT_AUTHORITY_INVALID"):
                    another.new_page().goto(f"{address}:{port}/")
            page = another.new_page()
            page.goto(f"http://{NAME}:{open_to_all.rpartition(':')[2]}/")
            assert not page.evaluate("isSecureContext || 'serviceWorker' in navigator")
