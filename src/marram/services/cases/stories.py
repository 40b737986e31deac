"""Rule a story without a map: each incident of a case, and all of them together (Rule 1.3c(4))."""

from marram.rules.local_rules.adoption import adopt
from marram.rules.story.story import Happened, StoryResult, rule_story
from marram.services.cases.case import Case


def happened(case: Case) -> list[Happened]:
    """Return what happened, as the Rules are asked about it."""
    return [
        Happened(act.incident, act.facts, act.option, act.ball, act.strokes, act.by) for act in case.incidents
    ]


def rule_case(case: Case) -> StoryResult:
    """Return what the Rules say of each incident and of all together.

    Raises:
        InputError: something in the case cannot be used; every fault is listed.
    """
    local = None if case.local_rules is None else adopt(case.local_rules, case.played_on).in_rulings
    return rule_story(
        happened(case),
        case.between,
        played_on=case.played_on,
        form_of_play=case.form_of_play,
        sides=case.sides,
        local_rules=local,
        strokes_before=case.strokes_before,
    )
