"""What the rulings of an incident come to, whatever is answered: steps, findings, who bears a penalty."""

from functools import cache

from marram.rules.engine.export import graph_of
from marram.rules.engine.graph import outcomes
from marram.rules.finding_of import finding_of
from marram.rules.findings import Finding
from marram.rules.penalty import Who
from marram.rules.relief_family import family
from marram.rules.ruling import Action, Ruling
from marram.teach.situations.reaching import TODAY
from marram.words.headline import said_by_note

Step = tuple[Action | None, str, frozenset[str], tuple[str, ...]]
"""What is done next: the action, the note that says it better, the families of relief, what is put right."""


def step(ruling: Ruling) -> Step:
    """Return what is done next, as far as an answer says it."""
    corrected = ruling.corrections if ruling.action is Action.CORRECT_MISTAKE else ()
    families = frozenset(family(each) for each in ruling.relief)
    return ruling.action, said_by_note(ruling), families, tuple(each.what for each in corrected)


@cache
def steps_of(name: str) -> frozenset[Step]:
    """Return what is done next after an incident, whatever is answered."""
    return frozenset(step(end) for end in _rulings(name))


@cache
def comes_to_one_thing(name: str) -> bool:
    """Whether an incident, whatever is answered, costs nobody anything and leaves one thing to do: to play on."""
    return not bears_of(name) and {action for action, *_ in steps_of(name)} in (
        {Action.PLAY_ON},
        {Action.PLAY_AS_IT_LIES},
    )


@cache
def findings_of(name: str) -> frozenset[Finding | None]:
    """Return what rulings of an incident can find, whatever is answered."""
    return frozenset(finding_of(end) for end in _rulings(name))


@cache
def bears_of(name: str) -> frozenset[Who]:
    """Return who bears a penalty by rulings of an incident, whatever is answered."""
    return frozenset(each.who for end in _rulings(name) for each in end.penalties)


@cache
def _rulings(name: str) -> tuple[Ruling, ...]:
    return tuple(end for end in outcomes(graph_of(name, TODAY)) if isinstance(end, Ruling))


@cache
def offers_free_relief(name: str) -> bool:
    """Whether rulings of an incident leave the choice to play the ball as it lies or to take free relief."""
    choice = Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF
    return any(action is choice and "free" in families for action, _, families, _ in steps_of(name))
