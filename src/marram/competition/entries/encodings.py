"""Text in the encoding it was written in: by its mark, by its zero bytes, as UTF-8, and else the likeliest of the old ones."""

import codecs

from marram.errors import InputError
from marram.said import said

OLD = (
    ("cp1252", "Windows-1252"),
    ("cp1250", "Windows-1250"),
    ("mac_roman", "Mac Roman"),
    ("cp850", "DOS (850)"),
)
"""What lists of clubs still come in, the usual first: where two read alike well, the earlier counts."""
_CENTRAL = "łŁąĄśŚźŹżŻľĽťŤşŞ"
"""Letters of Central Europe whose bytes are no letter of a name in Windows-1252, so that they tell the two apart."""
_USUAL = {
    **dict.fromkeys(_CENTRAL, 3),
    **dict.fromkeys("äöüßéÄÖÜ", 3),
    **dict.fromkeys("èàçñøåæêëâôûíóáúÉÅØÆÇÑ", 1),
}
"""Letters by how usual they are in names of Western Europe (own choice), told apart by what one byte means in each encoding."""


def decoded(data: bytes, name: str) -> tuple[str, str]:
    """Return a text, and what its encoding is called.

    Args:
        data: the bytes of a file.
        name: of the file, to speak of it.

    Raises:
        InputError: it is in no encoding known here.
    """
    for mark, encoding, said_as in (
        (codecs.BOM_UTF8, "utf-8-sig", "UTF-8"),
        (codecs.BOM_UTF16_LE, "utf-16", "UTF-16"),
        (codecs.BOM_UTF16_BE, "utf-16", "UTF-16"),
    ):
        if data.startswith(mark):
            return _strictly(data, encoding, name), said_as
    if data[1:400:2].count(0) > len(data[1:400:2]) // 2:
        return _strictly(data, "utf-16-le", name), "UTF-16"
    if data[0:400:2].count(0) > len(data[0:400:2]) // 2:
        return _strictly(data, "utf-16-be", name), "UTF-16"
    try:
        return data.decode("utf-8"), "UTF-8"
    except UnicodeDecodeError:
        return _likeliest(data, name)


def _likeliest(data: bytes, name: str) -> tuple[str, str]:
    best: tuple[int, str, str] | None = None
    for encoding, said_as in OLD:
        try:
            text = data.decode(encoding)
        except UnicodeDecodeError:
            continue
        weight = sum(_USUAL.get(one, 0 if one.isalpha() else -1) for one in text if ord(one) > 127)
        if best is None or weight > best[0]:
            best = (weight, text, said_as)
    if best is None or "\0" in best[1]:
        raise _unknown(name)
    return best[1], best[2]


def _strictly(data: bytes, encoding: str, name: str) -> str:
    try:
        return data.decode(encoding)
    except UnicodeDecodeError:
        raise _unknown(name) from None


def _unknown(name: str) -> InputError:
    return InputError(
        said("{file} is text in no encoding that is known here. Save it as CSV in UTF-8.", file=name)
    )
