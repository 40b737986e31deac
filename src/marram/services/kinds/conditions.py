"""Conditions of an event changed: what they were, and what they are."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, ClassVar

from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import Kind

_CONDITIONS = said("an object of conditions, as event.json has them")


@dataclass(frozen=True)
class ConditionsChanged:
    """What the entry of changed conditions holds: those that differ, as they were and as they are; a missing one was, or is, not set."""

    __pydantic_config__: ClassVar = STRICT

    was: Mapping[str, Any] = field(metadata=give(_CONDITIONS))
    now: Mapping[str, Any] = field(metadata=give(_CONDITIONS))


KINDS = (Kind("conditions_changed", ConditionsChanged, parts=()),)
