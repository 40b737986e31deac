"""A list as it is published now: starting times of a round, results, or the bracket."""

from marram.errors import InputError
from marram.records.entry import Entry
from marram.records.field import details
from marram.services.log.tap import Tap
from marram.services.matches.bracket_kept import bracket_now
from marram.services.publishing.brackets import bracket
from marram.services.publishing.documents import (
    BRACKET,
    STARTING_TIMES,
    Document,
    filled,
    named,
    results,
    starting_times,
)
from marram.services.publishing.published import publishing
from marram.services.results.scored import Scored
from marram.words.texts import text


def publishing_now(scored: Scored, name: str, what: str, number: int, tap: Tap) -> Entry:
    """Return the entry that publishes a list as it now stands.

    Args:
        scored: the competition.
        name: what the event is called.
        what: ``starting_times``, ``results`` or ``bracket``.
        number: the round, for starting times.
        tap: who publishes it, and when.

    Raises:
        InputError: there is no such list yet.
    """
    known = named(scored.competition, details(scored.records))
    return publishing(tap.ident, tap.at, _document(scored, name, what, number), known, by=tap.by)


def document_now(scored: Scored, name: str, what: str, number: int = 1) -> Document:
    """Return a list as it now stands, with names, as it would be published.

    Args:
        scored: the competition.
        name: what the event is called.
        what: ``starting_times``, ``results`` or ``bracket``.
        number: the round, for starting times.

    Raises:
        InputError: there is no such list yet.
    """
    document: Document = filled(
        _document(scored, name, what, number), named(scored.competition, details(scored.records))
    )
    return document


def _document(scored: Scored, name: str, what: str, number: int) -> Document:
    if what == STARTING_TIMES:
        return starting_times(scored.records, scored.event, name, scored.competition, number)
    if what == BRACKET:
        now = bracket_now(scored)
        if now is None:
            raise InputError(text("matches.bracket.none"))
        return bracket(name, scored.competition, now)
    if why_not := scored.competition.why_no_cards():
        raise InputError(why_not)
    return results(name, scored.competition, scored.now().results, closed=scored.closed is not None)
