"""Facts about a stroke-play play-off (Committee Procedures, Section 7A)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice


class PlayOff(Enum):
    """Who did not complete the play-off."""

    ONE_OF_TWO = "one_of_two"
    SOME_OF_SEVERAL = "some_of_several"


not_completing_play_off = choice(
    "not_completing_play_off",
    "Who was disqualified in the play-off, conceded defeat in it or gave it up?",
    {
        PlayOff.ONE_OF_TWO: "one of two players",
        PlayOff.SOME_OF_SEVERAL: "one or more of three or more players",
    },
    help="A play-off in stroke play, over one hole or several. What led to it is an incident of its own.",
    source="3.3a",
    decided_by=DecidedBy.COMMITTEE,
)
