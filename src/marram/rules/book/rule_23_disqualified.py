"""Rule 23.9b (2019: Rule 23.8b): one partner of a Four-Ball side is disqualified: who is out, and of what.

The book has two lists of Rules: those where one partner puts the side out, and those where it takes both. The lists
of the present editions were not found in print. What is taken for granted here is what memory and the published
predecessors (Rules 30-3e and 31-7 until 2018) say alike; a ruling that rests on it says so, and where they do not
say the same the Committee decides with the book.
"""

from enum import Enum

from marram.rules.book.plain_outcomes import out
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.partners import other_partner_completed
from marram.rules.penalty import Penalty, PenaltyKind, Who
from marram.rules.ruling import Action, Judgement, Ruling, no_penalty


class Listed(Enum):
    """What a disqualification of one partner is about."""

    HOLE = "hole"
    """A hole not completed: that partner has no score there (Rule 23.2a, Clarification 23.2a/1)."""
    CARD = "card"
    """The side's scorecard (Rule 23.2b)."""
    BY_ONE = "by_one"
    BY_BOTH = "by_both"
    NOT_KNOWN = "not_known"


_HOLING_OUT = "3.3c"
"""Not holing out, which a partner need not do where the other completes the hole (Rule 23.2a)."""
HOLE, CARD, BY_ONE, BY_BOTH = Listed.HOLE, Listed.CARD, Listed.BY_ONE, Listed.BY_BOTH

_LISTS: tuple[tuple[Listed, tuple[str, ...]], ...] = (
    (HOLE, ("3.3c", "6.1b", "6.3c", "14.7b")),
    (CARD, ("3.3b", "23.2b", "L-2")),
    (BY_ONE, ("1.2", "1.3", "4.1", "4.2", "4.3", "5.2", "5.6", "G-", "I-1", "K-")),
    (BY_BOTH, ("5.3", "5.4", "5.7")),
)


def which_list(citation: str) -> Listed:
    """Return what a disqualification under a provision is about."""
    for listed, rules in _LISTS:
        if citation.startswith(rules):
            return listed
    return Listed.NOT_KNOWN


@provision("23.2a")
def hole_lost_to_partner(case: Case, citation: str) -> Ruling:
    """A partner without a valid score leaves the hole to the other; with neither, the side has no score."""
    if case[other_partner_completed]:
        if citation == _HOLING_OUT:
            return score_of_other_counts(case)
        alone = Penalty(PenaltyKind.DISQUALIFICATION_FOR_HOLE, citation, Who.ONE_PARTNER)
        ruling = Ruling(penalties=(alone,), citations=("23.2a", citation)).next(Action.HOLE_OVER)
        return ruling.note("other_partners_score_counts")
    return out("3.3c", Who.SIDE).under("23.2a", citation)


@provision("23.2a")
def score_of_other_counts(_case: Case) -> Ruling:
    """Where one partner completes the hole the other need not: without penalty, that one's score is the side's."""
    return no_penalty("23.2a").next(Action.HOLE_OVER).note("other_partners_score_counts")


def without_score_for_hole(citation: str) -> Ruling:
    """For a Rule on neither list the partner has no score for that hole, and the other plays on (Rule 23.9b(3))."""
    alone = Penalty(PenaltyKind.DISQUALIFICATION_FOR_HOLE, citation, Who.ONE_PARTNER)
    return (
        Ruling(penalties=(alone,), citations=(citation,)).next(Action.HOLE_OVER).note("partner_plays_hole_on")
    )


def left_open(citation: str) -> Judgement:
    """Return the judgement on a Rule of which it is not known on which list it stands."""
    return Judgement(
        citation,
        "committee",
        (
            "look_up_list_of_rules",
            "side_out_by_one_partner",
            "side_out_in_match_or_stroke_play",
            "side_out_by_both_partners",
            "else_no_score_for_hole",
        ),
        (out(citation, Who.SIDE), without_score_for_hole(citation)),
    )
