"""Model Local Rules, area M: players with disabilities."""

from dataclasses import replace

from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_conduct import uses_wheeled_device
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting
from marram.rules.ruling import Ruling, WhichBall, no_penalty


@provision("M-1")
def placed_for_wheeled_device(case: Case) -> Ruling:
    """Where adopted, since 2023, a wheelchair user may place the ball within six inches, even nearer the hole."""
    adopted = case.played_since(EDITION_2023) and case.local_rule("M-1")
    if not adopted or not case[uses_wheeled_device]:
        return no_penalty("25.1").play_as_it_lies()
    option = ReliefOption(
        ReliefKind.PREFERRED_LIE,
        "M-1",
        Reference.BALL,
        None,
        (Limit.SAME_AREA_AS_REFERENCE,),
        setting=Setting.PLACE,
    )
    ruling = no_penalty("M-1").with_options(option).note("six_inches_any_way", "not_onto_the_fairway")
    return replace(ruling, which_ball=WhichBall.ORIGINAL_OR_ANOTHER)
