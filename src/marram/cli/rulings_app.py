"""Commands that rule: ``marram rule``, ``why``, ``may`` and ``story``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import Edition, Facts, Form, Json, LocalRules, PlayedOn, Sides


def rule(
    incident: Annotated[
        str | None, typer.Argument(help="What happened; 'marram incidents' lists them.")
    ] = None,
    fact: Facts = None,
    played_on: PlayedOn = None,
    edition: Edition = None,
    form: Form = None,
    sides: Sides = None,
    local_rule: LocalRules = None,
    json: Json = False,
) -> None:
    """Give the ruling, or ask the next question."""
    from marram.cli.ruling import give_ruling

    give_ruling(
        incident,
        pairs=fact or [],
        played_on=played_on,
        edition=edition,
        form=form,
        sides=sides,
        local_rules=local_rule,
        as_json=json,
    )


def why(
    incident: Annotated[str, typer.Argument(help="What happened; 'marram incidents' lists them.")],
    fact: Facts = None,
    played_on: PlayedOn = None,
    edition: Edition = None,
    form: Form = None,
    sides: Sides = None,
    local_rule: LocalRules = None,
    svg: Annotated[
        Path | None, typer.Option("--svg", help="Draw the way to the ruling into this file, as SVG.")
    ] = None,
    wide: Annotated[bool, typer.Option("--wide", help="Draw it side by side, for a slide.")] = False,
    json: Json = False,
) -> None:
    """Explain a ruling: the facts that decided it, and what each other answer would have led to."""
    from marram.cli.why import tell_why

    tell_why(
        incident,
        pairs=fact or [],
        played_on=played_on,
        edition=edition,
        form=form,
        sides=sides,
        local_rules=local_rule,
        svg=svg,
        wide=wide,
        as_json=json,
    )


def may(
    area: Annotated[str, typer.Argument(help="Where the ball lies, e.g. general_area or bunker.")],
    fact: Facts = None,
    played_on: PlayedOn = None,
    edition: Edition = None,
    form: Form = None,
    sides: Sides = None,
    local_rule: LocalRules = None,
    json: Json = False,
) -> None:
    """Tell what the player may do there, may not do, and at what cost."""
    from marram.cli.may import tell_what_may_be_done

    tell_what_may_be_done(
        area,
        pairs=fact or [],
        played_on=played_on,
        edition=edition,
        form=form,
        local_rules=local_rule,
        as_json=json,
        sides=sides,
    )


def story(
    file: Annotated[Path, typer.Argument(help="The story: a JSON file with its incidents in order.")],
    json: Json = False,
) -> None:
    """Rule on several incidents of one story and combine their penalties.

    The file holds "incidents" (in the order of what happened, a list of objects with "incident" and "facts"), "between"
    (what is known between them), "played_on" or "edition", "form_of_play", "sides", "local_rules" and
    "strokes_before" (strokes on the hole before the first incident, penalty strokes included: then the next stroke
    is said).

    An incident may also hold "option" (what the player then took of the relief offered, "as_it_lies" or
    "nothing_yet"), "ball" (which ball it was about: "in_play", "provisional", "second_provisional" or
    "other_players"), "by" ("another_player" where it was that player's act) and "strokes" (strokes that count, from
    then until the next incident, where they are not those the incident itself shows).
    """
    from marram.cli.story import rule_on_story

    rule_on_story(file, json)
