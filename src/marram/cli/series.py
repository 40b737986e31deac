"""What ``marram results series`` and ``marram results reopen`` do."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from pathlib import Path

from marram.cli.exits import DECIDED, LEFT_OPEN, MORE_FACTS_NEEDED
from marram.cli.facts import facts_given
from marram.cli.show import Line, print_json, sheet_lines, show_lines
from marram.competition.results.board import Place
from marram.competition.results.closing import Change, Closed, Reopening, reopening
from marram.competition.results.series import Merit, SharedPlace, order_of_merit
from marram.competition.results.why import in_figures
from marram.errors import InputError, shown
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.plain import as_plain
from marram.rules.result import NeedFacts
from marram.said import Said, joined, said
from marram.services.cases.given import day_of_play, form_given
from marram.services.results.competition_results import read_results
from marram.words.sheet import sheet
from marram.words.texts import text


def show_series(
    cards: Sequence[Path], points: str, best: int | None, shared: str, score: str | None, as_json: bool
) -> None:
    """Print an order of merit."""
    faults: list[str] = []
    scale = [one.strip() for one in points.split(",")]
    if not all(one.isdecimal() for one in scale):
        faults.append(said("--points is {given}; give whole numbers, such as 25,18,15.", given=shown(points)))
    if shared not in {one.value for one in SharedPlace}:
        faults.append(said("--shared is {given}; give mean or full.", given=shown(shared)))
    series: list[Sequence[Place]] = []
    for path in cards:
        try:
            series.append(_places(path, score))
        except InputError as error:
            faults += error.faults
    if faults:
        raise InputError(*faults)
    merits = order_of_merit(series, [int(one) for one in scale], best=best, shared=SharedPlace(shared))
    if as_json:
        print_json({"marram": 1, "kind": "series", "places": [_plain(one) for one in merits]})
        return
    lines: list[Line] = [("title", text("competition.series"))]
    lines += [("text", _words(one)) for one in merits]
    show_lines(lines)


def _places(path: Path, score: str | None) -> Sequence[Place]:
    _, results = read_results(path)
    fitting = [one for one in results if one.division is None and (score is None or one.score.value == score)]
    if not fitting:
        known = ", ".join(one.score.value for one in results if one.division is None)
        raise InputError(
            joined(
                ": ",
                path.name,
                said("There is no result {score}. There are: {known}.", score=repr(score), known=known),
            )
        )
    if not fitting[0].board.final:
        raise InputError(
            joined(
                ": ",
                path.name,
                said("the result is not final; some are still to play. Leave it out until then."),
            )
        )
    return fitting[0].board.places


def _plain(one: Merit) -> dict[str, object]:
    return {
        "place": one.place,
        "shared": one.shared,
        "side": one.side,
        "points": str(one.points),
        "each": [str(each) for each in one.each],
        "counted": list(one.counted),
    }


def _words(one: Merit) -> str:
    each = " ".join(
        in_figures(points) if number in one.counted else f"({in_figures(points)})"
        for number, points in enumerate(one.each, start=1)
    )
    shared = "=" if one.shared else ""
    return f"{one.place}{shared}  {one.side}  {in_figures(one.points)}  {each}"


def show_reopening(
    change: str, pairs: Sequence[str], played_on: str | None, form: str | None, *, closed: bool, as_json: bool
) -> None:
    """Print whether a closed result may be changed; exit with 3 where something is asked, 4 where the Committee judges."""
    why = change_named(change)
    facts = facts_given(pairs)
    chosen = form_given(form) or FormOfPlay.STROKE_PLAY
    found = reopening(
        why,
        facts,
        played_on=day_of_play(played_on, None),
        form=chosen,
        closed=Closed(datetime.now().astimezone()) if closed else None,
    )
    tell_reopening(found, why, facts, chosen, as_json=as_json)
    if isinstance(found.result, NeedFacts) and found.allowed is None:
        raise SystemExit(MORE_FACTS_NEEDED)
    raise SystemExit(DECIDED if found.allowed is not None else LEFT_OPEN)


def change_named(change: str) -> Change:
    """Return why a closed result is to be changed, by its name.

    Raises:
        InputError: there is no such.
    """
    try:
        return Change(change)
    except ValueError:
        known: str | Said = ", ".join(one.value for one in Change)
        raise InputError(
            said("There is no change {given}; give one of {known}.", given=shown(change), known=known)
        ) from None


def tell_reopening(
    found: Reopening, why: Change, facts: Mapping[str, object], chosen: FormOfPlay, *, as_json: bool
) -> None:
    """Print whether a closed result may be changed."""
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "reopening",
                "change": why.value,
                "allowed": found.allowed,
                "result": as_plain(found.result),
            }
        )
    else:
        key = {True: "yes", False: "no", None: "open"}[found.allowed]
        show_lines(
            [
                ("title", text(f"competition.reopen.{key}")),
                *sheet_lines(sheet(found.result, form_of_play=chosen, given=facts)),
            ]
        )
