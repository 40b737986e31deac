"""An event of 312 players over three rounds from the list of entries to the closed result, step by step; beside NumPy in one run.

The first two rounds are entered through the services, the third, after the cut, card by card through the pages of the desk, the board
being read after each card. NumPy works out the same totals of everybody anew after each card and sorts them (``np.lexsort``): it knows
no cut, no ruling, no withdrawal and no page.
"""

import csv
import re
import resource
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from random import Random
from time import perf_counter

sys.path.insert(0, str(Path(__file__).parents[1]))

import numpy as np

from marram.competition.draw.order import by_seed
from marram.competition.draw.solving import draw
from marram.competition.draw.wishes import Drawn, starts
from marram.competition.entries.reading import read_entries
from marram.demo import COURSE
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.database import Records
from marram.records.entry import Entry, new_ident
from marram.records.events import Given, OtherRound, Player, Start, new_club, new_event
from marram.records.log import Log
from marram.records.making import made
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.services.cases.case import Act, Case
from marram.services.keeping import start
from marram.services.kinds.registry import checked
from marram.services.log.log import About, ruling_entry
from marram.services.results.scored import Scored, scored_in
from tests.desk.asking import TestClient

PLAYERS, CUT, RULED, SEED = 312, 70, 40, "20250614"
DAYS = (date(2025, 6, 20), date(2025, 6, 21), date(2025, 6, 22))
MOVED = {
    "cause_known": "yes",
    "area_of_ball": "general_area",
    "movement_accidental": "no",
    "handling_allowed": "no",
}
NOON = datetime(2025, 6, 20, 12, tzinfo=UTC)
CONDITIONS = {
    "form_of_play": "stroke_play",
    "sides": "individual",
    "scores": ["gross"],
    "local_rules": [],
    "results_public": True,
    "cut": {"after_round": 2, "places": CUT, "ties": True},
    "ties": {"first_place": ["play_off"], "other_places": ["countback", "shared"]},
}
_random = Random(312)


@contextmanager
def step(name: str) -> Iterator[None]:
    """Print how long a step took."""
    begun = perf_counter()
    yield
    print(f"{name:<58}{perf_counter() - begun:9.2f} s", flush=True)


def entered(folder: Path) -> list[Player]:
    """Write a list of entries as a club sends one, and read it."""
    path = folder / "entries.csv"
    with path.open("w", encoding="utf-8", newline="") as file:
        rows = csv.writer(file)
        rows.writerow(["Name", "HCP", "Club"])
        rows.writerows(
            (f"Player {n:03} Invented", f"{_random.uniform(0, 12):.1f}", f"Club {n % 40}")
            for n in range(PLAYERS)
        )
    found = read_entries(path)
    assert not found.faults, found.faults[:2]
    return [Player(one.name, str(one.handicap_index), one.club) for one in found.entries]


def drawn(players: list[Player], seed: str) -> list[Start]:
    """Draw groups of three from two tees."""
    clubs = {one.name: one.club or "" for one in players}
    order = [Drawn(key, clubs[key]) for key in by_seed(tuple(clubs), seed)]
    slots = starts(time(6, 0), PLAYERS // 3, minutes=10, tees=(1, 10))
    groups = draw(order, slots).groups
    return [Start(slot.time, slot.tee, some) for slot, some in zip(slots, groups, strict=True)]


def score(par: int) -> int:
    """Return a score by lot."""
    return max(1, par + _random.choice((-1, 0, 0, 0, 1, 1)))


def whole_round(scored: Scored, number: int) -> Iterator[Entry]:
    """Yield the entries of a round: rulings, figures of player and marker, what became of rulings, returns."""
    round_ = scored.competition.rounds[number - 1].id
    moment = NOON + timedelta(days=number - 1)
    sides = sorted(scored.competition.labels)
    ruled = set(_random.sample(sides, RULED))
    for player in sides:
        at = {"player": player, "round": round_}
        if player == sides[0] and number == 2:
            yield Entry("card_ended", moment, new_ident(), content={"how": "withdrawn"}, **at)
            continue
        scores = {str(one.number): score(one.par) for one in scored.competition.holes}
        if player in ruled:
            hole = _random.randrange(1, 19)
            day = scored.competition.day(round_)
            case = Case(
                day, (Act("ball_moved_by_player", MOVED),), FormOfPlay.STROKE_PLAY, Sides.INDIVIDUAL, (), hole
            )
            ruling = ruling_entry(case, moment, About(player=player, round=round_), ident=new_ident())
            yield ruling
            yield Entry(
                "card_settled", moment, new_ident(), content={"ruling": ruling.id, "how": "included"}, **at
            )
        for by in ("player", "marker"):
            yield Entry("card_figures", moment, new_ident(), content={"by": by, "figures": scores}, **at)
        told = {"player_certified": True, "marker_certified": True}
        yield Entry("card_returned", moment, new_ident(), content=told, **at)


def by_page(kept: KeptHere, scored: Scored) -> None:
    """Enter the third round through the desk, reading the board after each card; print the times."""
    desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
    desk.get("/board")
    board = scored.now().results[0].board
    people = scored.competition.people
    on = [people[side] for side in sorted(board.through or ())]
    gross = np.array(
        [[[score(one.par) for one in scored.competition.holes] for _ in range(3)] for _ in range(PLAYERS)]
    )
    cards, boards, peer = [], [], []
    for place, player in enumerate(on):
        url = f"/cards/3/{player}"
        scores = [score(one.par) for one in scored.competition.holes]
        begun = perf_counter()
        seen = re.search(r'name="seen" value="(\d+)"', desk.get(url).text)
        assert seen
        figures = {
            f"{by}-{hole}": str(one) for by in ("player", "marker") for hole, one in enumerate(scores, 1)
        }
        desk.post(f"{url}/figures", data={**figures, "seen": seen[1], "tapped": new_ident()})
        told = {"player_certified": "true", "marker_certified": "true", "tapped": new_ident()}
        assert desk.post(f"{url}/return", data=told).status_code == 303
        cards.append(perf_counter() - begun)
        begun = perf_counter()
        _ = scored.now().results[0].board.places
        boards.append(perf_counter() - begun)
        gross[place, 2] = scores
        begun = perf_counter()
        last = gross[:, -1]
        np.lexsort([last[:, -count:].sum(axis=1) for count in (1, 3, 6, 9)] + [gross.sum(axis=(1, 2))])
        peer.append(perf_counter() - begun)
    for name, some in (
        ("a card through the pages", cards),
        ("the board after a card", boards),
        ("NumPy after a card", peer),
    ):
        ms = sorted(1000 * one for one in some)
        print(
            f"{name:<40} p50 {ms[len(ms) // 2]:8.2f} ms   p95 {ms[len(ms) * 95 // 100]:8.2f} ms   ({len(ms)})"
        )
    settle_ties(desk, scored)
    close = desk.post("/results/close", data={"tapped": new_ident()})
    assert close.status_code == 303, re.sub(r"<[^>]+>|\s+", " ", close.text)[-700:]


def settle_ties(desk: TestClient, scored: Scored) -> None:
    """Decide a tie for the first place by a play-off, where there is one."""
    found = scored.now().results[0].board
    tied = [one.side for one in found.places if one.to_decide is not None]
    if tied:
        order = {f"order-{scored.competition.people[side]}": str(at) for at, side in enumerate(tied, 1)}
        desk.post("/results/tie", data={"method": "play_off", "tapped": new_ident(), **order})
    print(f"tied for the first place: {len(tied)}")


def add_all(records: Records, event: str, entries: list[Entry]) -> None:
    """Add entries in one transaction."""
    answers = Log(records).append_all([(event, checked(one)) for one in entries])
    assert not [one for one in answers if isinstance(one, Exception)]


def main() -> None:
    with tempfile.TemporaryDirectory() as name, made(Path(name) / "club.db") as records:
        folder = Path(name)
        course = start(records, "Quillsand Links", course_file=COURSE, maps=folder / "none").course
        with step(f"{PLAYERS} entries from a CSV file"):
            players = entered(folder)
        with step("draw of two rounds, groups of three from two tees"):
            first, second = (drawn(players, f"{SEED}{number}") for number in (1, 2))
        with step("the event with players, rounds and groups"):
            others = [OtherRound("Second", DAYS[1], second), OtherRound("Third", DAYS[2])]
            given = Given("Whole", CONDITIONS, "First", DAYS[0], course, players, (), first, others)
            event = new_event(records, new_club(records, "Quillsand Links"), given)
        scored = scored_in(records)
        for number in (1, 2):
            with step(f"round {number}: {RULED} rulings and all cards through the services"):
                add_all(records, event, list(whole_round(scored, number)))
        with step("the first board out of the whole log, with the cut"):
            board = scored.now().results[0].board
            _ = board.places
        print(f"through the cut: {len(board.through or ())}")
        with step("round 3 through the pages, and the close"):
            by_page(keep_here(records), scored)
        with step("the public board"):
            page = TestClient(create_app(kept_here=keep_here(records))).get("/board").text
        assert "closed" in page.casefold()
    print(f"most memory of the process: {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:.0f} MB")


if __name__ == "__main__":
    main()
