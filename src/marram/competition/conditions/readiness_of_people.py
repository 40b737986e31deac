"""What still stands between now and the first start about people: players, their starting times, officials."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace

from marram.competition.conditions.choices import Score, Sex
from marram.competition.conditions.contradictions import SIZES_OF_SIDES
from marram.competition.conditions.duties import duty_of, ranges, uncovered
from marram.competition.conditions.event_file import Entrant, EventFile
from marram.competition.conditions.handicaps import rating_for
from marram.competition.conditions.standing import About, Exists, Standing, listed
from marram.competition.conditions.starting_intervals import short_intervals
from marram.said import Said, counted, said
from marram.words.texts import clock_words, short_day_words


def of_players(found: EventFile) -> Iterator[Standing]:
    """Yield what still stands about the players: who has no handicap, no rated tees, or no place in the field."""
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
                    names=listed(without),
                ),
                said("Put the entries right (handicap_index), or strike them."),
            )
        unrated = [
            one
            for one in found.players
            if one.handicap_index is not None
            and one.playing_handicap is None
            and rating_for(found, one) is None
        ]
        by_sex = [one for one in unrated if found.ratings and _wants_sex(found, one)]
        if by_sex:
            yield Standing(
                About.PLAYERS,
                said(
                    "It is not told whether men's or women's ratings hold for: {names}.",
                    names=listed([one.name for one in by_sex]),
                ),
                said("Put the entries right: m or f."),
            )
        unrated = [one for one in unrated if one not in by_sex]
        if (
            unrated and found.ratings
        ):  # without any, handicaps are worked out elsewhere and given with the cards
            yield Standing(
                About.PLAYERS,
                said(
                    "No rating is given of the tees that these play from: {names}.",
                    names=listed([one.name for one in unrated]),
                ),
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
                names=listed(over),
            ),
            said("Strike the entries, or raise handicap_limit."),
        )
    yield from _of_sides(found)
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


def _of_sides(found: EventFile) -> Iterator[Standing]:
    """Yield sides of too few or too many players, and who has none where others have."""
    if found.sides not in SIZES_OF_SIDES or any(one.sides not in (None, found.sides) for one in found.rounds):
        return
    least, most = SIZES_OF_SIDES[found.sides]
    if found.side_size is not None:
        least = most = found.side_size
    sides = Counter(one.side for one in found.players)
    alone = [one.name for one in found.players if not one.side]
    del sides[""]
    wrong = [
        str(said("{side} ({count})", side=side, count=count))
        for side, count in sides.items()
        if not least <= count <= most
    ]
    if wrong:
        yield Standing(
            About.PLAYERS,
            said("Sides of too few or too many players: {sides}.", sides=listed(wrong)),
            said(
                "Put the entries right: {sizes} to a side.",
                sizes=least if least == most else f"{least}–{most}",
            ),
        )
    if sides and alone:
        yield Standing(
            About.PLAYERS,
            said("Not said on which side they play: {names}.", names=listed(alone)),
            said("Put the entries right (side), or strike them."),
        )


def _wants_sex(found: EventFile, player: Entrant) -> bool:
    """Tell whether a rating is missing only because nobody said whose ratings hold for a player."""
    return player.sex is None and any(rating_for(found, replace(player, sex=one)) is not None for one in Sex)


def of_starts(found: EventFile, there: Exists) -> Iterator[Standing]:
    """Yield what still stands about starting times: who has none, and a last group that is home after sunset."""
    starting = {name for group in found.starting_times for name in group.players}
    idle = [one.name for one in found.players if one.name not in starting]
    if found.players and idle:
        yield Standing(
            About.STARTING_TIMES,
            counted(
                "One player has no starting time: {names}.",
                "{count} players have no starting time: {names}.",
                len(idle),
                names=listed(idle),
            ),
            said("Make the draw, or add them to a group."),
        )
    for short in short_intervals(found):
        yield Standing(
            About.STARTING_TIMES,
            counted(
                "A group that plays {balls} balls is followed after {least} minutes; at least {recommended} are recommended (Committee Procedures 4A(1)).",
                "{count} groups that play {balls} balls are followed too soon, one of them after {least} minutes; at least {recommended} are recommended (Committee Procedures 4A(1)).",
                short.groups,
                balls=short.balls,
                least=short.least,
                recommended=short.recommended,
            ),
            said("Start further apart, in smaller groups or from two tees; or leave it so."),
            stops=False,
        )
    if there.no_zone and found.starting_times:
        yield Standing(
            About.STARTING_TIMES,
            said(
                "Whether the last group is home before sunset is not known: the records do not say by which zone the club's clocks go."
            ),
            said("Say it with 'marram records init RECORDS --club NAME --time-zone Europe/London'."),
            stops=False,
        )
    for day in sorted(there.dark):
        yield Standing(
            About.STARTING_TIMES,
            said("{day}: the sun does not rise there.", day=short_day_words(day)),
            said("Play on another day."),
        )
    for day, home in sorted(there.last_home.items()):
        sunset = there.sunset.get(day)
        if sunset is not None and home > sunset:
            yield Standing(
                About.STARTING_TIMES,
                said(
                    "{day}: the last group is home at {home}, and the sun sets at {sunset}.",
                    day=short_day_words(day),
                    home=clock_words(home),
                    sunset=clock_words(sunset),
                )
                if there.minutes_taken is None
                else said(
                    "{day}: with {minutes} minutes for a round the last group is home at {home}, and the sun sets at {sunset}.",
                    day=short_day_words(day),
                    minutes=there.minutes_taken,
                    home=clock_words(home),
                    sunset=clock_words(sunset),
                ),
                said("Start earlier, from two tees, or closer together."),
            )


def of_officials(found: EventFile, there: Exists) -> Iterator[Standing]:
    """Yield what still stands about officials: who has no place, and holes that no referee has."""

    def missing(what: Said, remedy: Said) -> Standing:
        return Standing(About.OFFICIALS, what, remedy, stops=False)

    if not found.officials:
        yield missing(said("No official is named."), said("Give officials."))
        return
    duties = [duty_of(one) for one in found.officials]
    places = there.places_of_officials
    without = [
        one.name
        for one in duties
        if not (one.has_place if places is None else places.get(one.name, "").strip())
        and one.role != "chief_referee"
    ]
    if without:
        yield missing(
            said("Officials without a place: {names}.", names=listed(without)),
            said('Say after their role where: "referee, holes 1 to 9".'),
        )
    if open_ := uncovered(duties, there.holes_on_map or ()):
        yield missing(
            counted(
                "No referee has hole {holes} as a place.",
                "No referee has holes {holes} as a place.",
                len(open_),
                holes=ranges(open_),
            ),
            said("Give them to one, let one rove, or leave it so: a referee comes there when one is called."),
        )
