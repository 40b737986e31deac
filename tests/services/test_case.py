"""One schema for a case: whatever is written is read back, as JSON and as the address of a page."""

import json
from dataclasses import fields, is_dataclass
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.errors import InputError
from marram.rules.editions import EDITION_2023
from marram.rules.engine.export import facts_of
from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import FormOfPlay, Sides, date_of_play
from marram.rules.facts.several import BETWEEN
from marram.rules.former_names import FORMER_FACTS, FORMER_INCIDENTS
from marram.rules.incidents import INCIDENTS, incident
from marram.services.cases import case as schema
from marram.services.cases.address import Address
from marram.services.cases.address_case import SHARED, address_of, case_at
from marram.services.cases.address_reading import read_address
from marram.services.cases.case import Act, Case, CasePlayer, MadeWith, Spot
from marram.services.cases.case_file import read_case
from marram.services.cases.conditions import Conditions, read_conditions
from marram.services.cases.made_with import book_digest
from marram.services.cases.places import ROLES
from tests.cli.running import marram

DAY = date(2024, 5, 1)
NAMES = [one.name for one in INCIDENTS]
WITH_ITS_ACT = ("option_taken", "about_ball")
GAPS = [one for one in BETWEEN if one.name.endswith("_1") and not one.name.startswith(WITH_ITS_ACT)]


def answers_to(facts: list) -> st.SearchStrategy[dict[str, str]]:
    """Answers to some of these facts, written as on the command line."""

    def answer(fact) -> st.SearchStrategy[str]:
        if fact.answers:
            return st.sampled_from(fact.tokens())
        low, high = int(fact.minimum), int(min(fact.maximum, fact.minimum + 50))
        return st.integers(low, high).map(lambda number: fact.token(fact.parse(number)))

    names = [one for one in facts if one is not date_of_play and one.name not in SHARED]
    if not names:
        return st.just({})
    chosen = st.lists(st.sampled_from(names), unique=True, max_size=5)
    return chosen.flatmap(lambda some: st.fixed_dictionaries({one.name: answer(one) for one in some}))


degrees = st.tuples(
    st.floats(-90, 90).map(lambda one: round(one, 7)), st.floats(-180, 180).map(lambda one: round(one, 7))
)
spots = st.builds(
    lambda at, accuracy: Spot(at[0], at[1], accuracy), degrees, st.none() | st.integers(0, 50).map(float)
)
acts = st.sampled_from(NAMES).flatmap(
    lambda name: st.builds(
        Act,
        incident=st.just(name),
        facts=answers_to(sorted(facts_of(name), key=lambda one: one.name)),
        places=st.dictionaries(st.sampled_from(ROLES), spots, max_size=3),
        condition=st.none() | st.just("quillsand/7"),
        option=st.none() | st.sampled_from(["lateral", "as_it_lies", "nothing_yet"]),
        ball=st.none() | st.sampled_from(["in_play", "provisional", "other_players"]),
        strokes=st.none() | st.integers(0, 12),
        by=st.none() | st.just("another_player"),
    )
)
cases = st.builds(
    Case,
    played_on=st.dates(EDITION_2023, date(2030, 12, 31)),
    incidents=st.lists(acts, min_size=2, max_size=3).map(tuple),
    form_of_play=st.none() | st.sampled_from(FormOfPlay),
    sides=st.none() | st.sampled_from(Sides),
    local_rules=st.sampled_from([None, (), ("E-5",), ("E-3", "E-5")]),
    hole=st.none() | st.integers(1, 18),
    player=st.builds(
        CasePlayer, st.sampled_from(["right", "left", None]), st.integers(100, 121).map(lambda one: one / 100)
    ),
    between=answers_to(GAPS),
    strokes_before=st.none() | st.integers(0, 12),
    made_with=st.none()
    | st.builds(MadeWith, st.just("0.1.0"), st.just("abc"), st.none() | st.integers(1, 9)),
)


@settings(max_examples=60, deadline=None)
@given(cases)
def test_a_case_survives_json(case: Case) -> None:
    """Everything written is read back, text for text; nothing else is needed."""
    assert read_case(json.loads(json.dumps(case.document()))) == case


@settings(max_examples=60, deadline=None)
@given(case=cases, data=st.data())
def test_a_case_survives_the_address_of_any_of_its_pages(case: Case, data: st.DataObject) -> None:
    """Whichever act the page is about, or all of them: its address holds the whole case."""
    number = data.draw(st.integers(1, len(case.incidents) + 1))
    base = Conditions(DAY)

    pairs = address_of(Address, case, number).pairs()
    again = read_address(Address, pairs, lambda own: read_conditions(own, base))

    assert case_at(again, case.made_with) == case
    assert again.pairs() == pairs


@pytest.mark.parametrize("name", NAMES)
def test_every_incident_with_every_fact_survives(name: str) -> None:
    """All facts an incident can ask, each answered, in JSON and in the address."""
    facts = {
        one.name: one.tokens()[-1] if one.answers else one.token(one.parse(max(one.minimum, 1)))
        for one in facts_of(name)
        if one is not date_of_play and one.name not in SHARED
    }
    case = Case(DAY, (Act(name, facts),), player=CasePlayer(None, 1.15))
    base = Conditions(DAY)

    assert read_case(case.document()) == case
    again = read_address(Address, address_of(Address, case).pairs(), lambda own: read_conditions(own, base))
    assert case_at(again) == case


def test_former_names_are_read_and_written_anew() -> None:
    """A fact under its former name is the same fact; what is written has the present one; every entry leads somewhere."""
    for old, new in FORMER_FACTS.items():
        token = fact_named(new).tokens()[0]
        read = read_case(
            {"played_on": "2024-05-01", "incidents": [{"incident": NAMES[0], "facts": {old: token}}]}
        )
        assert read.incidents[0].facts == {new: token}
        address = read_address(Address, [(old, token), ("1.what", NAMES[0])], lambda _: Conditions(DAY))
        assert (new, token) in address.pairs()
        with pytest.raises(InputError):
            fact_named(old)
    for new in FORMER_INCIDENTS.values():
        assert incident(new).name == new


def test_what_was_given_by_its_former_and_its_present_name_is_given_twice() -> None:
    """Which of two answers was meant is never guessed."""
    old, new = next(iter(FORMER_FACTS.items()))
    one, other = fact_named(new).tokens()[:2]

    with pytest.raises(InputError, match="given twice"):
        read_case({"incidents": [{"incident": NAMES[0], "facts": {old: one, new: other}}]})
    with pytest.raises(InputError, match="given twice"):
        read_address(Address, [(old, one), (new, other)], lambda _: Conditions(DAY))


GOOD = {"incident": "unplayable_ball", "facts": {}}


@pytest.mark.parametrize(
    ("document", "said"),
    [
        ({"incidents": [GOOD], "playd_on": "2024-05-01"}, ["the key 'playd_on' is not known. Did you mean 'played_on'"]),
        ({"incidents": [{**GOOD, "fact": {}}]}, ["incidents 1: the key 'fact' is not known. Did you mean 'facts'"]),
        ({"incidents": [{"incident": "unplayable_bal"}]}, ["Incident 1 (unplayable_bal): There is no incident"]),
        ({"incidents": [{**GOOD, "facts": {"cause_known": "perhaps"}}]}, ["Incident 1 (unplayable_ball): cause_known"]),
        ({"incidents": [{**GOOD, "facts": {"cause_knwn": "yes"}}]}, ["There is no fact 'cause_knwn'"]),
        ({"incidents": [{**GOOD, "option": "sideways"}]}, ["option: 'sideways' is not an answer"]),
        ({"incidents": [{**GOOD, "places": {"ball": [55.0, 4.0]}}]}, ["places, ball is [55.0, 4.0]; give an object"]),
        ({"incidents": [{**GOOD, "places": {"ball": {"latitude": 4.0}}}]}, ["longitude is missing; give degrees east"]),
        ({"incidents": [{**GOOD, "places": {"bal": {"latitude": 55, "longitude": 4}}}]}, ["no such place"]),
        ({"incidents": [{**GOOD, "places": {"ball": {"latitude": 95, "longitude": 4}}}]}, ["not on the globe"]),
        ({"incidents": [GOOD], "hole": "seven"}, ["hole is 'seven'; give the number of a hole"]),
        ({"incidents": [GOOD], "player": {"handed": "both"}}, ["player, handed is 'both'; give \"right\" or"]),
        ({"incidents": [GOOD], "player": {"club_length": 12}}, ["club_length is 12 m"]),
        ({"incidents": [GOOD], "between": {"cause_known": "yes"}}, ["cause_known says nothing between"]),
        ({"incidents": [{**GOOD, "option": "lateral"}], "between": {"option_taken_1": "as_it_lies"}}, ["option_taken_1 is given twice, as lateral and as_it_lies"]),
        ({"incidents": [GOOD], "local_rules": ["Z-9"]}, ["there is no Local Rule 'Z-9'"]),
        ({"incidents": "unplayable_ball"}, ["incidents is 'unplayable_ball'; give a list"]),
        ({}, ["incidents is missing; give a list"]),
        (
            {"played_on": "soon", "sides": "pairs", "hole": 1.5, "incidents": [{"incident": "x"}, {"facts": 3}]},
            ["played_on", "sides", "hole is 1.5", "Incident 1 (x)", "incidents 2, incident is missing", "facts is 3"],
        ),
    ],
)  # fmt: skip
def test_a_bad_case_is_refused_with_every_fault(document: dict, said: list[str]) -> None:
    """One sentence for each fault, with its place and what to give."""
    with pytest.raises(InputError) as caught:
        read_case(document)

    faults = caught.value.faults
    assert len(faults) == len(said), faults
    for words in said:
        assert sum(words in fault for fault in faults) == 1, (words, faults)


def test_what_is_of_one_incident_goes_to_it() -> None:
    """An option or a ball told between incidents stands with the incident it is about; told there alike, it stands once."""
    own = {**GOOD, "option": "lateral"}
    between = {"option_taken_1": "lateral", "about_ball_2": "provisional"}
    for first in (GOOD, own):
        case = read_case({"incidents": [first, GOOD], "between": between})

        assert [(one.option, one.ball) for one in case.incidents] == [
            ("lateral", None),
            (None, "provisional"),
        ]
        assert case.between == {}


def test_every_part_of_the_schema_says_what_to_give() -> None:
    """No fault can be told without its remedy."""
    kinds = [one for one in vars(schema).values() if is_dataclass(one) and one.__module__ == schema.__name__]

    assert len(kinds) == 5
    assert [one.name for kind in kinds for one in fields(kind) if "give" not in one.metadata] == []


def test_the_digest_is_that_of_the_rules_alone(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Equal sources give equal digests; a changed provision, or one moved to another file, gives another."""
    import marram.rules

    def digest(**files: str) -> str:
        folder = tmp_path / str(len(list(tmp_path.iterdir())))
        folder.mkdir()
        for name, text in {"__init__": "", **files}.items():
            (folder / f"{name}.py").write_text(text, encoding="utf-8")
        monkeypatch.setattr(marram.rules, "__file__", str(folder / "__init__.py"))
        book_digest.cache_clear()
        return book_digest()

    try:
        first = digest(rule="penalty = 1")
        assert digest(rule="penalty = 1") == first
        assert digest(rule="penalty = 2") != first
        assert digest(other="penalty = 1") != first
    finally:
        monkeypatch.undo()
        book_digest.cache_clear()


def test_what_a_command_prints_another_reads(tmp_path: Path) -> None:
    """The JSON of a ruling is a file for ``marram situation``, which rules the same."""
    ruled = marram(
        "rule", "ball_moved_by_natural_forces", "--edition", "2023", "--form", "stroke_play", "--local-rule", "none",
        "--fact", "area_of_ball=general_area", "--fact", "new_place=same_area", "--json",
    )  # fmt: skip
    path = tmp_path / "ruled.json"
    path.write_text(ruled.out, encoding="utf-8")

    again = marram("situation", str(path), "--json")

    assert (ruled.code, again.code) == (0, 0), again.err
    assert json.loads(again.out)["combined"] == json.loads(ruled.out)["result"]
    assert json.loads(again.out)["case"] == json.loads(ruled.out)["case"]
    assert again.err == ""


def test_a_case_made_with_another_book_says_so(tmp_path: Path) -> None:
    """Rules encoded otherwise may rule otherwise: the official is told, and the case is ruled anew."""
    case = Case(DAY, (Act("unplayable_ball", {}),), made_with=MadeWith("0.0.1", "0" * 16))
    path = tmp_path / "case.json"
    path.write_text(json.dumps(case.document()), encoding="utf-8")

    found = marram("situation", str(path), "--json")

    assert "marram 0.0.1" in found.err
    assert json.loads(found.out)["case"]["made_with"]["book"] == book_digest()
