"""Ways to break a faultless map of nine holes, each leaving one kind of fault; features are changed in place."""

from collections.abc import Callable

from shapely.geometry import LineString, Point, box

from tests.course.drawing import drawn, nine_holes, one_hole, square, to_degrees

Features = dict[str, dict]


def features(*more) -> Features:
    """Return the drawn features of nine faultless holes, and more, by identifier."""
    return {one["id"]: one for one in [*nine_holes(), *more]}


def document(found: Features, **more) -> dict:
    """Return features as a map."""
    return {"type": "FeatureCollection", "features": list(found.values()), **more}


def ring_of(feature) -> list:
    return feature["geometry"]["coordinates"][0]


def turned(found: Features, hole: int) -> None:
    found[f"line {hole}"]["geometry"]["coordinates"].reverse()


def in_pieces(found: Features, hole: int) -> None:
    a, b = found[f"line {hole}"]["geometry"]["coordinates"]
    middle, after = ([a[0] + (b[0] - a[0]) * share, a[1]] for share in (0.5, 0.52))
    found[f"line {hole}"]["geometry"] = {"type": "MultiLineString", "coordinates": [[after, b], [a, middle]]}


def in_two_features(found: Features, hole: int) -> None:
    a, b = found[f"line {hole}"]["geometry"]["coordinates"]
    middle = [(a[0] + b[0]) / 2, a[1]]
    line = found[f"line {hole}"]
    found[f"line {hole} again"] = {
        **line,
        "id": f"line {hole} again",
        "geometry": {"type": "LineString", "coordinates": [middle, b]},
    }
    line["geometry"] = {"type": "LineString", "coordinates": [a, middle]}


def without_line(found: Features, hole: int) -> None:
    del found[f"line {hole}"]
    for kind in ("tee", "green"):
        found[f"{kind} {hole}"]["properties"]["ref"] = str(hole)


def green_open(found: Features, hole: int) -> None:
    ring_of(found[f"green {hole}"]).pop()


def green_as_line(found: Features, hole: int) -> None:
    green = found[f"green {hole}"]
    green["geometry"] = {"type": "LineString", "coordinates": ring_of(green)[:-1]}


def green_crossed(found: Features, hole: int) -> None:
    ring = ring_of(found[f"green {hole}"])
    ring[1], ring[2] = ring[2], ring[1]


def green_with_spike(found: Features, hole: int) -> None:
    ring = ring_of(found[f"green {hole}"])
    x, y = ring[1]
    ring[2:2] = [[x + 0.00005, y], [x, y]]


def green_doubled(found: Features, hole: int) -> None:
    ring = ring_of(found[f"green {hole}"])
    ring.insert(1, list(ring[1]))


def green_as_text(found: Features, hole: int) -> None:
    ring = ring_of(found[f"green {hole}"])
    ring[1] = [str(ring[1][0]), str(ring[1][1]).replace(".", ",")]


def green_with_gap(found: Features, hole: int) -> None:
    ring_of(found[f"green {hole}"]).insert(1, [None, None])


def green_swapped(found: Features, hole: int) -> None:
    green = found[f"green {hole}"]
    green["geometry"]["coordinates"] = [[[y, x] for x, y in ring_of(green)]]


def green_collected(found: Features, hole: int) -> None:
    green = found[f"green {hole}"]
    middle = {"type": "Point", "coordinates": ring_of(green)[0]}
    green["geometry"] = {"type": "GeometryCollection", "geometries": [green["geometry"], middle]}


def green_out_of_bounds(found: Features, hole: int) -> None:
    found["outside"] = drawn(square(260, 60.0 * hole, 5), "outside", golf="bunker")


def wide_tag(found: Features, hole: int) -> None:
    found["odd"] = drawn(square(75, 60.0 * hole, 3), "odd", marram="ground_under_repairs")


def entry_of_none(found: Features, hole: int) -> None:
    found[f"nothing {hole}"] = {"id": f"nothing {hole}", "type": "Feature", "properties": [1, 2]}


def tee_elsewhere(found: Features, hole: int) -> None:
    found["far tee"] = drawn(square(250, 60.0 * hole, 3), "far tee", golf="tee")


def green_missed(found: Features, hole: int) -> None:
    found[f"green {hole}"] = drawn(square(175, 60.0 * hole, 10), f"green {hole}", golf="green")
    found.pop(f"pin {hole}")


def without_par(found: Features, hole: int) -> None:
    del found[f"line {hole}"]["properties"]["par"]


def par_beside_words(found: Features, hole: int) -> None:
    found[f"line {hole}"]["properties"]["par"] = "Par 3"


def same_stroke_index(found: Features, hole: int) -> None:
    found[f"line {hole}"]["properties"]["handicap"] = str(hole % 9 + 1)


def two_pins(found: Features, hole: int) -> None:
    found["other pin"] = drawn(Point(148, 60.0 * hole - 3), "other pin", golf="pin")


def boundary_open(found: Features, _: int) -> None:
    found["boundary"] = drawn(
        LineString([(-60, -60), (260, -60), (260, 660), (-60, 660), (-60, -40)]),
        "boundary",
        marram="boundary",
    )


def all_out(found: Features, _: int) -> None:
    found["boundary"]["properties"] = {"marram": "out_of_bounds"}


def written(text: str) -> Callable[[Features, int], None]:
    def change(found: Features, hole: int) -> None:
        found[f"line {hole}"]["properties"]["ref"] = text.format(hole)

    change.__name__ = f"written {text}"
    return change


BREAKS: dict[str, Callable[[Features, int], None]] = {
    "hole_backwards": turned,
    "hole_not_a_line": in_pieces,
    "repeated_hole": in_two_features,
    "holes_missing": without_line,
    "open_ring": green_open,
    "open_ring line": green_as_line,
    "invalid_geometry": green_crossed,
    "invalid_geometry spike": green_with_spike,
    "doubled_position": green_doubled,
    "bad_position text": green_as_text,
    "bad_position": green_with_gap,
    "misplaced": green_swapped,
    "no_geometry": green_collected,
    "area_outside": green_out_of_bounds,
    "unknown_tag": wide_tag,
    "not_a_feature": entry_of_none,
    "tee_of_no_hole": tee_elsewhere,
    "hole_without_green": green_missed,
    "no_par": without_par,
    "not_a_number": par_beside_words,
    "repeated_stroke_index": same_stroke_index,
    "two_pins": two_pins,
    "boundary_gap": boundary_open,
    "all_out_of_bounds": all_out,
    "hole_without_number": written("{} - #2"),
    "hole_without_number word": written("Hole {}"),
    "hole_without_number zero": written("0{}"),
    "hole_without_number letter": written("{}W"),
}
"""Ways to break a map, by the check that finds it (and a word where one check has several)."""


def second_course(shift: float = 1000.0, *, label: str = "", par: str = "3") -> list[dict]:
    """Return nine more holes to the east, numbered 1 to 9 like the first nine."""
    found = []
    for number in range(1, 10):
        for one in one_hole(number, y=60.0 * number, par=par):
            one["id"] = f"{one['id']} east"
            found.append(one)
            one["geometry"] = moved(one["geometry"], shift)
            if label and one["properties"]["golf"] == "hole":
                one["properties"]["ref"] = label.format(number)
    return found


def moved(geometry: dict, east: float) -> dict:
    """Return a GeoJSON geometry moved to the east by metres at 51 degrees of latitude."""
    degrees = east / 70_197.0

    def each(value):
        return [value[0] + degrees, value[1]] if isinstance(value[0], float) else [each(one) for one in value]

    return {**geometry, "coordinates": each(geometry["coordinates"])}


AROUND = box(-60, -60, 1400, 660)
"""Ground that holds both courses."""


def around() -> dict:
    """Return the boundary of both courses."""
    return {
        "type": "Feature",
        "id": "boundary",
        "properties": {"marram": "boundary"},
        "geometry": to_degrees(AROUND),
    }
