"""Model Local Rules, area H: an advice giver who counts as a member of the side."""

from marram.rules.book.rule_09_others import moved_by_outside_influence
from marram.rules.book.rule_09_player import moved_by_player
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.ruling import Ruling


@provision("H-4")
def advice_giver_moved_ball(case: Case) -> Ruling:
    """Where adopted, what the advice giver does to a ball of the team counts as done by the player."""
    if case.local_rule("H-4"):
        return moved_by_player(case).under("H-4")
    return moved_by_outside_influence(case)
