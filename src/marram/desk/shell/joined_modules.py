"""One script of several modules, so that a phone asks once: each import costs a way to the desk and back.

Only what the desk's own scripts use of the language is understood: ``import { a, b as c } from "./x.js";`` and
``import "./x.js";`` at the start of a line, and ``export`` before a function, a class or a constant (ECMAScript 2024,
16.2). Anything else is refused when it is joined, not misread.
"""

import re
from collections.abc import Callable
from posixpath import dirname, join, normpath

IMPORT = re.compile(r'^import (?:\{([\w\s,]+)\} from )?"([^"]+)";$', re.MULTILINE)
EXPORT = re.compile(r"^export (?=(?:async )?function |class |const )", re.MULTILINE)
EXPORTED = re.compile(r"^export (?:async )?(?:function|class|const) (\w+)", re.MULTILINE)
LEFT = re.compile(r"^(?:import|export)\b(?!\()", re.MULTILINE)
ROOT = "/static/"
"""Where a script says that a path begins at the desk's scripts rather than beside it."""


def joined(entry: str, read: Callable[[str], str]) -> str:
    """Return a module with all that it imports, as one script.

    Args:
        entry: the path of the module, ``ROOM/FILE``.
        read: returns the source of a path.

    Raises:
        ValueError: a module imports or exports in a way that is not understood, or in a circle.
    """
    ready: dict[str, str] = {}

    def add(path: str, above: tuple[str, ...]) -> str:
        if path in above:
            raise ValueError(f"{path} imports itself by way of {', '.join(above)}; take the circle apart.")
        source = read(path)

        def imported(found: re.Match[str]) -> str:
            names, target = found[1], _beside(path, found[2])
            if target not in ready:
                add(target, (*above, path))
            return f"const {{ {names.replace(' as ', ': ').strip()} }} = {_name(target)};" if names else ""

        body = IMPORT.sub(imported, source)
        exported = EXPORTED.findall(body)
        body = EXPORT.sub("", body)
        if left := LEFT.search(body):
            line = body[: left.start()].count("\n") + 1
            raise ValueError(f"{path}, line {line}: write the import or export as {__name__} says.")
        if above:
            ready[path] = (
                f"const {_name(path)} = (() => {{\n{body}\nreturn {{ {', '.join(exported)} }};\n}})();\n"
            )
        return f"{body}\nexport {{ {', '.join(exported)} }};\n" if exported else body

    body = add(entry, ())
    return "".join(ready.values()) + body


def _beside(path: str, target: str) -> str:
    """Return the path of what a module at ``path`` imports as ``target``."""
    return target.removeprefix(ROOT) if target.startswith(ROOT) else normpath(join(dirname(path), target))


def _name(path: str) -> str:
    """Return the name of the constant that holds a module's exports."""
    return "module_" + re.sub(r"\W", "_", path.removesuffix(".js"))


__all__ = ["joined"]
