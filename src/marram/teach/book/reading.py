"""What a page of the book says: of a provision, of an incident, of a situation."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from random import Random

from marram.rules.editions import EDITION_2019, as_clarified
from marram.rules.incidents import incident
from marram.rules.incidents.incident import Incident
from marram.rules.ruling import Ruling
from marram.teach.beliefs.telling import Believed
from marram.teach.book.contents import Entry, editions_of, exceptions_of, part_of
from marram.teach.book.permanent import address_of, situation_at
from marram.teach.briefings.points import FOR_BEGINNERS, answers
from marram.teach.explaining import Decided
from marram.teach.lesson import lesson
from marram.teach.situations.how_often import weight
from marram.teach.situations.reaching import citations_of, met_in, offered_by, reached
from marram.teach.situations.sampling import situation
from marram.teach.situations.situation import Situation, ruled
from marram.teach.what_changed.register import BY_KEY
from marram.words.headline import headline
from marram.words.provisions import Cited, cited
from marram.words.texts import text

SITUATIONS = 3
"""How many situations a page shows (own choice: one easy to read, more beside it)."""
_TRIES = 8


@dataclass(frozen=True, slots=True)
class Told:
    """A situation as a page tells it.

    Attributes:
        words: the telling, without the scene.
        now: the ruling of the newest edition in one line.
        before: that of 2019, where the same facts were ruled otherwise; empty else.
        address: its own page.
    """

    words: str
    now: str
    before: str
    address: str


@dataclass(frozen=True, slots=True)
class Changed:
    """How a provision was until 2022, and how it is: in our own words."""

    title: str
    before: str
    now: str


@dataclass(frozen=True, slots=True)
class Page:
    """What the page of a provision says.

    Attributes:
        entry: the provision.
        belongs_to: the provision that it is an Exception or Clarification of.
        exceptions: its own Exceptions and Clarifications.
        editions: the editions that hold it, where the tables tell; empty: nothing is told.
        changed: what the edition of 2023 changed in it.
        situations: situations whose ruling rests on it.
        incidents: what can have happened where it is met.
    """

    entry: Entry
    belongs_to: Entry | None
    exceptions: tuple[Entry, ...]
    editions: tuple[int, ...]
    changed: tuple[Changed, ...]
    situations: tuple[Told, ...]
    incidents: tuple[Incident, ...]


def page_of(entry: Entry) -> Page:
    """Return what the page of a provision says."""
    names = sorted(met_in()[entry.citation], key=lambda name: (-weight(incident(name)), name))
    return Page(
        entry,
        part_of(entry),
        tuple(exceptions_of(entry)),
        editions_of(entry),
        tuple(_changes(entry)),
        tuple(told(one) for one in situations_of(tuple(names), entry.citation)),
        tuple(incident(name) for name in names),
    )


def of_incident(name: str) -> tuple[tuple[Told, ...], tuple[str, ...]]:
    """Return situations of an incident, and the provisions that its rulings rest on."""
    found = situations_of((name,), "")
    return tuple(told(one) for one in found), tuple(reached()[name])


@lru_cache(maxsize=2048)
def situations_of(names: tuple[str, ...], provision: str) -> tuple[Situation, ...]:
    """Return a few situations of some incidents whose rulings rest on a provision or offer relief under it, no two told alike, the easiest first.

    Of an incident by itself, what beginners meet of it comes before all.
    """
    kept: dict[str, Situation] = {}
    usual = ""
    for number in range(_TRIES):
        name = names[number % len(names)]
        lot = Random(f"{provision} {name} {number}")  # noqa: S311 - the same on every visit
        point = FOR_BEGINNERS.get(name, {}) if not provision and not kept else {}
        found = situation(name, lot, provision, answers(point), offered=True)
        if found is None:
            continue
        one = situation_at(
            name, [("form", found.form.value), *((key, str(to)) for key, to in found.facts.items())]
        )
        if not provision or provision in (*citations_of(one.ruling), *offered_by(one.ruling)):
            kept.setdefault(_words(one), one)
            usual = usual or (_words(one) if point else "")
        if len(kept) == SITUATIONS:
            break
    return tuple(sorted(kept.values(), key=lambda one: (_words(one) != usual, one.level)))


def told(one: Situation) -> Told:
    """Return a situation as a page tells it."""
    before = one.ruled_otherwise_before
    line = "" if before is None else headline(before, one.form)
    return Told(
        " ".join(one.told("")[1:]), one.headline, line if line != one.headline else "", address_of(one)
    )


def _words(one: Situation) -> str:
    return " ".join(one.told("")[1:])


def _changes(entry: Entry) -> Iterable[Changed]:
    for key, known in BY_KEY.items():
        if known.rule == entry.citation:
            yield Changed(*(text(f"what_changed.{key}.{part}") for part in ("title", "before", "now")))


@dataclass(frozen=True, slots=True)
class Ruled:
    """What the page of a situation says beside its telling.

    Attributes:
        now: the ruling of the newest edition in one line.
        before: the ruling of 2019 in one line; empty where that edition asks something else.
        same: whether both rule alike.
        provisions: what it rests on, with what each says.
        decided: the facts that decided, with where other answers would have led.
        path: the way there as a picture: for a phone, and for a wide screen; empty where nothing was asked.
        principles: the principles behind it, in our own words.
        believed: what players commonly believe of it and why it is wrong.
    """

    now: str
    before: str
    same: bool
    provisions: tuple[Cited, ...]
    decided: tuple[Decided, ...]
    path: tuple[str, ...]
    principles: tuple[str, ...]
    believed: tuple[Believed, ...]


def ruled_of(name: str, pairs: tuple[tuple[str, str], ...]) -> Ruled:
    """Return the ruling of the situation that an address holds, with why, on both editions."""
    return explained(situation_at(name, pairs))


def explained(one: Situation) -> Ruled:
    """Return the ruling of a situation with why, on both editions."""
    before = ruled(one.incident, one.facts, one.form, as_clarified(EDITION_2019))
    line = headline(before, one.form) if isinstance(before, Ruling) else ""
    found = lesson(one.incident, one.facts, played_on=one.played_on, form_of_play=one.form)
    return Ruled(
        one.headline,
        line,
        one.ruled_otherwise_before is None and bool(line),
        tuple(cited(each) for each in one.ruling.citations),
        found.decided,
        found.path,
        found.principles,
        found.believed,
    )
