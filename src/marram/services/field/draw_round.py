"""The draw of a round of an event as it stands: who plays on by which score, and with whom they played in the rounds before."""

from marram.errors import InputError
from marram.records.starting_sheet import GroupOfDay, groups, round_conditions
from marram.rules.facts.conditions import Sides
from marram.services.field.draw_kept import Asked, DrawFound, draw_for
from marram.services.field.next_round import playing_on
from marram.services.results.scored import Scored


def draw_of_round(scored: Scored, number: int, asked: Asked) -> DrawFound:
    """Return the draw of a round by its number, from 1; nothing is kept.

    Raises:
        InputError: nobody to draw, no score yet to draw by, starts that cannot be, a wish that cannot be read.
    """
    return draw_for(
        scored.competition.entries,
        asked,
        before=groups_before(scored, number),
        scores=scores_so_far(scored) if asked.order == "score" else None,
        pairs=_in_pairs(scored, number),
    )


def groups_before(scored: Scored, number: int) -> list[GroupOfDay]:
    """Return the groups of every round before one."""
    earlier = scored.competition.rounds[: number - 1]
    return [group for one in earlier for group in groups(scored.records, one.id)]


def scores_so_far(scored: Scored) -> dict[str, int]:
    """Return who plays on by the first result, or by that which decides the cut, each with the score so far.

    Raises:
        InputError: there is no result yet, or the cut cannot be made.
    """
    if why_not := scored.competition.why_no_cards():
        raise InputError(why_not)
    by = scored.competition.file.cut.score if scored.competition.file.cut else None
    whole = [one for one in scored.now().results if one.division is None]
    result = next((one for one in whole if by is None or one.score is by), whole[0])
    known = playing_on(result.board)
    members, people = scored.competition.members, scored.competition.people
    return {person: score for side, score in known.items() for person in members[people[side]]}


def _in_pairs(scored: Scored, number: int) -> bool:
    """Return whether two play together as a side in a round."""
    this = scored.competition.rounds[number - 1]
    own = round_conditions(scored.records, scored.event)[this.id].get("sides")
    sides = Sides(own) if own else scored.competition.file.sides
    return sides in (Sides.FOURSOMES, Sides.FOUR_BALL)
