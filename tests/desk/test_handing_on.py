"""A ruling handed on: as text, with the Rules it rests on, and who decides last."""

import pytest

from marram.words.texts import text
from tests.desk.asking import TestClient
from tests.desk.places import Ground
from tests.desk.test_situation import LIFTED

DONE = "found_in_penalty_area=yes&last_stroke_from_penalty_area=no"


@pytest.fixture
def drawn(ground: Ground) -> str:
    """The address of a ruling with its three options drawn."""
    places = f"entry={ground.in_the_burn(0)}&previous={ground.fairway(along=230)}"
    return f"/case?hole=9&ball={ground.in_the_burn()}&what=ball_in_penalty_area&{DONE}&{places}"


def test_the_text_of_a_ruling_holds_what_the_page_says(client: TestClient, drawn: str) -> None:
    """Headline first, the case, each option with its Rule and how it is measured, each provision; who decides last."""
    context = client.get(drawn).context
    told, sheet = context["as_text"], context["sheet"]
    assert told.startswith(sheet.headline)
    assert told.endswith(sheet.reminder)
    for words in ("Quillsand Midsummer Cup · First round", "Hole 9", "Rules 2023"):
        assert words in told
    for option in context["options"]:
        assert f"{option.letter}. {option.words.title} (Rule {option.words.citation})" in told
        assert all(step in told for step in option.how_to_measure)
    for one in sheet.provisions:
        assert f"Rule {one.citation}: {one.statement}" in told


def test_a_sentence_is_said_once(client: TestClient, drawn: str) -> None:
    """Where the player is told just the headline, it stands on the page as the headline alone; the text says so after it."""
    page = client.get(drawn)
    sheet = page.context["sheet"]
    assert sheet.tell == sheet.headline
    assert f"<q>{sheet.tell}</q>" not in page.text
    assert page.context["as_text"].count(sheet.headline) == 1
    says_so = text("rulings.ruling.tell.just_that")
    assert page.context["as_text"].split("\n")[:2] == [sheet.headline, says_so]
    assert page.text.replace(says_so, "", 1).count(text("rulings.ruling.tell")) == 1


@pytest.mark.parametrize(("before", "comes"), [("2", "fourth"), ("0", "second"), ("", "")])
def test_the_stroke_that_comes_next_is_told_where_it_is_known(
    client: TestClient, before: str, comes: str
) -> None:
    """A ball lifted without leave costs one stroke (Rule 9.4b): after two strokes the fourth is next; unknown stays unsaid."""
    page = client.get("/case", params={**LIFTED, "strokes_before": before} if before else LIFTED)
    assert page.context["sheet"].kind == "ruling"
    told = page.context["next_stroke"]
    assert (comes in told, bool(told)) == (True, bool(before))
    assert page.text.count("next-stroke") == bool(before)


def test_a_story_is_handed_on_with_each_of_its_acts(client: TestClient) -> None:
    """The ruling on both together, each act with its own, every Rule they rest on once; who decides last."""
    acts = {f"{number}.{key}": value for number in (1, 2) for key, value in LIFTED.items()}
    page = client.get("/together", params={**acts, "intervening_event_1": "yes"})
    told, view = page.context["as_text"], page.context["view"]
    assert view.sheet.kind == "ruling"
    assert told.startswith(view.headline)
    assert told.endswith(view.sheet.reminder)
    for part in view.parts:
        assert f"{part.number}. {part.title}: {part.sheet.headline}" in told
    provisions = {one for part in view.parts for one in part.sheet.provisions}
    assert all(told.count(one.statement) == 1 for one in provisions)


def test_a_story_with_an_open_question_is_not_handed_on(client: TestClient) -> None:
    """While something between the acts is asked, there is no ruling to copy."""
    acts = {f"{number}.{key}": value for number in (1, 2) for key, value in LIFTED.items()}
    page = client.get("/together", params=acts)
    assert page.context["question"] is not None
    assert not page.context["as_text"]
    assert "data-copy" not in page.text


def test_the_next_stroke_is_told_with_and_without_relief(client: TestClient) -> None:
    """After two strokes the next is the third as the ball lies and the fourth with relief; none where the hole is done."""
    conditions = "on=2025-06-21&form=stroke_play&local=none&strokes_before=2"
    burn = "what=ball_in_penalty_area&found_in_penalty_area=yes&last_stroke_from_penalty_area=no&penalty_area_colour=red"
    page = client.get(f"/case?{burn}&sides=individual&{conditions}").text
    assert "on this hole is the third." in page
    assert "With relief for one penalty stroke, the next stroke on this hole is the fourth." in page
    assert "measuring-anywhere" in page

    done = client.get(
        f"/case?what=four_ball_hole_completed&side_on_hole=both_done&sides=four_ball&{conditions}"
    )
    assert "The hole is completed" in done.text
    assert "next-stroke" not in done.text
