"""What cannot hold together in the conditions of a competition, each with its reason and what to do."""

from collections.abc import Iterator
from itertools import combinations

from marram.competition.conditions.choices import (
    ENDS_EVERY_TIE,
    MATCHES_CARDS,
    CountbackStrokes,
    MaximumBy,
    Score,
    Target,
    TieMethod,
    Variation,
)
from marram.competition.conditions.contradictions_of_time import contradictions_of_time
from marram.competition.conditions.event_file import Division, EventFile
from marram.competition.conditions.pars import contradictions_of_pars
from marram.errors import BadAnswer, shown
from marram.rules.engine.conditions import check_sides
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.said import said

SIZES_OF_SIDES: dict[Sides, tuple[int, int]] = {
    Sides.FOURSOMES: (2, 2),
    Sides.FOUR_BALL: (2, 2),
    Sides.BEST_OF_FOUR: (2, 4),
}
"""The least and the greatest number of partners of a side (Rules 22.1 and 23.1; up to four is a form of the Committee's)."""

OF_THREE_ROUNDS = 3
"""So many rounds at least are played where the last two of them are compared."""

BY_HOLE = frozenset({FormOfPlay.STABLEFORD, FormOfPlay.PAR_BOGEY})
"""Forms in which handicap strokes fall on holes, so that no fraction of a handicap is taken off."""

_FOR_MATCHES = {"I-1.1"}
_FOR_STROKE_PLAY = {"I-1.2", "L-1", "L-2"}
_FOR_TEAMS = {"H-2", "H-5"}
"""Local Rules that concern nothing in another kind of competition, by their published text."""


def contradictions(found: EventFile) -> Iterator[str]:
    """Yield what cannot hold together."""
    try:
        check_sides(found.sides, found.form_of_play)
    except BadAnswer as error:
        yield from error.faults
    yield from _of_sides(found)
    yield from _of_form(found)
    yield from _of_scores(found)
    yield from _of_cut(found)
    yield from _of_ties(found)
    yield from _of_divisions(found.divisions)
    yield from _of_teams(found)
    yield from _of_local_rules(found)
    yield from _of_holes(found)
    yield from contradictions_of_time(found)
    yield from contradictions_of_pars(found)


def _of_sides(found: EventFile) -> Iterator[str]:
    if found.variation is Variation.SCRAMBLE and found.sides is not None:
        yield said(
            "variation is scramble and sides is {sides}: no Rule names the sides of a scramble (Rule 21.5). "
            "Leave sides out, and give side_size.",
            sides=found.sides.value,
        )
    elif found.variation not in (None, Variation.SCRAMBLE) and found.sides is not Sides.FOURSOMES:
        yield said(
            "variation is {variation}, in which partners share a ball: give foursomes for sides, or leave variation out.",
            variation=found.variation,
        )
    if found.variation is Variation.SCRAMBLE:
        least, most = 2, 4
    else:
        least, most = SIZES_OF_SIDES.get(found.sides, (1, 1)) if found.sides else (1, 4)
    if found.side_size is not None and not least <= found.side_size <= most:
        yield said(
            "side_size is {size}, and these sides are of {least} to {most} players. Give such a number, or other sides.",
            size=found.side_size,
            least=least,
            most=most,
        )
    if found.scores_counting is None:
        return
    if found.sides not in (Sides.FOUR_BALL, Sides.BEST_OF_FOUR):
        yield said(
            "scores_counting says how many scores of a side count on a hole, and here each side has one. "
            "Leave it out, or give four_ball or best_of_four for sides."
        )
    elif not 1 <= found.scores_counting <= (found.side_size or most):
        yield said(
            "scores_counting is {count}, and a side has {size} scores. Give a number from 1 to {size}.",
            count=found.scores_counting,
            size=found.side_size or most,
        )


def _of_form(found: EventFile) -> Iterator[str]:
    if found.maximum and found.form_of_play not in (None, FormOfPlay.MAXIMUM_SCORE):
        yield said(
            "maximum is given, and only Maximum Score has one (Rule 21.2); form_of_play is {form}. "
            "Leave it out, or give maximum_score.",
            form=found.form_of_play.value,
        )
    if found.maximum and found.maximum.number < 1:
        yield said("maximum, number is {number}; give a number above 0.", number=found.maximum.number)
    if found.maximum and found.maximum.by is MaximumBy.NET_OVER_PAR and found.scores == (Score.GROSS,):
        yield said(
            "maximum is counted with handicap strokes, and only gross scores count. Give another maximum, or net scores."
        )
    if found.target is Target.BOGEY and found.form_of_play and found.form_of_play not in BY_HOLE:
        yield said(
            "target is bogey, and {form} has no fixed target score (Rules 21.1 and 21.3 have). Leave it out.",
            form=found.form_of_play.value,
        )
    if found.match_may_end_tied is not None and found.form_of_play not in (None, FormOfPlay.MATCH_PLAY):
        yield said(
            "match_may_end_tied is given, and form_of_play is {form}. Leave it out, or give match_play.",
            form=found.form_of_play.value,
        )


def _of_scores(found: EventFile) -> Iterator[str]:
    if len(set(found.scores)) < len(found.scores):
        yield said("scores names one of them twice; name each once.")
    if found.allowance is not None and not 0 < found.allowance <= 100:
        yield said("allowance is {given}; give per cent above 0 and up to 100.", given=found.allowance)
    if found.allowance is not None and found.variation is not None:
        yield said(
            "allowance is one number, and partners in {variation} have the shares of Appendix C. Leave it out, "
            "or give each side a handicap with its card.",
            variation=found.variation,
        )
    if found.allowance is not None and found.scores == (Score.GROSS,):
        yield said(
            "allowance is a part of a handicap, and only gross scores count. Leave it out, or give net scores."
        )


def _of_cut(found: EventFile) -> Iterator[str]:
    cut = found.cut
    if cut is None:
        return
    if found.form_of_play is FormOfPlay.MATCH_PLAY:
        yield said("cut is given, and in match play who loses is out. Leave it out, or give another form.")
    if cut.places is None and cut.within is None:
        yield said("cut says nobody who plays on; give places, within, or both.")
    if (cut.places is not None and cut.places < 1) or (cut.within is not None and cut.within < 0):
        yield said("cut: places starts from 1 and within from 0; give such numbers.")
    rounds = len(found.every_round())
    if rounds and not 1 <= cut.after_round < rounds:
        yield said(
            "cut, after_round is {number}, and there are {rounds} rounds; give one that is followed by another.",
            number=cut.after_round,
            rounds=rounds,
        )
    if cut.score is not None and found.scores and cut.score not in found.scores:
        yield said("cut is by {score} scores, which do not count; give one of scores.", score=cut.score)


def _of_ties(found: EventFile) -> Iterator[str]:
    ties = found.ties
    if ties is None:
        return
    for key, methods in (("first_place", ties.first_place), ("other_places", ties.other_places)):
        for place, one in enumerate(methods):
            if one in methods[:place]:
                yield said("ties, {key}: {method} stands twice; name it once.", key=key, method=one.value)
            if one in ENDS_EVERY_TIE and place + 1 < len(methods):
                yield said(
                    "ties, {key}: {method} leaves nothing to decide, so that {after} is never reached. Leave it out, or put it before.",
                    key=key,
                    method=one.value,
                    after=methods[place + 1].value,
                )
        if TieMethod.LOWER_HANDICAP in methods and found.scores == (Score.GROSS,):
            yield said("ties, {key}: lower_handicap needs handicaps, and only gross scores count.", key=key)
        if TieMethod.LOWER_HANDICAP in methods and found.sides in (Sides.FOUR_BALL, Sides.BEST_OF_FOUR):
            yield said(
                "ties, {key}: lower_handicap compares one handicap of each side, and here each partner has one. Leave it out.",
                key=key,
            )
        rounds = len(found.every_round())
        if TieMethod.LAST_TWO_ROUNDS in methods and rounds < OF_THREE_ROUNDS:
            yield said(
                "ties, {key}: last_two_rounds compares two rounds of three or more, and here are {rounds}. Leave it out.",
                key=key,
                rounds=rounds,
            )
        if found.form_of_play is FormOfPlay.MATCH_PLAY and MATCHES_CARDS & set(methods):
            yield said(
                "ties, {key}: cards are matched in stroke play only; a match goes on hole by hole (Rule 3.2a(4)). "
                "Leave it out.",
                key=key,
            )
    if ties.countback_strokes is None:
        return
    methods_used = {*ties.first_place, *ties.other_places}
    if not MATCHES_CARDS & methods_used:
        yield said("ties, countback_strokes is given, and no cards are matched. Leave it out.")
    if ties.countback_strokes is not CountbackStrokes.BY_STROKE_INDEX and (
        found.form_of_play in BY_HOLE or found.sides in (Sides.FOUR_BALL, Sides.BEST_OF_FOUR)
    ):
        yield said(
            "ties, countback_strokes is {strokes}, and here handicap strokes fall on holes, whose results stand as they are. "
            "Leave it out.",
            strokes=ties.countback_strokes.value,
        )
    if found.scores == (Score.GROSS,):
        yield said("ties, countback_strokes is given, and only gross scores count. Leave it out.")


def _of_divisions(divisions: tuple[Division, ...]) -> Iterator[str]:
    names = [one.name for one in divisions]
    for twice in sorted({name for name in names if names.count(name) > 1}):
        yield said("divisions: {name} stands twice; give each a name of its own.", name=shown(twice))
    for one in divisions:
        for low, high, what in (
            (one.handicap_from, one.handicap_to, "handicap"),
            (one.age_from, one.age_to, "age"),
        ):
            if low is not None and high is not None and low > high:
                yield said(
                    "divisions, {name}: {what}_from is above {what}_to; nobody could play in it.",
                    name=shown(one.name),
                    what=what,
                )
    for one, other in combinations(divisions, 2):
        if _alike(one) == _alike(other) and _overlap(one, other):
            yield said(
                "divisions: {one} and {other} overlap, and one player could be in both. Move a bound.",
                one=shown(one.name),
                other=shown(other.name),
            )


def _alike(one: Division) -> tuple[object, ...]:
    bounded = (one.handicap_from, one.handicap_to) != (None, None)
    return bounded, one.age_from, one.age_to, one.sex, one.clubs


def _overlap(one: Division, other: Division) -> bool:
    low = max(
        (bound for bound in (one.handicap_from, other.handicap_from) if bound is not None), default=None
    )
    high = min((bound for bound in (one.handicap_to, other.handicap_to) if bound is not None), default=None)
    return low is None or high is None or low <= high


def _of_teams(found: EventFile) -> Iterator[str]:
    teams = found.teams
    if teams and not 1 <= teams.counting <= teams.size:
        yield said(
            "teams: {counting} scores count of a team of {size}; give a number from 1 to {size} for counting.",
            counting=teams.counting,
            size=teams.size,
        )
    most = len(found.every_round())
    if teams and teams.rounds is not None and not 1 <= teams.rounds <= (most or teams.rounds):
        yield said(
            "teams, rounds is {number}, and there are {rounds} rounds; give one of them, or leave it out for all.",
            number=teams.rounds,
            rounds=most,
        )
    if teams and found.sides is Sides.THREE_BALL:
        yield said("teams: in Three-Ball everybody plays against everybody (Rule 21.4). Leave teams out.")


def _of_local_rules(found: EventFile) -> Iterator[str]:
    for code in found.local_rules or ():
        known = code.upper()
        if known in _FOR_STROKE_PLAY and found.form_of_play is FormOfPlay.MATCH_PLAY:
            yield said("local_rules: {code} concerns stroke play only. Leave it out.", code=known)
        if known in _FOR_MATCHES and found.form_of_play not in (None, FormOfPlay.MATCH_PLAY):
            yield said("local_rules: {code} concerns match play only. Leave it out.", code=known)
        if known in _FOR_TEAMS and found.form_of_play and not found.teams:
            yield said(
                "local_rules: {code} concerns team competitions (Rule 24). Leave it out, or give teams.",
                code=known,
            )
        if known == "L-2" and found.scores == (Score.GROSS,):
            yield said("local_rules: L-2 is about handicaps, and only gross scores count. Leave it out.")


def _of_holes(found: EventFile) -> Iterator[str]:
    for key, holes in (("holes", found.holes), *((one.name, one.holes) for one in found.rounds)):
        if any(one < 1 for one in holes):
            yield said("{key}: a hole has a number from 1; correct it.", key=key)
        if len(set(holes)) < len(holes):
            yield said("{key}: a hole stands twice in one round; name each once.", key=key)
