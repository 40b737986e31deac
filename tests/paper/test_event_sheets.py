"""The sheets of the event: everybody is on them once, strokes on a card are the handicap, what is unknown is said."""

import re
from html.parser import HTMLParser
from io import BytesIO
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pypdf import PdfReader

from marram.competition.conditions.choices import Score, TieMethod
from marram.competition.conditions.event_file import Group, Ties
from marram.competition.conditions.reading import read_event_file
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import Hole, RoundCard, Row
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.course import load
from marram.demo import COURSE
from marram.errors import InputError
from marram.paper.event.notice import notice_sheet
from marram.paper.event.on_paper import OnPaper
from marram.paper.event.referees_sheet import referees_sheet
from marram.paper.event.result_sheet import result_sheet
from marram.paper.event.scorecards import scorecards
from marram.paper.event.starters_sheet import starters_sheet
from marram.paper.event.starting_sheet import starting_sheet
from marram.paper.event.tie_words import Listed
from marram.paper.paper_size import PaperSize
from marram.paper.sheet import Card, Cards, Cell, Column, Sheet, Table, Words
from marram.paper.sheet_html import event_sheet_html
from marram.paper.sheet_pdf import event_sheet_pdf
from marram.rules.facts.conditions import FormOfPlay
from tests.paper.events import EIGHTEEN, NINE, event, on_paper

HANDICAPS = st.lists(st.one_of(st.none(), st.integers(-8, 54)), max_size=14)


def cards_of(sheet: Sheet) -> tuple[Card, ...]:
    (part,) = sheet.parts
    assert isinstance(part, Cards)
    return part.cards


def line(card: Card, heading: str) -> list[int]:
    """The figures of a card's holes, without its totals; 0 where none stands."""
    found = next(one for one in card.lines if one.heading == heading)
    return [int(cell or 0) for at, cell in enumerate(found.cells) if at not in card.totals]


def words_of(sheet: Sheet) -> str:
    return "\n".join(words for _, words in sheet.lines())


@settings(deadline=None)
@given(handicaps=HANDICAPS, in_groups=st.integers(0, 14), size=st.integers(1, 4))
def test_everybody_is_on_the_starting_sheet_exactly_once(
    handicaps: list[int | None], in_groups: int, size: int
) -> None:
    """Whoever is entered stands in one group, or among those without a time."""
    made = on_paper(event(handicaps, in_groups=min(in_groups, len(handicaps)), size=size))
    sheet = starting_sheet(made)
    named = [
        cell.words
        for part in sheet.parts
        if isinstance(part, Table)
        for row in part.rows
        for cell in row[3:]
        if cell.words
    ]
    named += [one.split(",")[0] for part in sheet.parts if isinstance(part, Words) for one in part.sentences]
    assert sorted(named) == sorted(one.name for one in made.players)


@settings(deadline=None)
@given(handicap=st.integers(-8, 54), holes=st.sampled_from([EIGHTEEN, NINE]))
def test_the_strokes_marked_on_a_card_are_the_playing_handicap(
    handicap: int, holes: tuple[Hole, ...]
) -> None:
    """Over eighteen holes and over nine, plus handicaps too; the card's own total says the same."""
    (card,) = cards_of(scorecards(on_paper(event([handicap]), holes)))
    heading = "Strokes received" if handicap >= 0 else "Strokes given back"
    if handicap == 0:
        assert sum(line(card, heading)) == 0
        return
    assert sum(line(card, heading)) == abs(handicap)
    total = next(one for one in card.lines if one.heading == heading).cells[card.totals[-1]]
    assert total == str(abs(handicap))


def test_strokes_fall_as_the_rules_of_handicapping_have_them() -> None:
    """Appendix E: 20 strokes are one on each hole and a second on indexes 1 and 2; Appendix C: a plus two gives back on 18 and 17."""
    twenty, plus_two = cards_of(scorecards(on_paper(event([20, -2]))))
    assert [
        hole.stroke_index
        for hole, got in zip(EIGHTEEN, line(twenty, "Strokes received"), strict=True)
        if got == 2
    ] == [1, 2]
    back = line(plus_two, "Strokes given back")
    assert {hole.stroke_index for hole, got in zip(EIGHTEEN, back, strict=True) if got} == {17, 18}


def test_in_a_match_the_difference_is_marked() -> None:
    """Appendix C of the Rules of Handicapping: the lower plays off scratch, the other receives the difference."""
    conditions = event([12, 7], form_of_play="match_play", size=2)
    higher, lower = cards_of(scorecards(on_paper(conditions)))
    assert sum(line(higher, "Strokes received")) == 5
    assert sum(line(lower, "Strokes received")) == 0


def test_who_has_no_handicap_gets_a_card_that_says_so() -> None:
    """Unknown is unknown: no strokes are marked, and the card tells why."""
    (card,) = cards_of(scorecards(on_paper(event([None]))))
    assert "no handicap_index" in card.note
    assert all(one.heading != "Strokes received" for one in card.lines)


def test_the_maximum_of_each_hole_stands_on_the_card() -> None:
    """Rule 21.2a: net double bogey is the par, two more, and the strokes received."""
    conditions = event([18], form_of_play="maximum_score", maximum={"by": "net_over_par", "number": 2})
    (card,) = cards_of(scorecards(on_paper(conditions)))
    assert line(card, "Maximum") == [hole.par + 3 for hole in EIGHTEEN]


def test_cards_need_pars_and_a_ball_of_ones_own() -> None:
    """What is missing is said all at once, with the remedy."""
    with pytest.raises(InputError) as fault:
        scorecards(on_paper(event([1, 2], sides="foursomes"), ()))
    assert len(fault.value.faults) == 2


def test_a_group_of_strangers_and_a_player_twice_are_refused() -> None:
    """Every fault of the groups at once."""
    found = on_paper(event([1, 2])).found
    with pytest.raises(InputError) as fault:
        OnPaper(
            found,
            3,
            EIGHTEEN,
            "",
            (Group("08:00", 1, ("Nobody", "P0 Ölander-0")), Group("08:10", 1, ("P0 Ölander-0",))),
        )
    assert [str(one) for one in fault.value.faults] == [
        "There is no round 3; give one from 1 to 1.",
        "'P0 Ölander-0' is in 2 groups of one round. Keep one of them.",
        "'Nobody' is in a group, and not among the players. Enter the player, or correct the name.",
    ]


def test_the_notice_says_what_is_in_force_and_what_is_not_known() -> None:
    """Each adopted code with our own words; where the conditions are silent, the notice says so."""
    told = words_of(
        notice_sheet(
            on_paper(
                event(
                    local_rules=["E-5", "J-1"], closes="At six.", pace_policy="Keep up.", minutes_of_play=255
                )
            )
        )
    )
    assert "E-5  An alternative to stroke and" in told
    assert "Local Rule J-1 is in force" in told
    assert "At six." in told
    assert "Keep up." in told
    assert "given 255 minutes for the round" in told
    bare = words_of(notice_sheet(OnPaper(on_paper({}).found)))
    assert "do not say which Local Rules" in bare
    assert "how ties are decided" in bare
    assert "when the competition is closed" in bare


def test_the_starter_is_told_of_each_player_and_of_late_starts() -> None:
    """Rule 5.3a: five minutes late is the general penalty, more is disqualification."""
    sheet = starters_sheet(on_paper(event([1, 2, 3, 4])))
    told = words_of(sheet)
    assert sum(len(part.rows) for part in sheet.parts if isinstance(part, Table)) == 4
    assert re.search(r"five minutes .*more is disqualification.*Rule 5\.3a", told)


def test_the_referee_sees_each_hole_with_what_is_marked_near_it() -> None:
    """The penalty area that the seventeenth crosses stands with the seventeenth, and no hole is missing."""
    sheet = referees_sheet(on_paper(event([1]), ()), load(COURSE))
    holes = next(one for one in sheet.parts if isinstance(one, Table) and len(one.columns) == 5)
    assert [row[0].words for row in holes.rows if row[0].words] == [str(one) for one in range(1, 19)]
    assert "The Cauldron" in holes.rows[16][4].words


def test_a_tie_is_told_to_the_hole() -> None:
    """Committee Procedures 5A(6): equal over the last nine, six and three, the last hole decides, and the sheet names it."""
    one = (4,) * 18
    two = (*(4,) * 8, 3, *(4,) * 8, 5)
    cards = [
        RoundCard(name, 1, EIGHTEEN, (Row(name, gross),))
        for name, gross in (("P1 Ölander-1", two), ("P0 Ölander-0", one))
    ]
    ties = Ties((TieMethod.COUNTBACK,), (TieMethod.COUNTBACK,))
    board = LeaderBoard(Terms(Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS), (18,), None, ties), cards)
    sheet = result_sheet(on_paper(event([0, 0])), [Listed("Gross", board)])
    table = sheet.parts[0]
    assert isinstance(table, Table)
    assert [(row[0].words, row[1].words, row[2].words) for row in table.rows] == [
        ("1", "P0 Ölander-0", "72"),
        ("2", "P1 Ölander-1", "72"),
    ]
    assert "Round 1, hole 18: 5 against 4." in words_of(sheet)


def _board(players: int, rounds: int) -> LeaderBoard:
    """A field in which every total is met several times: scores that repeat, and no two cards alike."""
    cards = [
        RoundCard(
            f"P{player} Ölander-{player}",
            number,
            EIGHTEEN,
            (
                Row(
                    f"P{player} Ölander-{player}",
                    tuple(hole.par + (player * 7 + at * number) % 3 for at, hole in enumerate(EIGHTEEN)),
                ),
            ),
        )
        for player in range(players)
        for number in range(1, rounds + 1)
    ]
    ties = Ties((TieMethod.COUNTBACK,), (TieMethod.COUNTBACK,))
    terms = Terms(Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS), (18,) * rounds, None, ties)
    return LeaderBoard(terms, cards)


@pytest.mark.parametrize("paper", PaperSize)
def test_a_championship_fits_on_the_board(paper: PaperSize) -> None:
    """156 players over two rounds: each stands once on at most three pages of ranking; ties follow, and tell of nobody else."""
    made = on_paper(
        event([0] * 156, size=4, rounds=[{"name": "Second round", "played_on": "2025-06-22"}], in_groups=0)
    )
    sheet = result_sheet(made, [Listed("Gross", _board(156, 2))])
    ranking = [one for one in sheet.parts if isinstance(one, Table)]
    assert [row[1].words for row in ranking[0].rows] == [one.side for one in _board(156, 2).places]
    assert sheet.about.startswith("Second round")
    alone = Sheet(sheet.title, sheet.event, sheet.about, sheet.day, (ranking[0],), sheet.foot)
    printed = PdfReader(BytesIO(event_sheet_pdf([alone], paper)))
    assert len(printed.pages) <= 3
    text = " ".join(one.extract_text() for one in printed.pages)
    assert sorted(re.findall(r"P(\d+) Ölander", text), key=int) == [str(one) for one in range(156)]


def test_every_decided_tie_is_told_once_and_in_order() -> None:
    """Whoever is tied with somebody and has another place stands once in the sentence of the total, in the order of the places."""
    board = _board(40, 2)
    sheet = result_sheet(on_paper(event([0] * 40)), [Listed("Gross", board)])
    (told,) = [one for one in sheet.parts if isinstance(one, Words) and one.heading.startswith("How ties")]
    for total, sentence in list(zip(told.lead, told.sentences, strict=True))[1:]:
        tied = [one for one in board.places if str(one.score.total) == total]
        assert re.findall(r"P\d+ Ölander-\d+", sentence) == [one.side for one in tied]
        shares = sum(one.place == before.place for before, one in pairwise(tied))
        assert sentence.count("the same place") == shares
        assert sentence.count(" against ") >= len(tied) - 1 - shares


class _Structure(HTMLParser):
    """What a page is made of, and whether it is closed as it was opened."""

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.seen: list[tuple[str, dict[str, str | None]]] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.seen.append((tag, dict(attrs)))
        if tag not in {"meta", "br"}:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag


@pytest.mark.parametrize("maker", [notice_sheet, starting_sheet, scorecards, starters_sheet, referees_sheet])
@pytest.mark.parametrize("handicaps", [[], [5, -1, None, 30]], ids=["empty", "some"])
def test_page_and_paper_say_what_the_sheet_says(maker, handicaps: list[int | None]) -> None:
    """Names with umlauts and marks of HTML arrive on both; rows have headings; an empty event prints too."""
    document = event(handicaps, notice_to_players=["Play <b>no</b> & fast"])
    sheet = maker(on_paper(document))
    page = event_sheet_html([sheet])
    read = _Structure()
    read.feed(page)
    assert not read.open
    assert ("html", {"lang": "en"}) in read.seen
    assert [tag for tag, _ in read.seen].count("h1") == 1
    assert all(attrs.get("scope") in {"col", "row"} for tag, attrs in read.seen if tag == "th")
    assert "<b>no</b>" not in page
    paper, width = (PaperSize.A4, 595) if handicaps else (PaperSize.LETTER, 612)
    printed = PdfReader(BytesIO(event_sheet_pdf([sheet], paper)))
    assert round(float(printed.pages[0].mediabox.width)) == width
    text = "\n".join(one.extract_text() for one in printed.pages)
    assert sheet.title in text
    names = [one["name"] for one in document["players"]] if maker is not notice_sheet else []
    assert all(name in page and name in text for name in names if maker is not referees_sheet)


def test_paper_is_safe_in_black_and_white() -> None:
    """Nothing is told by colour: the style of page and paper knows black, white and greys alone."""
    from importlib.resources import files

    for name in ("event_sheet.typ", "event_sheet.html"):
        source = (files("marram.paper") / name).read_text(encoding="utf-8")
        colours = re.findall(r"#[0-9a-fA-F]{3,8}\b(?=[; ])", source)
        assert all(len(set(one[1:])) == 1 for one in colours), name
        assert not re.search(r"rgb\(|cmyk\(|\b(red|green|blue)\b", source), name


def test_a_starter_has_the_list_of_one_tee() -> None:
    """From two tees each has its own list on a page of its own; a shotgun start, and one tee, have one list."""

    def lists(*starts: tuple[str, int]) -> list[tuple[str, bool, list[str], tuple[int, ...]]]:
        names = [f"Player {at}" for at in range(2 * len(starts))]
        found = read_event_file(
            {
                "players": [{"name": name} for name in names],
                "starting_times": [
                    {"time": time, "tee": tee, "players": names[2 * at : 2 * at + 2]}
                    for at, (time, tee) in enumerate(starts)
                ],
            }
        )
        return [
            (part.heading, part.new_page, [row[2].words for row in part.rows], part.together)
            for part in starters_sheet(OnPaper(found)).parts
            if isinstance(part, Table)
        ]

    first, tenth = lists(("08:00", 1), ("08:00", 10), ("08:10", 1), ("08:10", 10))
    assert first == ("Tee 1", False, ["Player 0", "Player 1", "Player 4", "Player 5"], (2, 2))
    assert tenth == ("Tee 10", True, ["Player 2", "Player 3", "Player 6", "Player 7"], (2, 2))
    assert [one[0] for one in lists(("09:00", 1), ("09:00", 5), ("09:00", 5))] == [""]
    assert [one[0] for one in lists(("09:00", 1), ("09:10", 1))] == [""]


def _pages(count: int, together: tuple[int, ...] = ()) -> list[int]:
    """Return how many of so many rows stand on each page."""
    rows = tuple((Cell(f"row{number}"),) for number in range(count))
    sheet = Sheet("Rows", "", "", "", (Table("", (Column("Name", 1),), rows, together=together),), "")
    pages = PdfReader(BytesIO(event_sheet_pdf([sheet], PaperSize.A4))).pages
    return [page.extract_text().count("row") for page in pages]


def test_no_row_is_alone_on_the_last_page() -> None:
    """One more than fits on a page: the last two go over together."""
    fits = next(count for count in range(40, 90) if len(_pages(count + 1)) == 2)
    assert _pages(fits) == [fits]
    assert _pages(fits + 1) == [fits - 1, 2]
    assert _pages(fits + 2) == [fits, 2]


def test_rows_of_a_group_stay_on_one_page() -> None:
    """Every page holds whole groups of four."""
    first, last = _pages(72, (4,) * 18)
    assert first % 4 == 0
    assert first + last == 72
