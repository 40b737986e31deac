"""Rulings and the log: what of a case is recorded, which earlier ones are like it, and what today's program would say.

An entry holds the case as it was told (with the program, the book and the map it was made with), what the Rules said
of it then, and what the official was shown in one line. It is never changed; ruling the case again tells the difference.
"""

import json
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any

from marram.errors import InputError, told
from marram.records.canonical import canonical, digest
from marram.records.entry import Entry, Kept, Part, new_ident
from marram.records.log import Log
from marram.rules.plain import as_plain
from marram.rules.result import NeedFacts
from marram.rules.ruling import Reason
from marram.rules.story.story import StoryResult
from marram.said import said
from marram.services.cases.case import Case
from marram.services.cases.case_file import read_case
from marram.services.cases.made_with import made_with
from marram.services.cases.stories import rule_case
from marram.services.kinds.rulings import Instead
from marram.words.sheet import Sheet
from marram.words.story import story_sheet

RULING = "ruling"
"""The kind of an entry that is a ruling."""


@dataclass(frozen=True)
class About:
    """Whom and what a ruling was about, beside the case.

    Attributes:
        by: the official.
        player: the player.
        round: the round.
        note: words of the official.
        otherwise: why it was ruled otherwise than computed, and how; empty where it was not.
        instead: what was given then, as far as it counts.
        photographs: as :func:`marram.records.photographs.photograph` returns them.
        corrects: the entry it puts right.
    """

    by: str | None = None
    player: str | None = None
    round: str | None = None
    note: str = ""
    otherwise: str = ""
    instead: Instead | None = None
    photographs: Sequence[Part] = ()
    corrects: str | None = None


def ruling_entry(
    case: Case, given_at: datetime, about: About | None = None, *, ident: str | None = None
) -> Entry:
    """Return the entry that records a ruling.

    Args:
        case: what was told; what it was made with is set anew, but for the version of the map.
        given_at: when the ruling was given, with its distance from UTC.
        about: whom and what it was about.
        ident: the identifier of the entry, made by whoever gives it.

    Raises:
        InputError: the case cannot be used, or the ruling still asks a question.
    """
    whom = about or About()
    result = rule_case(case)
    open_ = [one for one in (*result.parts, result.combined) if isinstance(one, NeedFacts)]
    if open_ or result.combined is None:
        fact = open_[0].fact if open_ else "?"
        raise InputError(
            said(
                "There is no ruling yet to record: {fact} is still to be answered. Answer it first.",
                fact=fact,
            )
        )
    words = story_sheet(result, form_of_play=case.form_of_play, given=case.between)
    before = case.made_with
    made = made_with(before.map_version, before.map_in_force_from) if before else made_with()
    parts = [
        *([Part("note", whom.note.strip().encode())] if whom.note.strip() else []),
        *([Part("reason", whom.otherwise.strip().encode())] if whom.otherwise.strip() else []),
        *whom.photographs,
    ]
    spot = case.incidents[0].places.get("ball")
    return Entry(
        RULING,
        given_at,
        ident or new_ident(),
        by=whom.by,
        player=whom.player,
        round=whom.round,
        hole=case.hole,
        place=None
        if spot is None
        else {key: value for key, value in as_plain(spot).items() if value is not None},
        corrects=whom.corrects,
        alike=alike(case, result),
        content={
            "case": replace(case, made_with=made).document(),
            "outcome": outcome(result),
            "headline": words.headline if words else "",
            **({"otherwise": True} if whom.otherwise.strip() or whom.instead else {}),
            **({"instead": as_plain(whom.instead)} if whom.instead else {}),
            **({"rules": rules} if (rules := _rules(words)) else {}),
        },
        parts=tuple(parts),
    )


def _rules(sheet: Sheet | None) -> list[str]:
    """Return the numbers of the Rules a ruling rests on, each once, in their order."""
    return [] if sheet is None else list(dict.fromkeys(one.citation for one in sheet.provisions))


def outcome(result: StoryResult) -> dict[str, Any]:
    """Return what the Rules said, as plain data, without the path to it: two ways to the same outcome are the same."""
    combined = as_plain(result.combined)
    if isinstance(combined, dict):
        combined.pop("reasons", None)
    return {
        "kind": type(result.combined).__name__,
        "combined": combined,
        "count": None if result.count is None else as_plain(result.count),
    }


def alike(case: Case, result: StoryResult) -> str:
    """Return what a ruling has in common with those about the same situation: a digest of what decided it.

    Equal are the incidents in order, with the facts that the Rules read on their way; what was told and decided nothing
    does not count, nor does the edition, so that rulings of before and after a change are found together.
    """
    acts = [
        {"incident": act.incident, "by": act.by, "facts": sorted(_decided(getattr(part, "reasons", ())))}
        for act, part in zip(case.incidents, result.parts, strict=True)
    ]
    return digest(canonical(acts))[:32]


def _decided(reasons: Sequence[Reason]) -> list[str]:
    return [
        canonical([one.fact, as_plain(one.answers), as_plain(one.above), as_plain(one.at_most)])
        for one in reasons
    ]


@dataclass(frozen=True, slots=True)
class Earlier:
    """An earlier ruling about the same situation.

    Attributes:
        entry: the entry.
        same: whether it went the same way.
    """

    entry: Kept
    same: bool


def earlier(log: Log, entry: Entry) -> list[Earlier]:
    """Return the rulings of all events about the same situation, the latest first, and whether each went the same way.

    One that was ruled otherwise than computed did not; corrected ones are left out.
    """
    return _earlier(log, entry.alike, entry.id, json.loads(canonical(entry.content)))


def earlier_of(log: Log, kept: Kept) -> list[Earlier]:
    """Return the rulings about the same situation as one that is recorded, as :func:`earlier` does."""
    return _earlier(log, kept.told.get("alike"), kept.id, kept.content)


def _earlier(log: Log, word: str | None, own: str, content: dict[str, Any]) -> list[Earlier]:
    others = [one for one in log.alike(word) if one.id != own and not log.corrections(one.id)] if word else []
    return [Earlier(one, _way(one.content) == _way(content)) for one in others]


def _way(content: dict[str, Any]) -> tuple[Any, bool]:
    return content.get("outcome"), bool(content.get("otherwise"))


@dataclass(frozen=True, slots=True)
class Again:
    """A recorded ruling, ruled again by today's program.

    Attributes:
        entry: the entry.
        differs: the keys of the outcome that are not as they were; ``case`` where the case can no longer be ruled.
        headline: what is said of it today, or why it can no longer be ruled.
    """

    entry: Kept
    differs: tuple[str, ...]
    headline: str


def again(entry: Kept) -> Again:
    """Rule a recorded case again, with today's program and book."""
    try:
        case = read_case(entry.content["case"], str(said("entry {number}", number=entry.number)))
        result = rule_case(case)
    except InputError as fault:
        return Again(entry, ("case",), told(fault))
    except KeyError:
        return Again(entry, ("case",), said("The entry holds no case."))
    now: dict[str, Any] = json.loads(canonical(outcome(result)))
    then = entry.content.get("outcome", {})
    differs = [key for key in ("kind", "count") if now[key] != then.get(key)]
    before, after = then.get("combined") or {}, now["combined"] or {}
    differs += [key for key in sorted({*before, *after}) if before.get(key) != after.get(key)]
    words = story_sheet(result, form_of_play=case.form_of_play, given=case.between)
    return Again(entry, tuple(differs), words.headline if words else "")
