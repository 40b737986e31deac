"""``marram may``: what a player may do where the ball lies, may not do, and at what cost."""

from collections.abc import Iterator, Sequence

from marram.cli.facts import facts_given
from marram.cli.show import Line, print_json, show_lines
from marram.rules.facts.ball import area_of_ball
from marram.rules.plain import as_plain
from marram.services.asked.may import MayAsk, may
from marram.services.asked.may_words import MayLine, asked_once, may_line
from marram.services.cases.given import day_of_play, form_given, local_rules_in_force, sides_given
from marram.words.language import translate
from marram.words.messages import say
from marram.words.texts import text


def tell_what_may_be_done(
    area: str,
    *,
    pairs: Sequence[str],
    played_on: str | None,
    edition: str | None,
    form: str | None,
    local_rules: Sequence[str] | None,
    as_json: bool,
    sides: str | None = None,
) -> None:
    """Print each act with whether it is allowed, what it costs, and the nearest thing that is allowed."""
    where, day, chosen = area_of_ball.parse(area), day_of_play(played_on, edition), form_given(form)
    adopted = local_rules_in_force(local_rules, day)
    codes = None if adopted is None else tuple(adopted.in_rulings)
    together = sides_given(sides)
    answers = may(MayAsk(where, day, chosen, codes, facts_given(pairs), together))
    lines = [may_line(one, chosen) for one in answers]
    if as_json:
        document = {"area": where.value, "played_on": day.isoformat(), "answers": as_plain(lines)}
        print_json({"marram": 1, "kind": "may", **document})
        return
    show_lines(
        [
            *_lines(lines, translate()(area_of_ball.answers[where]), asked_once(answers)),
            ("quiet", say("TERMS", "reminder")),
        ]
    )


def _lines(lines: Sequence[MayLine], area: str, local_rules: str) -> Iterator[Line]:
    yield "title", f"{text('may.title')} ({area})"
    if local_rules:
        yield "quiet", local_rules
    group = ""
    for line in lines:
        if line.group != group:
            group = line.group
            yield "head", text(f"may.group.{group}")
        yield "item", f"{line.title}. {line.answer} ({line.citation})"
        for more in (line.reason, line.instead):
            if more:
                yield "quiet", f"      {more}"
        if line.granted:
            yield "quiet", f"      {text('may.granted')} {' '.join(line.granted)}"
