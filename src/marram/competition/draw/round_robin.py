"""A round robin: everybody meets everybody once, by the circle method (as sport schedules have been made since the 1840s)."""

from collections.abc import Sequence


def round_robin(players: Sequence[str]) -> tuple[tuple[tuple[str, str], ...], ...]:
    """Return the matches of each round; with an odd number one rests in every round, each once."""
    circle: list[str | None] = list(players)
    if len(circle) % 2:
        circle.append(None)
    rounds = []
    for _ in range(len(circle) - 1):
        half = len(circle) // 2
        pairs = zip(circle[:half], reversed(circle[half:]), strict=True)
        rounds.append(tuple((one, two) for one, two in pairs if one is not None and two is not None))
        circle = [circle[0], circle[-1], *circle[1:-1]]
    return tuple(rounds)
