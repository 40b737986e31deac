"""Rule 4.1: clubs."""

from marram.rules.book.local_rules.area_g_damaged import (
    built_from_parts_as_allowed,
    damage_lets_club_be_replaced,
)
from marram.rules.book.plain_outcomes import free, out
from marram.rules.book.rule_05_start_and_pace import delayed_unreasonably
from marram.rules.book.rule_21_totals import counts_against_total
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.clubs import (
    AfterDamage,
    ChangedClub,
    ClubSource,
    ClubState,
    DamagedBy,
    ExcessNoticed,
    OutOfPlayFault,
    SharedClub,
    StrokeWithClub,
    after_damage,
    changed_club,
    club_source,
    club_state,
    damaged_by,
    excess_noticed,
    had_fourteen_clubs,
    holes_with_breach,
    more_than_fourteen,
    out_of_play_fault,
    stroke_with_club,
    whose_club,
)
from marram.rules.penalty import PenaltyKind, disqualified, general, holes_deducted, points_deducted
from marram.rules.ruling import Action, Deadline, Judgement, Ruling


@provision("4.1b")
def clubs_penalty(case: Case, citation: str) -> Ruling:
    """For each hole of the breach, at most two: two strokes, or in a match one hole off the score."""
    if case.at_most(holes_with_breach, 0):
        return free("4.1b(1)").note("not_added_before_stroke")
    holes = 1 if case.at_most(holes_with_breach, 1) else 2
    ruling = _penalty_for_holes(case, citation, holes).next(Action.PLAY_ON).note("for_each_hole_at_most_two")
    until = Deadline.BEFORE_STROKE if case.played_since(EDITION_2023) else Deadline.PROMPTLY
    return ruling.correct("take_club_out_of_play", until, disqualified("4.1c(1)"))


def _penalty_for_holes(case: Case, citation: str, holes: int) -> Ruling:
    if case.match_play:
        note = "deduct_one_hole_from_match" if holes == 1 else "deduct_two_holes_from_match"
        return Ruling().also(holes_deducted(holes, citation)).note(note, "adjust_match_score")
    total = counts_against_total(case)
    if total is PenaltyKind.POINTS_DEDUCTED:
        note = "deduct_two_points" if holes == 1 else "deduct_four_points"
        ruling = Ruling().also(points_deducted(2 * holes, citation)).under("21.1c")
        return ruling.note(note, "report_before_returning_card")
    if total is PenaltyKind.HOLES_DEDUCTED:
        note = "deduct_one_hole" if holes == 1 else "deduct_two_holes"
        ruling = Ruling().also(holes_deducted(holes, citation)).under("21.3c")
        return ruling.note(note, "report_before_returning_card")
    note = "on_hole_of_breach" if holes == 1 else "on_first_holes_of_breach"
    return Ruling().also(*(general(citation) for _ in range(holes))).note(note)


@provision("4.1a(1)")
def club_doubtful(case: Case) -> Ruling:
    """A stroke with a non-conforming club disqualifies; wear, and damage in the round, do not matter."""
    if not case.is_one_of(club_state, ClubState.NOT_CONFORMING):
        return free("4.1a(1)").note("club_counts_as_conforming")
    if case[stroke_with_club] is StrokeWithClub.COUNTED:
        return out("4.1a(1)")
    if case[stroke_with_club] is StrokeWithClub.NOT_COUNTED:
        return free("Clarification 4.1a(1)/2").note("do_not_use_club")
    return free("4.1a(1)").note("do_not_use_club")


@provision("4.1a(3)")
def club_changed(case: Case) -> Ruling:
    """A club whose performance the player changed during the round must not be used as changed."""
    fate = case[changed_club]
    if fate is ChangedClub.USED:
        return out("4.1a(3)")
    if fate is ChangedClub.PUT_BACK:
        return free("4.1a(3)").note("club_may_be_used_again")
    return free("4.1a(3)").note("do_not_use_club")


@provision("4.1a(2)")
def club_damaged(case: Case) -> Ruling | Judgement:
    """A club damaged in the round may be used as it is; what else is allowed depends on the edition."""
    done = case[after_damage]
    if done is AfterDamage.KEPT:
        return free("4.1a(2)")
    if done is AfterDamage.NOTHING_YET:
        return what_may_be_done(case)
    if done is AfterDamage.REPAIRED:
        return club_repaired(case)
    return club_replaced(case)


@provision("4.1a(2)")
def what_may_be_done(case: Case) -> Ruling:
    """A damaged club may be used as it is; whether it may be repaired or replaced depends on the damage."""
    ruling = free("4.1a(2)").note("damaged_club_may_be_used")
    if case.is_one_of(damaged_by, DamagedBy.ABUSE):
        if case.played_since(EDITION_2023):
            return ruling.note("neither_repair_nor_replace")
        return ruling.note("repair_without_delay", "not_to_be_replaced")
    ruling = ruling.note("repair_without_delay")
    if replacing_allowed(case):
        return decided_by_g9(case, ruling.under("4.1b(4)").note("may_be_replaced"))
    return decided_by_g9(case, ruling.note("not_to_be_replaced"))


@provision("G-9")
def decided_by_g9(case: Case, ruling: Ruling) -> Ruling:
    """Where the Local Rule says whether a damaged club may be replaced, the ruling cites it."""
    if not case.played_since(EDITION_2023) and case.is_one_of(damaged_by, DamagedBy.OTHERS):
        return ruling
    return ruling.under("G-9") if case.local_rule("G-9") else ruling


@provision("4.1a(2)")
def club_repaired(case: Case) -> Ruling | Judgement:
    """Repair is allowed without delay; since 2023 not after abuse."""
    if case.played_since(EDITION_2023) and case.is_one_of(damaged_by, DamagedBy.ABUSE):
        return Judgement(
            "4.1a(2)",
            "committee",
            ("repaired_after_abuse", "repaired_club_used"),
            (free("4.1a(2)"), out("4.1a(1)")),
        )
    return free("4.1a(2)").note("repair_without_delay")


@provision("4.1a(2)")
def club_replaced(case: Case) -> Ruling:
    """Since 2023 any club damaged without abuse may be replaced; before, only one damaged by others.

    A player with fewer than 14 clubs may add one whatever became of the damaged club (Rule 4.1b(1)).
    """
    if not replacing_allowed(case):
        if not case[had_fourteen_clubs]:
            return club_came_from(case)
        breach = clubs_penalty(case, "4.1b(4)" if case.played_since(EDITION_2023) else "4.1b(3)")
        return breach if case.is_one_of(damaged_by, DamagedBy.ABUSE) else decided_by_g9(case, breach)
    came_from = free("G-9") if built_from_parts_as_allowed(case) else club_came_from(case)
    if came_from.penalties:
        return came_from
    return decided_by_g9(case, came_from.note("damaged_club_out_of_play"))


@provision("4.1a(2)")
def replacing_allowed(case: Case) -> bool:
    """Whether the damaged club may be replaced at all."""
    if case.is_one_of(damaged_by, DamagedBy.ABUSE):
        return False
    if case.played_since(EDITION_2023):
        return not case.local_rule("G-9") or damage_lets_club_be_replaced(case)
    if case.is_one_of(damaged_by, DamagedBy.OTHERS):
        return True
    return case.local_rule("G-9") and damage_lets_club_be_replaced(case)


@provision("4.1b(4)")
def club_came_from(case: Case) -> Ruling:
    """A club is added without delay, not from a player on the course, not built from parts on the course."""
    source = case[club_source]
    if source is ClubSource.ELSEWHERE:
        return free("4.1b(4)")
    if source is ClubSource.DELAYED_PLAY:
        return delayed_unreasonably(case).under("4.1b(4)")
    return clubs_penalty(case, "4.1b(4)")


@provision("4.1b(3)")
def club_lost(case: Case) -> Ruling:
    """A lost club is not replaced by one who had 14; with fewer, clubs may be added up to 14."""
    if case[had_fourteen_clubs]:
        return clubs_penalty(case, "4.1b(3)")
    return club_came_from(case)


@provision("4.1b(1)")
def club_added(case: Case) -> Ruling:
    """With fewer than 14 clubs more may be added during the round."""
    if case[more_than_fourteen]:
        return clubs_penalty(case, "4.1b(1)")
    if case[club_source] is ClubSource.ELSEWHERE:
        return free("4.1b(1)")
    return club_came_from(case)


@provision("4.1b(1)")
def too_many_clubs(case: Case) -> Ruling:
    """Starting or playing with more than 14 clubs is penalised for each hole, at most two."""
    if case[excess_noticed] is ExcessNoticed.BEFORE_ROUND:
        return excess_before_round(case)
    if case[excess_noticed] is ExcessNoticed.ANOTHERS_CARRIED_IN:
        return free("4.1b(1)").note("give_club_back")
    if case[excess_noticed] is ExcessNoticed.BROUGHT_KNOWINGLY:
        return clubs_penalty(case, "4.1b(1)").under("4.1c(2)")
    return clubs_penalty(case, "4.1b(1)")


@provision("4.1c(2)")
def excess_before_round(_case: Case) -> Ruling:
    """An excess club found shortly before starting is left behind, or taken out of play and kept."""
    return (
        free("4.1c(2)")
        .note("club_kept_does_not_count", "starting_with_excess_is_breach")
        .correct("leave_club_or_take_out", Deadline.BEFORE_STROKE)
    )


@provision("4.1b(2)")
def club_shared(case: Case) -> Ruling:
    """A player makes strokes only with own clubs; partners may share up to 14 between them."""
    whose = case[whose_club]
    if whose is SharedClub.PICKED_UP_ONLY:
        return free("4.1b(1)").note("give_club_back")
    if whose is SharedClub.PARTNER and not case[more_than_fourteen]:
        return free("22.5").under("23.7")
    return clubs_penalty(case, "4.1b(2)").note("owner_may_go_on_using_club")


@provision("4.1c(1)")
def out_of_play_club(case: Case) -> Ruling:
    """A club out of play stays out, and an excess club goes out before the next stroke."""
    if case[out_of_play_fault] is OutOfPlayFault.USED_AGAIN:
        return out("4.1c(1)")
    return out("4.1c(1)").note("club_out_before_next_stroke")
