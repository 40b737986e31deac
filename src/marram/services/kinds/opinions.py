"""A second opinion, asked and given; a case handed over; a ruling that differs from an earlier one, looked at."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, ClassVar

from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import A_CASE, AN_ENTRY, WORDS, Kind

_YES_NO = said("true or false")


@dataclass(frozen=True)
class OpinionAsked:
    """What the question to the chief referee holds; what the official thinks is sealed beside it.

    Attributes:
        about: the case begun, or the entry, that it is about.
        case: the case as far as it was told; ``None`` where nothing was told yet.
        headline: what the official was shown of it: the ruling, or the question where it stands.
    """

    __pydantic_config__: ClassVar = STRICT

    about: str | None = field(default=None, metadata=give(AN_ENTRY))
    case: Mapping[str, Any] | None = field(default=None, metadata=give(A_CASE))
    headline: str = field(default="", metadata=give(WORDS))


@dataclass(frozen=True)
class OpinionGiven:
    """What the answer holds; its words are sealed beside it.

    Attributes:
        asked: the entry of the question.
        agrees: whether it is to be ruled as the official was shown.
        case: the case as it is to be ruled, where that is another one.
        headline: what the Rules say of that case, in one line.
    """

    __pydantic_config__: ClassVar = STRICT

    asked: str = field(metadata=give(AN_ENTRY))
    agrees: bool = field(metadata=give(_YES_NO))
    case: Mapping[str, Any] | None = field(default=None, metadata=give(A_CASE))
    headline: str = field(default="", metadata=give(WORDS))


@dataclass(frozen=True)
class HandedOver:
    """A case that somebody else goes on with.

    Attributes:
        about: the case begun.
        to: the official who has it now.
        headline: where it stands.
    """

    __pydantic_config__: ClassVar = STRICT

    about: str = field(metadata=give(AN_ENTRY))
    to: str = field(metadata=give(said("the identifier of an official, a UUID")))
    headline: str = field(default="", metadata=give(WORDS))


@dataclass(frozen=True)
class DifferencePut:
    """A ruling that went otherwise than earlier ones of the same situation, as it is put before the chief referee.

    Attributes:
        about: the entry of the ruling.
        others: the entries it differs from.
    """

    __pydantic_config__: ClassVar = STRICT

    about: str = field(metadata=give(AN_ENTRY))
    others: tuple[str, ...] = field(metadata=give(said("a list of identifiers of entries")))


@dataclass(frozen=True)
class DifferenceSeen:
    """A ruling that went otherwise than an earlier one of the same situation, looked at by the chief referee.

    Attributes:
        about: the entry of the ruling.
        stands: whether it stands as it was given.
    """

    __pydantic_config__: ClassVar = STRICT

    about: str = field(metadata=give(AN_ENTRY))
    stands: bool = field(metadata=give(_YES_NO))


KINDS = (
    Kind("opinion_asked", OpinionAsked, points_at=("about",)),
    Kind("opinion_given", OpinionGiven, points_at=("asked",)),
    Kind("handed_over", HandedOver, points_at=("about", "to"), parts=("note",)),
    Kind("difference_put", DifferencePut, points_at=("about",), parts=()),
    Kind("difference_seen", DifferenceSeen, points_at=("about",), parts=("note",)),
)
