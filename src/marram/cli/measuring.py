"""``marram course order`` and ``marram course survey``: distances, and points measured on the ground."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from marram.cli import long_work
from marram.cli.places import place_given
from marram.cli.show import Line, print_json, show_lines
from marram.course import load
from marram.course.distances import farthest_from_hole
from marram.course.lies.survey_on_map import read_all_on_map
from marram.course.reading.survey import read_points
from marram.errors import InputError
from marram.relief.geometry.tolerance import YARD
from marram.rules.plain import as_plain
from marram.said import said
from marram.services.ground.lies import to_plane
from marram.words.spoken import spoken
from marram.words.texts import text


def order_of_play(path: Path, hole: int, balls: Sequence[str], accuracy: float, as_json: bool) -> None:
    """Print the distance of each ball to the hole, and which is farthest."""
    if not accuracy >= 0:
        raise InputError(
            said("--accuracy {accuracy:g} is no distance; give metres, 0 or more.", accuracy=accuracy)
        )
    with long_work.shown():
        course = load(path)
    places = [to_plane(course, place_given(course, "ball", ball)) for ball in balls]
    order = farthest_from_hole(course, places, hole, accuracy=accuracy)
    if as_json:
        print_json({"marram": 1, "kind": "order", "hole": hole, **as_plain(order)})
        return

    def lines() -> Iterator[Line]:
        if order.farthest is None:
            yield "title", text("cli.order.close", metres=order.margin)
        else:
            yield (
                "title",
                text("cli.order.farthest", number=order.farthest + 1, metres=order.margin),
            )
        for number, metres in enumerate(order.distances, start=1):
            yield "item", text("cli.order.ball", number=number, metres=metres, yards=metres / YARD)

    show_lines(lines())


def survey(path: Path, points: Path, hole: int, accuracy: float | None, as_json: bool) -> None:
    """Print where each measured point lies, and what its accuracy leaves open."""
    with long_work.shown() as progress:
        course = load(path)
        measured = read_points(points, accuracy=accuracy)
        readings = read_all_on_map(course, measured, hole, progress=progress)
    if as_json:
        rows = [
            {
                **as_plain(point),
                "time": point.time.isoformat() if point.time else None,
                "area": reading.area.value if reading.area else "out_of_bounds",
                "colour": reading.colour.value if reading.colour else None,
                "doubts": [spoken(doubt.words) for doubt in reading.doubts],
            }
            for point, reading in zip(measured, readings, strict=True)
        ]
        print_json({"marram": 1, "kind": "survey", "hole": hole, "points": rows})
        return

    def lines() -> Iterator[Line]:
        for number, (point, reading) in enumerate(zip(measured, readings, strict=True), start=1):
            where = reading.area.value if reading.area else "out_of_bounds"
            if reading.colour:
                where += f".{reading.colour.value}"
            called = point.name or text("cli.survey.unnamed", number=number)
            yield (
                "item",
                text(
                    "cli.survey.point",
                    point=called,
                    where=text(f"cli.survey.{where}"),
                    accuracy=point.accuracy,
                ),
            )
            for doubt in reading.doubts:
                yield "caution", f"    {spoken(doubt.words)}"

    show_lines(lines())
