"""The mark that makes a function a provision of the Rules."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import wraps
from typing import Concatenate, ParamSpec, TypeVar

from marram.errors import BookError
from marram.rules.engine.case import Case
from marram.rules.ruling import Ruling
from marram.said import said

P = ParamSpec("P")
R = TypeVar("R")


@dataclass(frozen=True, slots=True)
class Provision:
    """One provision as encoded: its citation, and the function that reads like it."""

    citation: str
    function: str
    module: str
    claim: str


PROVISIONS: list[Provision] = []
"""Every provision of the modules imported so far, in order of declaration."""


def provision(
    citation: str,
) -> Callable[[Callable[Concatenate[Case, P], R]], Callable[Concatenate[Case, P], R]]:
    """Mark a function as the provision ``citation`` (e.g. ``"9.4b"`` or a Local Rule's ``"E-5"``).

    Facts read inside are explained by this citation, and a ruling returned without any citation of
    its own is given under it.
    """

    def mark(function: Callable[Concatenate[Case, P], R]) -> Callable[Concatenate[Case, P], R]:
        claim = (function.__doc__ or "").strip().split("\n", 1)[0]
        PROVISIONS.append(Provision(citation, function.__name__, function.__module__, claim))

        @wraps(function)
        def read(case: Case, /, *args: P.args, **kwargs: P.kwargs) -> R:
            try:
                case.enter(citation)
            except AttributeError:
                if hasattr(case, "enter"):
                    raise
                name = function.__name__
                raise BookError(
                    said("{name} is a provision: call it with the case as its first argument.", name=name)
                ) from None
            try:
                result = function(case, *args, **kwargs)
            finally:
                case.leave()
            if isinstance(result, Ruling) and not result.citations:
                return result.under(citation)
            return result

        return read

    return mark
