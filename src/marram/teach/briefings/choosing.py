"""Which situations a briefing shows: of topics, for beginners, of Local Rules, of what happened at an event."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import islice
from random import Random
from typing import Any

from marram.errors import InputError, did_you_mean
from marram.rules.engine.export import facts_of
from marram.rules.engine.fact import Fact
from marram.rules.engine.request import fact_named
from marram.rules.facts import vocabulary
from marram.rules.facts.conditions import form_of_play
from marram.rules.former_names import incident_now
from marram.rules.incidents import INCIDENTS
from marram.said import said, sentences
from marram.teach.book.contents import entries
from marram.teach.book.permanent import situation_at
from marram.teach.situations.how_often import IN_MANY_ROUNDS, IN_MOST_ROUNDS, oddity
from marram.teach.situations.reaching import reached, reached_from
from marram.teach.situations.sampling import situation
from marram.teach.situations.situation import Situation

FOR_BEGINNERS = (
    "fell_off_tee",
    "provisional_ball",
    "ball_not_found",
    "ball_near_boundary",
    "identifying_ball",
    "ball_in_penalty_area",
    "unplayable_ball",
    "abnormal_course_condition",
    "embedded_ball",
    "natural_thing_removed",
    "artificial_thing_removed",
    "sand_touched",
    "ball_dropped",
    "ball_moved_by_player",
    "ball_lifted",
    "green_repaired",
    "ball_hit_flagstick",
    "wrong_ball_played",
    "advice_exchanged",
    "whose_turn",
    "wrong_green",
    "scorecard_fault",
    "ball_overhung_hole",
    "conditions_worsened",
)
"""What a beginner meets, from the tee to the card (common practice of rules evenings, our own choice and order)."""
SHOWN_IN: Mapping[str, tuple[str, Mapping[str, str]]] = {
    "A-1": ("ball_near_boundary", {"all_of_ball_out_of_bounds": "no"}),
    "B-1": ("ball_in_penalty_area", {"found_in_penalty_area": "yes"}),
    "C-1": ("ball_in_two_areas", {"touches_penalty_area": "no", "touches_bunker": "yes"}),
    "C-2": (
        "ball_in_two_areas",
        {"touches_penalty_area": "no", "touches_bunker": "no", "touches_green": "no"},
    ),
    "C-3": ("natural_thing_removed", {"removed_thing": "sand_or_loose_soil", "removed_on_green": "no"}),
    "D-1": (
        "ball_in_two_areas",
        {"touches_penalty_area": "no", "touches_bunker": "no", "touches_green": "yes"},
    ),
    "D-2": ("wrong_green", {"wrong_green_interference": "ball_on_it", "played_despite_wrong_green": "no"}),
    "D-6": ("wrong_green", {"wrong_green_interference": "ball_on_it", "played_despite_wrong_green": "no"}),
    "E-1.3": ("ball_in_penalty_area", {"found_in_penalty_area": "yes", "dropping_zone_provided": "yes"}),
    "E-8": (
        "no_play_zone",
        {
            "no_play_zone_interference": "ball_inside",
            "played_despite_zone": "no",
            "area_of_ball": "general_area",
        },
    ),
    "E-10": (
        "young_tree",
        {
            "no_play_zone_interference": "ball_inside",
            "played_despite_zone": "no",
            "area_of_ball": "general_area",
        },
    ),
    "F-1": (
        "abnormal_course_condition",
        {"in_the_way": "ground_under_repair", "interference": "ball", "area_of_ball": "general_area"},
    ),
    "H-2": ("advice_in_team", {"advice_giver_allowed": "yes"}),
    "H-5": ("advice_in_team", {"team_members_in_same_group": "yes"}),
    "J-1": ("played_after_suspension", {}),
}
"""Local Rules that no provision of their own tells, or that say what or where something is: the incident they are met in,
with what makes the point (own choice)."""
_NO_POINT: Mapping[str, str] = {}
_TRIES = 24
_EASY = 1
_COMMON = IN_MOST_ROUNDS | IN_MANY_ROUNDS


def of_topics(given: Sequence[str], seed: int, count: int) -> list[Situation]:
    """Return situations of topics by turns: each an incident, a Rule (``17``) or a provision (``17.1d``).

    Raises:
        InputError: one is none of these; every such one is listed, with the nearest.
    """
    ways, faults = [], []
    for one in given:
        found = _ways(one)
        if found:
            ways.append(found)
        else:
            names = [each.name for each in INCIDENTS if not each.for_teaching]
            faults.append(
                sentences(
                    said(
                        "{topic}: give an incident, a Rule such as 17, or a provision such as 17.1d.",
                        topic=one,
                    ),
                    did_you_mean(one, [*names, *reached_from()]),
                )
            )
    if faults or not ways:
        raise InputError(*(faults or [said("Give a topic: an incident, a Rule or a provision.")]))
    return list(islice(_by_turns(ways, seed), count))


def _ways(topic: str) -> list[tuple[str, str]]:
    """Return the incidents, each with a provision its rulings must cite, that a topic can be shown by."""
    name = incident_now(topic)
    if reached().get(name):
        return [(name, "")]
    if topic in reached_from():
        return [(each, topic) for each in reached_from()[topic]]
    whole = [one for one in reached_from() if topic.isdigit() and one.startswith(f"{topic}.")]
    return [(each, one) for one in whole for each in reached_from()[one]]


def for_beginners(seed: int, count: int) -> list[Situation]:
    """Return easy situations of what beginners meet, from the tee to the card."""
    ways = [[(name, "")] for name in FOR_BEGINNERS if reached().get(name)]
    found = list(islice(_by_turns(ways, seed, plain=True), count))
    order = {name: place for place, name in enumerate(FOR_BEGINNERS)}
    return sorted(found, key=lambda one: order[one.incident])


def of_local_rules(codes: Iterable[str], seed: int, count: int) -> tuple[list[Situation], tuple[str, ...]]:
    """Return a situation for each Local Rule in force, told as if no other were in doubt; and the codes that none shows.

    Raises:
        InputError: no codes are given.
    """
    adopted = tuple(dict.fromkeys(codes))
    if not adopted:
        raise InputError(said("No Local Rule is in force: there is nothing to brief about."))
    found: dict[str, Situation] = {}
    conditions = _conditions(adopted)
    for code in adopted:
        lot = Random(f"{seed} {code}")  # noqa: S311 - a seed, no secret
        ways = [
            (name, one.citation)
            for one in entries().values()
            if code in one.citation.replace(",", " ").split()
            for name in reached_from()[one.citation]
        ]
        known, point = conditions, _NO_POINT
        if code in SHOWN_IN:
            name, point = SHOWN_IN[code]
            ways = [(name, "")]
            known = {**known, **{fact_named(fact): fact_named(fact).parse(to) for fact, to in point.items()}}
        every = (situation(*_drawn(ways, lot), known) for _ in range(_TRIES if ways else 0))
        agreeing = [one for one in every if one is not None and _agrees(one, adopted)]
        agreeing = [one for one in agreeing if one.facts.keys() >= point.keys()] or agreeing
        offering = [one for one in agreeing if _relief_by(code, one)] or _beside_a_rule(code, adopted, lot)
        plainest = min(offering or agreeing, key=_how_plain, default=None)
        if plainest is not None:
            found[code] = plainest
    chosen = list(found.values())[:count]
    return chosen, tuple(code for code in adopted if code not in found)


def _conditions(adopted: tuple[str, ...]) -> dict[Fact[Any], Any]:
    """Return of every Local Rule that is asked about whether it is in force."""
    return {
        fact: fact.parse("yes" if _in_force(fact, adopted) else "no")
        for name, fact in vocabulary().items()
        if name.startswith("local_rule_")
    }


def _in_force(fact: Fact[Any], adopted: tuple[str, ...]) -> bool:
    return any(code in adopted for code in fact.source.replace(",", " ").split())


def _beside_a_rule(code: str, adopted: tuple[str, ...], lot: Random) -> list[Situation]:
    """Return situations in which a Local Rule only adds a way of relief, and no provision of its own decides."""
    name = f"local_rule_{code.lower().replace('-', '_').replace('.', '_')}"
    if name not in vocabulary():
        return []
    known = _conditions(adopted)
    drawn = (
        situation(each, lot, known=known)
        for each in sorted(_COMMON)
        if reached().get(each) and fact_named(name) in facts_of(each)
        for _ in range(_TRIES)
    )
    return [one for one in drawn if one is not None and _relief_by(code, one) and _agrees(one, adopted)]


def _relief_by(code: str, one: Situation) -> bool:
    """Whether a ruling offers relief under a Local Rule."""
    return any(code in each.citation.split() for each in one.ruling.relief)


def _drawn(ways: list[tuple[str, str]], lot: Random) -> tuple[str, Random, str]:
    name, provision = lot.choice(ways)
    return name, lot, provision


def _agrees(one: Situation, adopted: tuple[str, ...]) -> bool:
    """Whether a situation has no Local Rule in force that is not, and none out of force that is."""
    for name, answer in one.facts.items():
        in_force = answer in {True, "yes", "true"}
        if name.startswith("local_rule_") and in_force != _in_force(fact_named(name), adopted):
            return False
    return True


def of_event(cases: Iterable[Mapping[str, Any]], count: int) -> tuple[list[Situation], int]:
    """Return what was ruled on at an event, alike ones once, what cost something first; and how many could not be told.

    Args:
        cases: each with ``incident``, ``facts`` and ``form``.
        count: how many at most.
    """
    found: dict[tuple[str, str], tuple[int, Situation]] = {}
    left_out = 0
    for one in cases:
        try:
            pairs = [("form", str(one["form"])), *((name, str(to)) for name, to in one["facts"].items())]
            made = situation_at(str(one["incident"]), pairs)
        except InputError:
            left_out += 1
            continue
        key = (made.incident, made.headline)
        times = found[key][0] if key in found else 0
        found[key] = (times + 1, made)
    ordered = sorted(found.values(), key=lambda each: (not each[1].ruling.penalties, -each[0]))
    return [one for _, one in ordered][:count], left_out


def _by_turns(ways: list[list[tuple[str, str]]], seed: int, *, plain: bool = False) -> Iterator[Situation]:
    """Yield situations of each way by turns, none told twice, until nothing new is found."""
    lot = Random(seed)  # noqa: S311 - a seed, no secret
    told: set[tuple[str, str]] = set()
    idle = 0
    while idle < 3:
        idle += 1
        for some in ways:
            one = _new(some, lot, told, plain=plain)
            if one is not None:
                told.add((one.incident, one.headline))
                idle = 0
                yield one


def _new(
    ways: list[tuple[str, str]], lot: Random, told: set[tuple[str, str]], *, plain: bool
) -> Situation | None:
    """Return a situation whose ruling was not told; the plainest of those drawn, or the first."""
    every = (situation(*_drawn(ways, lot)) for _ in range(_TRIES))
    fresh = (one for one in every if one is not None and (one.incident, one.headline) not in told)
    return min(fresh, key=_how_plain, default=None) if plain else next(fresh, None)


def _how_plain(one: Situation) -> tuple[bool, float]:
    """Order situations: the easy ones first, of them what happens most."""
    known = {fact_named(name): fact_named(name).parse(token) for name, token in one.facts.items()}
    return one.level != _EASY, oddity({**known, form_of_play: one.form}) + 0.3 * len(known)
