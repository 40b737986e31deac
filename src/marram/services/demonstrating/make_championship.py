"""Make the invented championship: 156 players over two rounds with a cut, its draw, its cards; always the same from one seed.

    python -m marram.services.demonstrating.make_championship

It writes ``championship.json``, an event file, and ``championship_scores.json``: the groups of the second round, the
scores of both, the rulings and what became of cards. The second round is still being played. Scores are invented: on each
hole the player's handicap strokes over par, and a little more or less (shares of own choice).
"""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import time
from random import Random
from typing import Any

from marram.competition.conditions.choices import Score
from marram.competition.conditions.event_file import EventFile
from marram.competition.conditions.handicaps import handicap_of
from marram.competition.conditions.reading import read_event_file
from marram.competition.draw.order import by_score, by_seed
from marram.competition.draw.solving import draw
from marram.competition.draw.wishes import Apart, ClubsApart, Drawn, Start, Together, starts
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import Hole, Out, OutKind, RoundCard, Row
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.course import load
from marram.demo import CHAMPIONSHIP, CHAMPIONSHIP_SCORES, COURSE, EVENT
from marram.demo.championship_cards import (
    NOT_CERTIFIED,
    OUT_IN_FIRST,
    RETURNED_LATE,
    RULINGS,
    TOO_LOW,
)
from marram.demo.make_field import invented_field

SEED = "quillsand 2025"
DIFFERENCES = (-1, 0, 1, 2, 3)
SHARES = (17, 47, 27, 8, 1)
"""Of a hundred holes so many differ so much from par with handicap strokes (own choice)."""

FIRST_START, SECOND_START = time(7, 0), time(8, 0)
BETWEEN_GROUPS = 10
"""Minutes (own choice; common at clubs)."""
OFF_TWO_TEES = (1, 10)

FINISHED, ON_THE_COURSE = 9, 7
"""Groups of the second round whose cards are in, and those after them that are being played."""


@dataclass
class Made:
    """What is made of the championship."""

    event: dict[str, Any]
    second_round: list[dict[str, Any]] = field(default_factory=list)
    scores: dict[str, dict[str, list[int]]] = field(default_factory=dict)


def conditions() -> dict[str, Any]:
    """Return the conditions, with everybody who plays."""
    base: dict[str, Any] = json.loads(EVENT.read_text(encoding="utf-8"))
    del base["starting_times"]
    return {
        **base,
        "name": "Quillsand Championship",
        "scores": ["gross", "net"],
        "allowance": 95,
        "tees": "white",
        "ratings": [
            {"tees": "white", "course_rating": 70.9, "slope": 127, "par": 71, "sex": "male"},
            {"tees": "white", "course_rating": 74.2, "slope": 131, "par": 71, "sex": "female"},
        ],
        "divisions": [
            {"name": "First division", "handicap_to": 9.9},
            {"name": "Second division", "handicap_from": 10.0, "handicap_to": 17.9},
            {"name": "Third division", "handicap_from": 18.0},
        ],
        "cut": {"after_round": 1, "places": 60, "ties": True, "score": "net"},
        "ties": {"first_place": ["play_off"], "other_places": ["countback"]},
        "results_public": True,
        "officials": [*base["officials"], {"name": "Hesper Lymewick", "role": "scorer"}],
        "players": [
            {
                "name": name,
                "handicap_index": -float(index[1:]) if index.startswith("+") else float(index),
                "club": club,
                "sex": "male" if sex == "m" else "female",
                "born": born,
            }
            for name, index, club, sex, born, _ in invented_field()
        ],
    }


def groups_of(
    players: Sequence[str], clubs: Mapping[str, str], all_starts: Sequence[Start]
) -> list[dict[str, Any]]:
    """Draw groups in this order, no two of a club together, with two wishes; return them as an event file has them."""
    wishes = (
        ClubsApart(),
        *([Together((players[10], players[40]))] if len(players) > 100 else []),
        *([Apart(tuple(players[0:2]))] if len(players) > 100 else []),
    )
    drawn = draw([Drawn(one, clubs[one]) for one in players], all_starts, wishes)
    if drawn.clash:
        drawn = draw([Drawn(one) for one in players], all_starts)
    return [
        {"time": start.time.isoformat("minutes"), "tee": start.tee, "players": list(group)}
        for start, group in zip(all_starts, drawn.groups, strict=True)
        if group
    ]


def score(holes: Sequence[Hole], strokes: Sequence[int], seed: str) -> list[int]:
    """Return an invented round."""
    luck = Random(seed)  # noqa: S311 - an invented round needs no secrecy
    return [
        max(2, hole.par + received + luck.choices(DIFFERENCES, SHARES)[0])
        for hole, received in zip(holes, strokes, strict=True)
    ]


def made() -> Made:
    """Make the championship."""
    document = conditions()
    found = read_event_file(document)
    holes = tuple(Hole(one.number, one.par or 0, one.stroke_index) for one in load(COURSE).holes.values())
    clubs = {one.name: one.club for one in found.players}
    received = {one.name: handicap_of(found, one, holes).strokes for one in found.players}
    names = [one.name for one in found.players]
    first = {name: score(holes, received[name], f"{SEED} 1 {name}") for name in names}
    by_number = dict(enumerate(names, start=1))
    for ruling in RULINGS:
        if ruling.round == 1 and ruling.settled == "included":
            first[by_number[ruling.player]][ruling.hole - 1] += ruling.strokes
    _tie(found, first, received, by_number)
    all_starts = starts(FIRST_START, 52, minutes=BETWEEN_GROUPS, tees=OFF_TWO_TEES)
    document["starting_times"] = groups_of(by_seed(names, SEED), clubs, all_starts)
    answer = Made(document, scores={"1": first})
    on = _through(found, holes, first, received, by_number)
    totals = {name: sum(first[name]) - sum(received[name]) for name in on}
    order = by_score(totals, SEED)
    count = -(-len(order) // 3)
    answer.second_round = groups_of(order, clubs, starts(SECOND_START, count, minutes=BETWEEN_GROUPS))
    second = {}
    for number, group in enumerate(answer.second_round):
        for name in group["players"]:
            whole = score(holes, received[name], f"{SEED} 2 {name}")
            played = 18 if number < FINISHED else 18 - 2 * (number - FINISHED + 1)
            if number < FINISHED + ON_THE_COURSE and played > 0:
                second[name] = whole[:played]
    answer.scores["2"] = second
    return answer


def _tie(
    found: EventFile,
    scores: dict[str, list[int]],
    received: Mapping[str, Sequence[int]],
    by_number: Mapping[int, str],
) -> None:
    """Have two players lead the second division in net scores, level after the first round."""
    out = {by_number[one] for one in (*OUT_IN_FIRST, NOT_CERTIFIED, RETURNED_LATE, TOO_LOW)}
    division = [
        one.name
        for one in found.players
        if one.handicap_index is not None and 10 <= one.handicap_index < 18 and one.name not in out
    ]
    leader, other = sorted(division, key=lambda name: (sum(scores[name]) - sum(received[name]), name))[:2]
    while sum(scores[other]) - sum(received[other]) > sum(scores[leader]) - sum(received[leader]):
        at = max(range(18), key=lambda hole: scores[other][hole] - received[other][hole])
        scores[other][at] -= 1


def _through(
    found: EventFile,
    holes: tuple[Hole, ...],
    scores: Mapping[str, list[int]],
    received: Mapping[str, Sequence[int]],
    by_number: Mapping[int, str],
) -> list[str]:
    gone = {by_number[one] for one in (*OUT_IN_FIRST, TOO_LOW)}
    no_card = {by_number[one] for one in OUT_IN_FIRST}
    board = LeaderBoard(
        Terms(Scoring(score=Score.NET), (18, 18), found.cut),
        [
            RoundCard(
                name, 1, holes, (Row(name, tuple(scores[name]), tuple(received[name])),), sum(received[name])
            )
            for name in scores
            if name not in no_card
        ],
        sides=scores,
        out=[Out(name, OutKind.DISQUALIFIED, round=1) for name in gone],
    )
    return sorted(board.through or ())


def main() -> None:
    """Write both files."""
    found = made()
    scores = {"second_round": found.second_round, "scores": found.scores}
    for path, document in ((CHAMPIONSHIP, found.event), (CHAMPIONSHIP_SCORES, scores)):
        path.write_text(compact(document), encoding="utf-8")


def compact(document: Mapping[str, Any]) -> str:
    """Return JSON with one line for each entry of the long lists."""
    lines = []
    for key, value in document.items():
        if isinstance(value, list) and len(value) > 4 and isinstance(value[0], dict):
            rows = ",\n".join("    " + json.dumps(one, ensure_ascii=False) for one in value)
            lines.append(f"  {json.dumps(key)}: [\n{rows}\n  ]")
        elif key == "scores" and isinstance(value, dict):
            rounds = []
            for number, each in value.items():
                rows = ",\n".join(
                    f"      {json.dumps(k, ensure_ascii=False)}: {json.dumps(v)}" for k, v in each.items()
                )
                rounds.append(f"    {json.dumps(number)}: {{\n{rows}\n    }}")
            lines.append(f"  {json.dumps(key)}: {{\n" + ",\n".join(rounds) + "\n  }")
        else:
            lines.append(f"  {json.dumps(key)}: {json.dumps(value, ensure_ascii=False)}")
    return "{\n" + ",\n".join(lines) + "\n}\n"


if __name__ == "__main__":
    main()
