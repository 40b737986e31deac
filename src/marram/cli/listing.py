"""``marram incidents``, ``facts``, ``local-rules`` and ``graph``: what there is to rule on."""

from collections.abc import Iterator, Sequence
from typing import Any

from marram.cli.show import Line, amount_asked, print_json, show_lines
from marram.errors import InputError
from marram.rules.engine.fact import Fact
from marram.rules.facts import vocabulary
from marram.rules.former_names import fact_now
from marram.rules.incidents import INCIDENTS, incident
from marram.rules.incidents.incident import Incident
from marram.rules.local_rules.local_rule import LocalRule
from marram.rules.plain import as_plain
from marram.said import said
from marram.services.cases.given import day_of_play, sides_given
from marram.services.cases.told import Offered, Sentence, Told, told
from marram.words.language import translate
from marram.words.questions import question_words
from marram.words.texts import capital, text

OFFERED = 3
"""How many incidents are listed for each act of a sentence."""


def list_incidents(words: Sequence[str], as_json: bool) -> None:
    """Print the incidents that words point to, the likeliest first; without words all of them, by theme.

    Raises:
        InputError: no incident has any of the words.
    """
    if words or as_json:
        _list_told(" ".join(words), as_json)
        return

    def lines() -> Iterator[Line]:
        theme = ""
        for one in INCIDENTS:
            if one.theme != theme:
                theme = one.theme
                yield "head", translate()(theme)
            yield "item", _called(one)

    show_lines(lines())


def _list_told(words: str, as_json: bool) -> None:
    found = told(Sentence(words))
    if not found.offered:
        raise InputError(
            said("No incident has the words {words!r}; try others, or a Rule number.", words=words)
        )
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "incidents",
                "sure": found.sure,
                "read_as": [list(one) for one in found.read_as],
                "incidents": [_offered(one) for one in found.offered],
                "one_covers": found.one_covers,
                "acts": [
                    {"words": one.words, "incidents": [_offered(each) for each in one.offered]}
                    for one in found.acts
                ],
            }
        )
        return
    show_lines(_likeliest_first(found))


def _plain(one: Incident) -> dict[str, Any]:
    return {key: value for key, value in as_plain(one).items() if key != "entry"}


def _offered(one: Offered) -> dict[str, Any]:
    return {
        **_plain(one.incident),
        "likelihood": round(one.likelihood, 4),
        "for_teaching": one.for_teaching,
        "read": as_plain(one.facts),
    }


def _called(one: Incident) -> str:
    return text("cli.incident", name=one.name, title=translate()(one.title), rule=one.rule)


def _likeliest_first(found: Told) -> Iterator[Line]:
    for given, near in found.read_as:
        yield "quiet", text("cli.read_as", given=given, near=near)
    yield "head", text("cli.likeliest" if found.sure else "cli.near")
    for one in found.offered:
        yield "item", _called(one.incident)
        yield from _read(one)
    if not found.acts:
        return
    yield "head", text("cli.acts")
    if found.one_covers:
        yield "quiet", text("cli.acts.covers")
    for act in found.acts:
        yield "text", text("cli.acts.act", words=act.words)
        for one in act.offered[:OFFERED]:
            yield "item", _called(one.incident)
            yield from _read(one)


def _read(one: Offered) -> Iterator[Line]:
    if one.facts:
        facts = ", ".join(f"{each.fact}={each.answer}" for each in one.facts)
        yield "quiet", "      " + text("cli.read", facts=facts)


def list_facts(name: str | None, as_json: bool) -> None:
    """Print the vocabulary, the facts that can matter for one incident, or one fact by its name."""
    if name is None:
        found: list[Fact[Any]] = [fact for _, fact in sorted(vocabulary().items())]
    elif name not in {one.name for one in INCIDENTS} and fact_now(name) in vocabulary():
        found = [vocabulary()[fact_now(name)]]
    else:
        from marram.rules.engine.export import facts_of

        found = facts_of(incident(name).name)
    questions = [question_words(fact) for fact in found]
    if as_json:
        print_json({"marram": 1, "kind": "facts", "facts": as_plain(questions)})
        return

    def lines() -> Iterator[Line]:
        for one in questions:
            yield "text", ""
            yield "title", f"{one.fact}: {one.question}"
            yield "quiet", f"  {one.help} ({one.source}; {one.decided_by})"
            for answer in one.answers:
                yield (
                    "item",
                    answer.token if answer.token == answer.words else f"{answer.token}: {answer.words}",
                )
            if one.kind != "choice":
                yield "item", amount_asked(one)

    show_lines(lines())


def list_local_rules(codes: Sequence[str], as_json: bool) -> None:
    """Print the register of Model Local Rules, or the ones with these codes in detail.

    Raises:
        InputError: a code is not in the register.
    """
    from marram.rules.local_rules.adoption import entry_named
    from marram.rules.local_rules.register import REGISTER

    named = {code: entry_named(code) for code in codes}
    unknown = [code for code, entry in named.items() if entry is None]
    if unknown:
        raise InputError(
            *(
                said(
                    "There is no Model Local Rule {code!r} in the register. 'marram local-rules' lists them.",
                    code=code,
                )
                for code in unknown
            )
        )
    found = [entry for entry in named.values() if entry is not None] or list(REGISTER.values())
    if as_json:
        print_json({"marram": 1, "kind": "local_rules", "local_rules": as_plain(found)})
        return
    show_lines(_local_rules_in_detail(found) if codes else _local_rules_by_area(found))


def _local_rules_by_area(entries: Sequence[LocalRule]) -> Iterator[Line]:
    from marram.words.local_rules import area_title, changes_words, state_words, time_words

    area = ""
    for one in entries:
        if one.code[0] != area:
            area = one.code[0]
            yield "head", area_title(area)
        yield "item", f"{one.code}: {translate()(one.title)}"
        state = ", ".join(part for part in (state_words(one), time_words(one)) if part)
        yield "quiet", "      " + text("cli.local_rules.state", state=state, changes=changes_words(one))
    yield "text", ""
    yield "quiet", text("cli.local_rules.adopt")
    yield "quiet", text("cli.local_rules.more")


def _local_rules_in_detail(entries: Sequence[LocalRule]) -> Iterator[Line]:
    from marram.words.local_rules import changes_words, note_words, state_words, statement, time_words

    for one in entries:
        yield "text", ""
        yield "title", f"{one.code}: {translate()(one.title)}"
        yield "text", "  " + text("cli.local_rules.changes", changes=changes_words(one))
        when = time_words(one) or text("cli.local_rules.both_lists")
        key = "cli.local_rules.when_forms" if one.forms else "cli.local_rules.when"
        state = capital(state_words(one))
        yield "text", "  " + text(key, state=state, when=when, forms=", ".join(one.forms))
        if statement(one):
            yield "text", f"  {statement(one)}"
        for note in note_words(one):
            yield "item", note
        if one.basis is not None:
            yield "quiet", "  " + text("cli.local_rules.basis", basis=translate()(one.basis.value))


def print_graph(name: str, played_on: str | None, edition: str | None, sides: str | None) -> None:
    """Print the decision graph of an incident as JSON; for one day, or for all days when none is given."""
    from marram.rules.engine.export import graph_document

    day = None if played_on is None and edition is None else day_of_play(played_on, edition)
    print_json(graph_document(name, day, sides_given(sides)))
