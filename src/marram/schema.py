"""Reading JSON into dataclasses: the dataclass is the schema, and every fault is a sentence with its place and remedy.

A class that is read says so by ``__pydantic_config__ = STRICT``; a field says what to give by
``metadata=give("a day as year-month-day")``. pydantic is imported when something is read, never before.
"""

import json
from collections.abc import Mapping, Sequence
from dataclasses import fields, is_dataclass
from datetime import date
from enum import Enum
from functools import cache
from pathlib import Path
from typing import Any, TypeVar, cast, get_args, get_origin, get_type_hints

from marram.errors import InputError, did_you_mean, shown, told
from marram.json_faults import json_fault
from marram.said import joined, said, sentences

STRICT = {"extra": "forbid", "allow_inf_nan": False}
"""How a document is read: nothing unknown is passed over, and no number that is none."""

MOST_SHOWN = 90
"""Letters of what was given that a fault repeats (own choice)."""

HARDLY = 3
"""So many keys that are not known, and more than are known: a document of another kind (own choice)."""

GIVE = "give"
T = TypeVar("T")


def give(what: str) -> Mapping[str, str]:
    """Return the metadata of a field: what to give for it, as it ends the sentence "give …"."""
    return {GIVE: what}


def read_json(path: Path, where: str) -> dict[str, Any]:
    """Return the object a JSON file holds.

    Args:
        path: the file.
        where: what it is called, at the start of each fault.

    Raises:
        InputError: it cannot be read, is no JSON, holds no object, or gives a key twice; every fault is listed.
    """
    twice: list[str] = []

    def once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
        found: dict[str, Any] = {}
        for key, value in pairs:
            if key in found and found[key] != value:
                twice.append(
                    said("{where}: {key} is given twice; leave one out.", where=where, key=shown(key))
                )
            found[key] = value
        return found

    try:
        document = json.loads(path.read_text(encoding="utf-8-sig"), object_pairs_hook=once)
    except OSError as error:
        raise InputError(
            said("{where} cannot be read: {why}. Check the path.", where=where, why=error.strerror)
        ) from None
    except (ValueError, RecursionError) as error:
        raise InputError(
            said("{where} is not JSON: {why}. Correct it there.", where=where, why=json_fault(error))
        ) from None
    if twice:
        raise InputError(*twice)
    if not isinstance(document, dict):
        raise InputError(said("{where}: give an object, in braces.", where=where))
    return document


def read_into(kind: type[T], document: Any, where: str, faults: list[str]) -> T | None:
    """Return a document as an instance of a dataclass; ``None`` where it cannot be, with the reasons in ``faults``.

    Args:
        kind: the dataclass.
        document: what JSON holds.
        where: what the document is called, at the start of each fault.
        faults: gets one sentence for each fault.
    """
    from pydantic import ValidationError  # noqa: PLC0415 - heavy, and only needed to read

    try:
        written = json.dumps(document, default=_written)
    except (TypeError, ValueError, RecursionError) as error:
        faults.append(said("{where} holds what JSON cannot: {error}.", where=where, error=told(error)))
        return None
    if _is_of_another_kind(kind, document):
        known = ", ".join(one.name for one in fields(cast("Any", kind)))
        faults.append(
            said(
                "{where} is another kind of file: most of what it holds is not known here. Known here: {known}.",
                where=where,
                known=known,
            )
        )
        return None
    schema: Any = kind
    try:
        found: T = _adapter(schema).validate_json(written, strict=True)
    except ValidationError as error:
        faults += [
            _sentence(kind, one["type"], one["loc"], one["input"], where)
            for one in error.errors(include_url=False, include_context=False)
        ]
        return None
    return found


def _is_of_another_kind(kind: Any, document: Any) -> bool:
    """Return whether a document is hardly one of this kind with faults: a fault for each of its keys would help nobody."""
    known = {one.name for one in fields(kind)}
    given = set(document) if isinstance(document, Mapping) else set()
    unknown = given - known
    return len(unknown) >= HARDLY and len(unknown) > len(given & known)


@cache
def _adapter(kind: Any) -> Any:
    from pydantic import TypeAdapter  # noqa: PLC0415 - heavy, and only needed to read

    return TypeAdapter(kind)


def _written(value: Any) -> str:
    if isinstance(value, Enum):
        return str(value.value)
    if isinstance(value, date):
        return value.isoformat()
    raise TypeError(said("something of the type {type}", type=type(value).__name__))


def _sentence(kind: type[Any], what: str, loc: Sequence[int | str], given: Any, where: str) -> str:
    holder, remedy = _follow(kind, loc)
    path = _path(loc)
    if what == "unexpected_keyword_argument":
        known = [one.name for one in fields(holder)] if holder else []
        near = did_you_mean(loc[-1], known)
        inside = joined(": ", *filter(None, (where, _path(loc[:-1]))))
        return sentences(
            said("{inside}: the key {key} is not known.", inside=inside, key=shown(loc[-1])),
            near,
            said("Known here: {known}.", known=", ".join(known)),
        )
    if what == "missing":
        return said("{where}: {path} is missing; give {remedy}.", where=where, path=path, remedy=remedy)
    if not loc:
        return said("{where} is {given}; give an object.", where=where, given=_as_in_json(given))
    return said(
        "{where}: {path} is {given}; give {remedy}.",
        where=where,
        path=path,
        given=_as_in_json(given),
        remedy=remedy,
    )


def _as_in_json(given: Any) -> str:
    """Return what was given as the document writes it (``null``, ``true``), so that a reader finds it there."""
    try:
        written = shown(given) if isinstance(given, str) else json.dumps(given, ensure_ascii=False)
    except (TypeError, ValueError, RecursionError):
        return shown(given)
    return written if len(written) <= MOST_SHOWN else f"{written[:MOST_SHOWN]}…"


def _path(loc: Sequence[int | str]) -> str:
    """Return a place in a document as it is spoken: ``players 3, name``."""
    spoken: list[str] = []
    for step in loc:
        if isinstance(step, int) and spoken:
            spoken[-1] += f" {step + 1}"
        else:
            spoken.append(str(step))
    return ", ".join(spoken)


def _follow(kind: Any, loc: Sequence[int | str]) -> tuple[type[Any] | None, str]:
    """Return the dataclass that holds the last step of a place, and what to give there."""
    holder, remedy = None, said("another value")
    for step in loc:
        kind = _bare(kind)
        if is_dataclass(kind) and isinstance(step, str):
            holder = kind
            found = {one.name: one for one in fields(kind)}
            if step not in found:
                break
            remedy = found[step].metadata.get(GIVE, remedy)
            kind = get_type_hints(kind)[step]
        else:
            inner = [one for one in get_args(kind) if one is not Ellipsis]
            kind = inner[-1] if inner else None
    return holder if isinstance(holder, type) else None, remedy


def _bare(kind: Any) -> Any:
    """Return a type without ``None`` beside it."""
    if is_dataclass(kind) or get_origin(kind) in (tuple, list, dict, Mapping):
        return kind
    inner = [one for one in get_args(kind) if one is not type(None)]
    return inner[0] if inner else kind
