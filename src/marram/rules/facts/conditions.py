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
    """Who plays together, or against whom at once (Rules 21.4, 22 and 23)."""

    INDIVIDUAL = "individual"
    FOURSOMES = "foursomes"
    FOUR_BALL = "four_ball"
    THREE_BALL = "three_ball"
    """Three players, each in a match with each of the others; nobody has a partner (Rule 21.4)."""
    BEST_OF_FOUR = "best_of_four"
    """Sides of up to four partners, each with a ball, of which one score or more count: a form of play that a
    Committee sets up on Rule 23; each reference to the other partner means all others, as in Best-Ball (Rule 23.1).
    That Rule 23.1 is read so for more than three partners is our own reading."""


EACH_PLAYS_OWN_BALL = frozenset({Sides.FOUR_BALL, Sides.BEST_OF_FOUR})
"""Sides whose partners each play a ball of their own: Rule 23 says who bears a penalty."""


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
        Sides.THREE_BALL: "Three-Ball: a match with each of two opponents at once",
        Sides.BEST_OF_FOUR: "best of four: up to four partners, each with a ball",
    },
    help="The Terms of the Competition name it. Threesomes: as Foursomes. Best-Ball: as Four-Ball for the side.",
    source="21.4, 22, 23",
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


LOCAL_RULE_TITLES: dict[str, str] = {
    "A-2": "which edge of a wall or road is the boundary",
    "A-3": "a public road through the course, 2019; a boundary fence treated otherwise, since 2023",
    "A-4": "a boundary inside the course for some holes",
    "A-4.2": "a boundary inside the course for strokes from the teeing area",
    "A-5": "stakes that only show a boundary are obstructions",
    "B-2": "relief on the opposite side of a red penalty area",
    "B-3": "provisional ball for a ball that may be in a penalty area",
    "B-4": "a ditch or watercourse that is no penalty area",
    "D-3": "no relief when a wrong green interferes with the stance only",
    "D-4.1": "relief from a wrong green clear of its fringe",
    "D-4.2": "the fringe belongs to the wrong green",
    "D-5": "practice or unused temporary greens that are no wrong greens",
    "D-7": "no replay when a putt hits the player, the club or an insect",
    "E-1": "dropping zones",
    "E-1.3": "dropping zones that are the only relief",
    "E-2": "cleaning the ball",
    "E-3": "preferred lies",
    "E-4": "relief from aeration holes",
    "E-5": "alternative to stroke and distance",
    "E-9": "an area out of bounds that is a no play zone",
    "E-10": "protection of young trees",
    "E-11": "ball deflected by a power line",
    "E-12": "mats on the fairway; until 2022 a ball dropped back on the line that rolls out of the relief area",
    "F-2.1": "embedded ball relief only at fairway height or less",
    "F-2.2": "no relief for a ball embedded in a stacked turf face above a bunker",
    "F-3": "ground under repair joined to an obstruction is one condition with it",
    "F-4": "unusual damage that a referee may declare ground under repair",
    "F-5": "immovable obstructions close to the putting green",
    "F-6": "no relief when a condition interferes with the stance only",
    "F-7": "relief from seams of laid turf",
    "F-8": "relief from cracks in the ground",
    "F-9": "relief from tree roots at fairway height",
    "F-10": "damage by animals",
    "F-11": "ant hills: removed, or ground under repair",
    "F-12": "animal dung: removed, or ground under repair",
    "F-13": "damage by hooves",
    "F-14": "accumulations of loose impediments",
    "F-16": "flooded bunkers taken out of play",
    "F-17": "all roads and paths are obstructions",
    "F-18": "movable obstructions treated as immovable",
    "F-21": "painted lines or dots",
    "F-22": "temporary power lines and cables",
    "F-23": "temporary immovable obstructions",
    "G-1": "only listed driver heads",
    "G-2": "only clubs with grooves as specified in 2010",
    "G-3": "only listed balls",
    "G-4": "one model of ball throughout the round",
    "G-5": "distance-measuring devices forbidden",
    "G-6": "no riding during the round",
    "G-7": "certain shoes forbidden",
    "G-8": "audio and video devices forbidden",
    "G-9": "replacing only a broken or significantly damaged club",
    "G-10": "no club but a putter longer than 46 inches",
    "G-11": "only yardage books and maps that are approved",
    "H-1.1": "caddies forbidden",
    "H-1.2": "certain caddies forbidden",
    "H-1.3": "caddies required",
    "H-2": "advice givers of a team",
    "H-4": "the advice giver counts as a member of the side",
    "H-5": "team members in one group may advise each other",
    "I-1.1": "no practice on the course before or between rounds of a match",
    "I-1.2": "practice on the course before or between rounds of stroke play",
    "I-2": "no practice at the green just completed",
    "J-2": "sweeping temporary water off the putting green",
    "K-1": "maximum time for a round or a number of holes",
    "K-2": "pace of play policy with timing of strokes",
    "K-3": "pace of play policy by holes, 2019; another scale of penalties, since 2023",
    "K-4": "pace of play policy by checkpoints",
    "K-5": "another scale of penalties for slow play, until 2022",
    "L-1": "softer penalty for hole scores not certified",
    "L-2": "player answers for the handicap on the scorecard",
    "M-1": "placing the ball for a wheeled mobility device",
}
"""What each Model Local Rule that a ruling can ask for is about, by its published code."""

LOCAL_RULES: dict[str, Fact[bool]] = {
    code: _local_rule(code, title) for code, title in LOCAL_RULE_TITLES.items()
}
"""Whether each Model Local Rule is in force, by its published code."""
