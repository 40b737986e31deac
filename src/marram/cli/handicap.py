"""``marram handicap``: handicaps worked out, each number with its steps."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Any, TypeVar

from marram.cli.show import Line, print_json, show_lines
from marram.errors import BadHandicap
from marram.handicap.allowances import Allowance, Format, allowance
from marram.handicap.checking import Checking
from marram.handicap.course_handicaps import CourseHandicap, Formula, HalfIndex, course_handicap
from marram.handicap.differential import combine_nines, nine_hole_differential, score_differential
from marram.handicap.editions import Edition
from marram.handicap.index import handicap_index
from marram.handicap.matches import MatchMethod, match_strokes
from marram.handicap.playing_handicaps import Basis, playing_handicap, side_handicap
from marram.handicap.rated_tee import RatedTee
from marram.handicap.strokes import GivenBack, strokes_by_hole
from marram.handicap.worked import Step, Worked
from marram.words.handicap import differential_words, handicap_words, number_words, step_words
from marram.words.texts import text

Choice = TypeVar("Choice", bound=Enum)


@dataclass(frozen=True, slots=True)
class GivenTee:
    """The ratings as typed."""

    slope: str | None
    course_rating: str | None
    par: str | None
    holes: int

    def read(self, checking: Checking) -> RatedTee:
        """Return the ratings, their faults kept by ``checking``.

        Raises:
            BadHandicap: one of them is missing.
        """
        if None in (self.slope, self.course_rating, self.par):
            raise BadHandicap(text("handicap.tee_needed"))
        return RatedTee.checked(checking, self.course_rating, self.slope, self.par, self.holes)


@dataclass(frozen=True, slots=True)
class Terms:
    """What the Terms of the Competition say of handicaps, as typed; ``method`` only for a match."""

    format: str | None
    allowance: str | None
    basis: str
    method: str | None
    edition: str

    def share(self) -> Allowance:
        """Return the allowance."""
        if (self.format is None) == (self.allowance is None):
            raise BadHandicap(text("handicap.no_allowance"))
        if self.format is not None:
            edition = chosen(Edition, "--edition", self.edition)
            return allowance(chosen(Format, "--format", self.format), edition=edition)
        shares = str(self.allowance).replace("%", "").split("/")
        if not all(one.strip().isdecimal() for one in shares):
            raise BadHandicap(text("handicap.allowance_unknown", given=repr(self.allowance)))
        return Allowance(tuple(map(int, shares)))


@dataclass(frozen=True, slots=True)
class Nine:
    """What completes a 9-hole score, as typed."""

    second_score: str | None
    expected: str | None
    edition: str


def chosen(kind: type[Choice], option: str, given: str) -> Choice:
    """Return the member of an enum that was named.

    Raises:
        BadHandicap: there is none of this name.
    """
    for one in kind:
        if one.value == given.strip().lower().replace("-", "_"):
            return one
    choices = ", ".join(one.value for one in kind)
    raise BadHandicap(text("handicap.choice_unknown", option=option, given=repr(given), choices=choices))


def tell_course_handicap(index: str, tee: GivenTee, formula: str, half_index: str, as_json: bool) -> None:
    """Print a Course Handicap, rounded and not, with its steps."""
    checking = Checking()
    rated, exact = tee.read(checking), checking.index(index)
    checking.done()
    found = course_handicap(
        exact,
        rated,
        formula=chosen(Formula, "--formula", formula),
        half=chosen(HalfIndex, "--half-index", half_index),
    )
    if as_json:
        _json(
            "handicap course",
            course_handicap=found.rounded,
            unrounded=str(found.unrounded),
            steps=steps_json(found.steps),
        )
        return
    title = text("handicap.course_handicap", value=handicap_words(found.rounded))
    before = text("handicap.unrounded", value=number_words(found.unrounded))
    show_lines([("title", f"{title} ({before})"), *_steps(found.steps)])


def tell_playing_handicaps(players: Sequence[str], tee: GivenTee | None, terms: Terms, as_json: bool) -> None:
    """Print the Playing Handicap of each player, or of the side, and what each receives in a match."""
    share, basis = terms.share(), chosen(Basis, "--basis", terms.basis)
    courses = _courses(players, tee)
    if share.of_side:
        found = [side_handicap(courses, share, basis=basis)]
        key = "handicap.side_handicap"
    else:
        found = [playing_handicap(one, share, basis=basis) for one in courses]
        key = "handicap.playing_handicap"
    received: tuple[Worked, ...] = ()
    if terms.method is not None:
        method = chosen(MatchMethod, "--method", terms.method)
        received = match_strokes(courses, share, method=method, basis=basis)
    if as_json:
        _json(
            "handicap playing",
            allowance=list(share.shares),
            playing_handicaps=[_worked_json(one) for one in found],
            strokes_received=[_worked_json(one) for one in received],
        )
        return
    lines: list[Line] = []
    for number, one in enumerate(found, start=1):
        what = text(key, value=handicap_words(one.whole))
        title = text("handicap.of_player", number=number, what=what) if len(found) > 1 else what
        lines += [("title", title), *_steps(one.steps)]
    for number, one in enumerate(received, start=1):
        said = text("handicap.receives", number=number, value=number_words(one.whole))
        told = found[number - 1].steps if number <= len(found) else ()  # what stands above is not told again
        lines += [("title", said), *_steps(each for each in one.steps if each not in told)]
    show_lines(lines)


def tell_strokes(given: str, stroke_indexes: str, given_back: str, as_json: bool) -> None:
    """Print the strokes on each hole."""
    parts = [one.strip() for one in stroke_indexes.split(",")]
    if not all(one.isdecimal() for one in parts):
        raise BadHandicap(text("handicap.indexes_unknown", given=repr(stroke_indexes)))
    indexes = [int(one) for one in parts]
    plus, digits = given.strip().startswith("+"), given.strip().removeprefix("+")
    if not digits.isdecimal():
        raise BadHandicap(text("handicap.whole_needed", given=repr(given)))
    handicap = -int(digits) if plus else int(digits)
    found = strokes_by_hole(handicap, indexes, given_back=chosen(GivenBack, "--given-back", given_back))
    if as_json:
        _json("handicap strokes", playing_handicap=handicap, strokes=list(found))
        return
    rows = enumerate(zip(indexes, found, strict=True), start=1)
    show_lines(
        [
            ("title", text("handicap.strokes")),
            ("text", _fall(handicap, indexes, found)),
            *(
                ("item", text("handicap.strokes.hole", hole=hole, stroke_index=index, strokes=strokes))
                for hole, (index, strokes) in rows
            ),
        ]
    )


def _fall(handicap: int, indexes: Sequence[int], found: Sequence[int]) -> str:
    """Return how strokes fall, as a sentence: so many on every hole, and on which one more."""
    if not handicap:
        return text("handicap.strokes.none")
    each = min(abs(one) for one in found)
    more = sorted(index for index, one in zip(indexes, found, strict=True) if abs(one) > each)
    values: dict[str, Any] = {
        "strokes": abs(handicap),
        "holes": len(found),
        "each": each,
        "indexes": ", ".join(map(str, more)),
    }
    if handicap < 0 and not each:
        return text("handicap.strokes.back", **values)
    return text(f"handicap.strokes.{'each' if not more else 'more' if each else 'some'}", **values)


def tell_differential(score: str, tee: GivenTee, pcc: str, nine: Nine, as_json: bool) -> None:
    """Print a Score Differential of 18 holes, or of nine completed as the edition has it."""
    checking = Checking()
    rated, edition = tee.read(checking), chosen(Edition, "--edition", nine.edition)
    checking.done()
    if rated.holes == 18:
        found = score_differential(score, rated, pcc)
    else:
        if nine.second_score is None and nine.expected is None:
            raise BadHandicap(text("handicap.second_or_expected"))
        second = None if nine.second_score is None else nine_hole_differential(nine.second_score, rated, pcc)
        first = nine_hole_differential(score, rated, pcc)
        found = combine_nines(first, second, expected=nine.expected, edition=edition)
    if as_json:
        _json(
            "handicap differential",
            differential=str(number_words(found.value)),
            steps=steps_json(found.steps),
        )
        return
    title = text("handicap.differential", value=differential_words(found.value))
    show_lines([("title", title), *_steps(found.steps)])


def tell_index(differentials: Sequence[str], low: str | None, as_json: bool) -> None:
    """Print a Handicap Index with its steps."""
    found = handicap_index(differentials, low_index=low)
    written = handicap_words(found.value, tenths=True)
    if as_json:
        _json("handicap index", index=written, steps=steps_json(found.steps))
        return
    show_lines([("title", text("handicap.index", value=written)), *_steps(found.steps)])


def steps_json(steps: Iterable[Step]) -> list[dict[str, Any]]:
    """Return steps as JSON: key, exact values and result (``"2763/226"`` where no decimal holds it), and the sentence."""
    return [
        {
            "step": one.key,
            "values": {name: str(value) for name, value in one.values.items()},
            "result": str(one.result),
            "citation": one.citation,
            "words": step_words(one),
        }
        for one in steps
    ]


def _courses(players: Sequence[str], tee: GivenTee | None) -> list[CourseHandicap]:
    if tee is None:
        return [CourseHandicap.given(f"-{one[1:]}" if one.startswith("+") else one) for one in players]
    checking = Checking()
    rated, indexes = tee.read(checking), [checking.index(one) for one in players]
    checking.done()
    return [course_handicap(one, rated) for one in indexes]


def _worked_json(found: Worked) -> dict[str, Any]:
    return {"value": found.whole, "steps": steps_json(found.steps)}


def _steps(steps: Iterable[Step]) -> Iterator[Line]:
    for one in steps:
        yield "item", step_words(one)


def _json(kind: str, **members: Any) -> None:
    document: Mapping[str, Any] = {"marram": 1, "kind": kind, **members}
    print_json(document)
