"""Lines of play: which there are, their numbers, and what their tags say."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from shapely.geometry import LineString, Point

from marram.course.fault import FaultList
from marram.course.feature_index import FeatureIndex
from marram.course.model import Feature, Kind
from marram.course.reading.shapes import hole_numbers
from marram.course.reading.source import SourceFeature
from marram.course.scheme import Role, meaning
from marram.said import Said, joined, said


@dataclass(frozen=True, slots=True)
class LineOfPlay:
    """A line of play with its number and tags, in metres."""

    number: int
    ident: str
    line: LineString
    tags: Mapping[str, str]

    @property
    def end(self) -> Point:
        """The last position: at or near the hole."""
        return Point(self.line.coords[-1])


def lines_of_play(
    sources: Sequence[SourceFeature], features: Sequence[Feature], faults: FaultList
) -> list[LineOfPlay]:
    """Return the numbered lines of play by number, from sources laid out in metres.

    Lines without a number are left out with a warning; where no line has one, each is an error that says all
    it lacks. Repeated numbers are errors.
    """
    found = [source for source in sources if meaning(source.tags) is Role.HOLE]
    numbered: list[LineOfPlay] = []
    without: list[tuple[SourceFeature, LineString]] = []
    for source in found:
        line = source.geometry
        numbers = hole_numbers(source.tags.get("ref", ""))
        if not isinstance(line, LineString):
            faults.error(
                "hole_not_a_line",
                said("the hole is drawn as a {geom_type}, not as a line of play", geom_type=line.geom_type),
                said("Draw one line from the tee to the hole."),
                feature=source.ident,
                at=line,
            )
        elif len(numbers) == 1:
            numbered.append(LineOfPlay(numbers[0], source.ident, line, source.tags))
        else:
            without.append((source, line))
    _refuse_repeated(numbered, faults)
    if not found:
        faults.error(
            "no_holes",
            said("the map has no line of play"),
            said("Draw each hole as a line from tee to hole with golf=hole, ref=<number> and par=<par>."),
        )
    greens = FeatureIndex([feature for feature in features if feature.kind is Kind.PUTTING_GREEN])
    report = faults.warn if numbered else faults.error
    for source, line in without:
        report(
            "hole_without_number",
            _lacks(source, Point(line.coords[-1]), greens) + (said(": it was left out") if numbered else ""),
            said(
                "Add ref=<number>: one line of play for each hole, with its number alone; then par=<par>, and the green "
                "as an area with golf=green."
            ),
            feature=source.ident,
            at=Point(line.coords[0]),
        )
    return sorted(numbered, key=lambda line: line.number)


def _lacks(source: SourceFeature, end: Point, greens: FeatureIndex) -> Said:
    ref = source.tags.get("ref", "")
    lacks = [
        said("its ref {ref!r} is no single hole number", ref=ref)
        if ref
        else said("this line of play has no hole number (ref)")
    ]
    if "par" not in source.tags:
        lacks.append(said("it has no par"))
    if not greens.near(end):
        lacks.append(said("it ends on no green"))
    return joined(", ", *lacks)


def _refuse_repeated(lines: Sequence[LineOfPlay], faults: FaultList) -> None:
    by_number: dict[int, list[LineOfPlay]] = defaultdict(list)
    for line in lines:
        by_number[line.number].append(line)
    for number, same in by_number.items():
        for line in same[1:]:
            faults.error(
                "repeated_hole",
                said(
                    "{line} and {same} both have ref={number}",
                    line=line.ident,
                    same=same[0].ident,
                    number=number,
                ),
                said(
                    "Keep one line of play for each hole; give a second course its own outline and ask for it by name."
                ),
                feature=line.ident,
                hole=number,
                at=Point(line.line.coords[0]),
            )


def whole_number(line: LineOfPlay, tag: str, faults: FaultList) -> int | None:
    """Return what a tag of a line of play says as a whole number (its par, its stroke index); ``None``, with a warning, if it says none."""
    text = line.tags.get(tag)
    if text is None:
        by_sex = {line.tags[key] for key in (f"{tag}:men", f"{tag}:women") if key in line.tags}
        if len(by_sex) > 1:
            faults.warn(
                "two_values",
                said(
                    "its {tag} for men and for women differ ({men} and {women}): none was chosen",
                    tag=tag,
                    men=line.tags[f"{tag}:men"],
                    women=line.tags[f"{tag}:women"],
                ),
                said("Add {tag}=<the one this map is for>.", tag=tag),
                hole=line.number,
                feature=line.ident,
            )
        if len(by_sex) != 1:
            return None
        (text,) = by_sex
    if text.isascii() and text.isdigit() and len(text) <= 2 and int(text) > 0:
        return int(text)
    faults.warn(
        "not_a_number",
        said("its {tag} is {text!r}, which is no whole number: it was left out", tag=tag, text=text),
        said("Write {tag}=<number>.", tag=tag),
        hole=line.number,
        feature=line.ident,
    )
    return None
