"""Officials placed: who is where in a round, in the words that a duty is read from. People stand by identifier alone."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import ClassVar

from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import WORDS, Kind, is_ident


@dataclass(frozen=True)
class OfficialAt:
    """An official in one role, and where; empty: no place."""

    __pydantic_config__: ClassVar = STRICT

    who: str = field(metadata=give(said("the identifier of a person, a UUID")))
    role: str = field(metadata=give(WORDS))
    at: str = field(metadata=give(WORDS))


@dataclass(frozen=True)
class OfficialsPlaced:
    """What the entry of the places of a round holds.

    Attributes:
        seed: that they were proposed with; empty where they were not.
        places: of everybody who officiates.
    """

    __pydantic_config__: ClassVar = STRICT

    seed: str = field(metadata=give(WORDS))
    places: tuple[OfficialAt, ...] = field(
        metadata=give(said('a list of objects with "who", "role" and "at"'))
    )


def _faults(found: OfficialsPlaced) -> Iterator[str]:
    if wrong := [one.who for one in found.places if not is_ident(one.who)]:
        yield said("officials_placed: {who} is no UUID.", who=repr(wrong[0]))
    keys = [(one.who, one.role) for one in found.places]
    if len(set(keys)) != len(keys):
        yield said("officials_placed: somebody stands in it twice in one role; give each once.")


KINDS = (Kind("officials_placed", OfficialsPlaced, needs=("round",), parts=(), faults=_faults),)
