"""What is personal stands beside the log, sealed, and can be erased without breaking it."""

from io import BytesIO

import pytest
from PIL import Image
from sqlalchemy import text

from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Part, new_ident
from marram.records.log import Log
from marram.records.photographs import LONGEST, photograph
from marram.records.verifying import verified
from tests.records.conftest import clock, note

GPS = 0x8825
"""The tag of Exif under which a camera writes the place (CIPA DC-008, Exif 2.32)."""


def picture(size: tuple[int, int] = (60, 40), kind: str = "JPEG", orientation: int = 6) -> bytes:
    """A picture whose left half is red, with what a camera writes into it."""
    image = Image.new("RGB", size, "white")
    image.paste("red", (0, 0, size[0] // 2, size[1]))
    exif = image.getexif()
    exif[0x0112] = orientation
    exif[0x0110] = "Secret Camera"
    exif.get_ifd(GPS)[2] = (55.0, 0.0, 4.3)
    file = BytesIO()
    image.save(file, kind, exif=exif, comment=b"Secret comment")
    return file.getvalue()


def test_nothing_that_a_camera_wrote_is_kept() -> None:
    """Place, device and comment are gone; the picture stands upright as its orientation said."""
    given = picture()
    assert b"Secret Camera" in given
    kept = photograph(given)

    with Image.open(BytesIO(kept.content)) as image:
        assert dict(image.getexif()) == {}
        assert image.size == (40, 60)
        red, white = image.getpixel((20, 5)), image.getpixel((20, 55))
        assert {"exif", "comment", "icc_profile"}.isdisjoint(image.info)
    assert red[0] > 200  # type: ignore[index]
    assert red[1] < 60  # type: ignore[index]
    assert min(white) > 200  # type: ignore[type-var, arg-type]
    assert b"Secret" not in kept.content
    assert kept.media_type == "image/jpeg"


def test_a_photograph_kept_on_purpose_is_kept_byte_for_byte() -> None:
    """What the camera wrote stays only where somebody wants it so."""
    given = picture(kind="PNG")

    kept = photograph(given, as_given=True)

    assert (kept.content, kept.media_type) == (given, "image/png")


def test_a_large_photograph_is_made_smaller() -> None:
    """The longer side has no more pixels than a sheet of paper can show; the shape stays."""
    with Image.open(BytesIO(photograph(picture((4000, 2000), orientation=1)).content)) as image:
        assert image.size == (LONGEST, LONGEST // 2)


@pytest.mark.parametrize("given", [b"", b"a letter", picture()[:300], b"GIF89a" + b"\0" * 50])
def test_what_is_no_picture_is_refused(given: bytes) -> None:
    """Half a file, another format or no picture at all: what to give is said."""
    with pytest.raises(InputError, match="JPEG, PNG or WebP"):
        photograph(given)


def test_a_picture_that_would_fill_the_memory_is_refused() -> None:
    """A small file that unfolds to hundreds of millions of pixels is not unfolded."""
    file = BytesIO()
    Image.new("1", (20_000, 20_000)).save(file, "PNG")
    with pytest.raises(InputError, match="too many pixels"):
        photograph(file.getvalue())


def test_a_part_is_kept_and_can_be_erased_without_breaking_the_chain(records: Records, event: str) -> None:
    """After erasing, the words are in no table, the entry says that something was sealed, and the chain is whole."""
    log = Log(records, clock())
    kept = log.append(event, note("x", parts=(Part("note", b"the player said this"), Part("name", b"Osric"))))
    log.append(event, note("y"))
    erase(records, "note")

    assert [part and part.content for part in log.parts(kept.id)] == [None, b"Osric"]
    assert [one["what"] for one in log.entry(kept.id).told["sealed"]] == ["note", "name"]  # type: ignore[union-attr]
    assert [one.broken for one in verified(records)] == [None]


def test_an_entry_given_again_after_its_part_was_erased_is_known(records: Records, event: str) -> None:
    """A phone that sends its entry once more brings nothing back that was erased."""
    log, ident = Log(records, clock()), new_ident()
    first = log.append(event, note("x", id=ident, parts=(Part("note", b"the player said this"),)))
    erase(records, "note")

    assert log.append(event, note("x", id=ident, parts=(Part("note", b"the player said this"),))) == first
    assert log.parts(ident) == [None]


def erase(records: Records, what: str) -> None:
    with records.writing() as connection:
        connection.execute(
            text("UPDATE sealed_parts SET content = NULL, salt = NULL, erased_at = 'now' WHERE what = :what"),
            {"what": what},
        )


@pytest.mark.parametrize(
    "deed",
    [
        "DELETE FROM sealed_parts",
        "UPDATE sealed_parts SET content = salt",
        "UPDATE sealed_parts SET what = 'reason', content = NULL, salt = NULL, erased_at = 'now'",
    ],
)
def test_a_part_can_be_changed_in_no_other_way(records: Records, event: str, deed: str) -> None:
    """Neither exchanged nor removed without a trace."""
    log = Log(records)
    kept = log.append(event, note(parts=(Part("note", b"said so"),)))
    with (
        pytest.raises(InputError, match="can be erased, and not changed otherwise"),
        records.writing() as connection,
    ):
        connection.execute(text(deed))

    assert [part and part.content for part in log.parts(kept.id)] == [b"said so"]


def test_equal_words_have_unequal_seals(records: Records, event: str) -> None:
    """The digest in the entry tells nothing about a short note: each is salted."""
    log = Log(records)
    one, two = (log.append(event, note(parts=(Part("note", b"yes"),))) for _ in range(2))

    assert one.told["sealed"][0]["digest"] != two.told["sealed"][0]["digest"]
