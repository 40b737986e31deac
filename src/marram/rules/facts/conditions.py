"""The conditions of the competition: date of play, form of play, Local Rules in force."""

from enum import Enum
from typing import Any

from marram.rules.engine.fact import DecidedBy, Fact, choice, yes_no


class FormOfPlay(Enum):
    """How the competition is scored (Rules 3 and 21)."""

    STROKE_PLAY = "stroke_play"
    MATCH_PLAY = "match_play"
    STABLEFORD = "stableford"
    MAXIMUM_SCORE = "maximum_score"
    PAR_BOGEY = "par_bogey"


class Sides(Enum):
    """Who plays together (Rules 22 and 23)."""

    INDIVIDUAL = "individual"
    FOURSOMES = "foursomes"
    FOUR_BALL = "four_ball"


date_of_play: Fact[Any] = Fact(
    "date_of_play",
    "On what day was it played?",
    "The day of the round decides which edition of the Rules and which clarifications apply.",
    "1.1",
    DecidedBy.COMMITTEE,
    is_date=True,
)

form_of_play = choice(
    "form_of_play",
    "What is the form of play?",
    {
        FormOfPlay.STROKE_PLAY: "stroke play",
        FormOfPlay.MATCH_PLAY: "match play",
        FormOfPlay.STABLEFORD: "Stableford",
        FormOfPlay.MAXIMUM_SCORE: "Maximum Score",
        FormOfPlay.PAR_BOGEY: "Par/Bogey",
    },
    help="The Terms of the Competition name it.",
    source="3.1",
    decided_by=DecidedBy.COMMITTEE,
)

sides = choice(
    "sides",
    "Do players compete alone or with a partner?",
    {
        Sides.INDIVIDUAL: "each alone",
        Sides.FOURSOMES: "Foursomes: two partners share one ball",
        Sides.FOUR_BALL: "Four-Ball: two partners, each with a ball",
    },
    help="The Terms of the Competition name it.",
    source="22, 23",
    decided_by=DecidedBy.COMMITTEE,
)


def _local_rule(code: str, title: str) -> Fact[bool]:
    return yes_no(
        "local_rule_" + code.lower().replace("-", "_").replace(".", "_"),
        f"Is Model Local Rule {code} ({title}) in force?",
        help="It is in force only if the Committee has adopted it; look at the notice to players.",
        source=code,
        decided_by=DecidedBy.COMMITTEE,
    )


LOCAL_RULES: dict[str, Fact[bool]] = {
    code: _local_rule(code, title)
    for code, title in {
        "D-3": "no relief when a wrong green interferes with the stance only",
        "D-7": "no replay when a putt hits the player, the club or an insect",
        "E-5": "alternative to stroke and distance",
        "G-5": "distance-measuring devices forbidden",
        "G-9": "replacing only a broken or significantly damaged club",
        "L-1": "softer penalty for hole scores not certified",
    }.items()
}
"""Whether each Model Local Rule is in force, by its published code."""
