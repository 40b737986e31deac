"""Situations from the book: what is told decides the ruling, and the words are sentences."""

import re
from itertools import islice
from random import Random

import pytest

from marram.errors import InputError
from marram.rules.engine.export import graph_of
from marram.rules.engine.graph import GraphNode, vertices
from marram.rules.engine.request import rule
from marram.rules.facts import vocabulary
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.incidents import incident
from marram.rules.result import NeedFacts
from marram.teach.situations.how_often import rarity
from marram.teach.situations.reaching import TODAY, provisions_of, reached, reached_from, taught
from marram.teach.situations.sampling import situation, situations
from marram.teach.situations.situation import solved
from marram.words.english.cases import CASES
from marram.words.english.told import told_sentences
from marram.words.english.told.openings import OPENINGS
from marram.words.telling import SIDES_OF_NONE, is_told, telling, told

NAMES = [one.name for one in taught() if reached()[one.name]]


@pytest.mark.parametrize("name", NAMES)
def test_what_is_told_decides_the_ruling(name: str) -> None:
    """Asked one question after the other, whoever knows the telling and no more comes to the same ruling."""
    for seed in range(4):
        one = situation(name, Random(seed))
        assert one is not None
        again = solved(one)
        assert (again.penalties, again.action, again.citations, again.notes) == (
            one.ruling.penalties,
            one.ruling.action,
            one.ruling.citations,
            one.ruling.notes,
        )


@pytest.mark.parametrize("name", NAMES[::9])
def test_nothing_told_is_idle(name: str) -> None:
    """Without one of the facts told, the ruling stays open or rests on fewer: each was read on the way to it."""
    one = situation(name, Random(5))
    assert one is not None
    for fact in one.facts:
        rest = {key: answer for key, answer in one.facts.items() if key != fact}
        left = rule(name, rest, played_on=one.played_on, form_of_play=one.form)
        assert isinstance(left, NeedFacts) or fact not in {reason.fact for reason in left.reasons}


def test_every_fact_that_an_incident_asks_can_be_told() -> None:
    """No question of the book lacks its sentences, and no sentence is of a fact that does not exist."""
    asked = {
        vertex.fact
        for one in taught()
        for vertex in vertices(graph_of(one.name, TODAY))
        if isinstance(vertex, GraphNode)
    } - {form_of_play}
    untold = sorted(fact.name for fact in asked if not is_told(fact))
    assert untold == [], "say how an answer is told in words/english/told/THEME.py"
    known = vocabulary()
    for key in told_sentences():
        name, _, token = key.partition(".")
        assert name in known, key
        of_number = not known[name].answers and (
            token.isdecimal() or token in SIDES_OF_NONE
        )  # a number that is told otherwise, such as none
        assert not token or of_number or token in known[name].tokens(), key
    assert OPENINGS.keys() <= {one.name for one in taught()}


def test_each_answer_is_one_sentence_with_nothing_left_open() -> None:
    """Every answer of every fact told begins with a capital, ends with a full stop and has its places filled."""
    for fact in vocabulary().values():
        if not is_told(fact) or fact.name.startswith("local_rule_"):
            continue
        for answer in fact.answers or (2,):
            said = told(fact.name, answer, "Odo")
            assert re.fullmatch(r"[A-Z][^{}]*\.", said), said


def test_each_provision_that_rulings_cite_gets_its_turn() -> None:
    """For every provision reached there is a walk that ends in a ruling resting on it."""
    for provision, names in reached_from().items():
        found = [situation(name, Random(1), provision) for name in names]
        assert any(one is not None and provision in one.ruling.citations for one in found), provision


def test_the_provisions_kept_are_those_of_the_book() -> None:
    """What the package keeps of every incident is what its graph holds."""
    kept = reached()
    old = [one.name for one in taught() if list(kept.get(one.name, ())) != provisions_of(one.name, TODAY)]
    assert old == [], "teach/situations/reached.json is old: make changes"
    assert kept.keys() == {one.name for one in taught()}, "teach/situations/reached.json is old: make changes"


def test_the_same_seed_gives_the_same_situations() -> None:
    """Two runs of one seed agree, two seeds do not."""
    one, same, other = (list(islice(situations(seed), 6)) for seed in (3, 3, 4))
    assert one == same != other


def test_an_unknown_provision_is_refused() -> None:
    """A provision that no ruling cites is named, with what to give instead."""
    with pytest.raises(InputError, match=r"No ruling rests on 99\.9"):
        situations(1, provision="99.9")


def test_harder_situations_have_more_to_weigh() -> None:
    """On average a hard situation tells more facts than an easy one, rests on more provisions and happens more rarely."""
    easy, hard = (list(islice(situations(2, level=level), 40)) for level in (1, 3))
    for much in (
        lambda one: len(one.facts),
        lambda one: len(one.ruling.citations),
        lambda one: rarity(incident(one.incident)),
    ):
        assert sum(map(much, easy)) < sum(map(much, hard))


def test_the_grade_knows_what_is_rare() -> None:
    """By the common practice of `how_often`: a ball lifted, a wrong green, a green tested, a player who is blind."""
    names = ("ball_lifted", "wrong_green", "green_tested", "blind_player")
    assert [rarity(incident(name)) for name in names] == [0, 1, 2, 3]


def test_each_case_is_of_a_fact_that_exists_and_is_one_sentence() -> None:
    """What is told instead of a list of things names a known incident, facts and answers, and leaves nothing open."""
    known, incidents = vocabulary(), {one.name for one in taught()}
    for key, sentence in CASES.items():
        of_incident, _, conditions = key.rpartition("/")
        assert of_incident in {"", *incidents}, key
        for one in conditions.split("+"):
            name, _, token = one.partition(".")
            if name == "form":
                assert FormOfPlay(token), key
            elif name != "opening":
                number = not known[name].answers and token.isdigit()
                assert not token or number or token in known[name].tokens(), key
        assert not sentence or re.fullmatch(r"(?:[A-Z]|\{player\}).*\.", sentence), sentence


def test_a_made_up_situation_is_told_as_one_case_and_a_recorded_one_as_it_was_asked() -> None:
    """A fact that covers several things is told as one of them only where it is made up for teaching."""
    facts = {"green_test": "rubbed", "meant_to_test": "no"}
    made_up = telling("green_tested", facts, "Odo", FormOfPlay.STROKE_PLAY)
    assert made_up == ("Odo rubbed the surface of a green.", "It was done to brush a leaf away.")
    assert "The surface was rubbed." in telling("green_tested", facts, "Odo")
    stopped = {"deflector": "other_player"}
    assert "It was stopped on purpose by the opponent." in telling(
        "deliberately_deflected", stopped, "Odo", FormOfPlay.MATCH_PLAY
    )
    assert "It was stopped on purpose by another player." in telling(
        "deliberately_deflected", stopped, "Odo", FormOfPlay.STROKE_PLAY
    )
