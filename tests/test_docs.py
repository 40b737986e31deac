"""The generated pages are current, and what the README shows works."""

import doctest
import re
from pathlib import Path

import pytest

import marram
from marram.docs import PAGES

ROOT = Path(__file__).parents[1]


@pytest.mark.parametrize("name", PAGES)
def test_generated_pages_are_current(name: str) -> None:
    """`make docs` would change nothing."""
    assert (ROOT / "docs" / name).read_text(encoding="utf-8") == PAGES[name]()


def test_the_readme_example_runs() -> None:
    """The Python of the README runs as it stands."""
    code = re.search(r"```python\n(.*?)```", (ROOT / "README.md").read_text(encoding="utf-8"), re.DOTALL)
    assert code
    names: dict[str, object] = {}
    exec(code[1], names)  # noqa: S102 - the README's own example
    assert type(names["result"]).__name__ in {"Ruling", "NeedFacts"}


def test_the_package_example_is_true() -> None:
    """The example of the package's docstring gives what it says."""
    assert doctest.testmod(marram).failed == 0


def test_every_link_of_the_docs_leads_somewhere() -> None:
    """Files named in the README and the docs exist."""
    for page in [ROOT / "README.md", *sorted((ROOT / "docs").glob("*.md"))]:
        text = page.read_text(encoding="utf-8")
        for target in re.findall(r"\]\(([^)#:]+)\)", text):
            assert (page.parent / target).exists(), (page.name, target)
        for named in re.findall(r"`((?:docs|src|tests|scripts|bench)/[\w./-]+\.\w+)`", text):
            assert (ROOT / named).exists(), (page.name, named)
