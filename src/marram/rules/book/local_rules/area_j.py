"""Model Local Rules, area J: temporary water swept off the putting green."""

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_conduct import swept_as_allowed, swept_on_green, water_line_improved
from marram.rules.ruling import Ruling, general_penalty, no_penalty


@provision("J-2")
def water_swept_from_green(case: Case) -> Ruling:
    """Where adopted, temporary water on the line may be swept away instead of taking relief."""
    if not case.local_rule("J-2") or not case[swept_on_green]:
        return water_swept_without_leave(case)
    if case[swept_as_allowed]:
        return no_penalty("J-2").play_as_it_lies().note("or_relief_from_temporary_water")
    return water_swept_without_leave(case).under("J-2")


@provision("8.1a")
def water_swept_without_leave(case: Case) -> Ruling:
    """Without leave, clearing water off the line of play improves it."""
    if case[water_line_improved]:
        return general_penalty("8.1a").play_as_it_lies()
    return no_penalty("8.1a").play_as_it_lies()
