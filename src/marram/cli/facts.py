"""Facts as typed on the command line."""

from collections.abc import Sequence

from marram.errors import InputError
from marram.rules.former_names import fact_now
from marram.said import said


def facts_given(pairs: Sequence[str]) -> dict[str, str]:
    """Return the facts given as ``NAME=VALUE``.

    Raises:
        InputError: one has no ``=``, or a fact is given twice with different answers; all faults are listed.
    """
    facts: dict[str, str] = {}
    faults = []
    for pair in pairs:
        written, sign, value = (part.strip() for part in pair.partition("="))
        name = fact_now(written)
        if not (name and sign and value):
            faults.append(
                said("--fact {pair!r} is not NAME=VALUE; write for example area_of_ball=bunker.", pair=pair)
            )
        elif facts.get(name, value) != value:
            faults.append(
                said(
                    "--fact {name} is given twice: {before!r} and {value!r}; leave one out.",
                    name=name,
                    before=facts[name],
                    value=value,
                )
            )
        else:
            facts[name] = value
    if faults:
        raise InputError(*faults)
    return facts
