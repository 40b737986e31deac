"""How somebody tells it: facts about Local Rules on clubs, balls, transport, shoes and devices (area G)."""

TOLD: dict[str, str] = {
    "approved_book_only.yes": "Only a yardage book or map approved for the competition was used, with no notes on greens but those allowed.",
    "approved_book_only.no": "What was used was not approved for the competition, or held notes on greens that are not allowed.",
    "cracked_or_loose.yes": "The head or face is visibly cracked, the shaft dented or kinked, or something is loose in the head.",
    "cracked_or_loose.no": "There is no crack, no dent in face or shaft, and nothing loose in the head.",
    "driver_made_before_1999.yes": "The driver head was made before 1999.",
    "driver_made_before_1999.no": "The driver head was made in 1999 or later.",
    "ride_allowed.yes": "The Committee allowed the ride, or it was because of stroke and distance.",
    "ride_allowed.no": "The Committee had not allowed the ride, and it was not because of stroke and distance.",
    "same_kind_of_club.yes": "The new club does what the damaged one did.",
    "same_kind_of_club.no": "The new club is of another kind than the damaged one.",
    "shoes_barred.yes": "A stroke was made in shoes of a kind that the Local Rule bars.",
    "shoes_barred.no": "The shoes were not of a kind that the Local Rule bars.",
    "limited_ball.not_listed": "The ball is not on the List of Conforming Golf Balls.",
    "limited_ball.other_model": "The ball is on the List of Conforming Golf Balls, but of another model than {player} began the round with.",
    "limited_club.driver_not_listed": "It is a driver whose head is not on the List of Conforming Driver Heads.",
    "limited_club.old_grooves": "It has grooves or punch marks that do not meet the specifications of 1 January 2010.",
    "limited_club.too_long": "It is longer than 46 inches (1.168 m), and not a putter.",
}
