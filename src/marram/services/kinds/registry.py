"""Every kind of entries by its name, and entries read by it: all faults of one at once."""

import json
from dataclasses import fields
from functools import cache
from importlib import import_module
from pkgutil import iter_modules
from types import MappingProxyType
from typing import Any

from marram.errors import InputError, did_you_mean, shown
from marram.records.canonical import canonical
from marram.records.entry import Entry, Kept
from marram.said import said, sentences
from marram.schema import read_into
from marram.services import kinds as folder
from marram.services.kinds.kind import Kind, is_ident


@cache
def kinds() -> MappingProxyType[str, Kind]:
    """Return every kind by its name: those that the files of this folder hold as ``KINDS``."""
    found: dict[str, Kind] = {}
    for one in sorted(iter_modules(folder.__path__), key=lambda each: each.name):
        module = import_module(f"{folder.__name__}.{one.name}")
        for kind in getattr(module, "KINDS", ()):
            assert kind.name not in found, kind.name
            found[kind.name] = kind
    return MappingProxyType(found)


def kind_named(name: str) -> Kind:
    """Return a kind by its name.

    Raises:
        InputError: there is none; the nearest is named.
    """
    known = kinds()
    if name not in known:
        raise InputError(
            sentences(
                said("There is no kind of entries called {name}.", name=shown(name)),
                did_you_mean(name, known),
                said("Known: {known}.", known=", ".join(known)),
            )
        )
    return known[name]


def checked(entry: Entry) -> Entry:
    """Return an entry that is as its kind wants it.

    Raises:
        InputError: it is not; every fault is listed.
    """
    kind = kind_named(entry.kind)
    faults: list[str] = []
    try:
        entry.checked()
    except InputError as error:
        faults += error.faults
    faults += [
        said("An entry of the kind {kind} needs {what}; give it.", kind=kind.name, what=what)
        for what in kind.needs
        if getattr(entry, what) is None
    ]
    faults += [
        said("An entry of the kind {kind} holds no {what}; leave it out.", kind=kind.name, what=one.what)
        for one in entry.parts
        if one.what not in kind.parts
    ]
    _read(kind, json.loads(canonical(entry.content)), kind.name, faults)
    if faults:
        raise InputError(*faults)
    return entry


def content_of(entry: Kept) -> Any:
    """Return what an entry holds, read into the dataclass of its kind; ``None`` for a kind that holds nothing.

    Raises:
        InputError: it does not hold that, or its kind is not known to this program.
    """
    faults: list[str] = []
    where = str(said("entry {number}", number=entry.number))
    found = _read(kind_named(entry.kind), entry.content, where, faults)
    if faults:
        raise InputError(*faults)
    return found


def _read(kind: Kind, content: dict[str, Any], where: str, faults: list[str]) -> Any:
    if kind.content is None:
        if content:
            faults.append(
                said("{where}: give no content; it holds {keys}.", where=where, keys=", ".join(content))
            )
        return None
    found = read_into(kind.content, content, where, faults)
    if found is None:
        return None
    known = {one.name for one in fields(kind.content)}
    for key in kind.points_at:
        assert key in known, key
        value = getattr(found, key)
        if value is not None and not is_ident(value):
            faults.append(
                said("{where}: {key} is {given}; give a UUID.", where=where, key=key, given=shown(value))
            )
    if kind.faults:
        faults += kind.faults(found)
    return found
