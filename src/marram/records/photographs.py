"""A photograph as it is kept: the picture, upright, and nothing that the camera wrote beside it."""

import warnings
from io import BytesIO

from PIL import Image, ImageOps, UnidentifiedImageError

from marram.errors import InputError
from marram.records.entry import Part
from marram.said import said

LONGEST = 2560
"""Pixels along the longer side at most (own choice): enough to see where a ball lies, on paper too."""

QUALITY = 88
"""JPEG quality (own choice)."""

_KEPT_AS_GIVEN = {"JPEG": "image/jpeg", "PNG": "image/png", "WEBP": "image/webp"}


def photograph(content: bytes, *, as_given: bool = False) -> Part:
    """Return a photograph to be kept beside an entry.

    Unless it is kept as given, it is written anew: turned upright, at most :data:`LONGEST` pixels long, without place,
    time, device, preview, comment or colour profile.

    Args:
        content: the file: JPEG, PNG or WebP.
        as_given: keep the file as it is, with all that the camera wrote into it.

    Raises:
        InputError: it is no picture that can be read, or far too large.
    """
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error", Image.DecompressionBombWarning)
            with Image.open(BytesIO(content), formats=tuple(_KEPT_AS_GIVEN)) as image:
                media_type = _KEPT_AS_GIVEN[image.format or ""]
                image.load()
                upright = ImageOps.exif_transpose(image).convert("RGB")
    except (Image.DecompressionBombError, Image.DecompressionBombWarning):
        raise InputError(said("The photograph has far too many pixels; take a smaller one.")) from None
    except (UnidentifiedImageError, OSError, ValueError, SyntaxError):
        raise InputError(
            said("The photograph cannot be read; give a whole file of JPEG, PNG or WebP.")
        ) from None
    if as_given:
        return Part("photograph", content, media_type)
    upright.thumbnail((LONGEST, LONGEST))
    bare = Image.new("RGB", upright.size)
    bare.paste(upright)
    file = BytesIO()
    bare.save(file, "JPEG", quality=QUALITY)
    return Part("photograph", file.getvalue(), "image/jpeg")
