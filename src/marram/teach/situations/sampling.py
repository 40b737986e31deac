"""Sampling situations with a seed: the common ones often, and each provision in its turn."""

from collections.abc import Iterator, Mapping
from random import Random
from types import MappingProxyType
from typing import Any

from marram.errors import BadAnswer, InputError
from marram.rules.engine.conditions import check_partners, check_sides
from marram.rules.engine.export import graph_of
from marram.rules.engine.fact import Fact
from marram.rules.engine.request import fact_named, rule
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.facts.conditions import form_of_play as the_form
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.incidents import incident
from marram.rules.result import NeedFacts
from marram.rules.ruling import Outcome, Ruling
from marram.said import said
from marram.teach.situations.fitting_together import fit_together
from marram.teach.situations.how_often import NOT_IN, ONLY_IN, likelihood, weight
from marram.teach.situations.reaching import TODAY, citations_of, offered_by, reached, reached_from, taught
from marram.teach.situations.situation import NO_HOLE, ON_NO_HOLE, Situation, deciding
from marram.teach.situations.walk import walk
from marram.words.telling import is_told

NAMES = ("Anselm", "Bram", "Corin", "Elke", "Fenna", "Ivo", "Linnea", "Mara", "Odo", "Pella", "Runa", "Sunniva", "Tessa", "Ysolde")  # fmt: skip
"""Invented first names; nobody is meant."""
HOLES = 18
MOST_IN_VAIN = 2_000
"""Drawings one after the other that give no situation of the level, before it is said that there is none (own choice)."""
MOST_NAMED = 3
_TRIES = 12
"""Walks tried for one situation; a number that two provisions bound in different ways can close a walk."""


def situations(
    seed: int, *, incidents: tuple[str, ...] = (), provision: str = "", level: int | None = None
) -> Iterator[Situation]:
    """Yield situations without end, the same for the same seed.

    Args:
        seed: the seed.
        incidents: only these; none: all, the common ones more often.
        provision: only rulings that cite this one.
        level: only of this difficulty, 1 to 3.

    Raises:
        InputError: no ruling of these incidents cites the provision, or none of them gives a situation of that level.
        UnknownIncident: there is no such incident.
    """
    names = [incident(name).name for name in incidents] or [one.name for one in taught()]
    turns = sorted(
        {one for name in names for one in reached().get(name, ())} if not provision else {provision}
    )
    wanted = [name for name in names if not provision or provision in reached().get(name, ())]
    if not wanted:
        raise InputError(
            said(
                "No ruling rests on {provision}. Give a sub-rule as rulings cite it, for example 17.1d.",
                provision=provision,
            )
        )
    if not turns:
        raise InputError(
            said(
                "Of {incidents} no situation can be told that ends in a ruling. Ask about more incidents.",
                incidents=", ".join(names[:MOST_NAMED]),
            )
        )
    return _drawn(seed, wanted, turns, provision, level)


def _drawn(
    seed: int, names: list[str], turns: list[str], provision: str, level: int | None
) -> Iterator[Situation]:
    lot = Random(seed)  # noqa: S311 - a seed, no secret
    weights = [weight(incident(name)) for name in names]
    waiting: list[str] = []
    number = lot.randrange(2)  # so that also the first of a seed is at times the turn of a provision
    in_vain = 0
    while True:
        if in_vain == MOST_IN_VAIN:
            raise InputError(
                said(
                    "{count} times no situation could be drawn of {incidents} at this level. Ask about more incidents, "
                    "another provision or another level.",
                    count=MOST_IN_VAIN,
                    incidents=", ".join(names[:MOST_NAMED]),
                )
            )
        number += 1
        asked = provision
        if not asked and number % 2 == 0:  # every other one is the turn of a provision
            waiting = waiting or lot.sample(turns, len(turns))
            asked = waiting.pop()
        if asked:
            among = [name for name in reached_from()[asked] if name in set(names)]
            name = lot.choices(among, [weight(incident(one)) for one in among])[0]
        else:
            name = lot.choices(names, weights)[0]
        found = situation(name, lot, asked)
        in_vain += 1
        if found is not None and level in (None, found.level):
            in_vain = 0
            yield found


def situation(
    name: str,
    lot: Random,
    provision: str = "",
    known: Mapping[Fact[Any], Any] = MappingProxyType({}),
    *,
    offered: bool = False,
) -> Situation | None:
    """Return one situation of an incident; ``None`` where no walk tried ends in a ruling that cites the provision.

    Args:
        name: the incident.
        lot: draws the answers.
        provision: what the ruling has to cite; empty: nothing of the kind.
        known: answers that are given, where they are asked for.
        offered: whether it is enough that the ruling offers relief under the provision.
    """
    root = graph_of(name, TODAY)

    def wanted(end: Outcome) -> bool:
        held = (*citations_of(end), *(offered_by(end) if offered else ()))
        return isinstance(end, Ruling) and (not provision or provision in held)

    for _ in range(_TRIES):
        given = (
            {**known, the_form: _form_for(name, None, lot)} if name in (*ONLY_IN, *NOT_IN) else dict(known)
        )
        answers = walk(root, wanted, lot, given)
        if answers is None or not all(is_told(fact) for fact in answers if fact is not the_form):
            continue
        form = answers.get(the_form) or _form_for(name, answers.get(the_sides), lot)
        if not _can_play(name, answers.get(the_sides), form):
            continue
        facts = {fact.name: answer for fact, answer in answers.items() if fact is not the_form}
        found = _completed(name, facts, form, lot)
        if not isinstance(found, Ruling) or not wanted(found):
            continue
        told = deciding(found, facts)
        if not fit_together(name, told, form):
            continue
        hole = hole_of(name, told, lot)
        return Situation(name, told, form, TODAY, lot.choice(NAMES), hole, found)
    return None


def hole_of(name: str, facts: Mapping[str, Any], lot: Random) -> int | None:
    """Return on which hole something happened; ``None`` where it was on none, or on several.

    Args:
        name: the incident.
        facts: what is told, answers as tokens.
        lot: draws the hole.
    """
    if incident(name).theme in NO_HOLE:
        return None
    drawn = lot.randint(1, HOLES)  # drawn anyhow, so that what is drawn next stays the same
    return None if any(facts.get(each) in tokens for each, tokens in ON_NO_HOLE.items()) else drawn


def _can_play(name: str, who: Sides | None, form: FormOfPlay) -> bool:
    """Whether an incident can be of who plays together: Three-Ball is match play (Rule 21.4a), and has no partners."""
    try:
        check_sides(who, form)
        check_partners(name, incident(name).rule, who)
    except BadAnswer:
        return False
    return True


def _form_for(name: str, who: Sides | None, lot: Random) -> FormOfPlay:
    """Return a form of play by lot, where the incident is not of one form; Three-Ball is match play (Rule 21.4a)."""
    if who is Sides.THREE_BALL:
        return FormOfPlay.MATCH_PLAY
    if name in ONLY_IN:
        return ONLY_IN[name]
    forms = [one for one in FormOfPlay if one not in NOT_IN.get(name, ())]
    return lot.choices(forms, [likelihood(the_form, one) for one in forms])[0]


def _completed(name: str, facts: dict[str, Any], form: FormOfPlay, lot: Random) -> Outcome | None:
    """Return the outcome; what is asked beyond the graph (who bears it, among sides) is answered by lot and noted."""
    while True:
        found = rule(name, facts, played_on=TODAY, form_of_play=form)
        if not isinstance(found, NeedFacts):
            return found
        fact = fact_named(found.fact)
        if not fact.answers or not is_told(fact):
            return None
        answers = [one for one in fact.answers if fact is not the_sides or _can_play(name, one, form)]
        facts[fact.name] = lot.choices(answers, [likelihood(fact, one) for one in answers])[0]
