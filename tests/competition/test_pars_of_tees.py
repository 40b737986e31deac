"""A hole counts against the par of the tees it is played from (Rules of Handicapping, Appendix F: par by hole and tee)."""

from datetime import date
from typing import Any

import pytest

from marram.competition.cards.acts import By, CardAct, Figure
from marram.competition.cards.findings import RuledUnder
from marram.competition.cards.outcome import round_card
from marram.competition.cards.scorecard import scorecard
from marram.competition.conditions.choices import MaximumBy, Score
from marram.competition.conditions.event_file import EventFile, Maximum
from marram.competition.conditions.pars import holes_from_tees
from marram.competition.conditions.readiness import About, Exists, readiness
from marram.competition.conditions.reading import read_event_file
from marram.competition.results.card import RoundCard, Row
from marram.competition.results.scoring import Scoring, side_values
from marram.errors import InputError
from marram.paper.event.on_paper import OnPaper
from marram.paper.event.scorecards import scorecards
from marram.paper.event.side_cards import side_cards
from marram.rules.facts.conditions import FormOfPlay
from marram.services.cards.card_given import BallGiven, CardGiven, card_of
from tests.competition.making import COURSE, PARS

WOMEN = tuple(par + (number in (1, 9)) for number, par in enumerate(PARS, start=1))
"""As the men's, and holes 1 and 9 are of one more."""


def event(**more: Any) -> EventFile:
    return read_event_file(
        {
            "form_of_play": "stableford",
            "scores": ["gross"],
            "ratings": [
                {"tees": "white", "sex": "male", "course_rating": 71.4, "slope": 130, "par": sum(PARS)},
                {
                    "tees": "red",
                    "sex": "female",
                    "course_rating": 73.0,
                    "slope": 128,
                    "par": sum(WOMEN),
                    "hole_pars": list(WOMEN),
                },
            ],
            "players": [
                {"name": "Adela Crook", "sex": "female", "tees": "red", "handicap_index": 8.0, "side": "one"},
                {"name": "Bran Eddy", "sex": "male", "tees": "white", "handicap_index": 8.0, "side": "one"},
            ],
            **more,
        }
    )


def given(side: str, *gross: int) -> CardGiven:
    return CardGiven(side, gross=(*gross, *PARS[len(gross) :]))


def made(found: EventFile, one: CardGiven) -> RoundCard:
    faults: list[str] = []
    card = card_of(found, one, COURSE, faults)
    assert card is not None
    assert faults == []
    return card.checked()


def test_points_are_against_the_par_of_the_tees() -> None:
    """The same strokes are a point more on each of the two holes that are of one more from the red tees."""
    scoring = Scoring(FormOfPlay.STABLEFORD)
    women, men = (side_values(scoring, made(event(), given(name))) for name in ("Adela Crook", "Bran Eddy"))
    assert men == (2,) * 18
    assert women == tuple(3 if number in (1, 9) else 2 for number in range(1, 19))


def test_net_double_bogey_is_of_the_par_of_the_tees() -> None:
    """A nine on the first hole is cut to six for a par of four, and to seven for a par of five."""
    scoring = Scoring(FormOfPlay.MAXIMUM_SCORE, Score.GROSS, maximum=Maximum(MaximumBy.NET_OVER_PAR, 2))
    first = [side_values(scoring, made(event(), given(name, 9)))[0] for name in ("Bran Eddy", "Adela Crook")]
    assert first == [6, 7]


def test_partners_from_other_tees_have_each_their_own_par() -> None:
    """In Four-Ball a five on the first counts two points for her and one for him: hers is the better."""
    found = event(sides="four_ball")
    balls = tuple(BallGiven(one.name, (5, *PARS[1:])) for one in found.players)
    card = made(found, CardGiven("one", balls=balls))
    assert side_values(Scoring(FormOfPlay.STABLEFORD), card)[0] == 2
    alone = RoundCard("one", 1, COURSE, (Row("Bran Eddy", (5, *PARS[1:])),))
    assert side_values(Scoring(FormOfPlay.STABLEFORD), alone)[0] == 1


def test_a_card_in_the_scoring_area_has_the_par_of_each_ball() -> None:
    """What is entered of partners is counted against the par of each."""
    acts: list[CardAct] = [
        Figure(by, number, 5 if number == 1 else par, ball=name)
        for name in ("Adela Crook", "Bran Eddy")
        for by in (By.PLAYER, By.MARKER)
        for number, par in enumerate(PARS, start=1)
    ]
    card = scorecard("one", 1, COURSE, acts, balls=("Adela Crook", "Bran Eddy"))
    under = RuledUnder(date(2025, 6, 21), pars={"Adela Crook": dict(enumerate(WOMEN, start=1))})
    values = side_values(Scoring(FormOfPlay.STABLEFORD), round_card(card, under, {}))
    assert values[0] == 2
    assert values[8] == 3


def test_a_card_prints_the_par_of_its_tees() -> None:
    """Each player's card adds up to the par of the rating; partners' card has a line for the one whose par differs."""
    found = event()
    printed = {
        card.player: [line.cells for line in card.lines if line.heading == "Par"]
        for part in scorecards(OnPaper(found, holes=COURSE)).parts
        for card in part.cards  # type: ignore[union-attr]
    }
    assert {name: lines[0][-1] for name, lines in printed.items()} == {
        "Adela Crook": str(sum(WOMEN)),
        "Bran Eddy": str(sum(PARS)),
    }
    (side,) = side_cards(OnPaper(event(sides="four_ball"), holes=COURSE))
    assert [line.cells[-1] for line in side.lines if line.heading == "Par"] == [
        str(sum(PARS)),
        str(sum(WOMEN)),
    ]


def test_partners_of_the_same_tees_share_their_par() -> None:
    """Where all of a side play from tees of one par the card has it; where they do not, that of the map."""
    found = event()
    adela, bran = found.players
    assert [one.par for one in holes_from_tees(found, [adela, adela], COURSE)] == list(WOMEN)
    assert holes_from_tees(found, [adela, bran], COURSE) == COURSE


@pytest.mark.parametrize(
    ("pars", "words"),
    [
        ([*WOMEN[:17], WOMEN[17] + 1], f"add up to {sum(WOMEN) + 1}, and par is {sum(WOMEN)}"),
        ([9, *WOMEN[1:]], "the par of hole 1 is 9"),
    ],
)
def test_pars_that_do_not_add_up_are_refused(pars: list[int], words: str) -> None:
    """What contradicts itself is told with the remedy."""
    rating = {"tees": "red", "course_rating": 73.0, "slope": 128, "par": sum(WOMEN), "hole_pars": pars}
    with pytest.raises(InputError, match=words):
        event(ratings=[rating])


def test_tees_of_another_par_than_the_map_are_told_until_their_holes_are() -> None:
    """The par of the red tees is two more than the map's: told where hole_pars is missing, and not where it is given."""
    there = Exists(holes_on_map=range(1, 19), pars=dict(enumerate(PARS, start=1)))
    assert not [one for one in readiness(event(), there) if one.about is About.COURSE]
    rating = {"tees": "red", "sex": "female", "course_rating": 73.0, "slope": 128, "par": sum(WOMEN)}
    (only,) = (one for one in readiness(event(ratings=[rating]), there) if one.about is About.COURSE)
    assert f"red (female) is {sum(WOMEN)}, and the holes on the map add up to {sum(PARS)}" in only.what
    assert not only.stops
