"""Model Local Rules, area F: what they take away from the relief of Rule 16."""

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_conditions import (
    condition_named_without_stance,
    cut_to_fairway_height,
    only_stance_interference,
)
from marram.rules.facts.local_ground import ball_in_stacked_turf_face
from marram.rules.facts.relief import Interference, interference


@provision("F-2.1")
def embedded_where_no_relief(case: Case) -> bool:
    """Where adopted, embedded ball relief only in ground cut to fairway height or less."""
    return case.local_rule("F-2.1") and not case[cut_to_fairway_height]


@provision("F-2.2")
def embedded_in_turf_face(case: Case) -> bool:
    """Where adopted, no relief for a ball embedded in the stacked turf face above a bunker."""
    return case.local_rule("F-2.2") and case[ball_in_stacked_turf_face]


@provision("F-6")
def stance_relief_denied(case: Case) -> bool:
    """Where adopted, a condition it names gives no relief for the stance alone."""
    if not case.is_one_of(interference, Interference.STANCE_OR_SWING) or not case.local_rule("F-6"):
        return False
    return case[only_stance_interference] and case[condition_named_without_stance]
