"""Every word of the desk goes through the catalogue: under a made-up language no plain letter is left on a page.

What is left, and why, is listed in ``outside.py``.
"""

from collections.abc import Iterator
from pathlib import Path
from random import Random

import pytest

from marram.course.model import Course
from marram.desk.app import create_app
from marram.rules.incidents import INCIDENTS
from marram.teach.situations.sampling import NAMES as FIRST_NAMES
from tests.desk.conftest import TestClient
from tests.desk.places import Ground
from tests.words.made_up import speaking
from tests.words.outside import names_of
from tests.words.unmarked import seen_in, skeleton, told_in, unmarked


@pytest.fixture(autouse=True)
def made_up(locales: Path) -> Iterator[None]:
    with speaking(locales):
        yield


@pytest.fixture(scope="module")
def client() -> TestClient:
    return TestClient(create_app())


@pytest.fixture(scope="module")
def course(client: TestClient) -> Course:
    return client.app.state.workplace.course


@pytest.fixture(scope="module")
def ground(course: Course) -> Ground:
    return Ground(course)


def left(course: Course, page: str, *said: str) -> set[str]:
    """Return the texts of a page that went past the catalogue, but for proper names and what somebody ``said``."""
    return unmarked(seen_in(page), {*names_of(course), *said})


LIFTED = "what=ball_lifted_by_player", "area_of_ball=general_area", "handled_as=lifted", "handling_allowed=no"


def rulings(ground: Ground) -> dict[str, str]:
    burn = f"hole=9&ball={ground.in_the_burn()}"
    case = f"{burn}&what=ball_in_penalty_area"
    done = f"{case}&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    first = "&".join(f"1.{one}" for one in LIFTED)
    second = "&".join(f"2.{one}" for one in done.split("&") if not one.startswith("hole"))
    situation = f"hole=9&{first}&{second}"
    return {
        "the course": "/",
        "a hole": "/ball?hole=9",
        "which hole": "/flag",
        "a hole not mapped": "/flag?hole=19",
        "its flagstick shown": "/ball?hole=19&flag=55.004,3.996",
        "the next ball": f"/ball?hole=9&{first.replace('1.what', f'1.ball={ground.fairway()}&1.what')}",
        "the phone's place": f"/ball?hole=9&ball={ground.in_the_burn(0)};u=6",
        "the ball placed": f"/ball?{burn}",
        "the ball beside something": f"/ball?hole=10&ball={ground.in_feature('Reseeded fairway')}",
        "in a no play zone": f"/ball?hole=15&ball={ground.in_feature('Orchid ground')}",
        "far from the hole": "/ball?hole=1&ball=55.02,4.02",
        "the list": f"/what?{burn}",
        "a search": "/what?q=lost+ball",
        "nearly found": "/what?q=lost+zeppelin",
        "nothing found": "/what?q=zeppelin",
        "the former list": "/what?on=2017-05-01",
        "a question": f"/case?{case}",
        "an answer again": f"/case?{done}&ask=found_in_penalty_area",
        "a number": "/case?what=ball_found_in_time&ask=search_minutes",
        "a ruling": f"/case?{done}",
        "a ruling explained": f"/explained?{done}",
        "a ruling drawn": f"/case?{done}&entry={ground.in_the_burn(0)}&previous={ground.fairway(along=230)}",
        "the other hand": f"/case?hole=10&ball={ground.in_feature('Reseeded fairway')}&what=abnormal_course_condition"
        "&interference=ball&stroke_unreasonable_anyway=no&nearest_point_exists=yes&only_by_unreasonable_choice=no",
        "a free drop": f"/case?hole=10&ball={ground.in_feature('Reseeded fairway')}&what=abnormal_course_condition"
        "&interference=ball&stroke_unreasonable_anyway=no&nearest_point_exists=yes&only_by_unreasonable_choice=no&handed=left",
        "the next incident": f"/case?hole=9&{first}&number=2&what=ground_altered",
        "between incidents": f"/together?{situation}",
        "together": f"/together?{situation}&intervening_event_1=yes",
        "together, in match play": f"/together?{situation}&intervening_event_1=yes&form=match_play",
        "together, one open": f"/together?{first}&2.what=ground_altered",
        "the conditions": "/settings",
        "the conditions of others": "/settings?on=2021-05-01&form=none&sides=foursomes&local=E-5,G-1&handed=left",
        "no page": "/nowhere",
    }


NAMES = list(rulings(Ground(create_app().state.workplace.course)))


@pytest.mark.parametrize("name", NAMES)
def test_a_page_of_rulings_says_nothing_of_its_own(
    client: TestClient, course: Course, ground: Ground, name: str
) -> None:
    """Pages, their attributes and the words handed to the map come from the catalogue."""
    page = client.get(rulings(ground)[name])

    assert left(course, page.text, "zeppelin", "/nowhere") == set()


@pytest.mark.parametrize("answer", ["", "&answer=1"])
def test_a_quiz_says_nothing_of_its_own(client: TestClient, course: Course, answer: str) -> None:
    """The telling, the answers and why each is right or not come from the catalogue; names and letters are nobody's words."""
    for number in range(1, 6):
        page = client.get(f"/quiz?seed=7&number={number}{answer}")
        assert left(course, page.text, *FIRST_NAMES, "A.", "B.", "C.", "D.") == set()


@pytest.mark.parametrize("tap", ["", "&tap.x=12&tap.y=300"])
def test_a_question_on_a_drawing_says_nothing_of_its_own(
    client: TestClient, course: Course, tap: str
) -> None:
    """The task, the verdict and the words in the drawing come from the catalogue."""
    for number in range(1, 4):
        page = client.get(f"/quiz/drawing?seed=7&number={number}{tap}")
        assert page.status_code == 200
        assert left(course, page.text, *FIRST_NAMES) == set()


@pytest.mark.parametrize(
    "path",
    [
        "/book",
        "/book/rule/9",
        "/book/definitions",
        "/book/provision/9.3-Exception-2",
        "/book/incident/sand_touched",
        "/book/changes",
        "/book/changes/since?earlier=2024-12-31&later=2025-01-01",
        "/book/changes/since/unplayable?earlier=2016&later=2019",
        "/book/changes/since/several_breaches",
        "/book/changes/local-rule/E-5",
        "/book/situation/embedded_ball?form=stroke_play&area_of_ball=putting_green",
        "/book/situation/ball_near_boundary?form=stroke_play&all_of_ball_out_of_bounds=no",
    ],
)
def test_the_book_says_nothing_of_its_own(client: TestClient, course: Course, path: str) -> None:
    """Contents, provisions, situations and the words in their drawings come from the catalogue."""
    page = client.get(path)
    assert page.status_code == 200
    assert left(course, page.text, *FIRST_NAMES) == set()


@pytest.mark.parametrize("name", NAMES)
def test_nothing_is_decided_by_english_words(client: TestClient, ground: Ground, name: str) -> None:
    """A page has the same parts, classes and links in another language: only its words differ."""
    page = client.get(rulings(ground)[name])
    with speaking(None):
        english = client.get(rulings(ground)[name])

    assert skeleton(page.text) == skeleton(english.text)


@pytest.mark.parametrize("one", INCIDENTS, ids=lambda one: one.name)
def test_an_incident_is_told_in_the_language(
    client: TestClient, course: Course, ground: Ground, one: object
) -> None:
    """From the first question to the ruling with its drawings, on one way through the incident."""
    random = Random(one.name)  # the same way in every run
    place = f"hole=9&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&handed=left"
    page = client.get(
        f"/case?what={one.name}&{random.choice([place, 'on=2021-05-01&form=match_play&local=none'])}"
    )
    for _ in range(60):
        assert left(course, page.text) == set()
        if page.context["sheet"].kind != "need_facts":
            return
        question = page.context["question"]
        answer = random.choice(question.answers).token if question.answers else str(random.choice([1, 4, 20]))
        page = client.get("/case", params=[*page.context["hidden"], (question.fact, answer)])
    pytest.fail("More than sixty questions.")


@pytest.fixture
def editing(tmp_path: Path) -> TestClient:
    """A desk of its own, whose map and hole locations are kept."""
    return TestClient(create_app(maps=tmp_path / "maps"), follow_redirects=True)


CORNERS = "55.004,4.0\n55.004,4.0003\n55.0042,4.0003"
AREA = {
    "kind": "ground_under_repair",
    "name": "Ada",
    "hole": "9",
    "places": CORNERS,
    "who": "Ada",
    "base": "1",
}


def test_the_map_editor_is_told_in_the_language(editing: TestClient, course: Course) -> None:
    """The page, its versions, the words of its scripts; a save, faults of the form, going back."""
    said = ("Ada", "drawn/")
    assert left(course, editing.get("/map").text) == set()
    faulty = editing.post(
        "/map", data=AREA | {"places": "here", "hole": "x", "who": "", "in_force_from": "soon"}
    )
    assert left(course, faulty.text, *said, "'here'", "'x'", "'soon'", "here", "soon") == set()
    saved = editing.post("/map", data=AREA | {"in_force_from": "2025-06-21"})
    assert left(course, saved.text, *said) == set()
    later = editing.post("/map", data=AREA | {"in_force_from": "2025-06-25", "base": "2"})
    assert left(course, later.text, *said) == set()
    back = editing.post(
        "/map/restore", data={"number": "1", "base": "3", "who": "Ada", "in_force_from": "2025-06-22"}
    )
    assert left(course, back.text, *said) == set()


def test_a_desk_that_keeps_no_maps_says_so(client: TestClient, course: Course) -> None:
    """The page of the editor, and that of the holes, where nothing is kept."""
    assert left(course, client.get("/map").text) == set()
    assert left(course, client.get("/holes/2025-06-21").text) == set()


def test_the_marking_is_told_in_the_language(client: TestClient, course: Course) -> None:
    """The page, its tasks and the words of its script."""
    assert left(course, client.get("/marking?day=2025-06-21").text) == set()


def test_the_hole_locations_are_told_in_the_language(editing: TestClient, course: Course) -> None:
    """The page before and after a save, its faults, and what the script asks about places."""
    assert left(course, editing.get("/holes/2025-06-21").text) == set()
    faulty = editing.post("/holes/2025-06-21", data={"base": "0", "who": "", "front-1": "x"})
    assert left(course, faulty.text, "'x'", "x") == set()
    saved = editing.post("/holes/2025-06-21", data={"base": "0", "who": "Ada"})
    for reader in ("players", "committee"):
        assert left(course, editing.get(f"/holes/2025-06-21/sheet?reader={reader}").text) == set()
    assert left(course, saved.text, "Ada") == set()
    assert left(course, editing.get("/holes/2025-06-22?speed=9").text, "Ada") == set()
    for query in ("front=1&side=1&which=left", "front=12&side=6&which=right", "x=0&y=0"):
        look = editing.get(f"/api/holes/2025-06-21/look?hole=1&{query}").json()
        assert unmarked(told_in(look), names_of(course)) == set()
