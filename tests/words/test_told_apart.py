"""Options of one name are told apart by what is their own."""

import pytest

from marram.rules.editions import EDITION_2019, EDITION_2023
from marram.rules.engine.request import book
from marram.rules.engine.tree import leaves_on
from marram.rules.ruling import Ruling
from marram.words.told_apart import options_words

SEVERAL = (
    "unplayable_ball",
    "ball_in_penalty_area",
    "no_play_zone",
    "temporary_immovable_obstruction",
    "mistake_in_relief_noticed",
)
"""Incidents that offer relief of one kind in two ways."""


def rulings(incident):
    for day in (EDITION_2019, EDITION_2023):
        for leaf in leaves_on(book(incident).root, day):
            if isinstance(leaf, Ruling) and leaf.relief:
                yield leaf


@pytest.mark.parametrize("incident", SEVERAL)
def test_no_two_options_of_a_ruling_have_one_title(incident):
    """In no ruling of these incidents do two cards stand under the same words."""
    seen = {ruling.relief for ruling in rulings(incident)}
    titles = [[one.title for one in options_words(relief)] for relief in seen]

    assert all(len(set(one)) == len(one) for one in titles), [
        one for one in titles if len(set(one)) < len(one)
    ]


def test_the_two_lines_out_of_a_bunker_say_where_they_lead():
    """Rule 19.3: back on the line in the bunker for one stroke, outside it for two."""
    found = {
        one.title
        for ruling in rulings("unplayable_ball")
        for one in options_words(ruling.relief)
        if one.citation in {"19.3a", "19.3b"} and one.kind == "back_on_the_line"
    }

    assert found == {"Back on the line, in the bunker", "Back on the line, outside the bunker"}


def test_an_option_alone_keeps_its_plain_name():
    """Where nothing needs telling apart nothing is added."""
    ruling = next(
        one for one in rulings("unplayable_ball") if len({opt.kind for opt in one.relief}) == len(one.relief)
    )

    assert not any("," in one.title for one in options_words(ruling.relief))
