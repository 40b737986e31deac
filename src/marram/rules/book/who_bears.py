"""Rules 21.4, 22.2 and 23.9: who bears a penalty where players compete as sides. The one place that decides it.

What the incident itself costs is ruled first, as for a single player; then this says on whom it falls, with the
questions of its own that it needs. Penalties that already name a partner or the side are left as they are.
"""

from collections.abc import Callable
from dataclasses import replace

from marram.rules.book.plain_outcomes import free
from marram.rules.book.rule_23_disqualified import (
    BY_BOTH,
    BY_ONE,
    CARD,
    HOLE,
    hole_lost_to_partner,
    left_open,
)
from marram.rules.book.rule_23_disqualified import which_list as which
from marram.rules.done_wrong import corrections_of
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import EACH_PLAYS_OWN_BALL, Sides, sides
from marram.rules.facts.forms import WhomElse, whom_else
from marram.rules.facts.partners import partner_also_disqualified, score_counts_for_side
from marram.rules.penalty import Penalty, PenaltyKind, Who
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Action, Judgement, Outcome, Ruling, Stroke

_OF_THE_SIDE: dict[Who, Who] = {
    Who.PLAYER: Who.SIDE,
    Who.ONE_PARTNER: Who.SIDE,
    Who.EACH_PARTNER: Who.SIDE,
    Who.OPPONENT: Who.OTHER_SIDE,
    Who.OTHER_PLAYER: Who.OTHER_SIDE,
    Who.EACH_PLAYER: Who.EACH_SIDE,
}
_OWN_BALL_OR_TIME = (
    *(
        "5.3",
        "5.6",
        "6.1b",
        "6.3b",
        "7.3",
        "7.4",
        "9.4",
        "9.7b",
        "13.1b",
        "14.1",
        "14.2",
        "14.3",
        "14.7a",
        "15.1",
    ),
    *("16.", "17.", "18.", "19.", "E-5", "4.2c"),
)
"""Acts with the player's own ball only, lateness and delay, and the cost of relief: that they help no partner and hurt
no opponent is not asked (our own reading of Rule 23.9a(2), so that officials are spared the question)."""
_OF_THE_TOTAL = (PenaltyKind.HOLES_DEDUCTED, PenaltyKind.POINTS_DEDUCTED)
_TEACHING = "former"


def borne(case: Case, outcome: Outcome, who: Sides) -> Outcome:
    """Return what a provision ended in, with each penalty put on those who bear it.

    Args:
        case: what is known, ``who`` among it.
        outcome: what the incident ends in for a single player.
        who: who plays together.
    """
    bear = _bearing(outcome, who)
    if bear is None:
        return outcome
    if isinstance(outcome, Judgement):
        return replace(outcome, outcomes=tuple(_only_ruling(bear(case, one)) for one in outcome.outcomes))
    assert isinstance(outcome, Ruling)
    return bear(case, outcome)


def _only_ruling(outcome: Ruling | Judgement) -> Ruling:
    """A judgement inside a judgement: the ruling it most likely ends in stands for it."""
    return outcome.outcomes[0] if isinstance(outcome, Judgement) else outcome


def _bearing(outcome: Outcome, who: Sides) -> Callable[[Case, Ruling], Ruling | Judgement] | None:
    """Return how penalties are borne; ``None`` where nothing depends on the sides."""
    rulings = _rulings(outcome)
    open_ones = [one for ruling in rulings for one in _costs(ruling) if one.who in _OF_THE_SIDE]
    if any(one.citation.startswith(_TEACHING) for one in open_ones):
        return None
    if who is Sides.FOURSOMES:
        played_again = any(one.stroke is Stroke.DOES_NOT_COUNT or one.relief for one in rulings)
        threatens = any(corrections_of(one) for one in rulings)
        return borne_in_foursomes if open_ones or played_again or threatens else None
    if not open_ones:
        return None
    if who is Sides.THREE_BALL:
        moved = any(_moved_by_opponent(one) for one in open_ones)
        return borne_in_three_ball if moved else None
    return borne_in_four_ball if who in EACH_PLAYS_OWN_BALL else None


def _rulings(outcome: Outcome) -> tuple[Ruling, ...]:
    if isinstance(outcome, Ruling):
        return (outcome,)
    return outcome.outcomes if isinstance(outcome, Judgement) else ()


def _costs(ruling: Ruling) -> list[Penalty]:
    later = [one.otherwise for one in ruling.corrections if one.otherwise is not None]
    return [*ruling.penalties, *later]


def _put_on(ruling: Ruling, bearer: Callable[[Penalty], Penalty]) -> Ruling:
    """Return a ruling with every penalty, and every one that threatens, put on its bearer."""
    return replace(
        ruling,
        penalties=tuple(bearer(one) for one in ruling.penalties),
        corrections=tuple(
            one if one.otherwise is None else replace(one, otherwise=bearer(one.otherwise))
            for one in ruling.corrections
        ),
    )


@provision("22.2")
def borne_in_foursomes(case: Case, ruling: Ruling) -> Ruling:
    """Whatever a partner or a caddie of the side does counts for the side, and so does every penalty."""
    assert case[sides] is Sides.FOURSOMES
    on_side = _put_on(ruling, lambda one: replace(one, who=_OF_THE_SIDE.get(one.who, one.who)))
    if _costs(ruling) or corrections_of(ruling):
        on_side = on_side.under("22.2")
    return _who_plays_next(on_side)


def _who_plays_next(ruling: Ruling) -> Ruling:
    """Rule 22.3 and its Clarification 22.3/1: the partner who plays where a stroke is made again."""
    if any(citation.startswith(("22.3", "Clarification 22.3")) for citation in ruling.citations):
        return ruling
    if ruling.stroke is Stroke.DOES_NOT_COUNT and ruling.action is Action.REPLAY:
        return ruling.under("22.3").note("stroke_replayed_by_same_partner")
    if any(option.kind is ReliefKind.STROKE_AND_DISTANCE for option in ruling.relief):
        choice = len(ruling.relief) > 1 or ruling.action is not Action.TAKE_RELIEF
        return ruling.under("22.3").note(
            "after_relief_other_partner_plays" if choice else "then_other_partner_plays"
        )
    return ruling


@provision("21.4c")
def borne_in_three_ball(case: Case, ruling: Ruling) -> Ruling:
    """In Three-Ball an opponent's stroke for a moved ball or ball-marker counts in the match with its owner only."""
    assert case[sides] is Sides.THREE_BALL
    if "21.4c" in ruling.citations or not any(_moved_by_opponent(one) for one in ruling.penalties):
        return ruling
    return ruling.under("21.4c").note("stroke_in_that_match_only")


def _moved_by_opponent(one: Penalty) -> bool:
    return one.who is Who.OPPONENT and one.citation.startswith(("9.5b", "9.7b"))


@provision("23.9a")
def borne_in_four_ball(case: Case, ruling: Ruling) -> Ruling | Judgement:
    """In Four-Ball a penalty falls on the partner in breach, on each partner, or on the side (Rule 23.9)."""
    assert case[sides] in EACH_PLAYS_OWN_BALL
    out_of_it = [one for one in ruling.penalties if _disqualifies(one)]
    if out_of_it:
        return disqualified_in_four_ball(case, ruling, out_of_it[0])
    if any(one.citation == "L-1" for one in ruling.penalties):
        return card_not_certified_by_side(case, ruling)
    return penalty_in_four_ball(case, ruling)


@provision("23.9a")
def penalty_in_four_ball(case: Case, ruling: Ruling) -> Ruling:
    """A penalty falls on the partner in breach alone, and in three situations on each partner."""
    open_ones = [one for one in ruling.penalties if one.who is Who.PLAYER]
    shared = Who.ONE_PARTNER
    if any(_may_concern_others(one) for one in open_ones):
        shared = Who.EACH_PARTNER if falls_on_each(case) else Who.ONE_PARTNER

    def bearer(one: Penalty) -> Penalty:
        if one.who is not Who.PLAYER:
            return one
        if one.kind in _OF_THE_TOTAL:
            return replace(one, who=Who.SIDE)
        if one.citation.startswith("4.1b"):
            return replace(one, who=Who.EACH_PARTNER)
        return replace(one, who=shared if _may_concern_others(one) else Who.ONE_PARTNER)

    on_side = replace(ruling, penalties=tuple(bearer(one) for one in ruling.penalties))
    on_side = _put_on_later(case, _partners_go_on(on_side))
    if not open_ones:
        return on_side
    return _said(case, on_side, wrong_ball=any(one.citation.startswith("6.3c") for one in open_ones))


def _partners_go_on(ruling: Ruling) -> Ruling:
    """Where two opponents each lose the hole, their partners play it on, so it is not tied by that (Rule 23.9a(1))."""
    said = {"first_hole_is_tied": "partner_plays_hole_on"}
    return replace(ruling, notes=tuple(said.get(one, one) for one in ruling.notes))


def _put_on_later(_case: Case, ruling: Ruling) -> Ruling:
    """Put the penalties that threaten on their bearers, as far as that can be said before they are incurred."""

    def bearer(one: Penalty) -> Penalty:
        if one.who is not Who.PLAYER:
            return one
        if one.kind is not PenaltyKind.DISQUALIFICATION:
            return replace(one, who=Who.EACH_PARTNER if one.citation.startswith("4.1b") else Who.ONE_PARTNER)
        if which(one.citation) in (BY_ONE, CARD):
            return replace(one, who=Who.SIDE)
        return replace(one, kind=PenaltyKind.DISQUALIFICATION_FOR_HOLE, who=Who.ONE_PARTNER)

    later = tuple(
        one if one.otherwise is None else replace(one, otherwise=bearer(one.otherwise))
        for one in ruling.corrections
    )
    by_list = any(
        one.otherwise is not None and _disqualifies(one.otherwise) and which(one.otherwise.citation) is BY_ONE
        for one in ruling.corrections
    )
    ruling = ruling.note("list_of_rules_from_memory") if by_list else ruling
    return replace(ruling, corrections=later)


def _said(case: Case, ruling: Ruling, *, wrong_ball: bool) -> Ruling:
    """Add the provision that puts a penalty where it is, and what it leaves the partner to do."""
    borne_by = {one.who for one in ruling.penalties}
    if any(one.citation.startswith("4.1b") for one in ruling.penalties):
        ruling = ruling.note("both_partners_get_it")
    losing = [one for one in ruling.penalties if one.kind is PenaltyKind.GENERAL]
    if Who.EACH_PARTNER in borne_by or Who.SIDE in borne_by:
        ruling = ruling.under(both_partners(case))
    else:
        ruling = ruling.under(f"{both_partners(case)} Exception" if wrong_ball else one_partner(case))
    if not losing or not case.match_play:
        return ruling
    if any(one.who is Who.EACH_PARTNER for one in losing):
        return ruling
    if any(one.who is Who.ONE_PARTNER for one in losing):
        return ruling.note("partner_plays_hole_on")
    return ruling


def _may_concern_others(one: Penalty) -> bool:
    """Whether a breach can have helped the partner or hurt an opponent, so that it must be asked."""
    if one.who is not Who.PLAYER or one.kind not in (PenaltyKind.STROKES, PenaltyKind.GENERAL):
        return False
    return not one.citation.startswith(("4.1b", "6.3c", *_OWN_BALL_OR_TIME))


def falls_on_each(case: Case) -> bool:
    """The partner shares the penalty if helped, and in a match also if an opponent was hurt (Rule 23.9a(2))."""
    case.enter(both_partners(case))
    affected = case[whom_else]
    shares = affected is WhomElse.HELPED_PARTNER or (affected is WhomElse.HURT_OPPONENT and case.match_play)
    case.leave()
    return shares


def both_partners(case: Case) -> str:
    """Return where the edition says when a penalty falls on each partner."""
    return "23.9a(2)" if case.played_since(EDITION_2023) else "23.8a(2)"


def one_partner(case: Case) -> str:
    """Return where the edition says that a penalty falls on the partner in breach alone."""
    return "23.9a(1)" if case.played_since(EDITION_2023) else "23.8a(1)"


@provision("23.9b")
def disqualified_in_four_ball(case: Case, ruling: Ruling, penalty: Penalty) -> Ruling | Judgement:
    """Disqualification puts the side out, or costs the partner the score of one hole."""
    if penalty.who not in (Who.PLAYER, Who.EACH_PLAYER):
        return ruling
    kind = which(penalty.citation)
    if kind is HOLE:
        return hole_lost_to_partner(case, penalty.citation)
    if kind is CARD:
        return card_of_side(case, ruling)
    list_of = "23.9b" if case.played_since(EDITION_2023) else "23.8b"
    if kind is BY_ONE:
        return _side_out(ruling).under(list_of).note("list_of_rules_from_memory")
    if kind is BY_BOTH:
        if penalty.who is Who.EACH_PLAYER or case[partner_also_disqualified]:
            return _side_out(ruling).under(list_of).note("list_of_rules_from_memory")
        alone = Penalty(PenaltyKind.DISQUALIFICATION_FOR_HOLE, penalty.citation, Who.ONE_PARTNER)
        kept = replace(ruling, penalties=(alone,))
        return kept.under(list_of).note("partner_plays_hole_on", "list_of_rules_from_memory")
    return left_open(list_of)


def _side_out(ruling: Ruling) -> Ruling:
    on = {Who.PLAYER: Who.SIDE, Who.EACH_PLAYER: Who.EACH_SIDE}
    return replace(
        ruling,
        penalties=tuple(
            replace(one, who=on.get(one.who, one.who)) for one in ruling.penalties if _disqualifies(one)
        ),
    )


@provision("23.2b(2)")
def card_of_side(case: Case, ruling: Ruling) -> Ruling:
    """A fault of the card puts the side out; a wrong score only if it counts for the side."""
    if any(one.citation == "3.3b(3)" for one in ruling.penalties) and not case[score_counts_for_side]:
        return free("23.2b(2)").note("only_counting_score_matters")
    return _side_out(ruling).under("23.2b")


@provision("23.2b(1)")
def card_not_certified_by_side(_case: Case, ruling: Ruling) -> Ruling:
    """Neither partner saw to the certification of the side's one card, so Model Local Rule L-1 costs each (our reading)."""
    on_each = _put_on(ruling, lambda one: replace(one, who=Who.EACH_PARTNER))
    return on_each.under("23.2b(1)").note("both_partners_get_it")


def _disqualifies(one: Penalty) -> bool:
    return one.kind is PenaltyKind.DISQUALIFICATION


__all__ = ["borne", "both_partners", "falls_on_each", "one_partner"]
