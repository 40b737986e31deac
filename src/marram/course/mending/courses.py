"""Several courses in one file: told apart by name, by outline or by nearness, and asked for; never the first taken."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import combinations, permutations

from marram.course.fault import Fault
from marram.course.mending.lines import numbers_of
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import LineThing, Setting, Thing
from marram.course.reading.selection import of_course
from marram.course.reading.source import SourceFeature
from marram.course.scheme import Role, is_about_golf, meaning
from marram.course.versions.map_edits import Edit
from marram.said import Said, all_of, counted, said

NAMES = ("golf:course:name", "golf:course", "course:name", "course", "@course")
"""Tags and properties that name the course of a hole, the most telling first."""

CHOOSE_COURSE = "choose_course"
"""The kind of mending that asks which of several courses is played."""

NINE = 9
FEWEST = 5
"""A nine of which fewer holes than this are mapped is not offered as half of an eighteen (own choice)."""

_MOST_TOGETHER = 6
"""Of more lines with one number, chains are continued one by one instead of by the best matching."""


@dataclass(frozen=True, slots=True)
class Candidate:
    """Lines of play that may be one course.

    Attributes:
        name: what it is called in the map, or an empty string.
        lines: its lines of play by the number of their hole.
        otherwise: whether it is another way to take lines that already make a course.
    """

    name: str
    lines: dict[int, LineThing]
    otherwise: bool = False

    @property
    def called(self) -> str:
        """Its name, else the identifier of its first line of play."""
        return self.name or self.lines[min(self.lines)].ident

    @property
    def words(self) -> Said:
        """What it is, so that an official knows it: name, holes, length, where it begins."""
        numbers = sorted(self.lines)
        span = (
            said("hole {hole}", hole=numbers[0])
            if len(numbers) == 1
            else said(
                "{count} holes, {first} to {last}",
                count=len(numbers),
                first=numbers[0],
                last=numbers[-1],
            )
        )
        length = sum(line.shape.length for line in self.lines.values())
        pars = [line.tags.get("par", "") for line in self.lines.values()]
        short = said(", a par-3 course") if len(pars) > 2 and all(par == "3" for par in pars) else ""
        first = self.lines[numbers[0]].ident
        words = said(
            "{span}, {length:,.0f} m{short}, beginning with {first}",
            span=span,
            length=length,
            short=short,
            first=first,
        )
        return said("“{name}”: {words}", name=self.name, words=words) if self.name else words


def which_outline(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask which of the outlined courses in a file is meant; the others' outlines and golf features go."""
    outlines = [one for one in setting.source.features if meaning(one.tags) is Role.COURSE]
    choices = []
    for outline in outlines:
        kept = {one.ident for one in of_course(setting.source.features, outline)}
        gone = [one.ident for one in _golf(setting.source.features) if one.ident not in kept]
        holes = sum(meaning(one.tags) is Role.HOLE and one.ident in kept for one in setting.source.features)
        words = counted(
            "Use {name} ({ident}), {count} line of play",
            "Use {name} ({ident}), {count} lines of play",
            holes,
            name=outline.tags.get("name", said("the course without a name")),
            ident=outline.ident,
        )
        adds = (said("{count} things of the other courses go off this map", count=len(gone)),)
        called = outline.tags.get("name", outline.ident)
        choices.append(Choice(words, setting.remove(*gone), adds, called))
    why = said("The file holds several courses, and nothing says which is played.")
    return offer(CHOOSE_COURSE, fault, why, choices)


def _golf(features: Iterable[SourceFeature]) -> list[SourceFeature]:
    return [one for one in features if is_about_golf(one.tags) or meaning(one.tags) is Role.COURSE]


def which_course(setting: Setting, faults: Sequence[Fault]) -> Proposal | None:
    """Ask which course is meant where hole numbers repeat; ``None`` where no number does, or nothing sets them apart.

    Args:
        setting: the map.
        faults: the faults of lines of play that repeat a number or have none written as it should be.
    """
    found = candidates(setting)
    if len(found) < 2 or not faults:
        return None
    every = list({line.ident: line for one in found for line in one.lines.values()}.values())
    choices = [
        Choice(
            said("Use {course}", course=one.words),
            _only(setting, {0: one}, every),
            _said(one.lines.values(), every),
            one.called,
        )
        for one in found
    ]
    for first, second in permutations([one for one in found if _is_nine(one) and not one.otherwise], 2):
        both = [*first.lines.values(), *second.lines.values()]
        named = all_of((first.called, second.called))
        words = said(
            "Play {named} as one course: the first as holes 1 to 9, the second as 10 to 18", named=named
        )
        only = _only(setting, {0: first, NINE: second}, every)
        choices.append(Choice(words, only, _said(both, every), named))
    names = [one.name for one in found if one.name]
    why = (
        said("Several lines of play have the same number; the map names the courses they belong to.")
        if len(names) >= len(found) - 1
        else said(
            "Several lines of play have the same number; they were told apart by which follows which on the ground."
        )
    )
    return offer(CHOOSE_COURSE, faults[0], why, choices, also=faults[1:])


def _said(kept: Iterable[LineThing], every: Sequence[LineThing]) -> tuple[str, ...]:
    gone = len(every) - len(list(kept))
    if not gone:
        return ()
    return (
        counted(
            "{count} other line of play goes off this map; greens, bunkers and water stay",
            "{count} other lines of play go off this map; greens, bunkers and water stay",
            gone,
        ),
    )


def _is_nine(one: Candidate) -> bool:
    return len(one.lines) >= FEWEST and max(one.lines) <= NINE


def candidates(setting: Setting) -> list[Candidate]:
    """Return the courses that lines of play with repeated numbers belong to; none where no number is repeated."""
    numbered = [line for line in setting.lines if line.number is not None]
    if not _repeated(numbered):
        return []
    groups: dict[str, list[LineThing]] = defaultdict(list)
    for line in numbered:
        groups[course_name(setting, line)].append(line)
    found: list[Candidate] = []
    for name, lines in groups.items():
        if not _repeated(lines):
            found.append(Candidate(name, {line.number or 0: line for line in lines}))
        else:
            chains = _chains(lines)
            found += [Candidate(name, chain) for chain in chains]
            found += [Candidate(name, chain, otherwise=True) for chain in _other_ends(chains)]
    # Named courses whose numbers never meet are parts of one course.
    if len(found) > 1 and not any(set(a.lines) & set(b.lines) for a, b in combinations(found, 2)):
        return []
    return sorted(found, key=lambda one: (-len(one.lines), one.name))


def course_name(setting: Setting, line: Thing) -> str:
    """Return the name of the course that a line of play says it belongs to, or an empty string."""
    properties = setting.features[line.ident].get("properties") or {}
    return next((str(properties[name]) for name in NAMES if properties.get(name)), line.writing.course)


def _repeated(lines: Sequence[LineThing]) -> bool:
    return len({line.number for line in lines}) < len(lines)


def _chains(lines: Sequence[LineThing]) -> list[dict[int, LineThing]]:
    """Tell lines with repeated numbers apart by nearness: the next hole begins near where the one before ended."""
    by_number: dict[int, list[LineThing]] = defaultdict(list)
    for line in lines:
        by_number[line.number or 0].append(line)
    numbers = sorted(by_number)
    seed = max(numbers, key=lambda number: (len(by_number[number]), -number))
    chains = [{seed: line} for line in by_number[seed]]
    later = [number for number in numbers if number > seed]
    for number in [*later, *(n for n in reversed(numbers) if n < seed)]:
        onward = number > seed
        _attach(chains, by_number[number], number, onward=onward)
    return chains


def _other_ends(chains: Sequence[dict[int, LineThing]]) -> list[dict[int, LineThing]]:
    """Return what two chains may be as well: where one ends before the other, the rest could belong to either."""
    if len(chains) != 2:
        return []
    shared = max(chains[0].keys() & chains[1].keys())
    rest = {number: line for chain in chains for number, line in chain.items() if number > shared}
    heads = [{number: line for number, line in chain.items() if number <= shared} for chain in chains]
    return [one for head in heads for one in (head | rest, head) if one not in chains] if rest else []


def _attach(
    chains: list[dict[int, LineThing]], lines: Sequence[LineThing], number: int, *, onward: bool
) -> None:
    def away(chain: dict[int, LineThing], line: LineThing) -> float:
        known = chain[max(chain) if onward else min(chain)]
        return known.end.distance(line.start) if onward else line.end.distance(known.start)

    if len(chains) <= _MOST_TOGETHER:
        # Never more lines of one number than chains: the chains began with the number repeated most.
        ways = permutations(range(len(chains)), len(lines))
        best = min(
            ways, key=lambda way: sum(away(chains[at], line) for at, line in zip(way, lines, strict=True))
        )
    else:
        left = list(range(len(chains)))
        best = ()
        for line in lines:
            nearest = min(left, key=lambda at: away(chains[at], line))
            left.remove(nearest)
            best = (*best, nearest)
    for at, line in zip(best, lines, strict=True):
        chains[at][number] = line


def _only(setting: Setting, kept: dict[int, Candidate], every: Sequence[LineThing]) -> tuple[Edit, ...]:
    """Return the edits that leave the lines of play of some candidates, each with its numbers shifted.

    What says by its ``ref`` that it belongs to a hole follows the line of play it lies nearest to.
    """
    new = {line.ident: number + shift for shift, one in kept.items() for number, line in one.lines.items()}
    edits: list[Edit] = []
    for line in every:
        if line.ident not in new:
            edits += setting.remove(line.ident)
        elif line.tags.get("ref", "") != str(new[line.ident]):
            name = course_name(setting, line)
            more = {"golf__course__name": name} if name and line.writing.course else {}
            edits.append(setting.retag(line.ident, ref=str(new[line.ident]), **more))
    for thing in (*setting.tees, *setting.greens, *setting.pins):
        numbers = numbers_of(thing)
        same = [line for line in every if line.number in numbers]
        if len(numbers) != 1 or not same or "ref" not in thing.tags:
            continue
        nearest = min(same, key=lambda line: line.shape.distance(thing.shape))
        wanted = str(new[nearest.ident]) if nearest.ident in new else None
        if wanted != thing.tags["ref"]:
            edits.append(setting.retag(thing.ident, ref=wanted))
    return tuple(edits)
