"""How the handicaps on a card came about, in sentences: why somebody has the strokes that the card gives."""

from dataclasses import dataclass

from marram.services.results.competition_kept import CompetitionKept
from marram.words.handicap import handicap_words, step_words
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class HandicapTold:
    """A handicap of a card and how it came about.

    Attributes:
        title: whose it is and how much.
        steps: the steps of the calculation, each with its Rule of Handicapping.
    """

    title: str
    steps: tuple[str, ...]


def handicaps_told(competition: CompetitionKept, side: str) -> tuple[HandicapTold, ...]:
    """Return each handicap on the card of a side that was worked out; none that was given or is not known.

    Args:
        competition: the competition.
        side: the identifier of the side.
    """
    balls = competition.ball_names(side)
    some = (
        {name: competition.handicaps_of_balls.get(one) for one, name in balls.items()}
        if balls
        else {competition.labels[side]: competition.handicaps.get(side)}
    )
    return tuple(
        HandicapTold(
            text("cards.handicap.how", name=name, handicap=handicap_words(has.playing)),
            tuple(map(step_words, has.steps)),
        )
        for name, has in some.items()
        if has is not None and has.playing is not None and has.steps
    )
