"""Every incident can be taken to its end on the pages, with a ball anywhere on the map: no dead end, no failure."""

from random import Random

import pytest

from marram.rules.incidents import INCIDENTS
from tests.desk.asking import TestClient
from tests.desk.places import Ground

ENDS = {"ruling", "judgement", "hand_over", "not_covered"}
PLACES = [
    ("The Burn", 9),
    ("Reseeded fairway", 10),
    ("Orchid ground", 15),
    ("Practice ground", 1),
    ("The Mere", 12),
]


def walk(client: TestClient, query: str, random: Random) -> str:
    """Answer every question at random until the case ends; return the kind of its end."""
    page = client.get(f"/case?{query}")
    for _ in range(60):
        assert page.status_code == 200, page.context.get("faults")
        sheet = page.context["sheet"]
        if sheet.kind != "need_facts":
            assert sheet.headline
            assert "could not draw" not in page.text
            return sheet.kind
        question = page.context["question"]
        answer = random.choice(question.answers).token if question.answers else str(random.choice([1, 4, 20]))
        page = client.get("/case", params=[*page.context["hidden"], (question.fact, answer)])
    pytest.fail("More than sixty questions.")


@pytest.mark.parametrize("one", INCIDENTS, ids=lambda one: one.name)
def test_an_incident_comes_to_an_end(client: TestClient, ground: Ground, one: object) -> None:
    """On the map, under the 2023 edition and under the 2019 one in match play, the answers end in a sheet."""
    random = Random(one.name)  # the same answers in every run
    name, hole = random.choice(PLACES)
    place = f"hole={hole}&ball={ground.in_feature(name)}&entry={ground.in_the_burn(0)}&handed=left"

    assert walk(client, f"what={one.name}&{place}", random) in ENDS
    assert walk(client, f"what={one.name}&{place}&on=2021-05-01&form=match_play&local=none", random) in ENDS
