"""``marram results close`` and ``marram results reopen --records``: the close of a competition that records keep."""

from collections.abc import Mapping, Sequence
from datetime import UTC, datetime

from marram.cli.exits import DECIDED, LEFT_OPEN, MORE_FACTS_NEEDED
from marram.cli.facts import facts_given
from marram.cli.series import change_named, tell_reopening
from marram.cli.show import print_json, show_lines
from marram.errors import InputError
from marram.records.database import opened
from marram.records.entry import new_ident
from marram.records.log import Log
from marram.rules.result import NeedFacts
from marram.said import said
from marram.services.kinds.registry import checked
from marram.services.log.tap import Tap
from marram.services.results.closing import closing, may_reopen, reopened, waits
from marram.services.results.scored import scored_in
from marram.words.spoken import spoken
from marram.words.texts import text


def close(records: str, event: str | None, *, look: bool, note: str, as_json: bool) -> None:
    """Close a competition, or tell what still stands between; exit with 3 where something does."""
    with opened(records) as there:
        scored = scored_in(there, event)
        already = scored.closed is not None
        between = [] if already else waits(scored)
        closes = not (look or between or already)
        if closes:
            entry = closing(scored, Tap(new_ident(), datetime.now(UTC)), note)
            Log(there).append(scored.event, checked(entry))
    if as_json:
        told = {"closed": already or closes, "waits": [spoken(one) for one in between]}
        print_json({"marram": 1, "kind": "closing", **told})
    elif between:
        title = ("title", text("results.close.waits"))
        show_lines([title, *(("item", spoken(one)) for one in between)])
    else:
        show_lines([("title", text("results.closed" if already or closes else "results.close.ready"))])
    raise SystemExit(MORE_FACTS_NEEDED if between else DECIDED)


def refuse_beside_records(given: Mapping[str, object | None]) -> None:
    """Refuse options that say what records tell by themselves.

    Raises:
        InputError: one is given; all of them are named.
    """
    if several := [option for option, value in given.items() if value is not None]:
        raise InputError(
            said(
                "{options}: the records tell this. Leave it out, or leave --records out.",
                options=", ".join(several),
            )
        )


def reopen(
    records: str, event: str | None, change: str, pairs: Sequence[str], why: str, *, as_json: bool
) -> None:
    """Tell whether the closed result of a competition may be changed; where it may and somebody says why, reopen it."""
    chosen, facts = change_named(change), facts_given(pairs)
    with opened(records) as there:
        scored = scored_in(there, event)
        tap = Tap(new_ident(), datetime.now(UTC))
        found = may_reopen(scored, chosen, facts, tap)
        if found.allowed and why.strip():
            Log(there).append(scored.event, checked(reopened(scored, chosen, facts, tap, why)))
        tell_reopening(found, chosen, facts, scored.competition.form, as_json=as_json)
    if isinstance(found.result, NeedFacts) and found.allowed is None:
        raise SystemExit(MORE_FACTS_NEEDED)
    raise SystemExit(DECIDED if found.allowed is not None else LEFT_OPEN)
