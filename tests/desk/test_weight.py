"""What a first screen weighs, and that a phone keeps what cannot change."""

import gzip
import json
import re

import pytest
from fastapi import FastAPI
from shapely import hausdorff_distance
from shapely.geometry import shape

from marram.course.model import Course
from marram.desk.shell.assets import SETS, asset, made, source
from marram.desk.shell.joined_modules import joined
from marram.desk.shell.map_parts import FAR, MapParts
from tests.desk.asking import TestClient

MOST = 300_000
"""Bytes of a first screen on its way to a phone, the rest of the map that follows it included."""
MODEL = "/api/finding/model"


@pytest.fixture
def phone(app: FastAPI) -> TestClient:
    return TestClient(app, headers={"accept-encoding": "gzip, deflate, br"})


def on_the_way(phone: TestClient, address: str) -> int:
    """Return the bytes of an answer as it is sent."""
    with phone.stream("GET", address) as answer:
        assert answer.status_code == 200, address
        return sum(map(len, answer.iter_raw()))


def named(page: str) -> list[str]:
    """Return what a page makes a phone fetch: styles, scripts, the drawing, and the fonts of its styles."""
    found = re.findall(r'<(?:link|script)[^>]* (?:href|src)="([^"]+)"', page)
    fonts = re.findall(r'url\("(vendor/[^"]+latin-wght[^"]+)"', source("shell/base.css"))
    state = json.loads(page.partition('id="map-state">')[2].partition("</script>")[0])
    return list(dict.fromkeys([*found, *(asset(f"shell/{one}") for one in fonts), *state["course"].values()]))


@pytest.mark.parametrize("path", ["/", "/ball?hole=9", "/what?hole=9"])
def test_a_first_screen_is_light_and_asks_seldom(phone: TestClient, path: str) -> None:
    """Page, styles, scripts, font and the whole map stay under 300 kB in ten requests; the weights of the search are none of them."""
    addresses = named(phone.get(path).text.replace("&amp;", "&"))

    assert sum(on_the_way(phone, one) for one in [path, *addresses]) < MOST
    assert len(addresses) <= 10
    assert MODEL not in addresses


def test_what_a_page_names_is_kept_for_ever_and_another_version_is_not(phone: TestClient) -> None:
    """An address that holds its version never changes what it gives; under an old version today's file is sent, to be asked anew."""
    for address in named(phone.get("/ball?hole=9").text.replace("&amp;", "&")):
        answer = phone.get(address)
        assert "immutable" in answer.headers["cache-control"], address
        old = phone.get(re.sub(r"/[0-9a-f]{12,}/", "/000000000000/", address))
        assert (old.status_code, old.headers["cache-control"], old.content) == (
            200,
            "no-cache",
            answer.content,
        )


def test_a_set_and_a_script_are_not_sent_twice(phone: TestClient) -> None:
    """Who names what it has is told that it has not changed."""
    for name in (*SETS, "shell/desk.js"):
        first = phone.get(asset(name))
        again = phone.get(asset(name), headers={"if-none-match": first.headers["etag"]})
        assert (again.status_code, again.content) == (304, b"")


def test_every_part_of_the_map_shows_every_feature(phone: TestClient) -> None:
    """The parts differ in how finely they are drawn, not in what stands on them or in which order."""
    whole = phone.get("/api/course").json()["features"]
    told = [(one["properties"], one["geometry"]["type"]) for one in whole]
    for part in ("overview", "hole-9", "whole"):
        found = phone.get(f"/api/course/0/{part}").json()["features"]
        assert [(one["properties"], one["geometry"]["type"]) for one in found] == told, part
    assert phone.get("/api/course/0/hole-99").status_code == 400


def test_outlines_run_one_way_so_that_those_of_a_kind_can_be_one_path(phone: TestClient) -> None:
    """Outlines run counterclockwise and the holes in them clockwise, or areas that overlap would leave a hole (RFC 7946, 3.1.6)."""
    for part in ("overview", "hole-9", "whole"):
        for one in phone.get(f"/api/course/0/{part}").json()["features"]:
            ground = shape(one["geometry"])
            for polygon in (
                each for each in getattr(ground, "geoms", [ground]) if each.geom_type == "Polygon"
            ):
                assert polygon.exterior.is_ccw, one["properties"]
                assert not any(ring.is_ccw for ring in polygon.interiors), one["properties"]


def test_what_keeps_the_desk_on_a_phone_waits_for_the_map() -> None:
    """The script of every page holds no service worker and no store of waiting entries; it fetches them afterwards."""
    script = made("shell/desk.js") or ""

    assert 'import("../offline/here.js")' in script
    assert "serviceWorker" not in script
    assert "indexedDB" not in script


def test_the_overview_is_true_to_what_the_eye_sees(course: Course) -> None:
    """No outline is off by more than half as much again as is asked of GEOS, which keeps outlines from crossing."""
    parts = MapParts(course)
    far, near = (json.loads(parts.part(name) or b"")["features"] for name in ("overview", "whole"))
    to_metres = course.plane.inward
    for one, other in zip(far, near, strict=True):
        off = hausdorff_distance(*(to_metres(shape(each["geometry"])) for each in (one, other)))
        assert off <= 1.5 * FAR, one["properties"]


def test_a_page_without_compression_is_the_same(app: FastAPI, phone: TestClient) -> None:
    """Who takes no gzip gets the page as it is."""
    plain = TestClient(app, headers={"accept-encoding": "identity"})
    with phone.stream("GET", "/what") as answer:
        assert answer.headers["content-encoding"] == "gzip"
        assert gzip.decompress(b"".join(answer.iter_raw())).decode() == plain.get("/what").text


@pytest.mark.parametrize(
    ("source_text", "fault"),
    [
        ('import it from "./other.js";\n', "line 1"),
        ("export default 3;\n", "line 1"),
        ('import "./self.js";\n', "circle"),
    ],
)
def test_a_script_that_cannot_be_joined_is_refused(source_text: str, fault: str) -> None:
    """What is not understood is not misread."""
    with pytest.raises(ValueError, match=fault):
        joined("shell/self.js", lambda _: source_text)


def test_a_joined_script_gives_what_it_gave(phone: TestClient) -> None:
    """Who imports a script that comes with its modules finds the same names in it."""
    assert "export { prepare, find };" in phone.get(asset("rulings/finding.js")).text


def test_what_is_the_same_for_all_is_compressed_once(
    phone: TestClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The second phone gets script, style and drawing without anything being compressed, and each may go as it is too."""
    page = phone.get("/").text.replace("&amp;", "&")
    every = [one for one in named(page) if "/api/course/" in one or one.split("/", 3)[3] in SETS]
    first = {one: phone.get(one).content for one in every}
    assert len(every) > len(SETS)

    def again(*_: object, **__: object) -> bytes:
        raise AssertionError("compressed again")

    monkeypatch.setattr(gzip, "compress", again)
    for one in every:
        with phone.stream("GET", one) as answer:
            sent = b"".join(answer.iter_raw())
        assert answer.headers["vary"].lower().count("accept-encoding") == 1
        assert sent[4:8] == bytes(4), (
            one
        )  # no time in it, as what is compressed on the way has (RFC 1952, 2.3.1)
        assert gzip.decompress(sent) == first[one]
        plain = phone.get(one, headers={"accept-encoding": "identity"})
        assert ("content-encoding" in plain.headers, plain.content) == (False, first[one]), one
