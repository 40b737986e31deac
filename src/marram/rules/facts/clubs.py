"""Facts about clubs (Rule 4.1)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, number, yes_no


class ClubState(Enum):
    """Why it is doubted that a club conforms."""

    WORN = "worn"
    DAMAGED_IN_ROUND = "damaged_in_round"
    NOT_CONFORMING = "not_conforming"


class StrokeWithClub(Enum):
    """Whether a stroke was made with the club."""

    NONE = "none"
    NOT_COUNTED = "not_counted"
    COUNTED = "counted"


class ChangedClub(Enum):
    """What became of a club whose playing characteristics the player had changed."""

    PUT_BACK = "put_back"
    NOT_USED = "not_used"
    USED = "used"


class AfterDamage(Enum):
    """What the player did with the damaged club."""

    KEPT = "kept"
    REPAIRED = "repaired"
    REPLACED = "replaced"
    NOTHING_YET = "nothing_yet"


class DamagedBy(Enum):
    """How the club was damaged."""

    ABUSE = "abuse"
    PLAYER_NOT_ABUSE = "player_not_abuse"
    OTHERS = "others"


class ClubSource(Enum):
    """Where an added or replacement club came from."""

    ELSEWHERE = "elsewhere"
    PLAYER_ON_COURSE = "player_on_course"
    BUILT_FROM_PARTS = "built_from_parts"
    DELAYED_PLAY = "delayed_play"


class ExcessNoticed(Enum):
    """When the player became aware of carrying too many clubs."""

    BEFORE_ROUND = "before_round"
    BROUGHT_KNOWINGLY = "brought_knowingly"
    DURING_ROUND = "during_round"
    ANOTHERS_CARRIED_IN = "anothers_carried_in"


class SharedClub(Enum):
    """Whose club the player used or added."""

    PARTNER = "partner"
    OTHER_PLAYER = "other_player"
    PICKED_UP_ONLY = "picked_up_only"


class OutOfPlayFault(Enum):
    """What went wrong in taking clubs out of play."""

    USED_AGAIN = "used_again"
    NOT_TAKEN_OUT = "not_taken_out"


club_state = choice(
    "club_state",
    "Why is it doubted that the club conforms?",
    {
        ClubState.WORN: "worn by normal use",
        ClubState.DAMAGED_IN_ROUND: "damaged during this round or while play was stopped",
        ClubState.NOT_CONFORMING: "it does not conform to the Equipment Rules",
    },
    help="A club damaged before the round must conform again before it is used.",
    source="4.1a(1)",
    decided_by=DecidedBy.COMMITTEE,
)
stroke_with_club = choice(
    "stroke_with_club",
    "Was a stroke made with the club?",
    {
        StrokeWithClub.COUNTED: "yes",
        StrokeWithClub.NOT_COUNTED: "only one that does not count (cancelled, provisional never in play)",
        StrokeWithClub.NONE: "no, it was only carried",
    },
    help="Carrying such a club is allowed, but it counts towards the 14.",
    source="4.1a(1), Clarification 4.1a(1)/2",
)
changed_club = choice(
    "changed_club",
    "What became of the club after the player had changed how it performs?",
    {
        ChangedClub.PUT_BACK: "adjusted back, or the substance removed, before any stroke with it",
        ChangedClub.NOT_USED: "no stroke was made with it",
        ChangedClub.USED: "a stroke was made with it as changed",
    },
    help="Adjusting loft or weight, or putting something on the face other than to clean it.",
    source="4.1a(3)",
)
after_damage = choice(
    "after_damage",
    "What did the player do with the damaged club?",
    {
        AfterDamage.KEPT: "went on using it",
        AfterDamage.REPAIRED: "had it repaired as nearly as possible to what it was",
        AfterDamage.REPLACED: "replaced it with another club",
        AfterDamage.NOTHING_YET: "nothing yet: what may be done with it?",
    },
    help="Damaged during the round or while play was stopped.",
    source="4.1a(2)",
)
damaged_by = choice(
    "damaged_by",
    "How was it damaged?",
    {
        DamagedBy.ABUSE: "by abuse, such as throwing or breaking it in anger",
        DamagedBy.PLAYER_NOT_ABUSE: "by the player, caddie or partner, without abuse",
        DamagedBy.OTHERS: "by another person, an outside influence or natural forces",
    },
    help="Until 2022 only damage by others let the club be replaced.",
    source="4.1a(2)",
)
significantly_damaged = yes_no(
    "significantly_damaged",
    "Is the club broken or significantly damaged (shaft, head or face, loose head, grip gone)?",
    help="Shaft in pieces, splintered or bent; head off, loose or much deformed; face deformed; grip loose. Not: only cracked.",
    source="G-9",
)
club_source = choice(
    "club_source",
    "How did the player come by the club?",
    {
        ClubSource.ELSEWHERE: "from the shop, car or anyone not playing on the course, without delay",
        ClubSource.PLAYER_ON_COURSE: "borrowed from a player who is playing on the course",
        ClubSource.BUILT_FROM_PARTS: "built from parts carried by or for players on the course",
        ClubSource.DELAYED_PLAY: "from elsewhere, but play was unreasonably delayed",
    },
    help="It does not matter in which group or competition the other player plays.",
    source="4.1b(4)",
)
more_than_fourteen = yes_no(
    "more_than_fourteen",
    "With this club, were there more than 14 (partners who share: together; not counting parts, or another's club only carried in)?",
    help="Count every club carried by or for the player; parts of broken clubs do not count.",
    source="4.1b(1)",
)
excess_noticed = choice(
    "excess_noticed",
    "When did the player become aware of having more than 14 clubs?",
    {
        ExcessNoticed.BEFORE_ROUND: "shortly before starting the round; the club was there by accident",
        ExcessNoticed.BROUGHT_KNOWINGLY: "it was brought knowingly, and not left behind before starting",
        ExcessNoticed.DURING_ROUND: "after starting the round",
        ExcessNoticed.ANOTHERS_CARRIED_IN: "the excess is another's club, found or put in the bag by mistake since, and not used",
    },
    help="Only a club there by accident may be taken out of play before the start and kept in the bag.",
    source="4.1c(2)",
)
holes_with_breach = number(
    "holes_with_breach",
    "On how many holes did the breach happen?",
    help="Holes with an excess club, or a stroke with the wrong one; 0 if no stroke at all was made since it was added.",
    source="4.1b",
    unit="holes",
    minimum=0,
)
whose_club = choice(
    "whose_club",
    "Whose club was used?",
    {
        SharedClub.PARTNER: "the partner's",
        SharedClub.OTHER_PLAYER: "that of another player who is playing on the course",
        SharedClub.PICKED_UP_ONLY: "another player's, found or picked up, carried along and not used",
    },
    help="A club from anybody who is not playing on the course counts as added, not shared.",
    source="4.1b(2)",
)
out_of_play_fault = choice(
    "out_of_play_fault",
    "What went wrong in taking a club out of play?",
    {
        OutOfPlayFault.USED_AGAIN: "a stroke was made with a club that had been taken out of play",
        OutOfPlayFault.NOT_TAKEN_OUT: "aware of the breach, the player made a stroke before taking a club out of play",
    },
    help="Out of play: told to the opponent, marker or another player, or shown by a clear act.",
    source="4.1c(1)",
)
had_fourteen_clubs = yes_no(
    "had_fourteen_clubs",
    "Had the player 14 clubs, counting the lost or damaged one?",
    help="Count those of the start and those added since.",
    source="4.1b(1), 4.1b(3)",
)
