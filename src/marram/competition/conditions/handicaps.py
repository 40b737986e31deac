"""The handicap that each player or side has in the competition: from index, tees and allowance, or as it was given."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from marram.competition.conditions.choices import Variation
from marram.competition.conditions.event_file import Entrant, EventFile, Rating
from marram.competition.results.card import Hole
from marram.errors import InputError
from marram.handicap.allowances import Allowance, Format, allowance, for_field
from marram.handicap.arithmetic import to_whole
from marram.handicap.course_handicaps import CourseHandicap, course_handicap
from marram.handicap.editions import LATEST, Edition, edition_on
from marram.handicap.playing_handicaps import playing_handicap, side_sum
from marram.handicap.rated_tee import RatedTee
from marram.handicap.strokes import strokes_by_hole
from marram.handicap.tees_apart import strokes_for_par
from marram.handicap.worked import Step, Worked, step
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.said import Said, said

EVERYBODY = 100
"""Per cent: the allowance where nothing else is set."""

_FORMAT = {
    FormOfPlay.STABLEFORD: Format.STABLEFORD,
    FormOfPlay.PAR_BOGEY: Format.PAR_BOGEY,
    FormOfPlay.MAXIMUM_SCORE: Format.MAXIMUM_SCORE,
    FormOfPlay.MATCH_PLAY: Format.MATCH_PLAY,
}
_FOUR_BALL = {
    FormOfPlay.STROKE_PLAY: Format.FOUR_BALL_STROKE_PLAY,
    FormOfPlay.STABLEFORD: Format.FOUR_BALL_STABLEFORD,
    FormOfPlay.PAR_BOGEY: Format.FOUR_BALL_PAR_BOGEY,
    FormOfPlay.MATCH_PLAY: Format.FOUR_BALL_MATCH_PLAY,
}
_SCRAMBLE = {2: Format.SCRAMBLE_2, 3: Format.SCRAMBLE_3, 4: Format.SCRAMBLE_4}


@dataclass(frozen=True, slots=True)
class Has:
    """A handicap in the competition.

    Attributes:
        playing: the Playing Handicap; ``None`` where it cannot be worked out.
        strokes: handicap strokes of each hole; empty where a stroke index is missing.
        why_not: what is missing; ``None`` where nothing is.
        steps: how the Playing Handicap came about; none where it was given.
    """

    playing: int | None
    strokes: tuple[int, ...] = ()
    why_not: Said | None = None
    steps: tuple[Step, ...] = field(default=(), compare=False)


def handicap_of(found: EventFile, entrant: Entrant, holes: Sequence[Hole]) -> Has:
    """Return a player's Playing Handicap and strokes by hole.

    Where players compete from tees of different par, and results are told in strokes, those of the higher par receive the
    difference on top of the Playing Handicap (Rule 6.2b of the Rules of Handicapping). A Playing Handicap that was given is
    taken as it is.

    Args:
        found: the conditions, with the ratings of the tees.
        entrant: the player.
        holes: the holes that are played.
    """
    if entrant.playing_handicap is not None:
        return _has(entrant.playing_handicap, holes)
    course = _course_handicap(found, entrant, holes)
    if not isinstance(course, CourseHandicap):
        return Has(None, (), course)
    share = Fraction(found.allowance if found.allowance is not None else EVERYBODY)
    if share.denominator != 1:
        return Has(None, (), said("allowance is {given}; give whole per cent.", given=found.allowance))
    playing = playing_handicap(course, Allowance((int(share),)))
    apart = _for_par(found, course, holes)
    total = playing.value + apart.value
    steps = (*playing.steps, *_added(playing.value, apart))
    return _has(int(total), holes, steps)


def side_handicap_of(found: EventFile, partners: Sequence[Entrant], holes: Sequence[Hole]) -> Has:
    """Return the one Playing Handicap of partners who share a ball, and its strokes by hole.

    The shares are those of Appendix C for the variation: greensomes, Chapman and the like 60 and 40, a scramble by its size. In
    Foursomes the allowance of the conditions is taken of the partners' handicaps together, 50 where none is set. For tees
    of different par half of what both partners would receive is added (guidance of the unions of Great Britain and
    Ireland on mixed foursomes), and the sum is rounded once (our own reading).

    Args:
        found: the conditions, with the ratings of the tees.
        partners: the partners, in any order.
        holes: the holes that are played.
    """
    courses: list[CourseHandicap] = []
    for one in partners:
        course = _course_handicap(found, one, holes)
        if not isinstance(course, CourseHandicap):
            return Has(None, (), course)
        courses.append(course)
    try:
        shared = side_sum(courses, _shares(found, len(partners), _edition(found)))
    except InputError as error:
        return Has(None, (), said("{fault}", fault=" ".join(error.faults)))
    for_par = [int(_for_par(found, one, holes).value) for one in courses]
    apart = Fraction(sum(for_par), len(courses))
    total = shared.value + apart
    added = [step("par_of_side", "6.2b", total, value=shared.value, added=apart)] if apart else []
    rounded = step("side_rounded", "6.2a", to_whole(total), value=total)
    return _has(to_whole(total), holes, (*shared.steps, *added, rounded))


def _edition(found: EventFile) -> Edition:
    day = next(iter(found.days()), None)
    return LATEST if day is None else edition_on(day)


def _shares(found: EventFile, size: int, edition: Edition) -> Allowance:
    if found.variation is Variation.SCRAMBLE:
        return allowance(_SCRAMBLE.get(size, Format.SCRAMBLE_4), edition=edition)
    if found.variation is Variation.PINEHURST:
        return allowance(Format.CHAPMAN, edition=edition)
    if found.variation is not None:
        return allowance(Format.GREENSOMES, edition=edition)
    if found.allowance is None:
        return allowance(Format.FOURSOMES, edition=edition)
    return Allowance((int(found.allowance), int(found.allowance)))


def recommended_allowance(found: EventFile) -> int | None:
    """Return what Appendix C recommends for the form of play, in per cent of each Course Handicap; ``None`` where nothing.

    For fewer than 30 players 100 where 95 are meant for more (Clarification C/1). The table has no row for Four-Ball Maximum
    Score, and of best scores of a side only those of four players.
    """
    form = found.form_of_play or FormOfPlay.STROKE_PLAY
    if found.variation is not None:
        return None
    if found.sides is Sides.FOUR_BALL:
        table = _FOUR_BALL.get(form)
    elif found.sides is Sides.BEST_OF_FOUR and found.side_size not in (None, 4):
        table = None
    elif found.sides is Sides.BEST_OF_FOUR:
        against = "_par_bogey" if form is FormOfPlay.PAR_BOGEY else ""
        count = found.scores_counting
        names = {one.value: one for one in Format}
        table = names.get(f"{'all' if count == 4 else 'best'}_{count}_of_4{against}")
    elif found.sides is Sides.FOURSOMES:
        table = Format.FOURSOMES
    else:
        table = _FORMAT.get(form, Format.STROKE_PLAY)
    if table is None:
        return None
    edition = _edition(found)
    known = (
        for_field(table, len(found.players), edition=edition)
        if found.players
        else allowance(table, edition=edition)
    )
    return known.shares[0]


def shares_ball(found: EventFile) -> bool:
    """Return whether partners share a ball, so that a side has one handicap and one score on a hole."""
    return found.sides is Sides.FOURSOMES or found.variation is not None


def competes_alone(found: EventFile) -> bool:
    """Return whether every player competes alone, as far as the conditions say."""
    return found.sides in (None, Sides.INDIVIDUAL) and found.variation is None


def rating_for(found: EventFile, entrant: Entrant) -> Rating | None:
    """Return the rating of the tees that a player plays from: those of the entry, of the competition, or the only one."""
    tees = entrant.tees or found.tees
    fitting = [
        one for one in found.ratings if (not tees or one.tees == tees) and one.sex in (None, entrant.sex)
    ]
    return fitting[0] if len({(one.tees, one.sex) for one in fitting}) == 1 else None


def _course_handicap(found: EventFile, entrant: Entrant, holes: Sequence[Hole]) -> CourseHandicap | Said:
    """Return a player's Course Handicap, or what is missing for it."""
    if entrant.handicap_index is None:
        return said("{name} has no handicap_index.", name=entrant.name)
    rating = rating_for(found, entrant)
    if rating is None:
        return said("No rating is given of the tees that {name} plays from.", name=entrant.name)
    return course_handicap(entrant.handicap_index, _tee(rating, holes))


def _tee(rating: Rating, holes: Sequence[Hole]) -> RatedTee:
    return RatedTee.read(rating.course_rating, rating.slope, rating.par, 9 if len(holes) <= 9 else 18)


def _added(value: Fraction, apart: Worked) -> tuple[Step, ...]:
    """Return the steps that add what is received for the par of the tees; none where nothing is."""
    if not apart.value:
        return ()
    return (*apart.steps, step("par_added", "6.2b", value + apart.value, value=value, added=apart.value))


def _for_par(found: EventFile, course: CourseHandicap, holes: Sequence[Hole]) -> Worked:
    """Return what a player receives for the par of the tees, of all that are played from in this competition."""
    kinds = {(one.tees, one.sex): one for one in found.players}.values()
    played = [_tee(one, holes) for one in (rating_for(found, kind) for kind in kinds) if one is not None]
    assert course.tee is not None
    tees = (course.tee, *(one for one in played if one.holes == course.tee.holes))
    form = _FORMAT.get(found.form_of_play or FormOfPlay.STROKE_PLAY, Format.STROKE_PLAY)
    return strokes_for_par(tees, form)[0]


def _has(playing: int, holes: Sequence[Hole], steps: tuple[Step, ...] = ()) -> Has:
    indexes = [one.stroke_index for one in holes if one.stroke_index is not None]
    if len(indexes) != len(holes) or len(holes) not in (9, 18):
        return Has(playing, (), said("A stroke index is missing, or these are not 9 or 18 holes."), steps)
    return Has(playing, strokes_by_hole(playing, indexes), None, steps)
