"""A fact that covers several things, told as one of them: what a person saw, and no list of what it could have been.

Each module holds ``CASES``: ``FACT.TOKEN``, or ``INCIDENT/FACT.TOKEN``, with what else has to be told after each ``+``
(``FACT.TOKEN``, ``FACT``, or ``form.FORM`` for a form of play) → sentence. ``opening`` stands for how the telling begins,
and an empty sentence for what another one says already. Of one fact the first that fits is told. Only situations made up
for teaching are told so: a recorded case keeps its own words. English sentences are the gettext message ids.
"""

from marram.words.english.cases import (
    away,
    beside,
    by_incident,
    clubs,
    conditions,
    disability,
    ground,
    helping,
    in_motion,
    interfering,
    lifted,
    measuring,
    openings,
    others,
    play,
    relief,
    rounds,
    said_once,
    sides,
    who,
)

CASES: dict[str, str] = {
    **lifted.CASES,
    **in_motion.CASES,
    **rounds.CASES,
    **conditions.CASES,
    **beside.CASES,
    **measuring.CASES,
    **sides.CASES,
    **disability.CASES,
    **openings.CASES,
    **by_incident.CASES,
    **said_once.CASES,
    **relief.CASES,
    **helping.CASES,
    **who.CASES,
    **interfering.CASES,
    **ground.CASES,
    **away.CASES,
    **clubs.CASES,
    **play.CASES,
    **others.CASES,
}
