"""Facts about Local Rules on clubs, balls, transport, shoes and devices (area G)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class LimitedClub(Enum):
    """What a Local Rule holds against a club."""

    DRIVER_NOT_LISTED = "driver_not_listed"
    OLD_GROOVES = "old_grooves"
    TOO_LONG = "too_long"


class LimitedBall(Enum):
    """What a Local Rule holds against a ball."""

    NOT_LISTED = "not_listed"
    OTHER_MODEL = "other_model"


limited_club = choice(
    "limited_club",
    "What does the Local Rule hold against the club?",
    {
        LimitedClub.DRIVER_NOT_LISTED: "a driver whose head is not on the List of Conforming Driver Heads",
        LimitedClub.OLD_GROOVES: "grooves or punch marks that do not meet the specifications of 1 January 2010",
        LimitedClub.TOO_LONG: "it is longer than 46 inches (1.168 m), and not a putter",
    },
    help="Look the club up in the lists of the governing bodies; measure as the Equipment Rules say.",
    source="G-1, G-2, G-10",
    decided_by=DecidedBy.COMMITTEE,
)
driver_made_before_1999 = yes_no(
    "driver_made_before_1999",
    "Was the driver head made before 1999?",
    help="Such heads are exempt from the list.",
    source="G-1",
    decided_by=DecidedBy.COMMITTEE,
)
limited_ball = choice(
    "limited_ball",
    "What does the Local Rule hold against the ball?",
    {
        LimitedBall.NOT_LISTED: "it is not on the List of Conforming Golf Balls",
        LimitedBall.OTHER_MODEL: "it is listed, but of another brand or model than the player began the round with",
    },
    help="Each entry of the list is a ball of its own: another colour is another ball.",
    source="G-3, G-4",
    decided_by=DecidedBy.COMMITTEE,
)
ride_allowed = yes_no(
    "ride_allowed",
    "Did the Committee allow the ride, before or afterwards, or was it because of stroke and distance?",
    help="Going back to play again, or forward after it, is always allowed. Since 2026 the Committee may also excuse a ride taken in good faith.",
    source="G-6",
    decided_by=DecidedBy.COMMITTEE,
)
shoes_barred = yes_no(
    "shoes_barred",
    "Was a stroke made in shoes of a kind that the Local Rule bars?",
    help="Such as metal or traditionally designed spikes; read which kinds it names.",
    source="G-7",
)
approved_book_only = yes_no(
    "approved_book_only",
    "Was only a yardage book or map approved for the competition used, with no notes on greens but those allowed?",
    help="Allowed on greens: what player or caddie wrote by hand, from balls seen rolling (also on television) or from feel, not measured.",
    source="G-11",
    decided_by=DecidedBy.COMMITTEE,
)
cracked_or_loose = yes_no(
    "cracked_or_loose",
    "Is head or face visibly cracked, the face dented, the shaft dented or kinked, or something loose in the head?",
    help="Since 2025 such damage is enough. Scratches are not, nor a chip or small dent in the head.",
    source="G-9",
)
same_kind_of_club = yes_no(
    "same_kind_of_club",
    "Does the new club do what the damaged one did (a driver for a driver, a putter for a putter)?",
    help="For an iron, one that fills its gap in the set. The Local Rule as adopted may say more.",
    source="G-9",
)
