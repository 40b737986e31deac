"""The browser finds incidents as the desk does: by the same file, in the same order, with the same scores."""

import json
import re
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from marram.rules.facts import vocabulary
from marram.rules.finding.citations import citations, without
from marram.rules.finding.features import features
from marram.rules.finding.model import model
from marram.rules.finding.ranking import Context, corrected, rank, tells_of_former
from marram.rules.finding.sentence import words
from marram.rules.incidents import INCIDENTS
from marram.services.cases.likely import by_place
from marram.services.cases.told import Offered, Sentence
from marram.word_stems import stem
from tests.rules.finding.unseen import unseen
from training.material import sentences, weak

pytestmark = pytest.mark.browser

RANK = """
async ([sentences, context]) => {
  const { readModel } = await import("/static/rulings/finding_model.js");
  const { rank } = await import("/static/rulings/ranking.js");
  const model = readModel(await (await fetch("/api/finding/model")).json());
  const { incidents } = await (await fetch("/api/finding/incidents")).json();
  const named = new Map(incidents.map((one) => [one.name, one]));
  return sentences.map((one) => {
    const { incidents } = rank(model, named, one, context);
    const all = incidents.reduce((sum, { at, score }, place) => sum + (at + score) * (place + 1), 0);
    return [incidents.slice(0, 12).map(({ name, score, likelihood }) => [name, score, likelihood]), all];
  });
}
"""
READ = """
async (sentences) => {
  const { readModel } = await import("/static/rulings/finding_model.js");
  const { citations, without } = await import("/static/rulings/citations.js");
  const { corrected, tellsOfFormer } = await import("/static/rulings/ranking.js");
  const { features } = await import("/static/rulings/features.js");
  const { words } = await import("/static/rulings/sentence.js");
  const model = readModel(await (await fetch("/api/finding/model")).json());
  return sentences.map((one) => {
    const cited = citations(one);
    const said = corrected(words(without(one, cited), model.tables), model);
    return [cited, features(said), said.filter((word) => word.things.length).length, tellsOfFormer(one)];
  });
}
"""
BY_PLACE = """
async ([sentences, context, likely]) => {
  const { readModel } = await import("/static/rulings/finding_model.js");
  const { rank } = await import("/static/rulings/ranking.js");
  const { byPlace } = await import("/static/rulings/by_place.js");
  const model = readModel(await (await fetch("/api/finding/model")).json());
  const { incidents } = await (await fetch("/api/finding/incidents")).json();
  const named = new Map(incidents.map((one) => [one.name, one]));
  return sentences.map((one) => byPlace(rank(model, named, one, context).incidents.slice(0, 12), likely).map(({ name }) => name));
}
"""
ODD = (
    "",
    "13.2",
    "Rule 16.1b",
    "E-5",
    "rule 9",
    "2.5 metres",
    "café wouldn’t",
    "flagstik in the bnuker",
    "ball" * 200,
    "⛳ lost",
    "was it 14?",
)
PLACES = {name: place for place, name in enumerate(model().incidents)}
CONTEXTS = (
    Context(),
    Context(frozenset({"E-5", "F-16"})),
    Context(frozenset()),
)


@pytest.fixture
def page(chromium: Browser, address: str) -> Iterator[Page]:
    context = chromium.new_context(viewport={"width": 390, "height": 844}, has_touch=True, base_url=address)
    page = context.new_page()
    page.goto("/what")
    yield page
    context.close()


def run(page: Page, script: str, given: Any) -> Any:
    """Run a script in the page; as one string of JSON, many times faster than value by value."""
    whole = f"async (given) => JSON.stringify(await ({script})(JSON.parse(given)))"
    return json.loads(page.evaluate(whole, json.dumps(given)))


def test_python_and_the_browser_read_every_sentence_alike(page: Page) -> None:
    """Of every sentence of the project both take the same Rules cited and the same features, in one order: all that a score is
    made of, beside the numbers of the one file that both read."""
    learned = model()
    told = [one.text for one in (*sentences(), *weak()[::7])] + [one for one, _ in unseen()] + list(ODD)
    theirs = run(page, READ, told)
    for sentence, read in zip(told, theirs, strict=True):
        cited = citations(sentence)
        said, _ = corrected(words(without(sentence, cited), learned.tables), learned)
        known = sum(bool(one.things) for one in said)
        assert read == [list(cited), features(said), known, tells_of_former(sentence)], sentence


@pytest.mark.parametrize("known", CONTEXTS, ids=["not known", "some in force", "none in force"])
def test_python_and_the_browser_rank_alike(page: Page, known: Context) -> None:
    """What is read in a sentence gives the same order and the same scores, over every incident; likelihoods to a billionth."""
    told = [one.text for one in sentences()][::25] + [sentence for sentence, _ in unseen()] + list(ODD)
    told += [one.text for one in weak()][::7] if known == Context() else []
    local = None if known.local_rules is None else sorted(known.local_rules)
    theirs = run(page, RANK, [told, {"words": known.words(), "localRules": local}])
    for sentence, (first, every) in zip(told, theirs, strict=True):
        ours = rank(sentence, known)
        listed = list(zip(ours.incidents, ours.scores, ours.likelihoods, strict=True))
        assert [(one.name, score) for one, score, _ in listed[:12]] == [
            (name, score) for name, score, _ in first
        ], sentence
        assert [likelihood for *_, likelihood in first] == pytest.approx(ours.likelihoods[:12], abs=1e-9), (
            sentence
        )
        assert every == sum(
            (PLACES[one.name] + score) * place for place, (one, score, _) in enumerate(listed, start=1)
        ), sentence


def test_stems_are_those_of_snowball(page: Page) -> None:
    """The stemmer in the browser agrees with the Snowball project's, over all words of the project and made-up endings."""
    texts = [one.text for one in (*sentences(), *weak())] + [
        f"{one.question} {one.help}" for one in vocabulary().values()
    ]
    words = {word for text in texts for word in re.findall("[a-z]+", text.lower())}
    endings = [
        "ed",
        "ing",
        "ly",
        "ness",
        "ational",
        "ization",
        "iviti",
        "ative",
        "ful",
        "ement",
        "ions",
        "ogist",
        "eedly",
        "ies",
        "ied",
        "sses",
        "y",
        "er",
        "able",
        "ably",
        "ously",
        "lessly",
        "alism",
        "ll",
    ]
    every = sorted(words | {word + ending for word in sorted(words)[::5] for ending in endings})
    theirs = run(
        page,
        'async (all) => { const { stem } = await import("/static/rulings/stemmer.js"); return all.map(stem); }',
        every,
    )
    assert [(word, other) for word, other in zip(every, theirs, strict=True) if stem(word) != other] == []


def test_the_list_is_found_without_the_desk(page: Page) -> None:
    """Once the weights have arrived, a list is shown for what is typed though the desk cannot be reached."""
    page.locator("#q").focus()
    page.evaluate('import("/static/rulings/finding.js").then(async (one) => void (await one.prepare()))')
    page.context.set_offline(True)
    page.locator("#q").fill("my ball is lost in the trees")
    first = page.locator("#incidents a").first
    title = next(
        one.title for one in INCIDENTS if one.name == rank("my ball is lost in the trees").incidents[0].name
    )
    expect(first).to_contain_text(title)
    assert "said=my%20ball%20is%20lost" in (first.get_attribute("href") or "")


def test_what_was_not_understood_is_said_with_and_without_the_desk(page: Page) -> None:
    """Three words of which one is unknown are not called the likeliest, whoever finds."""
    page.goto("/what?q=my+ball+zeppelin")
    found = page.locator("#incidents")
    expect(found).to_contain_text("Not understood: zeppelin.")
    expect(found.locator("summary")).to_contain_text("Not sure")
    page.locator("#q").focus()
    page.evaluate('import("/static/rulings/finding.js").then(async (one) => void (await one.prepare()))')
    page.context.set_offline(True)
    page.locator("#q").fill("my ball quorple")
    expect(found).to_contain_text("Not understood: quorple.")
    expect(found.locator("summary")).to_contain_text("Not sure")


def test_python_and_the_browser_order_by_place_alike(page: Page) -> None:
    """What the place speaks for, what is not in force and what is only taught stand in the same order on both sides."""
    said = [*[sentence for sentence, _ in unseen()][::3], *ODD, "the ball was dropped over the shoulder"]
    likely = [one.name for one in INCIDENTS[::5]]
    theirs = run(page, BY_PLACE, [said, {"words": "", "localRules": ["E-5"]}, likely])
    speaks = [one for one in INCIDENTS if one.name in likely]
    for sentence, names in zip(said, theirs, strict=True):
        found = rank(sentence, Context(frozenset({"E-5"})))
        first = tuple(
            Offered(one, likelihood, one.for_teaching)
            for one, likelihood in zip(found.incidents[:12], found.likelihoods[:12], strict=True)
        )
        ours = by_place(first, Sentence(sentence, frozenset({"E-5"}), None), speaks)
        assert [one.incident.name for one in ours] == names, sentence
