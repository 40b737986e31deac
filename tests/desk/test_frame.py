"""What every page stands in gives no name a second meaning that a page already uses."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import marram.desk

DESK = Path(marram.desk.__file__).parent
FRAME = DESK / "shell" / "templates" / "base.html"


def given_to_pages() -> Iterator[tuple[str, str]]:
    """Every name that a page is shown with, and the file that shows it."""
    for path in sorted(DESK.rglob("*.py")):
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(call, ast.Call) and isinstance(call.func, ast.Name) and call.func.id == "show":
                for one in call.keywords:
                    if one.arg:
                        yield one.arg, path.name


def test_the_frame_sets_no_name_that_a_page_is_shown_with() -> None:
    """A name set in the frame stands in every block of a page, before what the page was given."""
    own = set(re.findall(r"{%-? set (\w+)", FRAME.read_text(encoding="utf-8")))
    given = set(given_to_pages())

    assert own
    assert len(given) > 100
    assert [(name, where) for name, where in sorted(given) if name in own] == []


def test_no_field_is_named_as_what_a_form_can_do() -> None:
    """A field called ``matches`` would stand in the place of the form's own method for every script of the page."""
    named = [
        (path.name, name)
        for path in sorted(DESK.rglob("*.html"))
        for name in re.findall(
            r'<(?:input|select|textarea|button)\b[^>]*? name="(\w+)"', path.read_text("utf-8")
        )
    ]
    methods = {
        "matches",
        "closest",
        "submit",
        "reset",
        "remove",
        "append",
        "contains",
        "after",
        "before",
        "focus",
    }
    methods |= {
        "getAttribute",
        "setAttribute",
        "querySelector",
        "requestSubmit",
        "addEventListener",
        "elements",
    }

    assert len(named) > 100
    assert [one for one in named if one[1] in methods] == []
