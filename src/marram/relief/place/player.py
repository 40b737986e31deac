"""The player, as far as a relief area depends on who plays."""

from dataclasses import dataclass
from math import isfinite

from marram.errors import BadPlace
from marram.said import said

USUAL_CLUB_LENGTH = 1.15
"""Metres: the length of a usual driver, about 45¼ inches (common practice among manufacturers; the
Equipment Rules allow a club other than a putter up to 48 inches, Model Local Rule G-10 up to 46). The
player's own longest club other than the putter is what counts (Definition of club-length): measure it."""

LONGEST_CLUB = 1.2192
"""Metres: 48 inches, the longest a club other than a putter may be (Equipment Rules, Part 2)."""

SHORTEST_CLUB = 0.4572
"""Metres: 18 inches, the shortest a club may be (Equipment Rules, Part 2)."""


@dataclass(frozen=True, slots=True)
class Player:
    """A player.

    Attributes:
        club_length: metres, from the toe to the butt end of the grip, of the longest of the player's clubs
            other than a putter. Default: a usual driver.
        right_handed: whether the player stands to the left of the ball, seen in the direction of play;
            ``None`` when not known. It is needed to find a nearest point of complete relief.
    """

    club_length: float = USUAL_CLUB_LENGTH
    right_handed: bool | None = None

    def __post_init__(self) -> None:
        if not isfinite(self.club_length) or not SHORTEST_CLUB <= self.club_length <= LONGEST_CLUB + 0.01:
            raise BadPlace(
                said(
                    "A club-length of {club_length} m cannot be: clubs other than putters measure "
                    "{shortest_club} m to {longest_club} m. Give it in metres.",
                    club_length=self.club_length,
                    shortest_club=SHORTEST_CLUB,
                    longest_club=LONGEST_CLUB,
                )
            )
