"""``marram incidents``, ``facts``, ``local-rules`` and ``graph``: what there is to rule on."""

from collections.abc import Iterator, Sequence
from typing import Any

from marram.cli.show import Line, print_json, show_lines
from marram.errors import InputError
from marram.rules.engine.fact import Fact
from marram.rules.facts import vocabulary
from marram.rules.incidents import incident
from marram.rules.incidents.finding import Found, find
from marram.rules.local_rules.local_rule import LocalRule
from marram.rules.plain import as_plain
from marram.services.given import day_of_play
from marram.words.questions import question_words


def list_incidents(words: Sequence[str], as_json: bool) -> None:
    """Print the incidents that words point to, the likeliest first; without words all of them, by theme."""
    found = find(" ".join(words))
    if not found.incidents:
        raise InputError(f"No incident has the words {' '.join(words)!r}; try others, or a Rule number.")
    if as_json:
        rows = [
            {key: value for key, value in as_plain(one).items() if key != "entry"} for one in found.incidents
        ]
        print_json({"marram": 1, "kind": "incidents", "incidents": rows})
        return
    if words:
        show_lines(_likeliest_first(found))
        return

    def lines() -> Iterator[Line]:
        theme = ""
        for one in found.incidents:
            if one.theme != theme:
                theme = one.theme
                yield "head", theme
            yield "item", f"{one.name}: {one.title} (Rule {one.rule})"

    show_lines(lines())


def _likeliest_first(found: Found) -> Iterator[Line]:
    for given, near in found.read_as:
        yield "quiet", f"{given!r} is read as {near!r}."
    yield "head", "The likeliest first" if found.complete else "None has every word; these come near"
    for one in found.incidents:
        yield "item", f"{one.name}: {one.title} (Rule {one.rule})"


def list_facts(name: str | None, as_json: bool) -> None:
    """Print the vocabulary, or the facts that can matter for one incident."""
    if name is None:
        found: list[Fact[Any]] = [fact for _, fact in sorted(vocabulary().items())]
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
                yield "item", f"a {one.kind}{f' ({one.unit})' if one.unit else ''}"

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
                f"There is no Model Local Rule {code!r} in the register. 'marram local-rules' lists them."
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
        yield "item", f"{one.code}: {one.title}"
        state = ", ".join(part for part in (state_words(one), time_words(one)) if part)
        yield "quiet", f"      {state}; changes {changes_words(one)}"
    yield "text", ""
    yield (
        "quiet",
        "In force only where the Committee adopts it; adopt with --local-rule, e.g. --local-rule E-5.",
    )
    yield "quiet", "More on one: 'marram local-rules E-5'."


def _local_rules_in_detail(entries: Sequence[LocalRule]) -> Iterator[Line]:
    from marram.words.local_rules import changes_words, note_words, state_words, statement, time_words

    for one in entries:
        yield "text", ""
        yield "title", f"{one.code}: {one.title}"
        yield "text", f"  Changes {changes_words(one)}."
        when = time_words(one) or "lists of 2019 and 2023"
        forms = f"; forms {', '.join(one.forms)}" if one.forms else ""
        yield "text", f"  {state_words(one).capitalize()}; {when}{forms}."
        if statement(one):
            yield "text", f"  {statement(one)}"
        for note in note_words(one):
            yield "item", note
        if one.basis is not None:
            yield "quiet", f"  This entry rests on {one.basis.value}."


def print_graph(name: str, played_on: str | None, edition: str | None) -> None:
    """Print the decision graph of an incident as JSON; for one day, or for all days when none is given."""
    from marram.rules.engine.export import graph_document

    day = None if played_on is None and edition is None else day_of_play(played_on, edition)
    print_json(graph_document(name, day))
