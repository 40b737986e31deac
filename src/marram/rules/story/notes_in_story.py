"""Which notes of single acts hold in a story: what an act said for want of knowing the others is left out."""

from collections.abc import Sequence
from dataclasses import replace

from marram.rules.facts.several import about_ball
from marram.rules.ruling import Action, Ruling, Stroke
from marram.rules.story.breaches import Told
from marram.rules.story.deeds import NOTHING_DONE, Deed
from marram.rules.story.provisional import PROVISIONAL_BALLS

ON_NEXT_HOLE = "on_next_hole"
"""The note of a breach between two holes: its penalty counts on the one to come (Rules 5.5b and 4.1b)."""
HAS_BEEN_PLAYED = "ball_has_been_played"
"""The note of a story in which the ball was played after all else that was done with it."""
_COUNTED_IN_THE_STORY = "provisional_cost_its_stroke"
"""What a single act does not count, and a story does: the stroke by which a provisional ball came into play."""
_IF_A_PROVISIONAL_WAS_PLAYED = "provisional_abandoned_if_played"


def fitting(ruling: Ruling, deeds: Sequence[Deed], told: Told) -> Ruling:
    """Return the ruling on all acts without what is said of a provisional ball where none was told.

    That the penalty of one act counts on the next hole is said of that act, not of the total. Where the last that
    happened with the ball is a stroke, it is not to be played as it lay before, but from where it came to rest.
    """
    left_out = {ON_NEXT_HOLE, _COUNTED_IN_THE_STORY}
    if not any(deed.tells_of_provisional for deed in deeds) and not any(
        told.get(about) in PROVISIONAL_BALLS for about in about_ball
    ):
        left_out.add(_IF_A_PROVISIONAL_WAS_PLAYED)
    notes = tuple(note for note in ruling.notes if note not in left_out)
    several = sum(deed is not NOTHING_DONE for deed in deeds) > 1
    played = ruling.action is Action.PLAY_AS_IT_LIES and ruling.stroke is Stroke.COUNTS
    if several and played and "relief_has_been_taken" not in notes:
        notes = (HAS_BEEN_PLAYED, *notes)
    return replace(ruling, notes=notes)


def begins_next_hole(deed: Deed) -> bool:
    """Whether an act happened between two holes, with its penalty on the one to come."""
    return ON_NEXT_HOLE in deed.ruling.notes
