"""What the Rules make of a card, as rulings in the log: each once, and again where it comes out otherwise than recorded."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any
from uuid import UUID, uuid5

from marram.competition.cards.findings import Finding
from marram.records.entry import Entry, Kept
from marram.rules.engine.request import fact_named
from marram.rules.ruling import Ruling
from marram.services.cases.case import Act, Case
from marram.services.log.log import RULING, About, ruling_entry
from marram.services.log.tap import Tap
from marram.services.results.event_results import CardNow


def rulings_due(now: CardNow, entries: Iterable[Kept], tap: Tap) -> list[Entry]:
    """Return the entries that bring the rulings on a card up to date.

    A finding that is ruled gets its ruling; one that came out otherwise gets a ruling that corrects the former; one that
    is no longer there is withdrawn.

    Args:
        now: the card.
        entries: the entries of the log about its players.
        tap: what led to it.
    """
    known = list(entries)
    gone = {one.corrects for one in known if one.kind in (RULING, "withdrawn")}
    standing = {
        str(one.content["finding"]): one
        for one in known
        if one.kind == RULING
        and one.content.get("finding")
        and one.id not in gone
        and one.told.get("round") == now.kept.round
    }
    due = []
    for finding in now.outcome.findings:
        before = standing.pop(finding.name, None)
        if not isinstance(finding.result, Ruling):
            if before is not None:
                standing[finding.name] = before
            continue
        entry = _entry(now, finding, tap, None if before is None else before.id)
        if before is None or before.content.get("outcome") != entry.content["outcome"]:
            due.append(entry)
    for name, before in standing.items():
        due.append(
            Entry(
                "withdrawn",
                tap.at,
                str(uuid5(UUID(tap.ident), f"withdrawn {name}")),
                by=tap.by,
                player=before.told.get("player", now.kept.player),
                round=now.kept.round,
                corrects=before.id,
            )
        )
    return due


def _entry(now: CardNow, finding: Finding, tap: Tap, corrects: str | None) -> Entry:
    under = now.under
    case = Case(
        under.played_on,
        (Act(finding.incident, tokens(finding.facts)),),
        under.form,
        under.sides,
        None if under.local_rules is None else tuple(under.local_rules),
        finding.hole,
    )
    about = About(
        by=tap.by,
        player=now.people.get(finding.ball, now.kept.player),
        round=now.kept.round,
        corrects=corrects,
    )
    entry = ruling_entry(case, tap.at, about, ident=str(uuid5(UUID(tap.ident), finding.name)))
    return replace(entry, content={**entry.content, "finding": finding.name})


def tokens(facts: Mapping[str, Any]) -> dict[str, str]:
    """Return facts as they are written on the command line."""
    found = {}
    for name, value in facts.items():
        fact = fact_named(name)
        found[name] = fact.token(fact.parse(value))
    return found
