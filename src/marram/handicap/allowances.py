"""Appendix C: the recommended handicap allowances, by format of play.

Read in the table of the governing bodies (Appendix C, 2024; the table of 2020 second-hand, with the same figures but
no row for a scramble of three). What a table recommends a Committee may change: it states the allowance in the Terms of
the Competition. The 95 % are meant for fields of medium size; with fewer than 30 players 100 % is suggested
(Clarification C/1, the number second-hand).
"""

from dataclasses import dataclass
from enum import Enum
from fractions import Fraction

from marram.errors import BadHandicap
from marram.handicap.editions import LATEST, Edition
from marram.said import said


class Format(Enum):
    """A format of play of Appendix C."""

    STROKE_PLAY = "stroke_play"
    STABLEFORD = "stableford"
    PAR_BOGEY = "par_bogey"
    MAXIMUM_SCORE = "maximum_score"
    FOUR_BALL_STROKE_PLAY = "four_ball_stroke_play"
    FOUR_BALL_STABLEFORD = "four_ball_stableford"
    FOUR_BALL_PAR_BOGEY = "four_ball_par_bogey"
    MATCH_PLAY = "match_play"
    FOUR_BALL_MATCH_PLAY = "four_ball_match_play"
    FOURSOMES = "foursomes"
    GREENSOMES = "greensomes"
    CHAPMAN = "chapman"
    BEST_1_OF_4 = "best_1_of_4"
    BEST_2_OF_4 = "best_2_of_4"
    BEST_3_OF_4 = "best_3_of_4"
    ALL_4_OF_4 = "all_4_of_4"
    SCRAMBLE_4 = "scramble_4"
    SCRAMBLE_3 = "scramble_3"
    SCRAMBLE_2 = "scramble_2"
    TOTAL_OF_2_MATCH_PLAY = "total_of_2_match_play"
    BEST_1_OF_4_PAR_BOGEY = "best_1_of_4_par_bogey"
    BEST_2_OF_4_PAR_BOGEY = "best_2_of_4_par_bogey"
    BEST_3_OF_4_PAR_BOGEY = "best_3_of_4_par_bogey"
    ALL_4_OF_4_PAR_BOGEY = "all_4_of_4_par_bogey"


@dataclass(frozen=True, slots=True)
class Allowance:
    """A handicap allowance.

    Attributes:
        shares: in per cent of each Course Handicap, lowest handicap first. One share is that of every player on their
            own; several make one handicap of a side together.
    """

    shares: tuple[int, ...]

    @property
    def of_side(self) -> bool:
        """Whether the partners have one Playing Handicap together."""
        return len(self.shares) > 1

    def of(self, place: int) -> Fraction:
        """Return the share of the player at a place, lowest handicap first, as a part of one."""
        return Fraction(self.shares[place], 100)


_TABLE = {
    Format.STROKE_PLAY: (95,),
    Format.STABLEFORD: (95,),
    Format.PAR_BOGEY: (95,),
    Format.MAXIMUM_SCORE: (95,),
    Format.FOUR_BALL_STROKE_PLAY: (85,),
    Format.FOUR_BALL_STABLEFORD: (85,),
    Format.FOUR_BALL_PAR_BOGEY: (90,),
    Format.MATCH_PLAY: (100,),
    Format.FOUR_BALL_MATCH_PLAY: (90,),
    Format.FOURSOMES: (50, 50),
    Format.GREENSOMES: (60, 40),
    Format.CHAPMAN: (60, 40),
    Format.BEST_1_OF_4: (75,),
    Format.BEST_2_OF_4: (85,),
    Format.BEST_3_OF_4: (100,),
    Format.ALL_4_OF_4: (100,),
    Format.SCRAMBLE_4: (25, 20, 15, 10),
    Format.SCRAMBLE_3: (30, 20, 10),
    Format.SCRAMBLE_2: (35, 15),
    Format.TOTAL_OF_2_MATCH_PLAY: (100,),
    Format.BEST_1_OF_4_PAR_BOGEY: (75,),
    Format.BEST_2_OF_4_PAR_BOGEY: (80,),
    Format.BEST_3_OF_4_PAR_BOGEY: (90,),
    Format.ALL_4_OF_4_PAR_BOGEY: (100,),
}
_NOT_IN_2020 = {Format.SCRAMBLE_3}
SMALL_FIELD = 30
"""Fewer players than these are a small field (second-hand, to Clarification C/1)."""

AGAINST_PAR = {
    Format.STABLEFORD,
    Format.PAR_BOGEY,
    Format.FOUR_BALL_STABLEFORD,
    Format.FOUR_BALL_PAR_BOGEY,
    Format.BEST_1_OF_4_PAR_BOGEY,
    Format.BEST_2_OF_4_PAR_BOGEY,
    Format.BEST_3_OF_4_PAR_BOGEY,
    Format.ALL_4_OF_4_PAR_BOGEY,
}
"""Formats whose results are told against par or in points (Rule 6.2b)."""


def allowance(form: Format, *, edition: Edition = LATEST) -> Allowance:
    """Return the recommended allowance of a format of play (Appendix C).

    Raises:
        BadHandicap: the table of that edition has no such format.
    """
    if edition is Edition.OF_2020 and form in _NOT_IN_2020:
        raise BadHandicap(
            said(
                "Appendix C of 2020 recommends nothing for a scramble of three. Give the allowance of the Terms of the Competition."
            )
        )
    return Allowance(_TABLE[form])


def for_field(form: Format, players: int, *, edition: Edition = LATEST) -> Allowance:
    """Return what is suggested for a field of some players: 100 % where 95 % are meant for more (Clarification C/1)."""
    usual = allowance(form, edition=edition)
    return Allowance((100,)) if usual.shares == (95,) and players < SMALL_FIELD else usual
