"""Who plays on after a round: so many places, with or without those tied for the last, or within some strokes of the lead."""

from collections.abc import Sequence

from marram.competition.conditions.event_file import Cut
from marram.competition.results.side_score import SideScore


def through(cut: Cut, order: Sequence[Sequence[SideScore]]) -> frozenset[str]:
    """Return who plays on.

    With ``places`` and ``within`` both given, whoever either lets in plays on.

    Args:
        cut: the cut.
        order: the sides after the round, the best first, together where they are tied: by their totals where those tied
            for the last place all play on, otherwise as the methods for ties put them. Those still tied over the line
            do not play on; but somebody always does.
    """
    found: set[str] = set()
    for tied in order:
        some = [one.side for one in tied]
        in_places = cut.places is not None and (
            len(found) < cut.places if cut.ties else len(found) + len(some) <= cut.places
        )
        if not in_places and found:
            break
        found.update(some)
    if cut.within is not None:
        lead = order[0][0].rank(True) if order else 0
        found.update(one.side for tied in order for one in tied if one.rank(True) <= lead + cut.within)
    return frozenset(found)
