"""The invented championship put into records: its event, the cards of its first round, a second round that is being played."""

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import datetime, time, timedelta, tzinfo
from pathlib import Path
from typing import Any
from uuid import NAMESPACE_URL, uuid5
from zoneinfo import ZoneInfo

from marram.competition.cards.acts import By
from marram.competition.conditions.reading import read_event_file
from marram.course.loading import load
from marram.demo import CHAMPIONSHIP, CHAMPIONSHIP_SCORES, COURSE
from marram.demo.championship_cards import (
    NOT_CERTIFIED,
    ON_THE_COURSE,
    OUT_IN_FIRST,
    RETURNED_LATE,
    RULINGS,
    TOO_LOW,
    InventedRuling,
)
from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Entry
from marram.records.events import Start, new_club, new_event
from marram.records.log import Log
from marram.records.starting_sheet import GroupOfDay, groups, officials, time_zone
from marram.services.cards.card_log import ANSWERED, ENDED, FIGURES, FOUND_OUT, RETURNED, SETTLED
from marram.services.cards.card_rulings import rulings_due
from marram.services.cases.case import Act, Case, Spot
from marram.services.cases.case_file import read_case
from marram.services.keeping import given_event, start
from marram.services.kinds.registry import checked
from marram.services.kinds.rulings import Instead
from marram.services.log.log import About, ruling_entry
from marram.services.log.opinions import answering, asking
from marram.services.log.tap import Tap
from marram.services.results.competition_kept import CompetitionKept, competition_kept
from marram.services.results.event_results import CardKey, EventResults

ROUND_LASTS = timedelta(minutes=268)
"""From a start to the card (own choice)."""


def championship(records: Records, club: str, zone: str | None = None, maps: Path | None = None) -> str:
    """Put the invented championship into records that hold no event of its name; return its identifier.

    Args:
        records: where.
        club: the name of the club.
        zone: the IANA name of the zone its clocks show.
        maps: the folder of map versions; ``None`` for that of the user's own data.
    """
    started = start(records, club, time_zone=zone, course_file=COURSE, maps=maps)
    shipped: dict[str, Any] = json.loads(CHAMPIONSHIP_SCORES.read_text(encoding="utf-8"))
    given = given_event(read_event_file(CHAMPIONSHIP), started.course)
    second = tuple(
        Start(time.fromisoformat(one["time"]), one["tee"], tuple(one["players"]))
        for one in shipped["second_round"]
    )
    given = replace(given, other_rounds=[replace(one, starts=second) for one in given.other_rounds])
    event = new_event(records, new_club(records, club), given)
    _Playing(records, event, shipped["scores"]).play()
    return event


@dataclass
class _Playing:
    """The log of the championship as it is written."""

    records: Records
    event: str
    scores: Mapping[str, Mapping[str, list[int]]]

    def play(self) -> None:
        """Write the log."""
        self.log = Log(self.records)
        self.competition: CompetitionKept = competition_kept(self.records, self.event, load(COURSE))
        kept = time_zone(self.records, self.event)
        self.zone: tzinfo | None = ZoneInfo(kept) if kept else datetime.now().astimezone().tzinfo
        self.names = [one["name"] for one in json.loads(CHAMPIONSHIP.read_text(encoding="utf-8"))["players"]]
        known = officials(self.records, self.event, "referee")
        self.referees = [one.id for one in known]
        self.scorer = officials(self.records, self.event, "scorer")[0].id
        self.chief = officials(self.records, self.event, "chief_referee")[0].id
        first, second = self.competition.rounds
        sheets = {one.id: groups(self.records, one.id) for one in (first, second)}
        self.begun = {
            (player.id, round_): self._moment(round_, group)
            for round_, known_groups in sheets.items()
            for group in known_groups
            for player in group.players
        }
        entries = [*self._first(first.id), *self._second(second.id, sheets[second.id])]
        answers = self.log.append_all([(self.event, checked(one)) for one in entries])
        faults = [one for one in answers if isinstance(one, InputError)]
        assert not faults, faults[0]
        for one in RULINGS:
            if one.doubted:
                key = (self._person(one.player), first.id)
                self._asked_again(key, one, self._ruling(key, one))
        self._ruled(first.id)

    def _moment(self, round_: str, group: GroupOfDay) -> datetime:
        return datetime.combine(self.competition.day(round_), group.starts_at or time(8), self.zone)

    def _person(self, number: int) -> str:
        return self.competition.people[self.names[number - 1]]

    def _entry(
        self,
        kind: str,
        key: CardKey,
        after: timedelta,
        content: Mapping[str, Any],
        *,
        hole: int | None = None,
    ) -> Entry:
        what = f"{self.event} {kind} {key} {after} {json.dumps(content, sort_keys=True)}"
        return Entry(
            kind,
            self.begun[key] + after,
            str(uuid5(NAMESPACE_URL, what)),
            by=self.scorer,
            player=key[0],
            round=key[1],
            hole=hole,
            content=content,
        )

    def _ruling(self, key: CardKey, one: InventedRuling) -> Entry:
        conditions = self.competition.file
        assert conditions.form_of_play
        places = {"ball": Spot(*one.at)} if one.at else {}
        case = Case(
            self.competition.day(key[1]),
            (Act(one.incident, dict(one.facts), places=places, option=one.option),),
            conditions.form_of_play,
            conditions.sides,
            conditions.local_rules,
            one.hole,
        )
        after = timedelta(minutes=15 * one.hole)
        by = self.referees[0 if one.hole <= 9 else 1]
        what = f"{self.event} ruling {key} {one.hole} {one.incident}"
        given = Instead(penalty_strokes=0) if one.otherwise else None
        about = About(by, key[0], key[1], otherwise=one.otherwise, instead=given)
        return ruling_entry(case, self.begun[key] + after, about, ident=str(uuid5(NAMESPACE_URL, what)))

    def _asked_again(self, key: CardKey, one: InventedRuling, ruling: Entry) -> None:
        """Ask the chief referee about a ruling that was doubted, and have it answered."""
        at = self.begun[key] + timedelta(minutes=15 * one.hole)
        idents = [str(uuid5(NAMESPACE_URL, f"{ruling.id} {what}")) for what in ("asked", "given")]
        case, headline = read_case(ruling.content["case"]), str(ruling.content["headline"])
        asked = asking(
            idents[0],
            at + timedelta(minutes=3),
            by=ruling.by,
            about=ruling.id,
            case=case,
            headline=headline,
            thinks=one.doubted,
            player=key[0],
        )
        self._append(asked)
        kept = self.log.entry(idents[0])
        assert kept is not None
        chief = self.chief
        self._append(
            answering(idents[1], at + timedelta(minutes=8), kept, by=chief, agrees=True, words=one.answered)
        )

    def _figures(self, key: CardKey, by: By, scores: list[int], after: timedelta = ROUND_LASTS) -> Entry:
        figures = {str(hole): score for hole, score in enumerate(scores, start=1)}
        return self._entry(FIGURES, key, after, {"by": by.value, "figures": figures})

    def _whole(self, key: CardKey, scores: list[int], **told: Any) -> Iterator[Entry]:
        for by in (By.PLAYER, By.MARKER):
            yield self._figures(key, by, scores)
        at = (self.begun[key] + ROUND_LASTS).isoformat()
        content = {"player_certified": True, "marker_certified": True, "at": at, **told}
        yield self._entry(RETURNED, key, ROUND_LASTS + timedelta(minutes=4), content)

    def _first(self, round_: str) -> Iterator[Entry]:
        """Yield what happened in the first round."""
        out = {self._person(number): how for number, how in OUT_IN_FIRST.items()}
        told: dict[str, dict[str, Any]] = {
            self._person(NOT_CERTIFIED): {"marker_certified": False},
            self._person(RETURNED_LATE): {"promptly": False},
        }
        settling = []
        for one in RULINGS:
            key = (self._person(one.player), round_)
            ruling = self._ruling(key, one)
            yield ruling
            if not one.settled:
                continue
            content = {"ruling": ruling.id, "how": one.settled}
            settling.append(self._entry(SETTLED, key, ROUND_LASTS + timedelta(minutes=2), content))
        yield from settling
        for name, scores in self.scores["1"].items():
            key = (self.competition.people[name], round_)
            if key[0] in out:
                yield self._entry(ENDED, key, timedelta(hours=2), {"how": out[key[0]]})
            else:
                yield from self._whole(key, scores, **told.get(key[0], {}))
        key = (self._person(TOO_LOW), round_)
        actual = self.scores["1"][self.names[TOO_LOW - 1]][8] + 1
        yield self._entry(FOUND_OUT, key, timedelta(hours=6), {"score": actual}, hole=9)

    def _second(self, round_: str, sheet: list[GroupOfDay]) -> Iterator[Entry]:
        """Yield what has happened so far in the second round: groups that are in, and those on the course."""
        playing: list[str] = []
        for group in sheet:
            for player in group.players:
                scores = self.scores["2"].get(player.name)
                if scores is None:
                    continue
                key = (player.id, round_)
                if len(scores) == len(self.competition.holes):
                    yield from self._whole(key, scores)
                else:
                    playing.append(player.id)
                    after = timedelta(minutes=15 * len(scores))
                    yield self._figures(key, By.SCORER, scores, after)
        for place, ruling in ON_THE_COURSE:
            yield self._ruling((playing[3 * place], round_), ruling)

    def _ruled(self, round_: str) -> None:
        """Answer what the Rules ask about the few cards, but one, and record what they say."""
        told = {
            RETURNED_LATE: {"marker_at_fault": "yes"},
            TOO_LOW: {"why_too_low": "other"},
            **{
                one.player: {"why_too_low": "penalty_not_known"}
                for one in RULINGS
                if one.settled == "not_included"
            },
        }
        read = EventResults(self.log, self.event)
        for number, facts in told.items():
            key = (self._person(number), round_)
            for finding in read.card(self.competition, {}, key).outcome.questions:
                content = {"finding": finding.name, "facts": facts}
                self._append(self._entry(ANSWERED, key, timedelta(hours=7), content))
            answered = read.card(self.competition, {}, key)
            ident = str(uuid5(NAMESPACE_URL, f"{self.event} ruled {key}"))
            tap = Tap(ident, self.begun[key] + timedelta(hours=7), self.scorer)
            for one in rulings_due(answered, self.log.entries(self.event, player=key[0]), tap):
                self._append(one)

    def _append(self, entry: Entry) -> None:
        self.log.append(self.event, checked(entry))
