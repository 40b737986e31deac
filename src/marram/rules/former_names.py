"""Names that facts and incidents had before: what was written with them is still read, and written anew.

A fact keeps its entry here as long as the answers mean what they meant; a fact that asks something else is no
renamed fact, and what was answered to it is not known of the new one.
"""

FORMER_FACTS = {
    "attendant_was": "who_meant_the_hit",
    "could_still_be_holed": "could_still_score",
}
"""The present name of a fact, by a name it had before."""

FORMER_INCIDENTS: dict[str, str] = {}
"""The present name of an incident, by a name it had before."""


def fact_now(name: str) -> str:
    """Return the present name of a fact."""
    return FORMER_FACTS.get(name, name)


def incident_now(name: str) -> str:
    """Return the present name of an incident."""
    return FORMER_INCIDENTS.get(name, name)
