"""The generated pages of docs/, each made from what the code declares."""

from collections.abc import Callable

from marram.docs.commands import commands_page
from marram.docs.coverage import coverage_page
from marram.docs.incidents import incidents_page
from marram.docs.local_rules import local_rules_page
from marram.docs.rights import rights_page

PAGES: dict[str, Callable[[], str]] = {
    "cli.md": commands_page,
    "coverage.md": coverage_page,
    "incidents.md": incidents_page,
    "local-rules.md": local_rules_page,
    "rights.md": rights_page,
}
"""Each generated page by its file name."""
