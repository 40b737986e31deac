"""What is left for a ball that was not found, way by way: "take relief" would not say whether going back is one of them."""

from marram.rules.relief_option import ReliefKind, ReliefOption
from marram.rules.ruling import Action, Ruling
from marram.words.messages import say
from marram.words.texts import text

_OUTSIDE_PENALTY_AREA = "17.2"
"""The Rule of relief outside a penalty area that the last stroke was made from."""
_ALTERNATIVE = "E-5"


def ways_back(ruling: Ruling) -> str:
    """Return the ways in which a ball can be put in play again, as an answer says them; empty where it says them already.

    Args:
        ruling: a ruling about a ball that was not found.
    """
    if ruling.action is not Action.TAKE_RELIEF:
        return ""
    ways = dict.fromkeys(_way(option) for option in ruling.relief)
    if len(ways) < 2 or "" in ways:
        return ""
    return say("TERMS", "next.or").join(text(f"quizzes.way.{way}") for way in ways)


def _way(option: ReliefOption) -> str:
    """Return the name of a way; empty for one that an answer names well enough."""
    if option.citation.startswith(_OUTSIDE_PENALTY_AREA):
        return "outside_penalty_area"
    if option.kind is ReliefKind.STROKE_AND_DISTANCE:
        return "back"
    if option.kind is ReliefKind.DROPPING_ZONE:
        return "dropping_zone"
    return "alternative" if option.citation == _ALTERNATIVE else ""
