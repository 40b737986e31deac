"""A list made public: starting times of a round, or results."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, ClassVar

from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import WORDS, Kind

LISTS = ("starting_times", "results", "bracket")


@dataclass(frozen=True)
class ListPublished:
    """What the entry of a published list holds.

    Attributes:
        digest: the SHA-256 of the list as it was published, which is its address.
        document: the list, with identifiers in the place of names.
    """

    __pydantic_config__: ClassVar = STRICT

    digest: str = field(metadata=give(WORDS))
    document: Mapping[str, Any] = field(metadata=give(said("an object")))


def _faults(found: ListPublished) -> Iterator[str]:
    if len(found.digest) != 64 or set(found.digest) - set("0123456789abcdef"):
        yield said("list_published: digest is no SHA-256; give 64 hexadecimal digits.")
    if found.document.get("kind") not in LISTS:
        yield said("list_published: the document is none of {known}.", known=", ".join(LISTS))


KINDS = (Kind("list_published", ListPublished, parts=(), faults=_faults),)
