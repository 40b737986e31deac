"""Incidents: clubs, ball and equipment."""

from marram.rules.incidents.incident import Incident

THEME = "Clubs, ball and equipment"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "too_many_clubs",
        "A player has more than 14 clubs",
        "4.1b(1)",
        THEME,
        "book.rule_04_clubs:too_many_clubs",
        "fifteen excess bag 15 sixteen 16 count forgot putter wedge",
    ),
    Incident(
        "club_added",
        "A player added a club during the round",
        "4.1b",
        THEME,
        "book.rule_04_clubs:club_added",
        "fewer than fourteen borrowed picked up borrow 13 twelve",
    ),
    Incident(
        "club_shared",
        "A player used another player's club",
        "4.1b(2)",
        THEME,
        "book.rule_04_clubs:club_shared",
        "borrowed shared partner borrow someone else used putter by mistake",
    ),
    Incident(
        "club_damaged",
        "A club was damaged during the round",
        "4.1a(2)",
        THEME,
        "book.rule_04_clubs:club_damaged",
        "broken repaired replaced abuse broke snapped bent cracked threw slammed temper",
    ),
    Incident(
        "club_lost",
        "A player replaced a lost club",
        "4.1b(3)",
        THEME,
        "book.rule_04_clubs:club_lost",
        "lost forgotten club",
    ),
    Incident(
        "club_doubtful",
        "It is doubted that a club conforms",
        "4.1a(1)",
        THEME,
        "book.rule_04_clubs:club_doubtful",
        "non-conforming illegal grooves conforming",
    ),
    Incident(
        "club_changed",
        "A player changed how a club performs during the round",
        "4.1a(3)",
        THEME,
        "book.rule_04_clubs:club_changed",
        "adjusted loft lead tape substance face driver wrench",
    ),
    Incident(
        "out_of_play_club",
        "A club was not taken out of play, or was used although out of play",
        "4.1c(1)",
        THEME,
        "book.rule_04_clubs:out_of_play_club",
        "declared excess club",
    ),
    Incident(
        "ball_doubtful",
        "It is doubted that the ball may be played",
        "4.2a",
        THEME,
        "book.rule_04_ball_and_equipment:ball_doubtful",
        "non-conforming list altered borrowed",
    ),
    Incident(
        "ball_broke",
        "The ball broke into pieces",
        "4.2b",
        THEME,
        "book.rule_04_ball_and_equipment:ball_broke",
        "split stroke",
    ),
    Incident(
        "lifted_to_see_damage",
        "A player lifted the ball to see if it is cut or cracked",
        "4.2c(1)",
        THEME,
        "book.rule_04_ball_and_equipment:lifted_to_see_damage",
        "damaged ball",
    ),
    Incident(
        "damaged_ball_changed",
        "A player wants to change, or changed, a damaged ball",
        "4.2c(2)",
        THEME,
        "book.rule_04_ball_and_equipment:damaged_ball_changed",
        "cut cracked scratched substitute swapped scuffed mud",
    ),
    Incident(
        "equipment_used",
        "A player used a device or other equipment",
        "4.3a",
        THEME,
        "book.rule_04_ball_and_equipment:equipment_used",
        "rangefinder phone wind music glove alignment green book dmd distance measuring device laser "
        "slope gps watch headphones earphones radio training aid weighted donut towel grip compass "
        "map",
    ),
)
