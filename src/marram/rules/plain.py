"""Results and sheets as plain data: dictionaries, lists and strings, ready for JSON."""

from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from datetime import date
from enum import Enum
from typing import Any


def as_plain(thing: Any) -> Any:
    """Return a result, a sheet or any part of one as plain data.

    Dataclasses become dictionaries by field name, enum members their values, dates ISO 8601 strings.
    """
    if is_dataclass(thing):
        return {one.name: as_plain(getattr(thing, one.name)) for one in fields(thing)}
    if isinstance(thing, Enum):
        return thing.value
    if isinstance(thing, date):
        return thing.isoformat()
    if isinstance(thing, Mapping):
        return {str(as_plain(key)): as_plain(value) for key, value in thing.items()}
    if isinstance(thing, list | tuple):
        return [as_plain(one) for one in thing]
    return thing
