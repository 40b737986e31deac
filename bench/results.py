"""Results of 1,000 players over two rounds, net with countback, recomputed after one card: beside NumPy in the same process.

NumPy works out the same totals and the same last nine, six, three and one holes of everybody anew from one array and sorts them
(``np.lexsort``); it keeps nothing between two cards, knows no cut, no partial round and no exact fractions (its are floats).
"""

from dataclasses import replace
from random import Random
from time import process_time

import numpy as np

from marram.competition.conditions.choices import Score, TieMethod
from marram.competition.conditions.event_file import Ties
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import Hole, RoundCard, Row
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms

PLAYERS, ROUNDS, HOLES, REPEATS = 1000, 2, 18, 30
PARS = (4, 5, 3, 4, 4, 4, 3, 5, 4, 4, 3, 4, 5, 4, 4, 3, 4, 5)
COURSE = tuple(Hole(number, par, number) for number, par in enumerate(PARS, start=1))
METHODS = (TieMethod.COUNTBACK, TieMethod.SHARED)


def cards() -> list[RoundCard]:
    """Return the cards of everybody, from a seed."""
    random = Random(13)
    found = []
    for number in range(PLAYERS):
        handicap = random.randint(-2, 30)
        strokes = tuple(handicap // 18 + (hole.stroke_index <= handicap % 18) for hole in COURSE)
        for round_ in range(1, ROUNDS + 1):
            gross = tuple(max(1, hole.par + random.choice((-1, 0, 0, 1, 1, 2))) for hole in COURSE)
            side = f"player {number:04}"
            found.append(RoundCard(side, round_, COURSE, (Row(side, gross, strokes),), handicap))
    return found


def by_numpy(gross: np.ndarray, handicap: np.ndarray) -> np.ndarray:
    """Return everybody in order, from strokes of shape (players, rounds, holes) and handicaps of shape (players,)."""
    last = gross[:, -1]
    keys = [gross.sum(axis=(1, 2)) - ROUNDS * handicap, last.sum(axis=1) - handicap]
    keys += [last[:, -count:].sum(axis=1) - handicap * count / HOLES for count in (9, 6, 3, 1)]
    keys += [last[:, 9 - count : 9].sum(axis=1) - handicap * count / HOLES for count in (6, 3, 1)]
    return np.lexsort(keys[::-1])


def main() -> None:
    given = cards()
    terms = Terms(Scoring(score=Score.NET), (HOLES,) * ROUNDS, ties=Ties(METHODS, METHODS))
    board = LeaderBoard(terms, given)
    begun = process_time()
    _ = board.places
    first = process_time() - begun
    random, ours, peer = Random(7), [], []
    gross = np.array([card.rows[0].gross for card in given]).reshape(PLAYERS, ROUNDS, HOLES)
    handicap = np.array([card.handicap for card in given[::ROUNDS]])
    for _ in range(REPEATS):
        at = random.randrange(len(given))
        card = given[at]
        hole, score = random.randrange(HOLES), random.randint(2, 9)
        row = card.rows[0]
        changed = (*row.gross[:hole], score, *row.gross[hole + 1 :])
        given[at] = replace(card, rows=(replace(row, gross=changed),))
        begun = process_time()
        board = board.with_card(given[at])
        places = board.places
        ours.append(process_time() - begun)
        gross[at // ROUNDS, at % ROUNDS, hole] = score
        begun = process_time()
        order = by_numpy(gross, handicap)
        peer.append(process_time() - begun)
    same = sum(
        ours_.side == f"player {theirs:04}"
        for ours_, theirs in zip(places, order, strict=True)
        if not ours_.shared
    )
    unshared = sum(not one.shared for one in places)
    median, beside = sorted(ours)[REPEATS // 2], sorted(peer)[REPEATS // 2]
    print(f"processor time; {PLAYERS} players, {ROUNDS} rounds: the first board {first * 1000:.1f} ms")
    print(
        f"after one card: {median * 1000:.2f} ms (longest {max(ours) * 1000:.2f}); NumPy {beside * 1000:.2f} ms; "
        f"ratio {median / beside:.1f}"
    )
    print(f"places that are not shared and the same in both: {same} of {unshared}")


if __name__ == "__main__":
    main()
