"""The Rules of Handicapping as code: from scores to an index, and from an index to strokes on a course.

Exact integers and fractions only; every rounding stands where the published text of its edition puts it, and every
number is a :class:`~marram.handicap.worked.Worked` that tells how it came about. A plus handicap is a negative number.
The room knows no map, no database and no competition.
"""

from typing import TYPE_CHECKING

from marram.lazy_names import on_first_use

if TYPE_CHECKING:
    from marram.handicap.adjusted_score import HolePlayed, adjusted_gross_score
    from marram.handicap.allowances import Allowance, Format, allowance
    from marram.handicap.course_handicaps import CourseHandicap, course_handicap
    from marram.handicap.differential import combine_nines, nine_hole_differential, score_differential
    from marram.handicap.hole_scores import maximum_hole_score, most_likely_score
    from marram.handicap.index import handicap_index
    from marram.handicap.matches import MatchMethod, match_strokes
    from marram.handicap.playing_handicaps import playing_handicap, side_handicap
    from marram.handicap.rated_tee import RatedTee
    from marram.handicap.scoring_record import Posted, revise
    from marram.handicap.strokes import strokes_by_hole
    from marram.handicap.tees_apart import strokes_for_par

_WHERE = {
    "Allowance": "allowances",
    "CourseHandicap": "course_handicaps",
    "Format": "allowances",
    "HolePlayed": "adjusted_score",
    "MatchMethod": "matches",
    "Posted": "scoring_record",
    "RatedTee": "rated_tee",
    "adjusted_gross_score": "adjusted_score",
    "allowance": "allowances",
    "combine_nines": "differential",
    "course_handicap": "course_handicaps",
    "handicap_index": "index",
    "match_strokes": "matches",
    "maximum_hole_score": "hole_scores",
    "most_likely_score": "hole_scores",
    "nine_hole_differential": "differential",
    "playing_handicap": "playing_handicaps",
    "revise": "scoring_record",
    "score_differential": "differential",
    "side_handicap": "playing_handicaps",
    "strokes_by_hole": "strokes",
    "strokes_for_par": "tees_apart",
}

__all__ = [
    "Allowance",
    "CourseHandicap",
    "Format",
    "HolePlayed",
    "MatchMethod",
    "Posted",
    "RatedTee",
    "adjusted_gross_score",
    "allowance",
    "combine_nines",
    "course_handicap",
    "handicap_index",
    "match_strokes",
    "maximum_hole_score",
    "most_likely_score",
    "nine_hole_differential",
    "playing_handicap",
    "revise",
    "score_differential",
    "side_handicap",
    "strokes_by_hole",
    "strokes_for_par",
]

__getattr__ = on_first_use(__name__, _WHERE)
