"""What was told at the desk: acts begin a story, and what is read counts only once it is confirmed."""

import html
import re
from urllib.parse import urlencode

from tests.desk.asking import TestClient

SAID = "She accidentally kicked her ball in the rough"
CASE = {"what": "ball_moved_by_player", "on": "2024-06-01", "local": "none"}
FACT = re.compile(r"movement_accidental=yes")


def page(client: TestClient, path: str, **query: str) -> str:
    answer = client.get(f"{path}?{urlencode(query)}")
    assert answer.status_code == 200, answer.text
    return html.unescape(answer.text)


def proposed(text: str) -> int:
    return text.count("said-taps")


def links(text: str) -> list[str]:
    return re.findall(r'href="([^"]+)"', text)


def test_what_was_read_is_shown_and_decides_nothing(client: TestClient) -> None:
    """The question is the same with and without the sentence: what is read in it is no answer yet."""

    def question(text: str) -> str:
        return re.search(r'<h1 id="heading"[^>]*>([^<]+)', text)[1]

    with_words = page(client, "/case", **CASE, said=SAID)
    assert question(with_words) == question(page(client, "/case", **CASE))
    assert 'class="said"' in with_words
    assert 'class="said"' not in page(client, "/case", **CASE)


def test_one_tap_confirms_and_one_changes(client: TestClient) -> None:
    """Yes puts the answer among the facts and takes the proposal away; change asks its question."""
    shown = page(client, "/case", **CASE, said=SAID)
    yes = next(one for one in links(shown) if FACT.search(one))
    assert proposed(html.unescape(client.get(yes).text)) == proposed(shown) - 1
    change = next(one for one in links(shown) if "ask=movement_accidental" in one)
    asked = client.get(change)
    assert asked.status_code == 200
    assert 'name="movement_accidental"' in asked.text


def test_acts_begin_a_story_with_one_tap(client: TestClient) -> None:
    """The sentence's acts become incidents in order, each with its own words, and the first is asked about."""
    told = "He stopped his swing before the ball, then the twig broke, then he dropped outside the relief area and played"
    text = page(client, "/what", q=told, on="2024-06-01", local="none")
    begin = next(one for one in links(text) if "2.what=" in one and "number=1" in one)
    assert re.search(r"[?&]said=", begin)
    assert re.search(r"[?&]2\.said=", begin)
    assert client.get(begin).status_code == 200


def test_a_sentence_comes_along_with_the_incident(client: TestClient) -> None:
    """Choosing an incident keeps what was said; a word or two are no sentence."""

    def chosen(words: str) -> str:
        return next(
            one
            for one in links(page(client, "/what", q=words, local="none"))
            if "/case?" in one and "what=" in one
        )

    assert "said=" in chosen("my ball is lost in the trees")
    assert "said=" not in chosen("lost ball")


def test_the_browser_gets_the_weights_once(client: TestClient) -> None:
    """The file is compressed to 300 kB at most (training/fitting.py), and fetched again only when it changed."""
    first = client.get("/api/finding/model", headers={"accept-encoding": "gzip"})
    assert first.headers["content-encoding"] == "gzip"
    assert int(first.headers["content-length"]) < 300_000
    again = client.get("/api/finding/model", headers={"if-none-match": first.headers["etag"]})
    assert again.status_code == 304


def test_what_can_change_nothing_any_more_does_not_stand_before_the_ruling(client: TestClient) -> None:
    """Told of a ball moved in a search: once it is ruled, nothing of the sentence is left to confirm; before, what is open is."""
    told = "he moved his ball while looking for it in the rough"
    case = {
        "what": "ball_moved_in_search",
        "on": "2024-06-01",
        "form": "stroke_play",
        "local": "none",
        "said": told,
    }
    asked = page(client, "/case", **case)
    assert proposed(asked) > 0
    answers: dict[str, str] = {}
    while (shown := client.get(f"/case?{urlencode(case | answers)}").context)["sheet"].question:
        answers[shown["question"].fact] = shown["question"].answers[0].token
    assert 'class="said"' not in page(client, "/case", **(case | answers))
