"""``marram rule``: the ruling, or the next question."""

import sys
from collections.abc import Mapping, Sequence
from datetime import date
from typing import TYPE_CHECKING, Any

import marram
from marram.cli.exits import BAD_INPUT, DECIDED, LEFT_OPEN, MORE_FACTS_NEEDED, stop
from marram.cli.facts import facts_given
from marram.rules.editions import clarified_to, edition_of
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.former_names import incident_now
from marram.rules.result import NeedFacts, Result
from marram.rules.ruling import HandOver, Ruling
from marram.said import said
from marram.services.cases.given import day_of_play, form_given, local_rules_in_force, sides_given

if TYPE_CHECKING:
    from marram.services.cases.case import Case
    from marram.words.sheet import Sheet


def give_ruling(
    incident: str | None,
    *,
    pairs: Sequence[str],
    played_on: str | None,
    edition: str | None,
    form: str | None,
    sides: str | None,
    local_rules: Sequence[str] | None,
    as_json: bool,
) -> None:
    """Print the ruling; on a terminal ask until it is decided. Exits with the code of the outcome."""
    day = day_of_play(played_on, edition)
    facts: dict[str, Any] = facts_given(pairs)
    chosen, who = form_given(form), sides_given(sides)
    adopted = local_rules_in_force(local_rules, day)
    in_rulings = None if adopted is None else adopted.in_rulings
    interactive = sys.stdin.isatty() and sys.stdout.isatty() and not as_json
    if incident is None:
        if not interactive:
            stop(
                BAD_INPUT,
                said(
                    "No incident given: say what happened. 'marram incidents' lists what can have happened."
                ),
            )
        from marram.cli.interview import choose_incident

        incident = choose_incident()

    about: str = incident_now(incident)

    def ask_the_book(known: Mapping[str, Any]) -> Result:
        return marram.rule(
            about, known, played_on=day, form_of_play=chosen, sides=who, local_rules=in_rulings
        )

    result = ask_the_book(facts)
    singly: set[str] = set()
    while interactive and isinstance(result, NeedFacts | HandOver):
        from marram.cli.interview import ask, confirm_usual, tell_hand_over
        from marram.services.cases.usual import usual_together

        if isinstance(result, HandOver):
            tell_hand_over(result)
            about, facts = result.incident, result.carry(facts)
        elif result.fact not in singly and (usual := usual_together(ask_the_book, facts)):
            if confirm_usual(usual):
                facts |= {one.fact: one.token for one in usual}
            else:
                singly |= {one.fact for one in usual}
        else:
            facts[result.fact] = ask(result, chosen)
        result = ask_the_book(facts)
    conditions = {
        "incident": about,
        "played_on": day.isoformat(),
        "edition": edition_of(day).isoformat(),
        "clarified_to": clarified_to(day).isoformat(),
        "form_of_play": chosen.value if chosen else None,
        "sides": who.value if who else None,
        "local_rules": None if adopted is None else list(adopted.codes),
        "facts": facts,
    }
    from marram.words.sheet import sheet

    words = sheet(result, form_of_play=chosen, given=facts)
    if isinstance(result, Ruling):
        from marram.rules.nearby import missing_relief
        from marram.words.missing import with_missing

        codes = None if in_rulings is None else frozenset(in_rulings)
        missing = missing_relief(about, facts, result, played_on=day, form_of_play=chosen, local_rules=codes)
        words = with_missing(words, missing)
    if as_json:
        _print_json(result, words, conditions, chosen, facts)
    else:
        from marram.cli.show import show_sheet

        show_sheet(words, conditions)
    raise SystemExit(exit_code(result))


def exit_code(result: Result) -> int:
    """Return the exit code of a result."""
    if isinstance(result, Ruling):
        return DECIDED
    return MORE_FACTS_NEEDED if isinstance(result, NeedFacts | HandOver) else LEFT_OPEN


def _print_json(
    result: Result, words: "Sheet", conditions: dict[str, Any], form: FormOfPlay | None, facts: dict[str, Any]
) -> None:
    from marram.cli.show import print_json
    from marram.rules.plain import as_plain

    document = {
        "marram": 1,
        "kind": words.kind,
        **conditions,
        "result": as_plain(result),
        "words": as_plain(words),
        "case": _case(conditions, form, facts).document(),
    }
    print_json(document)


def _case(conditions: dict[str, Any], form: FormOfPlay | None, facts: dict[str, Any]) -> "Case":
    """Return what was ruled on, as it can be read back."""
    from marram.rules.engine.request import fact_named
    from marram.services.cases.case import Act, Case
    from marram.services.cases.made_with import made_with

    tokens = {name: fact_named(name).token(fact_named(name).parse(answer)) for name, answer in facts.items()}
    codes = conditions["local_rules"]
    return Case(
        date.fromisoformat(conditions["played_on"]),
        (Act(conditions["incident"], tokens),),
        form,
        Sides(conditions["sides"]) if conditions["sides"] else None,
        local_rules=None if codes is None else tuple(codes),
        made_with=made_with(),
    )
