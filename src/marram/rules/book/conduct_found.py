"""What the Committee has found about an act under Rule 1.2a decides; before that it is left to its judgement."""

from marram.rules.book.plain_outcomes import free, out
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conduct import ConductFinding, conduct_finding
from marram.rules.ruling import Judgement, Ruling


@provision("1.2a")
def found_by_committee(case: Case, weigh: tuple[str, ...], *, otherwise: str = "1.2a") -> Ruling | Judgement:
    """Whether an act was serious misconduct is the Committee's to judge; what it has found decides.

    Args:
        case: the case.
        weigh: message keys of what to weigh, as long as nothing is found.
        otherwise: the provision under which nothing follows.
    """
    finding = case[conduct_finding]
    if finding is ConductFinding.DISQUALIFIED:
        return out("1.2a") if otherwise == "1.2a" else out("1.2a").under(otherwise)
    if finding is ConductFinding.NO_DISQUALIFICATION:
        return free(otherwise)
    return Judgement("1.2a", "committee", weigh, (free(otherwise), out("1.2a")))
