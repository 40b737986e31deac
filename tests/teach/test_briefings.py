"""Briefings: one situation a page, solved by the engine; the teacher's words stay, what is decided otherwise is flagged."""

import re
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from pypdf import PdfReader

from marram.course.loading import load
from marram.demo import COURSE
from marram.errors import InputError
from marram.rules.local_rules.register import REGISTER
from marram.teach.briefings.choosing import of_local_rules
from marram.teach.briefings.deck import PARTS, Deck, Page, Topic
from marram.teach.briefings.deck_file import read, written
from marram.teach.briefings.drawing_up import drawing_of, drawn_up, situation_of, way_of
from marram.teach.briefings.points import FOR_BEGINNERS, SHOWN_IN
from marram.teach.briefings.printing import deck_pdf, flag_of
from marram.teach.briefings.renewing import confirmed, renewed
from marram.teach.situations.situation import solved
from marram.words.texts import text as said
from tests.cli.running import marram

TOPIC = Topic("topics", ("17", "sand_touched"), 3, 6)
DECK = drawn_up(TOPIC)


def test_every_page_is_solved_again_through_the_interview() -> None:
    """Asked one question after the other from nothing, the engine gives the ruling that the page shows."""
    for page in (*DECK.pages, *drawn_up(Topic("beginners", seed=5)).pages):
        one = situation_of(page)
        assert solved(one) == one.ruling
        assert page.made["ruling"] == one.headline


def test_a_topic_leads_to_its_rule() -> None:
    """Pages alternate between the topics: each rests on Rule 17 or is of the incident asked for; none twice."""
    for page in DECK.pages:
        citations = situation_of(page).ruling.citations
        assert page.incident == "sand_touched" or any(one.startswith("17.") for one in citations)
    assert {page.incident == "sand_touched" for page in DECK.pages} == {True, False}
    assert len({page.key for page in DECK.pages}) == len(DECK.pages) == TOPIC.count
    assert drawn_up(TOPIC) == DECK


def test_the_changes_of_an_edition_each_have_a_page() -> None:
    """A page for each change, with before and now; the ruling is that of today."""
    deck = drawn_up(Topic("changes", ("2019", "2023"), count=12))
    assert len(deck.pages) == 12
    assert all("Before: " in page.made["why"] and " Now: " in page.made["why"] for page in deck.pages)


@pytest.mark.parametrize(
    "code", [one.code for one in REGISTER.values() if one.defines and 2023 in one.editions]
)
def test_what_only_says_where_or_what_something_is_has_a_page(code: str) -> None:
    """A Local Rule that defines is shown by a situation in which its point decides; who may be captain (H-3) by none."""
    found, without = of_local_rules((code,), 3, 20)
    assert without == (("H-3",) if code == "H-3" else ())
    for one in found.values():
        assert (one.incident, {**one.facts, **SHOWN_IN[code][1]}) == (SHOWN_IN[code][0], one.facts)


@pytest.mark.parametrize("code", ["E-1.3", "E-10", "H-2", "H-5"])
def test_a_local_rule_told_by_no_provision_of_its_own_has_a_page(code: str) -> None:
    """It is in force in the situation, and answers decide that only it asks for."""
    found, without = of_local_rules((code,), 3, 20)
    one = found[code]
    assert not without
    assert one.facts[f"local_rule_{code.lower().replace('-', '_').replace('.', '_')}"] == "yes"
    assert one.facts.items() >= SHOWN_IN[code][1].items()


def test_a_page_names_the_local_rule_it_is_about() -> None:
    """Its title begins with the code, and says what the Local Rule is about."""
    titles = [one.part("title") for one in drawn_up(Topic("local_rules", ("C-1", "E-8"))).pages]
    assert titles == ["C-1: Where the edge of a bunker runs", "E-8: No play zones"]


def test_beginners_are_shown_the_case_that_makes_the_point() -> None:
    """Whatever the seed, free relief is had from a path, a lateral drop is made at red, and a ball embedded lies in the general area."""
    for seed in range(4):
        pages = {one.incident: one for one in drawn_up(Topic("beginners", seed=seed, count=24)).pages}
        for name, point in FOR_BEGINNERS.items():
            asked = pages[name].facts
            assert all(asked.get(fact, token) == token for fact, token in point.items()), name
        assert "take free relief" in pages["abnormal_course_condition"].part("ruling")
        assert "take free relief" in pages["embedded_ball"].part("ruling")
        assert (
            pages["ball_in_penalty_area"]
            .part("ruling")
            .endswith("one penalty stroke; take penalty area relief.")
        )


def test_the_minutes_are_those_of_reading_every_page_aloud() -> None:
    """Of 260 words on two pages: two minutes at 130 words a minute, and half a minute for each question."""
    (page,) = drawn_up(Topic("topics", ("sand_touched",), count=1)).pages
    told = {name: "word " * (130 if name == "told" else 0) for name in PARTS}
    deck = Deck("", Topic("topics"), (replace(page, made=told), replace(page, made=told)))
    assert deck.minutes == 3


def test_local_rules_are_shown_as_they_are_in_force() -> None:
    """No situation rests on a Local Rule that the event has not, and those that none shows are named."""
    found, without = of_local_rules(("E-3", "F-5", "E-12", "Z-9"), 1, 20)
    assert found
    assert "Z-9" in without
    for one in found.values():
        for name, answer in one.facts.items():
            if name.startswith("local_rule_") and answer == "yes":
                assert name.removeprefix("local_rule_").replace("_", "-").upper() in {"E-3", "F-5", "E-12"}


def test_a_local_rule_is_shown_by_what_it_gives() -> None:
    """Relief on the opposite side and preferred lies: the page offers them; both only add to another Rule."""
    for code in ("B-2", "E-3", "E-5"):
        found, without = of_local_rules((code,), 23, 20)
        one = found[code]
        assert not without
        assert any(code in each.citation.split() for each in one.ruling.relief)


def test_beginners_are_shown_what_happens_to_beginners() -> None:
    """Nobody stopped the ball on purpose, no second provisional ball was played, and what interferes does so."""
    for seed in (1, 23, 40):
        facts = [dict(page.facts) for page in drawn_up(Topic("beginners", seed=seed)).pages]
        assert {"deliberately_stopped"}.isdisjoint(one.get("whereabouts") for one in facts)
        assert {"second_found", "both_lost_or_out"}.isdisjoint(one.get("provisional_state") for one in facts)
        assert {"none", "out_of_bounds_only"}.isdisjoint(one.get("interference") for one in facts)


def test_the_shell_prints_on_letter_and_says_what_is_left_out(tmp_path) -> None:
    """ANSI A: 8.5 by 11 inches, across for the pages and upright for the handout."""
    pages, handout = tmp_path / "pages.pdf", tmp_path / "handout.pdf"
    given = ("briefing", "draw-up", "local-rules", "E-5", "Z-9", "--paper", "letter")
    told = marram(*given, "--pdf", str(pages), "--handout", str(handout))
    assert "no single situation tells it: 1." in told.out
    for file, inches in ((pages, (11, 8.5)), (handout, (8.5, 11))):
        box = PdfReader(file).pages[0].mediabox
        assert [float(box.width) / 72, float(box.height) / 72] == pytest.approx(inches, abs=0.01)
    wrong = marram(*given[:-1], "foolscap")
    assert wrong.code != 0
    assert "--paper is 'foolscap'" in wrong.err


def test_rulings_of_an_event_that_no_situation_tells_are_counted() -> None:
    """The same ruling twice is one page; a case without its facts is left out, and said to be."""
    page = DECK.pages[0]
    case = {"incident": page.incident, "facts": page.facts, "form": page.form}
    deck = drawn_up(Topic("event"), cases=[case, case, {"incident": "ball_not_found", "facts": {}, "form": page.form}])  # fmt: skip
    assert [one.key for one in deck.pages] == [page.key]
    assert deck.left_out == 1


def test_the_teachers_words_survive_drawing_up_again() -> None:
    """Words put otherwise stay on their page when the topic is drawn up again, also where it no longer holds the page."""
    edited = DECK.with_page(2, DECK.pages[1].put_otherwise({"question": "Is that allowed?"}))
    again = renewed(edited, drawn_up(TOPIC))
    assert again.pages[1].part("question") == "Is that allowed?"
    assert again.pages[0] == DECK.pages[0]
    assert again.version == edited.version + 1
    other = renewed(edited, drawn_up(replace(TOPIC, given=("advice_exchanged",), count=2)))
    assert [one.part("question") for one in other.pages].count("Is that allowed?") == 1


def test_what_the_engine_decides_otherwise_now_is_flagged_until_confirmed() -> None:
    """A page kept with another ruling gets the ruling of today and tells the old one; confirmed, it is quiet."""
    page = DECK.pages[0]
    old = replace(page, made={**page.made, "ruling": "Three penalty strokes."})
    found = renewed(replace(DECK, pages=(old, *DECK.pages[1:])))
    assert found.pages[0].made["ruling"] == page.made["ruling"]
    assert "Three penalty strokes." in flag_of(found.pages[0])
    assert "Three penalty strokes." in flag_of(renewed(found).pages[0])
    assert not any(one.was for one in found.pages[1:])
    assert flag_of(confirmed(found.pages[0])) == ""


def test_facts_that_lead_nowhere_any_longer_are_flagged() -> None:
    """A page whose facts the book no longer knows stays, with its old ruling told."""
    page = DECK.pages[0]
    gone = replace(page, facts={"no_such_fact": "yes"})
    found = renewed(replace(DECK, pages=(gone,))).pages[0]
    assert page.made["ruling"] in flag_of(found)
    assert found.made["ruling"] != page.made["ruling"]


@settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(
    st.lists(
        st.dictionaries(st.sampled_from(PARTS), st.text(min_size=1).filter(str.strip), max_size=3), max_size=6
    )
)
def test_a_deck_is_read_back_as_it_was_written(edits: list[dict[str, str]]) -> None:
    """Whatever the teacher writes, the file gives it back."""
    pages = [page.put_otherwise(parts) for page, parts in zip(DECK.pages, edits, strict=False)]
    deck = replace(DECK, pages=(*pages, *DECK.pages[len(pages) :]))
    assert read(written(deck)) == deck


@pytest.mark.parametrize(
    ("given", "fault"),
    [
        ("{", "not JSON"),
        ("[]", "no briefing"),
        ('{"kind": "briefing", "topic": {}, "pages": []}', "one page at least"),
        ('{"kind": "briefing", "topic": {"kind": "event"}, "pages": [{"made": {}}]}', "pages[0].made"),
        ('{"kind": "briefing", "topic": {"kind": "event"}, "pages": [1], "colour": 1}', "colour"),
    ],
)
def test_a_file_that_is_no_briefing_is_refused_with_its_place(given: str, fault: str) -> None:
    """What is wrong is said with where it stands."""
    with pytest.raises(InputError, match=fault.replace("[", r"\[")):
        read(given)


def test_nothing_but_the_parts_of_a_page_is_edited() -> None:
    """An unknown part and an empty one are refused together."""
    with pytest.raises(InputError) as caught:
        DECK.pages[0].put_otherwise({"colour": "red", "told": " "})
    assert len(caught.value.faults) == 2


def test_an_unknown_topic_is_named_with_the_nearest() -> None:
    """A slip of the pen is answered with what was meant."""
    with pytest.raises(InputError, match="sand_touched"):
        drawn_up(Topic("topics", ("sand_touchd",)))


def test_the_handout_is_one_page_and_the_deck_one_for_each_situation() -> None:
    """Twenty situations are twenty pages and a handout of one, drawn where there is ground to draw."""
    course = load(COURSE)
    deck = drawn_up(Topic("beginners", seed=1, count=20), course)
    assert len(deck.pages) == 20
    assert sum(bool(drawing_of(one, course)) for one in deck.pages) >= 5
    assert _pages(deck_pdf(deck, handout=True)) == 1
    assert _pages(deck_pdf(deck)) == 20


def _pages(pdf: bytes) -> int:
    found = re.search(rb"/Type/Pages/Count (\d+)", pdf)
    assert found
    return int(found[1])


def test_the_shell_keeps_edits_in_the_file(tmp_path) -> None:
    """Drawn up, put otherwise, drawn up again: the words are in the file, the version is the third."""
    file = tmp_path / "deck.json"
    draw = ("briefing", "draw-up", "topics", "sand_touched", "--count", "2", "--deck", str(file))
    assert marram(*draw).code == 0
    assert marram("briefing", "edit", str(file), "1", "--title", "Sand").code == 0
    assert marram(*draw).code == 0
    deck = read(file.read_bytes())
    assert (deck.pages[0].part("title"), deck.version) == ("Sand", 3)
    assert marram("briefing", "edit", str(file), "9", "--title", "Sand").code != 0
    assert read(file.read_bytes()) == deck


def test_a_page_of_words_has_its_title_as_key() -> None:
    """A change that no single situation shows is a page all the same, and renewing leaves it."""
    words = Page("", {}, "", dict.fromkeys(PARTS, "x"))
    assert words.key == "x"
    assert renewed(Deck("d", TOPIC, (words,))).pages == (words,)


def test_a_page_of_a_change_tells_both_rulings_and_all_they_rest_on() -> None:
    """Until 2022 a ball nearer than the chosen point was dropped again (14.3c): told, though today's ruling asks nothing of it."""
    page = drawn_up(Topic("changes", ("2019", "2023"), count=1)).pages[0]
    assert page.made["title"] == "Relief back on the line"
    assert "nearer the hole than the reference point" in page.made["told"]
    why = page.made["why"].split("\n")
    assert any(line.startswith("Rules of 2019:") and "drop again" in line for line in why)
    assert any(line.startswith("Rules of 2023:") and "play it as it lies" in line for line in why)


def test_no_page_of_the_changes_of_2019_asks_instead_of_telling() -> None:
    """Facts that only the former Rules turned on have their sentences too: what happened is told, not put as questions."""
    for page in drawn_up(Topic("changes", ("2016", "2019"), count=40)).pages:
        assert "?" not in page.made["told"], page.made["title"]


def test_how_often_it_was_ruled_on_at_the_event_is_told() -> None:
    """What went wrong most is seen at once."""
    page = drawn_up(Topic("topics", ("sand_touched",), seed=3, count=1)).pages[0]
    case = {"incident": page.incident, "facts": dict(page.facts), "form": page.form}
    made = drawn_up(Topic("event"), cases=[case, case, case]).pages[0].made
    assert made["why"].startswith("At this event it was ruled on 3 times.")


def test_a_way_too_long_to_be_read_on_paper_is_left_out() -> None:
    """A long way shrunk into the column of a printed page would be read by nobody; the words have the page then."""
    pages = drawn_up(Topic("topics", ("club_damaged", "sand_touched"), seed=2, count=8)).pages
    whole = {page.key: way_of(page) for page in pages}
    printed = {page.key: way_of(page, most=1) for page in pages}
    assert any(whole[key] and not printed[key] for key in whole)
    assert all(printed[key] in {"", whole[key]} for key in whole)


def test_beginners_are_told_of_no_codes_and_of_advice_between_players() -> None:
    """Codes of Local Rules that are not in force say nothing to who begins; advice is what a player asks another (10.2a)."""
    pages = drawn_up(Topic("beginners", seed=231, count=24)).pages
    assert not [page.made["told"] for page in pages if "Model Local Rule" in page.made["told"]]
    assert any(said("briefings.no_local_rule") in page.made["told"] for page in pages)
    advice = next(page for page in pages if page.incident == "advice_exchanged")
    assert advice.facts["advice_to_or_from"] == "player_on_course"
