"""A draw of 156 players with 40 wishes, and the time to name a clash among them.

python bench/draw.py [--runs 3]
"""

import argparse
import random
import statistics
import time as clock
from datetime import time

from marram.competition.draw.solving import draw
from marram.competition.draw.wishes import Apart, ClubsApart, Drawn, NotBefore, Part, Together, Within, starts


def field(count=156, clubs=24):
    return [Drawn(f"player {number}", f"club {number * 7 % clubs}") for number in range(count)]


def wishes(players, seed=5):
    """39 wishes that can all hold, and that no two of one club meet."""
    keys = [one.key for one in players]
    pick = random.Random(seed)
    pick.shuffle(keys)
    pairs = [(keys[2 * number], keys[2 * number + 1]) for number in range(50)]
    club = {one.key: one.club for one in players}
    together = [Together(pair) for pair in pairs if club[pair[0]] != club[pair[1]]][:12]
    apart = [Apart(pair) for pair in pairs[30:40]]
    within = [Within(key, pick.choice(list(Part))) for key in keys[110:120]]
    later = [NotBefore(key, time(8, pick.randrange(60))) for key in keys[120:127]]
    return [ClubsApart(), *together, *apart, *within, *later]


def median(runs, work):
    taken = []
    for _ in range(runs):
        before = clock.perf_counter()
        work()
        taken.append(clock.perf_counter() - before)
    return statistics.median(taken)


def main() -> None:
    asked = argparse.ArgumentParser()
    asked.add_argument("--runs", type=int, default=3)
    runs = asked.parse_args().runs
    players = field()
    slots = starts(time(7, 30), 52, minutes=10, tees=(1, 10))
    wanted = wishes(players)
    found = draw(players, slots, wanted)
    assert not found.clash
    print(f"{len(players)} players, {len(slots)} groups, {len(wanted)} wishes, median of {runs}")
    print(
        f"drawn in {median(runs, lambda: draw(players, slots, wanted)):.2f} s; {found.moved} moved for a wish"
    )
    one = wanted[1].players
    clashing = [*wanted, Apart(one)]
    told = draw(players, slots, clashing)
    print(
        f"clash named in {median(runs, lambda: draw(players, slots, clashing)):.2f} s: {[wish.said() for wish in told.clash]}"
    )


if __name__ == "__main__":
    main()
