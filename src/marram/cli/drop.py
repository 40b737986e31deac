"""The check of a dropped ball in words: did it land and rest inside, what comes next."""

from collections.abc import Iterator
from typing import TYPE_CHECKING

from marram.cli.show import Line
from marram.words.messages import term
from marram.words.texts import text

if TYPE_CHECKING:
    from marram.relief.drop import DropCheck


def drop_lines(check: "DropCheck") -> Iterator[Line]:
    """Yield what the check found and what comes next."""
    key = f"cli.drop.{_told(check.landed.inside)}"
    if check.rests is not None:
        key += f".{_told(check.rests.inside)}"
    yield "item", text(key)
    for one in (*check.landed.failures, *(check.rests.failures if check.rests else ())):
        yield "item", text(f"cli.drop.failed.{one.bound.value}")
    following = "cli.drop.next" if check.counts else "cli.drop.next_not_counted"
    yield "title", "  " + text(following, citation=check.citation, action=term(check.next))


def _told(inside: bool) -> str:
    return "inside" if inside else "outside"
