"""The book for everybody: no page of it fails, each leads on, and an address stays what it is."""

import re
from itertools import islice

import pytest

from marram.rules.incidents import incident
from marram.teach.book.contents import RULES, definitions, entries, local_rules, of_rule, slug_of, themes
from marram.teach.book.permanent import address_of, situation_at
from marram.teach.book.reading import page_of
from marram.teach.situations.reaching import met_in, offered_by
from marram.teach.situations.sampling import situations
from marram.words.texts import text as said
from tests.desk.asking import TestClient

SAMPLED = list(islice(situations(21), 25))


def test_every_provision_has_its_place_and_an_address_of_its_own() -> None:
    """Rules, Definitions and Local Rules together hold each provision that rulings rest on once."""
    placed = [one for rule in RULES for one in of_rule(rule)] + definitions() + local_rules()
    assert sorted(one.citation for one in placed) == sorted(met_in())
    assert len(entries()) == len(met_in())
    assert [one.citation for one in placed if not one.statement] == []


@pytest.mark.parametrize(
    ("citation", "name"),
    [
        ("16.1b", "abnormal_course_condition"),  # free relief in the general area
        ("16.1c(1)", "abnormal_course_condition"),
        ("17.1d(3)", "ball_in_penalty_area"),  # lateral relief
        ("19.2a", "unplayable_ball"),
        ("15.2a(2)", "ball_in_or_on_movable_obstruction"),
        ("E-1", "ball_in_penalty_area"),  # a dropping zone
    ],
)
def test_a_kind_of_relief_leads_to_what_it_is_taken_for(citation: str, name: str) -> None:
    """Rulings rest on the Rule that allows relief and offer it under the one that says how: both pages lead there."""
    page = page_of(entries()[slug_of(citation)])
    assert name in [one.name for one in page.incidents]
    assert page.situations


@pytest.mark.parametrize("slug", list(entries())[::5])
def test_every_provision_has_situations_that_rest_on_it(slug: str) -> None:
    """The page of a provision shows at least one situation whose ruling cites it, and no two alike."""
    found = page_of(entries()[slug])
    assert found.situations
    for one in found.situations:
        path, _, query = one.address.partition("?")
        pairs = [tuple(pair.split("=")) for pair in query.split("&")]
        again = situation_at(path.rsplit("/", 1)[1], pairs)
        assert entries()[slug].citation in (*again.ruling.citations, *offered_by(again.ruling))
        assert again.headline == one.now
    assert len({one.words for one in found.situations}) == len(found.situations)


@pytest.mark.parametrize("path", ["/book", "/book/definitions", "/book/local-rules", "/book/rule/13"])
def test_the_contents_lead_to_pages_that_exist(client: TestClient, path: str) -> None:
    """Each page of contents is there, and the first, the last and one in the middle of what it links to are too."""
    page = client.get(path)
    assert page.status_code == 200
    links = re.findall(r'href="(/book/[^"]+)"', page.text)
    assert links
    for link in (links[0], links[len(links) // 2], links[-1]):
        assert client.get(link).status_code == 200, link


def test_the_contents_name_every_theme_and_rule(client: TestClient) -> None:
    """All 25 Rules and each incident that ends in rulings stand in the contents."""
    page = client.get("/book").text
    assert {f"/book/rule/{number}" for number in RULES} <= set(re.findall(r'href="([^"]+)"', page))
    for found in themes().values():
        assert all(f'href="/book/incident/{one.name}"' in page for one in found)


def test_a_provision_says_what_it_says_its_exceptions_and_both_editions(client: TestClient) -> None:
    """Rule 9.3 has its Exceptions, and Exception 2 tells that it came with 2023."""
    page = client.get("/book/provision/9.3").text
    assert entries()["9.3"].statement in page
    assert "/book/provision/9.3-Exception-2" in page
    since = client.get("/book/provision/9.3-Exception-2").text
    assert said("book.since_2023") in since
    assert "/book/provision/9.3" in since


@pytest.mark.parametrize("one", SAMPLED, ids=lambda one: one.incident)
def test_a_situation_has_an_address_that_gives_it_again(client: TestClient, one) -> None:
    """The address of a sampled situation holds its facts: read back, it is told and ruled alike."""
    address = address_of(one)
    page = client.get(address)
    assert page.status_code == 200
    assert one.headline in page.text.replace("&#39;", "'")
    path, _, query = address.partition("?")
    again = situation_at(one.incident, [tuple(pair.split("=")) for pair in query.split("&")])
    assert (again.facts, again.form, again.headline) == (one.facts, one.form, one.headline)
    assert path == f"/book/situation/{one.incident}"


def test_a_drawing_stands_on_the_page_or_the_reason_why_there_is_none(client: TestClient) -> None:
    """An embedded ball in a bunker is drawn; a scorecard is not, and the page says so."""
    drawn = client.get(
        "/book/situation/embedded_ball?form=stroke_play&area_of_ball=bunker&last_stroke_from_penalty_area=no&spot_of_ball_known=yes"
    )
    if drawn.status_code == 400:
        drawn = client.get(address_of(next(situations(4, incidents=("embedded_ball",)))))
    assert "<svg" in drawn.text
    card = client.get(address_of(next(situations(1, incidents=("scorecard_fault",)))))
    assert said("drawings.none.nothing_of_the_ground") in card.text


def test_a_page_names_itself_for_whoever_shares_it(client: TestClient) -> None:
    """Title and description stand in the head, the description being what the page says; no script is needed for it."""
    page = client.get("/book/provision/9.3").text
    head = page.partition("</head>")[0]
    assert "Rule 9.3" in re.search(r"<title>(.*?)</title>", head, re.DOTALL)[1]
    description = re.search(r'<meta name="description" content="([^"]+)"', head)
    assert description
    assert description[1].replace("&#39;", "'") == entries()["9.3"].statement
    assert 'property="og:title"' in head


def test_what_is_no_address_is_said(client: TestClient) -> None:
    """An unknown provision, Rule, incident, fact or answer, and a question left open are each refused with what to do."""
    assert client.get("/book/provision/99.9").status_code == 400
    assert client.get("/book/rule/26").status_code == 400
    assert client.get("/book/incident/nonsense").status_code == 404
    assert client.get("/book/situation/nonsense").status_code == 404
    page = client.get("/book/situation/sand_touched?colour=blue&sand_touch=tongue")
    assert page.status_code == 400
    assert "colour" in page.text
    assert "sand_touch" in page.text
    assert "is not answered" in client.get("/book/situation/sand_touched").text


def test_an_incident_shows_its_situations_and_provisions(client: TestClient) -> None:
    """The page of an incident names the provisions of its rulings and leads to its situations."""
    page = client.get("/book/incident/sand_touched").text
    assert incident("sand_touched").title in page.replace("&#39;", "'")
    assert f"/book/provision/{slug_of('12.2b(1)')}" in page
    assert "/book/situation/sand_touched?" in page


def test_the_page_of_an_incident_begins_with_what_is_met_most(client: TestClient) -> None:
    """A ball embedded in the general area has free relief (16.3): that comes before the odd cases."""
    page = client.get("/book/incident/embedded_ball")
    assert page.context["situations"][0].now.startswith("Free relief is allowed")
    assert "It stands in the edition of 2023 alone." in client.get("/book/provision/9.3-Exception-2").text
