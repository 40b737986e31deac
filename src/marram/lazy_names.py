"""Public names that are imported on first use, so that each program loads no more than it needs."""

import sys
from collections.abc import Callable, Mapping
from importlib import import_module
from typing import Any


def on_first_use(package: str, where: Mapping[str, str]) -> Callable[[str], Any]:
    """Return the ``__getattr__`` of a package that offers names of its modules.

    Args:
        package: the package, as ``__name__``.
        where: for each name the module below the package that holds it.
    """

    def find(name: str) -> Any:
        if name not in where:
            offered = ", ".join(where)
            raise AttributeError(f"module {package!r} has no attribute {name!r}; it offers {offered}.")
        found = getattr(import_module(f"{package}.{where[name]}"), name)
        setattr(sys.modules[package], name, found)
        return found

    return find
