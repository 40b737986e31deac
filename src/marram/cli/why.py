"""``marram why``: the facts that decided a ruling, and what each other answer would have led to."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from marram.cli.facts import facts_given
from marram.cli.show import Line, print_json, show_lines
from marram.cli.writing import write_files
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.former_names import incident_now
from marram.rules.plain import as_plain
from marram.services.cases.given import day_of_play, form_given, local_rules_in_force, sides_given
from marram.teach.beliefs.telling import Believed, believed_of
from marram.teach.explaining import Decided, Explained, explain
from marram.teach.pathway import path_svg
from marram.teach.principles import principles_of
from marram.words.citations import named
from marram.words.texts import count_text, text


def tell_why(
    incident: str,
    *,
    pairs: Sequence[str],
    played_on: str | None,
    edition: str | None,
    form: str | None,
    sides: str | None,
    local_rules: Sequence[str] | None,
    svg: Path | None = None,
    wide: bool = False,
    as_json: bool,
) -> None:
    """Print why the ruling is what it is, with the principle and what players believe; draw the way to it."""
    day = day_of_play(played_on, edition)
    adopted = local_rules_in_force(local_rules, day)
    name, facts = incident_now(incident), facts_given(pairs)
    explained = explain(
        name,
        facts,
        played_on=day,
        form_of_play=form_given(form),
        local_rules=None if adopted is None else adopted.in_rulings,
        sides=sides_given(sides),
    )
    principles = principles_of(explained.citations)
    shown_form = form_given(form) or FormOfPlay.STROKE_PLAY
    believed = believed_of(name, facts, explained.headline, form=shown_form, played_on=day)
    if svg is not None:
        write_files({svg: path_svg(explained, wide=wide).encode()})
    if as_json:
        told = {"principles": list(principles), "believed": as_plain(believed)}
        print_json({"marram": 1, "kind": "explanation", "incident": incident, **as_plain(explained), **told})
        return
    show_lines((*_lines(explained), *_lesson(principles, believed)))


def _lines(explained: Explained) -> Iterator[Line]:
    yield "title", explained.headline
    mattered = [one for one in explained.decided if one.matters]
    yield "head", text("why.decided")
    for one in mattered:
        yield from _decided(one)
    rest = [one for one in explained.decided if not one.matters]
    if rest:
        yield "head", text("why.alone")
        for one in rest:
            yield "item", text("why.told", told=one.told, citation=named(one.citation))


def _lesson(principles: Sequence[str], believed: Sequence[Believed]) -> Iterator[Line]:
    if principles:
        yield "head", text("principles.title")
        yield from (("text", one) for one in principles)
        yield "quiet", text("principles.source")
    if believed:
        yield "head", text("beliefs.title")
        for one in believed:
            yield "text", text("beliefs.told", belief=one.said, why=one.why)
            yield from (("quiet", "  " + each) for each in one.computed)
        yield "quiet", text("beliefs.source")


def _decided(one: Decided) -> Iterator[Line]:
    yield "item", text("why.told", told=one.told, citation=named(one.citation))
    for other in one.instead:
        answers = text("why.or").join(other.answers)
        if other.same:
            yield "quiet", "      " + text("why.same", answers=answers)
            continue
        key = "why.instead" if len(other.rulings) == 1 else "why.instead_one_of"
        yield "text", "      " + text(key, answers=answers)
        for ruling in other.rulings:
            yield "text", f"        {ruling}"
        if other.more:
            yield "quiet", "        " + count_text("why.more", other.more)
