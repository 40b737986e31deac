"""No words are left over: each message of the catalogue is said by some outcome of the Rules as encoded."""

from collections.abc import Iterator

from marram.rules.contents import ONLY_AMONG_SIDES, citations_reached
from marram.rules.done_wrong import corrections_of
from marram.rules.engine.request import book, book_among
from marram.rules.engine.tree import leaves
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.incidents import INCIDENTS
from marram.rules.ruling import Judgement, NotCovered, Outcome, Ruling
from marram.rules.story.story import Happened, rule_story
from marram.words.english import catalogue

UNPLAYABLE = {
    "area_of_ball": "general_area",
    "spot_of_ball_known": True,
    "last_stroke_from_penalty_area": False,
}
OUT_OF_BOUNDS = {
    "all_of_ball_out_of_bounds": True,
    "provisional_state": "not_played",
    "last_stroke_from_penalty_area": False,
}
HOLE_CONCEDED = {"who_conceded": "clearly", "conceded_in_time": True, "conceded": "hole"}
ADVICE_ASKED = {
    "during_round": True,
    "advice_deed": "asked",
    "was_advice": True,
    "advice_to_or_from": "player_on_course",
}
ONLY_IN_STORIES: tuple[tuple[tuple[Happened, ...], str, dict[str, str]], ...] = (
    ((Happened("unplayable_ball", UNPLAYABLE, "lateral"),), "stroke_play", {}),
    (
        (
            Happened("unplayable_ball", UNPLAYABLE, "lateral"),
            Happened("ball_struck_unfairly", {"contact": "pushed_scraped_scooped"}),
        ),
        "stroke_play",
        {},
    ),
    (
        (Happened("concession", HOLE_CONCEDED), Happened("advice_exchanged", ADVICE_ASKED)),
        "match_play",
        {"after_hole_1": "after"},
    ),
    (
        (
            Happened("began_outside_teeing_area", {"tee_stroke_cancelled": "no"}),
            Happened("ball_near_boundary", OUT_OF_BOUNDS, "nothing_yet"),
        ),
        "match_play",
        {},
    ),
)
"""Stories that say what no single incident says, with their form of play and what lies between."""


def keys_of(outcome: Outcome) -> Iterator[str]:
    """Yield the keys of the notes, cautions, corrections, criteria and refusals of an outcome."""
    if isinstance(outcome, Ruling):
        yield from (*outcome.notes, *outcome.cautions, *(one.what for one in corrections_of(outcome)))
    elif isinstance(outcome, Judgement):
        yield from outcome.criteria
        for ending in outcome.outcomes:
            yield from keys_of(ending)
    elif isinstance(outcome, NotCovered):
        yield outcome.why


def citations_of_judgements() -> Iterator[str]:
    """Yield the citations that only the endings of a judgement name."""
    for one in INCIDENTS:
        for leaf in leaves(book(one.name).root):
            if isinstance(leaf, Judgement):
                for ending in leaf.outcomes:
                    yield from ending.citations


def test_every_note_is_said() -> None:
    """Each sentence to a player or an official is the answer to some situation."""
    roots = [book(one.name).root for one in INCIDENTS]
    roots += [book_among(name, who).root for name, who in ONLY_AMONG_SIDES]
    said = {key for root in roots for leaf in leaves(root) for key in keys_of(leaf)}
    for acts, form, between in ONLY_IN_STORIES:
        combined = rule_story(acts, between, edition=2023, form_of_play=form, local_rules=[]).combined
        assert isinstance(combined, Ruling)
        said |= set(keys_of(combined))

    assert not catalogue("NOTES").keys() - said


def test_every_provision_with_words_is_cited() -> None:
    """Each statement of a provision is shown by some ruling, or names a Local Rule that can be adopted."""
    cited = {*citations_reached(), *citations_of_judgements(), *LOCAL_RULES}

    assert not catalogue("PROVISIONS").keys() - cited
