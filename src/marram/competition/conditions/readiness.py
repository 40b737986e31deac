"""What still stands between now and the first start, each with what to do: from the conditions and from what exists."""

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from enum import Enum

from marram.competition.conditions.choices import Score, TieMethod
from marram.competition.conditions.event_file import EventFile
from marram.competition.conditions.handicaps import rating_for
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.said import Said, counted, said


class About(Enum):
    """Which part of the work it is."""

    CONDITIONS = "conditions"
    COURSE = "course"
    HOLES = "holes"
    LOCAL_RULES = "local_rules"
    PLAYERS = "players"
    STARTING_TIMES = "starting_times"
    OFFICIALS = "officials"


@dataclass(frozen=True, slots=True)
class Standing:
    """Something that stands between now and the first start.

    Attributes:
        about: which part of the work it is.
        what: what is missing or wrong.
        remedy: what to do about it.
        stops: whether play could not start, or scores could not become results, with it as it is.
    """

    about: About
    what: Said
    remedy: Said
    stops: bool = True


@dataclass(frozen=True)
class Exists:
    """What exists beside the conditions; ``None`` is not known, and told as such where it matters.

    Attributes:
        map_faults: why the course map cannot be used, in words.
        holes_on_map: the numbers of the holes of the map; ``None`` without a map.
        holes_set: for each day the numbers of the holes whose location is set.
        unmarked: codes of Local Rules in force whose marking is not on the map, each with what is missing.
        last_home: for each day, when the last group is expected home.
        sunset: for each day, when the sun sets at the course.
        places_of_officials: for each official the places given; empty for one without a place.
        map_warnings: what is wrong with the map, so that it cannot be used for everything, in words.
    """

    map_faults: Sequence[str] = ()
    holes_on_map: Collection[int] | None = None
    holes_set: Mapping[date, Collection[int]] = field(default_factory=dict)
    unmarked: Mapping[str, str] = field(default_factory=dict)
    last_home: Mapping[date, datetime] = field(default_factory=dict)
    sunset: Mapping[date, datetime] = field(default_factory=dict)
    places_of_officials: Mapping[str, str] | None = None
    map_warnings: Sequence[str] = ()


def readiness(found: EventFile, there: Exists | None = None) -> tuple[Standing, ...]:
    """Return what still stands between now and the first start, in the order in which it is usually done."""
    exists = there or Exists()
    return (
        *_conditions(found),
        *_course(found, exists),
        *_local_rules(found, exists),
        *_players(found),
        *_starts(found, exists),
        *_officials(found, exists),
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
        yield missing(said("Net scores count, and no handicap allowance is set."), said("Give allowance."))
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
    for day in found.days():
        wanted = set(_holes_of(found, day) or there.holes_on_map or ())
        on_map = set(wanted if there.holes_on_map is None else there.holes_on_map)
        if absent := sorted(wanted - on_map):
            yield Standing(
                About.COURSE,
                said("{day}: holes {holes} are not on the map.", day=day.isoformat(), holes=_listed(absent)),
                said("Draw them, or correct holes."),
            )
        if unset := sorted((wanted & on_map) - set(there.holes_set.get(day, ()))):
            yield Standing(
                About.HOLES,
                said(
                    "{day}: no hole location is set for {holes}.", day=day.isoformat(), holes=_listed(unset)
                ),
                said("Set them on the page of hole locations."),
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


def _players(found: EventFile) -> Iterator[Standing]:
    if not found.players:
        yield Standing(About.PLAYERS, said("Nobody has entered."), said("Add the entries."))
    if Score.NET in found.scores:
        without = [
            one.name for one in found.players if one.handicap_index is None and one.playing_handicap is None
        ]
        if without:
            yield Standing(
                About.PLAYERS,
                counted(
                    "One player has no handicap: {names}.",
                    "{count} players have no handicap: {names}.",
                    len(without),
                    names=_listed(without),
                ),
                said("Give each a handicap_index, or strike the entry."),
            )
        unrated = [
            one.name
            for one in found.players
            if one.handicap_index is not None
            and one.playing_handicap is None
            and rating_for(found, one) is None
        ]
        if (
            unrated and found.ratings
        ):  # without any, handicaps are worked out elsewhere and given with the cards
            yield Standing(
                About.PLAYERS,
                said("No rating is given of the tees that these play from: {names}.", names=_listed(unrated)),
                said("Give ratings of every set of tees, and tees where there are several."),
            )
    over = [
        one.name
        for one in found.players
        if found.handicap_limit is not None
        and one.handicap_index is not None
        and one.handicap_index > found.handicap_limit
    ]
    if over:
        yield Standing(
            About.PLAYERS,
            said(
                "Above the handicap limit of {limit}: {names}.",
                limit=found.handicap_limit,
                names=_listed(over),
            ),
            said("Strike the entries, or raise handicap_limit."),
        )
    if found.field_size is not None and len(found.players) > found.field_size:
        yield Standing(
            About.PLAYERS,
            said(
                "{players} players have entered, and the field is {most}.",
                players=len(found.players),
                most=found.field_size,
            ),
            said("Ballot the entries."),
        )


def _starts(found: EventFile, there: Exists) -> Iterator[Standing]:
    starting = {name for group in found.starting_times for name in group.players}
    idle = [one.name for one in found.players if one.name not in starting]
    if found.players and idle:
        yield Standing(
            About.STARTING_TIMES,
            counted(
                "One player has no starting time: {names}.",
                "{count} players have no starting time: {names}.",
                len(idle),
                names=_listed(idle),
            ),
            said("Make the draw, or add them to a group."),
        )
    for day, home in sorted(there.last_home.items()):
        sunset = there.sunset.get(day)
        if sunset is not None and home > sunset:
            yield Standing(
                About.STARTING_TIMES,
                said(
                    "{day}: the last group is home at {home}, and the sun sets at {sunset}.",
                    day=day.isoformat(),
                    home=home.strftime("%H:%M"),
                    sunset=sunset.strftime("%H:%M"),
                ),
                said("Start earlier, from two tees, or closer together."),
            )


def _officials(found: EventFile, there: Exists) -> Iterator[Standing]:
    if not found.officials:
        yield Standing(About.OFFICIALS, said("No official is named."), said("Give officials."), stops=False)
    places = there.places_of_officials
    without = [
        one.name
        for one in found.officials
        if not (one.role.partition(",")[2].strip() if places is None else places.get(one.name, "").strip())
    ]
    if without:
        yield Standing(
            About.OFFICIALS,
            said("Officials without a place: {names}.", names=_listed(without)),
            said('Say after their role where: "referee, holes 1 to 9".'),
            stops=False,
        )


def _listed(some: Sequence[object], most: int = 6) -> str:
    """Return some things in one line; of many the first ones and how many more."""
    shown = ", ".join(map(str, some[:most]))
    return shown if len(some) <= most else said("{shown} and {more} more", shown=shown, more=len(some) - most)
