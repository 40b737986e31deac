"""A ruling in one line: what it finds, what it comes to with relief that must be taken, and what to do next."""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import replace

from marram.rules.cost import MUST_TAKE_RELIEF, Cost
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.finding_of import finding_of
from marram.rules.findings import WITH_THE_TOTAL, Finding
from marram.rules.penalty import OWN, Penalty, PenaltyKind, Who
from marram.rules.relief_family import family
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Action, Ruling
from marram.words.messages import say, term
from marram.words.penalties import penalties_in_short, relief_cost_words

_LOSES_HOLE = frozenset({PenaltyKind.GENERAL, PenaltyKind.LOSS_OF_HOLE})
_NO_BALL_TO_PLAY = (None, Action.PLAY_ON, Action.HOLED, Action.HOLE_OVER, Action.STOP_PLAY)
_SAID_BY_DECISION = (None, Action.PLAY_ON, Action.HOLE_OVER, Action.HOLED)
_OF_STROKE = (Finding.STROKE_COUNTS, Finding.STROKE_DOES_NOT_COUNT, Finding.STROKE_MADE)
_SAYS_ITSELF = (Finding.IS_PROVISIONAL, Finding.HOLED, Finding.NEXT_STROKE_CONCEDED)


def headline(ruling: Ruling, form: FormOfPlay | None = None, *, with_finding: bool = True) -> str:
    """Return a ruling in one line: the finding, the total with relief that must be taken, the next thing to do.

    Args:
        ruling: the ruling.
        form: how general penalties are resolved; both ways are said when unknown.
        with_finding: whether one finding speaks for all of it; of several acts together it does not.
    """
    finding = _finding(ruling, form) if with_finding else None
    found = "" if finding is None else term(finding)
    total, then = total_words(ruling, form), next_words(ruling, form)
    if ruling.action is Action.HOLED and not with_finding:
        then = term(Action.HOLE_OVER, ".short")
    if not costs_something(ruling):
        if finding is not None and finding not in WITH_THE_TOTAL:
            if ruling.action in _SAID_BY_DECISION:
                return say("TERMS", "headline.finding").format(finding=found)
            return say("TERMS", "headline.found_free").format(finding=found, next=then)
        if found and ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
            return say("TERMS", "headline.found_free").format(finding=found, next=then)
    key = f"headline.{'found' if found else 'plain'}"
    if found:
        total = total[0].lower() + total[1:]
    if not then:
        key = "headline.found_alone" if found else "headline.alone"
    return say("TERMS", key).format(finding=found, total=total, next=then)


def tell_the_player(ruling: Ruling, form: FormOfPlay | None = None, *, with_finding: bool = True) -> str:
    """Return the one sentence that the player is told: what was found, what it costs them, what they do next."""
    finding = _finding(ruling, form) if with_finding else None
    over = ruling.action is Action.HOLED or _loses_the_hole(ruling, form)
    nothing_left = Action.HOLE_OVER if over else Action.PLAY_ON
    then = next_words(ruling, form) or term(nothing_left, ".short")
    own = [one for one in ruling.penalties if one.who in OWN]
    if any(one.kind is PenaltyKind.DISQUALIFICATION for one in own):
        if finding is Finding.THIS_ROUND_ONLY:
            return say("TERMS", "tell.disqualified_this_round")
        side = any(one.who in (Who.SIDE, Who.EACH_SIDE) for one in own)
        return say("TERMS", "tell.side_disqualified" if side else "tell.disqualified")
    if (
        own == list(ruling.penalties)
        and _loses_the_hole(ruling, form)
        and {one.who for one in own} == {Who.PLAYER}
    ):
        stops = ruling.action is Action.STOP_PLAY
        return say("TERMS", "tell.hole_lost_stop" if stops else "tell.hole_lost").format(next=then)
    if own and {one.who for one in ruling.penalties} == {Who.EACH_PLAYER}:
        return _tell_each(ruling, form, finding, then)
    total = total_words(ruling, form)
    total = total[0].lower() + total[1:]
    if own and not any(one.who in (Who.PLAYER, Who.EACH_PLAYER) for one in own):
        if said_of_side(ruling.penalties, form):
            return say("TERMS", "tell.side_hole_lost")
        return say("TERMS", "tell.of_side").format(total=total_words(ruling, form), next=then)
    if ruling.penalties and not own and not any(forced_costs(ruling, form)):
        return say("TERMS", "tell.others").format(total=total, next=then)
    if len(own) < len(ruling.penalties) and {one.who for one in own} <= {Who.PLAYER}:
        if own and _loses_the_hole(ruling, form):
            return say("TERMS", "tell.each.hole_lost")
        return _tell_with_others(ruling, form, own, then)
    key = "tell" if ruling.penalties or any(forced_costs(ruling, form)) else "tell.free"
    if (
        after_the_round(ruling)
        and finding not in _SAYS_ITSELF
        and (key == "tell" or finding in WITH_THE_TOTAL)
    ):
        found = "" if finding is None else term(finding)
        return say("TERMS", f"{key}{'.found' if found else ''}.alone").format(finding=found, total=total)
    if finding is not None and key == "tell.free" and ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
        return say("TERMS", "headline.found_free").format(finding=term(finding), next=then)
    if finding is None:
        return say("TERMS", key).format(total=total, next=then)
    decides = finding not in WITH_THE_TOTAL or finding in _SAYS_ITSELF
    says_all = decides and ruling.action in _SAID_BY_DECISION and not said_by_note(ruling)
    if key == "tell.free" and says_all:
        return say("TERMS", "headline.finding").format(finding=term(finding))
    return say("TERMS", f"{key}.found").format(finding=term(finding), total=total, next=then)


def _tell_with_others(ruling: Ruling, form: FormOfPlay | None, own: list[Penalty], then: str) -> str:
    """Return what a player is told who gets a penalty together with somebody else."""
    mine = penalties_in_short(own, form, relief=forced_costs(ruling, form))
    others = penalties_in_short([one for one in ruling.penalties if one.who not in OWN], form)
    mine, others = (words[0].lower() + words[1:] for words in (mine, others))
    alone = say("TERMS", "tell.alone").format(total=mine).rstrip(".")
    return say("TERMS", "tell.and_others").format(own=alone, total=others, next=then)


def _tell_each(ruling: Ruling, form: FormOfPlay | None, finding: Finding | None, then: str) -> str:
    """Return what players are told of whom each gets the penalty."""
    if _loses_the_hole(ruling, form):
        return say("TERMS", "tell.each.hole_lost")
    total = penalties_in_short([replace(one, who=Who.PLAYER) for one in ruling.penalties], form)
    key = "tell.each" if finding is None else "tell.each.found"
    found = "" if finding is None else term(finding)
    return say("TERMS", key).format(finding=found, total=total[0].lower() + total[1:], next=then)


def _finding(ruling: Ruling, form: FormOfPlay | None) -> Finding | None:
    """Return the finding that stands first: where the hole is lost, no stroke counts for anything."""
    found = finding_of(ruling)
    return None if found in _OF_STROKE and _loses_the_hole(ruling, form) else found


def _loses_the_hole(ruling: Ruling, form: FormOfPlay | None) -> bool:
    lost = any(one.kind in _LOSES_HOLE and one.who in OWN for one in ruling.penalties)
    return form is FormOfPlay.MATCH_PLAY and lost and not partner_plays_on(ruling.penalties, form)


def total_words(ruling: Ruling, form: FormOfPlay | None = None) -> str:
    """Return what a ruling comes to: every penalty, with the strokes of relief that must be taken."""
    return penalties_in_short(ruling.penalties, form, relief=forced_costs(ruling, form))


def cost_words(cost: Cost, form: FormOfPlay | None = None) -> str:
    """Return what an end of a question comes to: as :func:`total_words`, or what relief costs that is up to the player."""
    if cost.relief and not cost.must:
        return say("TERMS", "cost.if_taken").format(strokes=penalties_in_short((), form, relief=cost.relief))
    over = ends_the_hole(cost.penalties, Action.TAKE_RELIEF, form)
    return penalties_in_short(cost.penalties, form, relief=() if over else cost.relief)


def forced_costs(ruling: Ruling, form: FormOfPlay | None = None) -> set[int]:
    """Return what relief that must be taken costs, over its options; empty where none must be taken."""
    if ruling.action not in MUST_TAKE_RELIEF or ends_the_hole(ruling.penalties, ruling.action, form):
        return set()
    return {option.penalty for option in ruling.relief}


def costs_something(ruling: Ruling) -> bool:
    """Tell whether a penalty stands, or relief must be taken and none of it is free."""
    costs = forced_costs(ruling)
    return bool(ruling.penalties) or (bool(costs) and 0 not in costs)


def next_words(ruling: Ruling, form: FormOfPlay | None = None) -> str:
    """Return the next thing to do in a few words; empty where the penalty says all."""
    if partner_plays_on(ruling.penalties, form):
        if "side_has_completed_hole" in ruling.notes:
            return term(Action.HOLE_OVER, ".short")
        if "other_partners_score_counts" in ruling.notes:
            return ""
        return say("TERMS", "partner_plays_on")
    if side_loses_hole(ruling.penalties, form):
        return "" if said_of_side(ruling.penalties, form) else say("TERMS", "side_loses_hole")
    if ruling.action in (None, Action.HOLED) or goes_without_saying(ruling, form):
        return ""
    if ends_the_hole(ruling.penalties, ruling.action, form):
        return term(Action.HOLE_OVER, ".short")
    noted = said_by_note(ruling)
    if noted:
        return say("TERMS", f"next.note.{noted}")
    if ruling.action is Action.CORRECT_MISTAKE and len(ruling.corrections) == 1:
        what = say("NOTES", ruling.corrections[0].what).rstrip(".")
        return what[0].lower() + what[1:]
    if ruling.action is Action.TAKE_RELIEF and ruling.relief:
        if all(option.kind is ReliefKind.STROKE_AND_DISTANCE for option in ruling.relief):
            return say("TERMS", "next.family.18")
        return say("TERMS", f"next.family.{_common(family(option) for option in ruling.relief)}")
    if ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF and ruling.relief:
        return say("TERMS", "next.choice").format(relief=say("TERMS", "next.or").join(choices(ruling)))
    return term(ruling.action, ".short")


def said_by_note(ruling: Ruling) -> str:
    """Return the note that says the next step better than the step's own name; empty where none does."""
    steps = _STEP_OF_NOTE.get(ruling.action) if ruling.action else None
    return next((note for note in ruling.notes if steps and note in steps), "")


_STEP_OF_NOTE: Mapping[Action, tuple[str, ...]] = {
    Action.PLAY_ON: (
        "play_out_both_balls",
        "go_on_under_that_rule",
        "resume_where_stopped",
        "play_a_conforming_ball",
        "starting_with_excess_is_breach",
        "for_each_hole_at_most_two",
        "holed_provisional_not_yet_in_play",
    ),
    Action.PLAY_AS_IT_LIES: (
        "lift_ball_dropped_by_mistake",
        "relief_has_been_taken",
        "ball_has_been_played",
        "may_restore_and_clean",
        "recreate_lie_in_sand",
    ),
    Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF: ("nearest_like_conditions",),
    Action.REPLACE: (
        "embedded_on_green",
        "replace_on_lip",
        "put_back_where_it_had_come_to_rest",
        "shape_the_lie_in_sand",
    ),
    Action.LIFT: ("put_ball_in_play_first",),
    Action.PLAY_PROVISIONAL: ("second_provisional_counts",),
    Action.REPLAY: ("right_partner_plays_from_first_wrong_spot",),
    Action.CORRECT_MISTAKE: (
        "go_on_with_right_ball",
        "correct_the_ruling",
        "nothing_conceded_in_stroke_play",
    ),
}
"""For a step, the notes that say how it is done here; the step's own sentence is then left out."""


def _common(families: Iterable[str]) -> str:
    """Return the family that all have in common; else penalty relief, where none is free; else relief at large."""
    every = set(families)
    found = every - {"dropping_zone"}
    if len(found) == 1 and (found == every or found != {"18"}):  # a dropping zone is no stroke and distance
        return found.pop()
    return "penalty" if found and not found & {"free", "preferred", "other"} else "other"


def choices(ruling: Ruling) -> list[str]:
    """Return each family of the options with what it costs; all that must be paid for is one."""
    costs: dict[str, set[int]] = {}
    dear = [option for option in ruling.relief if option.penalty]
    provisional = dear and all(option.kind is ReliefKind.PROVISIONAL for option in dear)
    paid = "provisional" if provisional else _common(family(option) for option in dear)
    for option in ruling.relief:
        costs.setdefault(paid if option.penalty else family(option), set()).add(option.penalty)
    return [
        say("TERMS", f"next.family.{name}")
        if cost == {0}
        else say("TERMS", "relief_cost").format(
            action=say("TERMS", f"next.family.{name}"), cost=relief_cost_words(cost)
        )
        for name, cost in costs.items()
    ]


def after_the_round(ruling: Ruling) -> bool:
    """Tell whether it is about a scorecard (Rules 3.3b and 23.2b): nobody plays on any more."""
    return ruling.action is Action.PLAY_ON and ruling.citations[0].startswith(_OF_THE_CARD)


_OF_THE_CARD = ("3.3b", "23.2b", "L-1", "L-2")


def goes_without_saying(ruling: Ruling, form: FormOfPlay | None) -> bool:
    """Tell whether the penalty says all: no hole is over for the disqualified, nor played on once it is lost."""
    if after_the_round(ruling):
        return True
    own = {one.kind for one in ruling.penalties if one.who in OWN}
    if ruling.action is Action.HOLE_OVER:
        return PenaltyKind.DISQUALIFICATION in own
    return form is FormOfPlay.MATCH_PLAY and ruling.action is Action.PLAY_ON and bool(own & _LOSES_HOLE)


def partner_plays_on(penalties: Collection[Penalty], form: FormOfPlay | None) -> bool:
    """Tell whether one partner is out of the hole, and the other goes on for the side (Rules 23.2a and 23.9a(1))."""
    out_of_hole = {PenaltyKind.DISQUALIFICATION_FOR_HOLE}
    if form is FormOfPlay.MATCH_PLAY:
        out_of_hole |= _LOSES_HOLE
    lost_by = {one.who for one in penalties if one.kind in out_of_hole}
    return Who.ONE_PARTNER in lost_by and not lost_by & {Who.EACH_PARTNER, Who.SIDE}


def hole_lost_words(penalties: Collection[Penalty], form: FormOfPlay | None) -> list[str]:
    """Return what a hole lost leaves to do; nothing where the partner plays on, which a note says."""
    if partner_plays_on(penalties, form):
        return []
    return [say("TERMS", "hole_lost_by_side" if side_loses_hole(penalties, form) else "hole_lost")]


def side_loses_hole(penalties: Collection[Penalty], form: FormOfPlay | None) -> bool:
    """Tell whether in a match no partner of the side can win or tie the hole any more (Rules 22.2 and 23.9a(2))."""
    return form is FormOfPlay.MATCH_PLAY and any(
        one.who in (Who.SIDE, Who.EACH_PARTNER) and one.kind in _LOSES_HOLE for one in penalties
    )


def said_of_side(penalties: Collection[Penalty], form: FormOfPlay | None) -> bool:
    """Tell whether the penalty alone says already that the side loses the hole."""
    return side_loses_hole(penalties, form) and {one.who for one in penalties} == {Who.SIDE}


def loses_hole(penalties: Collection[Penalty]) -> bool:
    """Tell whether one of the penalties is, in a match, the hole."""
    return any(one.kind in _LOSES_HOLE for one in penalties)


def ends_the_hole(penalties: Collection[Penalty], action: Action | None, form: FormOfPlay | None) -> bool:
    """Tell whether a hole lost in a match leaves nothing to do with the ball (Rules 1.3c(2) and 6.5)."""
    return (
        form is FormOfPlay.MATCH_PLAY
        and action not in _NO_BALL_TO_PLAY
        and any(penalty.kind in _LOSES_HOLE for penalty in penalties)
    )
