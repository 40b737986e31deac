"""Model Local Rule G-11: yardage books, maps and notes about greens."""

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_equipment import approved_book_only


@provision("G-11")
def only_approved_books_broken(case: Case) -> bool:
    """Where adopted, other yardage books and maps are forbidden, and notes on greens that were measured."""
    return case.local_rule("G-11") and not case[approved_book_only]
