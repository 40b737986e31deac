"""``marram situation``: several incidents of one situation, from a file."""

import json
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

from marram.cli.conditions import day_of_play, form_given, local_rules_in_force
from marram.cli.exits import MORE_FACTS_NEEDED
from marram.cli.ruling import exit_code
from marram.cli.show import IN_THE_FILE, Line, print_json, sheet_lines, show_lines
from marram.errors import InputError, did_you_mean, shown
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import incident
from marram.rules.plain import as_plain
from marram.rules.ruling import Ruling
from marram.rules.story.story import Happened, SituationResult, rule_situation, total_strokes
from marram.words.messages import say
from marram.words.penalties import strokes_words
from marram.words.sheet import sheet

_KEYS = {"marram", "played_on", "edition", "form_of_play", "local_rules", "incidents", "between"}
_PART_KEYS = {"incident", "facts", "option"}


def rule_on_situation(path: Path, as_json: bool) -> None:
    """Print the ruling on each incident of a situation and the combined one."""
    document = read_situation(path)
    happened = [
        Happened(one["incident"], one.get("facts", {}), one.get("option")) for one in document["incidents"]
    ]
    day = day_of_play(document.get("played_on"), document.get("edition"), lambda key: f"{path}: {key}")
    chosen = form_given(document.get("form_of_play"), f"{path}: form_of_play")
    adopted = local_rules_in_force(document.get("local_rules"), day, f"{path}: local_rules")
    result = rule_situation(
        happened,
        document.get("between", {}),
        played_on=day,
        form_of_play=chosen,
        local_rules=None if adopted is None else adopted.in_rulings,
    )
    if as_json:
        print_json({"marram": 1, "kind": "situation", **as_plain(result)})
    else:
        show_lines(_lines(happened, result, chosen))
    raise SystemExit(MORE_FACTS_NEEDED if result.combined is None else exit_code(result.combined))


def read_situation(path: Path) -> Mapping[str, Any]:
    """Return the situation in a file, checked for shape.

    Raises:
        InputError: it is not such a document; all faults are listed.
    """
    try:
        document = json.loads(path.read_text(encoding="utf-8"))
    except (UnicodeDecodeError, json.JSONDecodeError) as error:
        raise InputError(f"{path} is not JSON: {error}. Correct it there.") from None
    if not isinstance(document, dict):
        raise InputError(f"{path}: give an object with the keys {', '.join(sorted(_KEYS))}.")
    faults = [
        f"{path}: the key {shown(key)} is not known.{did_you_mean(key, _KEYS)} It may hold {', '.join(sorted(_KEYS))}."
        for key in sorted(document.keys() - _KEYS)
    ]
    if document.get("marram", 1) != 1:
        faults.append(
            f"{path}: version {document['marram']!r} of the document is not known; this is version 1."
        )
    codes = document.get("local_rules")
    if codes is not None and not (isinstance(codes, list) and all(isinstance(code, str) for code in codes)):
        faults.append(f'{path}: "local_rules" must be a list of codes, for example ["E-5"]; [] for none.')
    if not isinstance(document.get("between", {}), dict):
        faults.append(f'{path}: "between" must be an object of facts and answers.')
    faults += _faults_of_parts(path, document.get("incidents"))
    if faults:
        raise InputError(*faults)
    return document


def _faults_of_parts(path: Path, parts: Any) -> Iterator[str]:
    if not isinstance(parts, list) or not parts:
        yield f'{path}: "incidents" must be a list of at least one incident.'
        return
    for place, part in enumerate(parts, start=1):
        if not isinstance(part, dict) or not isinstance(part.get("incident"), str):
            yield f'{path}: incident {place} must be an object with "incident" and "facts".'
        elif part.keys() - _PART_KEYS or not isinstance(part.get("facts", {}), dict):
            yield f'{path}: incident {place} may hold "incident", "facts" (an object) and "option" only.'
        elif not isinstance(part.get("option", ""), str):
            yield f'{path}: "option" of incident {place} must be a word such as "lateral" or "as_it_lies".'


def _lines(happened: list[Happened], result: SituationResult, form: FormOfPlay | None) -> Iterator[Line]:
    for place, (one, part) in enumerate(zip(happened, result.parts, strict=True), start=1):
        yield "head", f"{place}. {incident(one.incident).title}"
        words = sheet(part, form_of_play=form, given=one.facts)
        yield "text", f"   {words.headline}"
        if words.question:
            yield "quiet", f'   Add to the facts of incident {place}: "{words.question.fact}"'
    if result.combined is None:
        return
    yield "head", say("TERMS", "situation.together")
    yield from sheet_lines(sheet(result.combined, form_of_play=form), IN_THE_FILE)
    if isinstance(result.combined, Ruling) and form is not FormOfPlay.MATCH_PLAY:
        total = total_strokes(result.combined)
        if total is not None:
            key = "situation.total_and_relief" if result.combined.relief else "situation.total"
            yield "title", say("TERMS", key).format(strokes=strokes_words(total))
    yield "quiet", say("TERMS", "reminder")
