"""``marram course check``: every fault of a map, with its place and what to do."""

from collections.abc import Iterator
from pathlib import Path

from marram.cli.exits import BAD_INPUT, DECIDED
from marram.cli.long_work import shown
from marram.cli.show import Line, print_json, show_lines
from marram.course.fault import Fault, Severity
from marram.course.loading import examine
from marram.rules.plain import as_plain
from marram.services.cases.given import day_of_play, local_rules_in_force
from marram.services.ground.marked import marking_faults, without_local_rule
from marram.words.faults import fault_words
from marram.words.texts import text


def check_course(path: Path, local_rules: list[str] | None, as_json: bool) -> None:
    """Print every fault of a map, and what of its marking needs a Local Rule; exit with 2 when it cannot be used."""
    adopted = local_rules_in_force(local_rules, day_of_play(None, None))
    with shown() as progress:
        course, faults = examine(path, progress=progress)
    errors = [one for one in faults if one.severity is Severity.ERROR]
    if course is not None and not errors:
        found = without_local_rule(course, adopted.codes if adopted else None)
        faults = [*faults, *marking_faults(course, found)]
    if as_json:
        document = {"marram": 1, "kind": "course_check", "usable": not errors, "faults": as_plain(faults)}
        print_json(document)
    else:
        show_lines(_lines(path, faults, errors))
    raise SystemExit(BAD_INPUT if errors else DECIDED)


def _lines(path: Path, faults: list[Fault], errors: list[Fault]) -> Iterator[Line]:
    key = "cli.check.not_usable" if errors else "cli.check.usable"
    yield "title", text(key, file=path.name, errors=len(errors), others=len(faults) - len(errors))
    for severity in Severity:
        some = [one for one in faults if one.severity is severity]
        if some:
            yield "head", text(f"cli.check.{severity.value}")
            for one in some:
                yield "item", fault_words(one)
    if any(one.feature or one.check == "which_course" for one in errors):
        yield "quiet", text("cli.mend_it")
