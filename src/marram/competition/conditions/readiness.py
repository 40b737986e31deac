"""What still stands between now and the first start, each with what to do: from the conditions and from what exists."""

from collections.abc import Iterator
from datetime import date

from marram.competition.conditions.choices import Score, TieMethod, Variation
from marram.competition.conditions.event_file import EventFile
from marram.competition.conditions.handicaps import recommended_allowance
from marram.competition.conditions.readiness_of_people import of_officials, of_players, of_starts
from marram.competition.conditions.standing import About, Exists, Standing, listed
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.said import Said, counted, said
from marram.words.texts import short_day_words


def readiness(found: EventFile, there: Exists | None = None) -> tuple[Standing, ...]:
    """Return what still stands between now and the first start, in the order in which it is usually done."""
    exists = there or Exists()
    return (
        *_conditions(found),
        *_course(found, exists),
        *_local_rules(found, exists),
        *of_players(found),
        *of_starts(found, exists),
        *of_officials(found, exists),
    )


def _conditions(found: EventFile) -> Iterator[Standing]:
    def missing(what: Said, remedy: Said, *, stops: bool = True) -> Standing:
        return Standing(About.CONDITIONS, what, remedy, stops)

    if not found.days():
        yield missing(said("No day of play is set."), said("Give played_on."))
    if found.form_of_play is None:
        yield missing(said("The form of play is not set."), said("Give form_of_play."))
    if found.sides is None and found.variation is None:
        yield missing(said("It is not said whether players compete alone or as sides."), said("Give sides."))
    if found.local_rules is None:
        yield missing(
            said("It is not said which Local Rules are in force."),
            said("Give local_rules; an empty list for none."),
        )
    if not found.scores:
        yield missing(said("It is not said whether gross or net scores count."), said("Give scores."))
    if Score.NET in found.scores and found.allowance is None and found.variation is None:
        usual = recommended_allowance(found)
        yield missing(
            said("Net scores count, and no handicap allowance is set."),
            said(
                "Give allowance; the table of Appendix C (Rules of Handicapping) does not name this form, so that the Committee sets it."
            )
            if usual is None
            else said(
                "Give allowance; {percent} per cent are recommended for this form (Rules of Handicapping, Appendix C).",
                percent=usual,
            ),
        )
    if Score.NET in found.scores and found.variation is Variation.GRUESOMES:
        yield missing(
            said("Appendix C (Rules of Handicapping) has no shares for gruesomes."),
            said(
                "Those of greensomes are taken, 60 and 40 per cent; or give each side a handicap with its card."
            ),
            stops=False,
        )
    if found.form_of_play is FormOfPlay.MAXIMUM_SCORE and found.maximum is None:
        yield missing(
            said("Maximum Score is played, and the maximum for a hole is not set (Rule 21.2a)."),
            said("Give maximum."),
        )
    if found.sides is Sides.BEST_OF_FOUR and found.scores_counting is None:
        yield missing(
            said("It is not said how many scores of a side count on a hole."), said("Give scores_counting.")
        )
    if found.form_of_play is FormOfPlay.MATCH_PLAY:
        if found.match_may_end_tied is None:
            yield missing(
                said("It is not said whether a match may end in a tie (Rule 3.2a(4))."),
                said("Give match_may_end_tied."),
            )
    elif found.ties is None or not (found.ties.first_place and found.ties.other_places):
        yield missing(
            said("It is not said how ties are decided (Committee Procedures 5A(6))."), said("Give ties.")
        )
    elif not {TieMethod.PLAY_OFF, TieMethod.LOT, TieMethod.SHARED} & set(found.ties.first_place):
        yield missing(
            said("The methods for a tie for the first place may leave it undecided."),
            said("Say what follows them: play_off, lot or shared."),
            stops=False,
        )
    counts_in = (found.teams.rounds or len(found.every_round())) if found.teams else 0
    if found.cut and counts_in > found.cut.after_round:
        yield missing(
            said("Scores count for teams after the cut, and a team with too few players left has no place."),
            said("Give rounds in teams, up to the cut; or leave it so."),
            stops=False,
        )
    if not found.closes:
        yield missing(
            said("It is not said when the competition closes; Rules 3.3b(3) and 20.2e turn on it."),
            said("Give closes."),
            stops=False,
        )


def _course(found: EventFile, there: Exists) -> Iterator[Standing]:
    if there.holes_on_map is None and not there.map_faults:
        yield Standing(
            About.COURSE, said("There is no course map."), said("Add one to the records."), stops=False
        )
    for fault in there.map_faults:
        yield Standing(
            About.COURSE,
            said("Course map: {fault}", fault=fault),
            said("Mend it in the map editor."),
        )
    if there.map_warnings:
        yield Standing(
            About.COURSE,
            counted(
                "Course map: {first}",
                "Course map, {count} warnings, the first of them: {first}",
                len(there.map_warnings),
                first=there.map_warnings[0],
            ),
            said("Look at them with 'marram course check' or in the map editor."),
            stops=False,
        )
    yield from _pars(found, there)
    for day in found.days():
        wanted = set(_holes_of(found, day) or there.holes_on_map or ())
        on_map = set(wanted if there.holes_on_map is None else there.holes_on_map)
        if absent := sorted(wanted - on_map):
            yield Standing(
                About.COURSE,
                said(
                    "{day}: holes {holes} are not on the map.", day=short_day_words(day), holes=listed(absent)
                ),
                said("Draw them, or correct holes."),
            )
        if unset := sorted((wanted & on_map) - set(there.holes_set.get(day, ()))):
            yield Standing(
                About.HOLES,
                said(
                    "{day}: no hole location is set for {holes}.",
                    day=short_day_words(day),
                    holes=listed(unset),
                ),
                said("Set them on the page of hole locations."),
                stops=False,
            )


def _pars(found: EventFile, there: Exists) -> Iterator[Standing]:
    """Yield tees whose par is not that of the holes on the map, and of which nobody said on which holes it differs."""
    played = found.holes or tuple(there.pars)
    if not played or not set(played) <= set(there.pars):
        return
    total = sum(there.pars[number] for number in played)
    for one in found.ratings:
        if not one.hole_pars and one.par != total:
            yield Standing(
                About.COURSE,
                said(
                    "The par of {tees} is {par}, and the holes on the map add up to {total}: points and cards go by the map.",
                    tees=f"{one.tees} ({one.sex.value})" if one.sex else one.tees,
                    par=one.par,
                    total=total,
                ),
                said("Give hole_pars with the rating: the par of each hole from these tees."),
                stops=False,
            )


def _holes_of(found: EventFile, day: date) -> tuple[int, ...]:
    return next((one.holes for one in found.rounds if one.played_on == day and one.holes), found.holes)


def _local_rules(found: EventFile, there: Exists) -> Iterator[Standing]:
    for code in found.local_rules or ():
        if code in there.unmarked:
            yield Standing(
                About.LOCAL_RULES,
                said("{code} is in force, and {missing}", code=code, missing=there.unmarked[code]),
                said("Mark it on the map, or leave the Local Rule out."),
            )


__all__ = ["About", "Exists", "Standing", "readiness"]
