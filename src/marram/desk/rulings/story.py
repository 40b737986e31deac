"""Several incidents of one story: moving between them, adding and removing one, all in the address."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from marram.desk.rulings.case_address import CaseAddress
from marram.rules.facts.several import MOST_INCIDENTS
from marram.rules.incidents import incident
from marram.services.cases.address import Kept
from marram.services.cases.address_case import SHARED
from marram.services.cases.places import Places
from marram.words.language import translate
from marram.words.sheet import Rather

OPTION_TAKEN = "option_taken"
"""The stem of the facts about what the player took after one incident."""

OF_ONE_INCIDENT = (OPTION_TAKEN, "about_ball", "same_provisional")
"""Stems of the facts about one incident of a story; the others lie between two."""


@dataclass(frozen=True, slots=True)
class IncidentLink:
    """Another incident of the story: its number, its title, and the address of its page."""

    number: int
    title: str
    url: str


def incidents_of(case: CaseAddress) -> dict[int, Kept]:
    """Return every incident of the story by number, that of the page included if one is chosen."""
    every = dict(case.kept)
    if case.what:
        own = case.own()
        every[case.number] = replace(
            own, facts={name: answer for name, answer in own.facts.items() if name not in SHARED}
        )
    return dict(sorted(every.items()))


def together(case: CaseAddress) -> CaseAddress:
    """Return the case as a page about all incidents holds it: none of them is the page's own."""
    return _of(case, incidents_of(case))


def _of(case: CaseAddress, incidents: Mapping[int, Kept]) -> CaseAddress:
    """Return a page about ``incidents``, numbered anew; what is known between two that still meet stays known."""
    new = {old: place for place, old in enumerate(incidents, start=1)}
    between = {}
    for name, answer in case.between.items():
        stem, _, gap = name.rpartition("_")
        needed = {int(gap)} if stem in OF_ONE_INCIDENT else {int(gap), int(gap) + 1}
        if needed <= new.keys():
            between[f"{stem}_{new[int(gap)]}"] = answer
    return CaseAddress(
        case.conditions,
        case.hole,
        facts={name: answer for name, answer in case.facts.items() if name in SHARED},
        ask=case.ask,
        number=len(new) + 1,
        kept={new[old]: one for old, one in incidents.items()},
        between=between,
        strokes_before=case.strokes_before,
        strokes={new[old]: made for old, made in case.strokes.items() if old in new},
        by_another=frozenset(new[old] for old in case.by_another if old in new),
        begun=case.begun,
        flag=case.flag,
    )


def at_incident(case: CaseAddress, number: int) -> CaseAddress:
    """Return the case as the page about one of its incidents holds it."""
    all_kept = together(case)
    own = all_kept.kept[number]
    return replace(
        all_kept,
        places=own.places.at,
        accuracy=own.places.accuracy,
        what=own.what,
        facts={**all_kept.facts, **own.facts},
        ask=None,
        condition=own.condition,
        said=own.said,
        number=number,
        kept={place: one for place, one in all_kept.kept.items() if place != number},
    )


def without_incident(case: CaseAddress, number: int) -> CaseAddress:
    """Return the case without one incident; what was known just before and after it is no longer known."""
    left = {place: one for place, one in incidents_of(case).items() if place != number}
    return replace(_of(case, left), ask=None)


def choosing(case: CaseAddress, what: str, said: str = "") -> str:
    """Return the address of the case with another incident chosen for this page: its answers start anew.

    Args:
        case: the case.
        what: the name of the incident.
        said: the words it was told in, whose facts are to be proposed.
    """
    shared = {name: answer for name, answer in case.facts.items() if name in SHARED}
    touching = {str(case.number - 1), str(case.number)}
    between = {
        name: answer for name, answer in case.between.items() if name.rpartition("_")[2] not in touching
    }
    facts = shared if case.kept else {}
    return case.url("/case", what=what, facts=facts, between=between, ask=None, said=said)


def beginning(case: CaseAddress, acts: Sequence[tuple[str, str]]) -> str | None:
    """Return the address of a story that goes on with several acts at once; ``None`` where it would hold too many.

    Args:
        case: the case; what it holds already comes before.
        acts: of each act the name of the incident and the words it was told in.
    """
    before = {place: one for place, one in incidents_of(case).items() if place != case.number}
    every = [*before.values(), *(Kept(what, said=said) for what, said in acts)]
    if len(every) > MOST_INCIDENTS:
        return None
    story = _of(case, dict(enumerate(every, start=1)))
    return at_incident(replace(story, what=None), len(before) + 1).url("/case")


def handed_over(case: CaseAddress, rather: Rather) -> str:
    """Return the address of the case as the incident that it rather is, with the answers given so far."""
    return case.url("/case", what=rather.incident, facts={**case.facts, **rather.facts}, ask=None)


def next_incident(case: CaseAddress) -> str | None:
    """Return the address that starts the next incident, or ``None`` when the story is full.

    The ball may lie elsewhere by then, so its place is asked again.
    """
    following = together(case)
    if len(following.kept) >= MOST_INCIDENTS:
        return None
    return following.url("/what" if case.hole is None else "/ball", ask=None)


def last_places(case: CaseAddress) -> str | None:
    """Return the address of this page with the ball where it lay in the incident before, if it was shown."""
    before = case.kept.get(case.number - 1)
    if before is None or "ball" not in before.places.at:
        return None
    places = Places({"ball": before.places.at["ball"]})
    if "ball" in before.places.accuracy:
        places.accuracy["ball"] = before.places.accuracy["ball"]
    return case.url("/ball", places=places.at, accuracy=places.accuracy)


def other_incidents(case: CaseAddress) -> list[IncidentLink]:
    """Return links to the other incidents of the story."""
    return [
        IncidentLink(place, translate()(incident(one.what).title), at_incident(case, place).url("/case"))
        for place, (number, one) in enumerate(incidents_of(case).items(), start=1)
        if number in case.kept
    ]
