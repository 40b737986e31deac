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
        "fifteen excess bag 15 sixteen 16 count forgot putter wedge fifteenth before the round left behind "
        "caddie put knowingly fourteen "
        "fifteen clubs discovered during the round hole completed",
    ),
    Incident(
        "club_added",
        "A player added a club during the round",
        "4.1b",
        THEME,
        "book.rule_04_clubs:club_added",
        "fewer than fourteen borrowed picked up borrow 13 twelve thirteen add clubhouse fetched replacement",
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
        "broken repaired replaced abuse broke snapped bent cracked threw slammed temper repair replace "
        "shaft loose head putter knee anger tree lead tape grip",
    ),
    Incident(
        "club_lost",
        "A player replaced a lost club",
        "4.1b(3)",
        THEME,
        "book.rule_04_clubs:club_lost",
        "lost forgotten club left behind replace missing",
    ),
    Incident(
        "club_doubtful",
        "It is doubted that a club conforms",
        "4.1a(1)",
        THEME,
        "book.rule_04_clubs:club_doubtful",
        "non-conforming nonconforming illegal grooves conforming worn wear rattle driver face list carried",
    ),
    Incident(
        "club_changed",
        "A player changed how a club performs during the round",
        "4.1a(3)",
        THEME,
        "book.rule_04_clubs:club_changed",
        "adjusted loft lead tape substance face driver wrench adjustable setting adjusting saliva chalk weight "
        "sticker on the clubface stuck on reflective",
    ),
    Incident(
        "out_of_play_club",
        "A club was not taken out of play, or was used although out of play",
        "4.1c(1)",
        THEME,
        "book.rule_04_clubs:out_of_play_club",
        "declared excess club turned upside down used out of play aware fifteenth next stroke",
    ),
    Incident(
        "ball_doubtful",
        "It is doubted that the ball may be played",
        "4.2a",
        THEME,
        "book.rule_04_ball_and_equipment:ball_doubtful",
        "non-conforming nonconforming list altered borrowed scuffed heated refinished another player's brand "
        "x-out xout refurbished",
    ),
    Incident(
        "ball_broke",
        "The ball broke into pieces",
        "4.2b",
        THEME,
        "book.rule_04_ball_and_equipment:ball_broke",
        "split stroke pieces half broke apart shattered fell splits struck two when",
    ),
    Incident(
        "lifted_to_see_damage",
        "A player lifted the ball to see if it is cut or cracked",
        "4.2c(1)",
        THEME,
        "book.rule_04_ball_and_equipment:lifted_to_see_damage",
        "damaged ball inspect cart path cracked marked cleaned",
    ),
    Incident(
        "damaged_ball_changed",
        "A player wants to change, or changed, a damaged ball",
        "4.2c(2)",
        THEME,
        "book.rule_04_ball_and_equipment:damaged_ball_changed",
        "cut cracked scratched substitute swapped scuffed mud scraped new ball out of round path shape",
    ),
    Incident(
        "equipment_used",
        "A player used a device or other equipment",
        "4.3a",
        THEME,
        "book.rule_04_ball_and_equipment:equipment_used",
        "forbidden rangefinder phone wind music glove alignment green book dmd distance measuring device laser "
        "slope gps watch headphones earphones radio training aid weighted donut towel grip compass "
        "map audio video app swing stretching tape bandage brace medical elevation temperature forecast "
        "weather anemometer putting green reading earbuds alignment rod powder grass heart rate statistics "
        "recorded trainer resin yardage notes stick hands gadget "
        "towel held under the arm",
    ),
)
