"""Examinations: papers that cover the book in equal forms, marked by the engine, items judged by published statistics."""

import json
from collections import Counter
from datetime import UTC, datetime
from functools import cache
from io import BytesIO
from itertools import combinations
from pathlib import Path
from random import Random
from types import SimpleNamespace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from pypdf import PdfReader
from scipy.stats import pointbiserialr

from marram.errors import InputError
from marram.records.examinations import examinations
from marram.records.making import made
from marram.records.retired_items import retire
from marram.teach.examinations.blueprint import WEIGHTS, shares
from marram.teach.examinations.equality import equality
from marram.teach.examinations.paper import Examination, balanced, examination
from marram.teach.examinations.printing import form_pdf
from marram.teach.examinations.report import read_answers, sitting
from marram.teach.examinations.retiring import why_retired
from marram.teach.examinations.statistics import ItemStatistics, correlation, items, kr20
from marram.teach.quizzes.saying import of_the_player
from marram.teach.situations.situation import solved
from tests.cli.running import marram
from tests.records.full import fill

WUENSCH = (
    "1111110110",
    "1011011101",
    "1111011001",
    "0010001000",
    "0000010010",
    "1110111111",
    "1101110111",
    "1111111101",
    "0101111101",
    "1101101110",
)
"""Ten students, ten items: K. Wuensch, "The Kuder-Richardson 20", https://core.ecu.edu/wuenschk/StatHelp/KR20.txt."""
SCORES = [[int(one) for one in row] for row in WUENSCH]


@cache
def exam() -> Examination:
    """Two parallel papers: drawn once, and not before a test asks."""
    return examination(4, 30, forms=2)


def test_reliability_is_that_of_a_published_example() -> None:
    """The shares and the variance of the scores stand in the source: .7 .7 .6 .7 .6 .8 .7 .7 .5 .6, and 5.84."""
    shown = [sum(row[at] for row in SCORES) / 10 for at in range(10)]
    assert shown == [0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6]
    assert kr20(SCORES) == pytest.approx(10 / 9 * (1 - 2.18 / 5.84))


def test_discrimination_is_the_point_biserial_of_a_library() -> None:
    """SciPy's pointbiserialr gives the same for every item of the published example against the rest."""
    found = items([[1 - one for one in row] for row in SCORES], [0] * 10, [2] * 10)
    for at, one in enumerate(found):
        own = [row[at] for row in SCORES]
        rest = [sum(row) - row[at] for row in SCORES]
        assert one.discrimination == pytest.approx(pointbiserialr(own, rest).statistic)
        assert one.distractors[1] == pytest.approx(-one.discrimination)


def test_what_does_not_vary_has_no_correlation() -> None:
    """Unknown is unknown: no figure where all were right, or all scored alike."""
    assert correlation([1, 1], [0, 1]) is None
    assert kr20([[1, 0], [0, 1]]) is None
    assert kr20([[1], [0]]) is None


@settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.lists(st.integers(1, 50), min_size=1, max_size=30), st.integers(1, 120))
def test_shares_add_up_and_follow_their_weights(weights: list[int], count: int) -> None:
    """Every place is given, each kind within one of its exact share (the quota rule of largest remainders)."""
    found = shares(dict(enumerate(weights)), count)
    assert sum(found.values()) == count
    for kind, many in found.items():
        assert abs(many - count * weights[kind] / sum(weights)) < 1


def test_forms_are_parallel() -> None:
    """Place by place both forms ask of the same Rule at the same level, and no item is in both or twice."""
    one, other = exam().forms
    assert [item.rule for item in one.items] == [item.rule for item in other.items]
    assert [item.level for item in one.items] == [item.level for item in other.items]
    names = [item.ident for form in exam().forms for item in form.items]
    assert len(set(names)) == len(names) == 60


def test_what_happened_is_the_same_at_most_places_and_told_with_other_facts() -> None:
    """Matched pairs: in at least 24 of 30 places both forms ask of one incident, and nowhere do they tell the same facts."""
    pairs = [
        (item.question.situation, twin.question.situation)
        for item, twin in zip(*(form.items for form in exam().forms), strict=True)
    ]
    assert sum(one.incident == other.incident for one, other in pairs) >= 24
    assert not [
        one.incident for one, other in pairs if one.incident == other.incident and one.facts == other.facts
    ]


def test_a_place_of_three_forms_is_filled_with_three_tellings() -> None:
    """Also of three forms no two tell the same facts of the same incident at a place."""
    drawn = examination(3, 6, forms=3)
    for at in range(6):
        told = [form.items[at].question.situation for form in drawn.forms]
        for one, other in combinations(told, 2):
            assert one.incident != other.incident or one.facts != other.facts


def test_a_paper_covers_the_book() -> None:
    """More provisions than items, and most Rules that the blueprint gives a place to."""
    wanted = {rule for rule, many in shares(WEIGHTS, 30).items() if many}
    assert len(exam().forms[0].provisions) > len(exam().forms[0].items)
    assert len({item.rule for item in exam().forms[0].items} & wanted) >= 0.85 * len(wanted)


def test_every_item_is_solved_again_through_the_interview() -> None:
    """Asked from nothing, the engine ends in the ruling that the key calls right, for each item of a seed."""
    for form in exam().forms:
        for item in form.items:
            one = item.question.situation
            right = item.question.answers[item.question.right]
            assert solved(one) == one.ruling
            assert of_the_player(one, one.headline) == right.headline
            assert [each.words for each in item.question.answers].count(right.words) == 1


def test_right_answers_are_spread_over_the_letters() -> None:
    """No letter is right in more than two of five items: the key cannot be guessed."""
    places = [item.question.right for item in exam().forms[0].items]
    assert max(places.count(each) for each in range(4)) <= 0.4 * len(places)


def test_the_same_seed_gives_the_same_papers() -> None:
    """An examination can be drawn again for marking from its seed alone."""
    again = examination(4, 30, forms=2)
    assert [[one.ident for one in form.items] for form in again.forms] == [
        [one.ident for one in form.items] for form in exam().forms
    ]
    assert [one.question.right for one in again.forms[1].items] == [
        one.question.right for one in exam().forms[1].items
    ]


def test_a_retired_item_does_not_come_again() -> None:
    """The item that was retired is drawn no more, and the paper is full all the same."""
    gone = exam().forms[0].items[0].ident
    again = examination(4, 30, forms=2, retired={gone})
    assert all(one.ident != gone for form in again.forms for one in form.items)
    assert len(again.forms[0].items) == 30


def test_two_forms_are_equal_over_simulated_candidates() -> None:
    """The mean scores differ by less than one item in thirty, and the forms correlate."""
    found = equality(*exam().forms)
    assert abs(found.difference) < 1
    assert found.correlation > 0.5


def test_the_forms_have_as_much_to_weigh_and_as_few_answers_to_guess_from() -> None:
    """Over all items the facts, exceptions and editions to weigh differ by two at most, and so do the answers."""
    weights = [[one.weight for one in form.items] for form in exam().forms]
    sums = [[sum(each) for each in zip(*form, strict=True)] for form in weights]
    assert all(abs(one - other) <= 2 for one, other in zip(*sums, strict=True))


@settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(places=st.lists(st.lists(st.integers(1, 9), min_size=3, max_size=3), min_size=1, max_size=40))
def test_no_form_gets_all_the_harder_items(places: list[list[int]]) -> None:
    """Each place keeps its items, one in each form, and the forms differ by no more than the items of one place."""
    items = [[SimpleNamespace(weight=(each, -4)) for each in place] for place in places]
    forms = balanced(items, 3)  # type: ignore[arg-type]
    assert all(
        {id(form[at]) for form in forms} == {id(each) for each in place} for at, place in enumerate(items)
    )
    sums = [sum(one.weight[0] for one in form) for form in forms]
    assert max(sums) - min(sums) <= max(max(place) - min(place) for place in places)


def test_marks_are_those_of_the_key() -> None:
    """All right is distinction, all wrong is not passed; what was not answered is wrong."""
    right = [one.question.right for one in exam().forms[0].items]
    wrong = [(one + 1) % 3 for one in right]
    found = sitting(exam().forms[0], {"Ada": right, "Bo": wrong, "Cy": [*right[:18], *[None] * 12]})
    assert [found.marks[name].grade for name in ("Ada", "Bo", "Cy")] == ["distinction", "fail", "pass"]
    assert (found.marks["Ada"].percent, found.marks["Bo"].right, found.marks["Cy"].right) == (100, 0, 18)
    assert not found.retired  # three candidates say nothing of an item


def test_chance_alone_retires_no_item() -> None:
    """What 24 candidates easily come to by chance is no reason; the same figure of 400 is one, and a plain fault at once."""

    def reasons(candidates: int, discrimination: float, distractor: float) -> list[str]:
        chosen = Counter({0: candidates // 2, 1: candidates - candidates // 2})
        return [str(one) for one in why_retired(ItemStatistics(0.5, discrimination, chosen, {1: distractor}))]

    assert not reasons(24, -0.15, 0.24)
    assert len(reasons(400, -0.15, 0.24)) == 2
    assert len(reasons(24, -0.40, 0.40)) == 2


def test_the_shell_leaves_out_what_records_keep_as_retired(tmp_path) -> None:
    """An item retired on screen is not drawn in the shell either; records that are not there are named."""
    drawn = ("examination", "draw", "--seed", "4", "--count", "10", "--json")
    before = [one["item"] for one in json.loads(marram(*drawn).out)["forms"][0]["items"]]
    file = tmp_path / "records.db"
    with made(file) as kept:
        event = fill(kept, tmp_path / "maps", signed_in=False)
        retire(kept, examinations(kept, event)[0], before[0], ["too easy"], datetime(2026, 5, 2, tzinfo=UTC))
    after = [
        one["item"] for one in json.loads(marram(*drawn, "--records", str(file)).out)["forms"][0]["items"]
    ]
    assert before[0] not in after
    assert len(after) == len(before)
    assert marram(*drawn, "--records", str(tmp_path / "none.db")).code != 0


def test_an_item_with_a_wrong_key_is_retired_with_the_reason() -> None:
    """Where those who know choose another answer, the item goes, the reason is told, and it counts no more."""
    lot = Random(1)
    right = [one.question.right for one in exam().forms[0].items]
    answers = {}
    for number in range(40):
        able = number / 40
        row = [key if lot.random() < 0.3 + 0.6 * able else (key + 1) % 3 for key in right]
        row[0] = (right[0] + 1) % 3 if able > 0.5 else right[0]
        answers[f"candidate {number}"] = row
    found = sitting(exam().forms[0], answers)
    assert 0 in found.retired
    assert any("discrimination" in str(one) for one in found.retired[0])
    assert all(one.of == 30 - len(found.retired) for one in found.marks.values())
    assert found.reliability_kept > found.reliability


def test_a_good_item_stays() -> None:
    """Of the published example no item with a positive discrimination and a middling difficulty is retired."""
    found = items([[1 - one for one in row] for row in SCORES], [0] * 10, [2] * 10)
    for one in found:
        if one.discrimination > 0 and 0.2 <= one.difficulty <= 0.95:
            assert not why_retired(one)


def test_faulty_answers_are_all_told() -> None:
    """Too few answers, a letter that is none, and a name twice: each with its row."""
    full = ",".join("A" * 30)
    choices = [len(one.question.answers) for one in exam().forms[0].items]
    with pytest.raises(InputError) as caught:
        read_answers(f"Ada,A,B\nBo,{full}\nBo,{full}\nCy,{full[:-1]}Z\n", "A", choices)
    assert len(caught.value.faults) == 3


def test_the_candidates_paper_is_no_key() -> None:
    """Paper and key are both made, and the paper is the shorter one."""
    paper, key = (form_pdf(exam(), exam().forms[0], "Strandby Links", key=one) for one in (False, True))
    assert paper.startswith(b"%PDF")
    assert len(paper) < len(key)
    told = " ".join(" ".join(one.extract_text() for one in PdfReader(BytesIO(paper)).pages).split())
    assert "all that the player may do" in told


@pytest.mark.parametrize(("count", "level", "forms"), [(0, 2, 2), (10, 4, 2), (10, 2, 9)])
def test_what_cannot_be_drawn_is_refused(count: int, level: int, forms: int) -> None:
    """Counts, levels and forms out of range are told."""
    with pytest.raises(InputError):
        examination(1, count, level=level, forms=forms)


def test_the_shell_draws_and_marks(tmp_path: Path) -> None:
    """A paper drawn with a seed is marked with it where it bears the mark of the printed one; all letters right is full marks."""
    asked = ("--seed", "2", "--count", "6", "--forms", "1")
    form = json.loads(marram("examination", "draw", *asked, "--json").out)["forms"][0]
    file = tmp_path / "answers.csv"
    file.write_text(f"Ada,{','.join(one['right'] for one in form['items'])}\n")
    mark = ("examination", "mark", str(file), *asked, "--json")
    found = json.loads(marram(*mark, "--paper-mark", form["mark"].lower()).out)
    assert found["marks"]["Ada"]["percent"] == 100
    unknown, other = marram(*mark), marram(*mark, "--paper-mark", "0000")
    assert (unknown.code, other.code) == (2, 2)
    assert "--papers" in unknown.err
    assert "printed key" in other.err


def test_a_printed_paper_is_marked_from_what_was_kept_though_the_book_draws_another(tmp_path: Path) -> None:
    """Drawn on Monday, marked on Friday after an update: the file beside the paper decides, not the seed."""
    monday = ("examination", "draw", "--seed", "2", "--count", "6", "--forms", "1", "--json")
    form = json.loads(marram(*monday, "--folder", str(tmp_path)).out)["forms"][0]
    kept = json.loads((tmp_path / "papers.json").read_text())
    item = kept["forms"]["A"][0]
    item["item"], item["right"] = "another", (item["right"] + 1) % len(item["answers"])
    (tmp_path / "papers.json").write_text(json.dumps(kept))
    again = marram(*monday, "--folder", str(tmp_path))
    assert again.code == 2
    assert "another folder" in again.err
    assert json.loads((tmp_path / "papers.json").read_text()) == kept
    row = ["ABCD"[item["right"]], *(one["right"] for one in form["items"][1:])]
    file = tmp_path / "answers.csv"
    file.write_text(f"Ada,{','.join(row)}\n")
    mark = ("examination", "mark", str(file), "--papers", str(tmp_path / "papers.json"), "--json")
    assert json.loads(marram(*mark).out)["marks"]["Ada"]["percent"] == 100
    assert marram(*mark, "--paper-mark", form["mark"]).code == 2
    (tmp_path / "retired.json").write_text(
        json.dumps({"marram": 1, "kind": "examination_retired", "items": {"another": ["too easy"]}})
    )
    assert (
        json.loads(marram(*mark, "--retired", str(tmp_path / "retired.json")).out)["marks"]["Ada"]["of"] == 5
    )


@pytest.mark.parametrize(
    ("change", "told"),
    [
        ({"marram": 2}, "later version"),
        ({"kind": "deck"}, "keeps no papers"),
        ({"forms": {"A": [{}]}}, "not whole"),
        ({"forms": []}, "not whole"),
    ],
)
def test_a_file_that_keeps_no_papers_is_refused(tmp_path: Path, change: dict[str, object], told: str) -> None:
    """Another kind of file, a later one, and one that is torn: each with what to do."""
    file = tmp_path / "papers.json"
    whole = {
        "marram": 1,
        "kind": "examination_papers",
        "seed": 1,
        "level": 1,
        "open_book": False,
        "forms": {},
    }
    file.write_text(json.dumps(whole | change))
    found = marram("examination", "mark", str(file), "--papers", str(file))
    assert found.code == 2
    assert told in found.err


def test_no_two_items_of_a_form_ask_the_same() -> None:
    """The telling of each item differs from every other's."""
    told = [one.question.situation.told("")[1:] for one in exam().forms[0].items]
    assert all(one != other for one, other in combinations(told, 2))
