"""Facts about the marker in stroke play (Rule 3.3b)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class WhoKeptScore(Enum):
    """Who kept the player's score on the holes in question."""

    OTHER_PERSON = "other_person"
    PARTNER = "partner"
    NOBODY = "nobody"


who_kept_score = choice(
    "who_kept_score",
    "Who kept the player's score on the holes without the marker?",
    {
        WhoKeptScore.OTHER_PERSON: "another person, who was there on those holes",
        WhoKeptScore.PARTNER: "only the player's own partner",
        WhoKeptScore.NOBODY: "nobody but the player",
    },
    help="A marker may be another player or anyone the Committee accepts, never a partner.",
    source="3.3b, Definitions: marker",
)
marker_change_approved = yes_no(
    "marker_change_approved",
    "Does the Committee approve the change of marker?",
    help="Approval may also be given afterwards; each marker certifies the holes where he or she kept the score.",
    source="3.3b",
    decided_by=DecidedBy.COMMITTEE,
)
