"""The invented club's records with cards entered, for tests of what is made of them."""

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from marram.competition.cards.acts import By
from marram.competition.results.card import HoleScore
from marram.course import load
from marram.demo import COURSE, EVENT
from marram.records.database import Records
from marram.records.entry import Entry, Kept, new_ident
from marram.records.log import Log
from marram.records.starting_sheet import events
from marram.services.cards.card_log import card_kept, entering
from marram.services.kinds.registry import checked
from marram.services.log.tap import Tap
from marram.services.results.competition_kept import CompetitionKept, competition_kept
from marram.services.results.event_results import CardNow, EventResults, ResultsNow
from tests.clubs import club_records

NOON = datetime(2025, 6, 21, 12, tzinfo=UTC)
PARS = (4, 3, 5, 4, 3, 4, 4, 3, 5, 4, 4, 4, 3, 5, 4, 4, 3, 5)


class Scoring:
    """An event whose cards are entered."""

    def __init__(self, records: Records) -> None:
        self.records = records
        self.event = events(records)[0].id
        self.log = Log(records)
        self.course = load(COURSE)
        self.results = EventResults(self.log, self.event)
        self.moment = NOON

    @property
    def competition(self) -> CompetitionKept:
        return competition_kept(self.records, self.event, self.course)

    def add(self, entry: Entry) -> Kept:
        return self.log.append(self.event, checked(entry))

    def entry(self, kind: str, key: tuple[str, str], content: Mapping[str, Any], **more: Any) -> Kept:
        self.moment += timedelta(seconds=1)
        return self.add(Entry(kind, self.moment, player=key[0], round=key[1], content=content, **more))

    def enter(
        self, key: tuple[str, str], by: By, scores: Mapping[int, HoleScore], seen: int | None = None
    ) -> list[Kept]:
        card = card_kept(*key, self.log.entries(self.event, player=key[0]), range(1, 19))
        tap = Tap(new_ident(), NOON, None, self.log.head(self.event) if seen is None else seen)
        return [self.add(one) for one in entering(card, by, scores, tap)]

    def whole(self, key: tuple[str, str], scores: tuple[int, ...] = PARS, **returned: Any) -> None:
        for by in (By.PLAYER, By.MARKER):
            self.enter(key, by, dict(enumerate(scores, start=1)))
        told = {"player_certified": True, "marker_certified": True, **returned}
        self.entry("card_returned", key, told)

    def card(self, key: tuple[str, str]) -> CardNow:
        return self.results.card(self.competition, {}, key)

    def now(self) -> ResultsNow:
        return self.results.now(self.competition, {})


@contextmanager
def scoring(folder: Path, event: Path | Mapping[str, Any] = EVENT) -> Iterator[Scoring]:
    """The invented club's records."""
    with club_records(folder, event) as records:
        yield Scoring(records)
