"""The desk's own words: questions counted as they are asked, Yes before No, provisions named as they are."""

import re

import pytest

from marram.desk.shell.wording import rule_words
from marram.rules.facts import vocabulary
from marram.words.questions import question_words
from marram.words.texts import text as said
from tests.desk.asking import TestClient
from tests.desk.places import Ground


def test_questions_are_counted_as_they_are_asked(client: TestClient, ground: Ground) -> None:
    """What the map and the conditions answer is no question: the first that is asked is question 1, then 2, then 3."""
    page = client.get(f"/case?hole=9&ball={ground.in_the_burn()}&what=ball_in_penalty_area")
    counted = []
    while page.context["sheet"].kind == "need_facts":
        counted.append(page.context["number"])
        question = page.context["question"]
        assert said("rulings.question.number", number=counted[-1]) in page.text
        page = client.get(
            "/case", params=[*page.context["hidden"], (question.fact, question.answers[-1].token)]
        )
    assert counted == list(range(1, len(counted) + 1))
    assert len(counted) > 1


def test_yes_stands_before_no_in_every_question() -> None:
    """Whatever else a question offers: yes, then no, so that the thumb finds them blind."""
    tried = 0
    for fact in vocabulary().values():
        tokens = [one.token for one in question_words(fact).answers]
        if {"yes", "no"} <= set(tokens):
            assert tokens[:2] == ["yes", "no"], fact.name
            tried += 1
    assert tried > 100


@pytest.mark.parametrize(
    ("citation", "words"),
    [
        ("17.1d(3)", "Rule 17.1d(3)"),
        ("E-5", "Model Local Rule E-5"),
        ("Definitions: loose impediment", "Definition: loose impediment"),
        ("Clarification 9.2b/1", "Clarification 9.2b/1"),
        ("Exception 2 to 9.4b", "Exception 2 to 9.4b"),
    ],
)
def test_a_provision_is_named_as_it_is(citation: str, words: str) -> None:
    """A sub-rule is a Rule, a code a Model Local Rule; a Definition or a Clarification is called neither."""
    assert rule_words(citation) == words


def test_no_page_calls_a_definition_a_rule(client: TestClient, ground: Ground) -> None:
    """On what the player may do, each provision is named as it is."""
    page = client.get(f"/may?hole=9&ball={ground.in_the_burn()}").text
    assert page.count('class="cite"') > 5
    assert not re.search(r"Rule (Definition|Clarification|[A-Z]-)(?<!Local Rule [A-Z]-)", page)
