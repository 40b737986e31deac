"""The draw of a round kept in records: what is wished, line by line; groups and starts, or the lines that clash; kept, and told when changed."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import time

from marram.competition.draw.order import beside_partners, by_handicap, by_score, by_seed
from marram.competition.draw.sizes import groups_needed
from marram.competition.draw.solving import Draw, draw, no_repeats
from marram.competition.draw.wishes import (
    Apart,
    ClubsApart,
    Drawn,
    NotBefore,
    Start,
    Together,
    Wish,
    Within,
    partners_together,
    starts,
)
from marram.errors import InputError
from marram.records.entry import Entry
from marram.records.field import EntrantKept
from marram.records.field_changes import GroupSet, set_groups
from marram.records.starting_sheet import GroupOfDay
from marram.said import said
from marram.services.cards.card_log import FIGURES
from marram.services.field.field_kept import EventLog, index_of
from marram.services.field.wishes_written import read_wishes
from marram.services.log.tap import Tap

DRAWN = "draw_made"
MATCH_HOLE = "match_hole"


@dataclass(frozen=True)
class Asked:
    """What a draw goes by.

    Attributes:
        seed: as it is published.
        first: the first starting time.
        minutes: between two groups of a tee; 0 for a shotgun start.
        places: players of a group.
        tees: the holes that groups start at.
        order: ``seed``, ``handicap`` (lowest first) or ``score`` (leaders last).
        clubs_apart: whether no two of one club are in a group.
        not_again: whether nobody plays again with whom they played in a round before.
        second: the time of a second start, from which the second half of the groups plays; ``None``: there is one start.
        wishes: one a line, as :func:`~marram.services.field.wishes_written.read_wishes` reads them.
    """

    seed: str
    first: time
    minutes: int = 10
    places: int = 3
    tees: tuple[int, ...] = (1,)
    order: str = "seed"
    clubs_apart: bool = False
    not_again: bool = False
    wishes: str = ""
    second: time | None = None


@dataclass(frozen=True)
class DrawFound:
    """A draw that was found.

    Attributes:
        groups: its groups, by identifier of the players.
        clash: the wishes that cannot hold together, as they were written; then there are no groups.
        moved: how many players the wishes put into another start than the order alone.
    """

    groups: tuple[GroupSet, ...]
    clash: tuple[str, ...] = ()
    moved: int = 0


def draw_for(
    field: Sequence[EntrantKept],
    asked: Asked,
    *,
    before: Sequence[GroupOfDay] = (),
    scores: Mapping[str, int] | None = None,
    pairs: bool = False,
) -> DrawFound:
    """Return the draw of a round.

    Partners who compete as a side stay in one group.

    Args:
        field: who plays in the event.
        asked: what it goes by.
        before: the groups of the rounds before.
        scores: who plays on with the score so far, by identifier, a lower one the better; ``None``: everybody.
        pairs: whether two play together as a side: then those of one side, or of one team, stand beside each other.

    Raises:
        InputError: nobody to draw, starts that cannot be, a wish that cannot be read; every fault of the wishes is listed.
    """
    playing = [one for one in field if scores is None or one.person in scores]
    if not playing:
        raise InputError(said("Nobody is entered in this competition."))
    if not asked.seed.strip():
        raise InputError(said("A draw needs a seed. Give one that nobody chooses, and publish it."))
    if not 1 <= asked.places <= 4:
        raise InputError(said("A group has 1 to 4 players, not {places}.", places=asked.places))
    keys = {one.person: drawn_by(one, playing) for one in playing}
    people = {key: person for person, key in keys.items()}
    known = {keys[one.person]: one for one in playing}
    order = _order(playing, keys, asked, scores)
    players = beside_partners([Drawn(key, known[key].club or "", known[key].side or "") for key in order])
    written = read_wishes(asked.wishes, playing)
    wishes: list[tuple[Wish, str]] = [(_renamed(wish, keys), line) for wish, line in written]
    wishes += [(one, said("partners in one group")) for one in partners_together(players)]
    if asked.clubs_apart:
        wishes.append((ClubsApart(), said("no two of one club in a group")))
    if asked.not_again:
        groups = [[keys[each.id] for each in one.players if each.id in keys] for one in before]
        if not groups:
            raise InputError(said("The groups of the round before are not known. Draw that round first."))
        wishes += [(one, said("nobody again with whom they played before")) for one in no_repeats(groups)]
    at = starts(
        asked.first,
        groups_needed(players, asked.places),
        minutes=asked.minutes,
        places=asked.places,
        tees=asked.tees,
        second=asked.second,
    )
    found = draw(players, at, [wish for wish, _ in wishes])
    made = _found(found, at, wishes, people)
    return replace(made, groups=tuple(_beside(one, playing) for one in made.groups)) if pairs else made


def _beside(group: GroupSet, playing: Sequence[EntrantKept]) -> GroupSet:
    """Return a group with those of one side, or of one team, beside each other, in the order of the first of each."""
    together = {one.person: one.side or one.team or one.person for one in playing}
    first = list(dict.fromkeys(together[one] for one in group.people))
    return replace(group, people=tuple(sorted(group.people, key=lambda one: first.index(together[one]))))


def _found(
    found: Draw, at: Sequence[Start], wishes: Sequence[tuple[Wish, str]], people: Mapping[str, str]
) -> DrawFound:
    if found.clash:
        lines = [line for clashing in found.clash for wish, line in wishes if wish == clashing]
        return DrawFound((), tuple(dict.fromkeys(lines)))
    groups = tuple(
        GroupSet(start.time, start.tee, tuple(people[key] for key in group))
        for start, group in zip(at, found.groups, strict=True)
        if group
    )
    return DrawFound(groups, (), found.moved)


def _order(
    playing: Sequence[EntrantKept],
    keys: Mapping[str, str],
    asked: Asked,
    scores: Mapping[str, int] | None,
) -> tuple[str, ...]:
    if asked.order == "handicap":
        return by_handicap({keys[one.person]: index_of(one.handicap_index) for one in playing}, asked.seed)
    if asked.order == "score":
        if scores is None:
            raise InputError(said("There is no score yet to draw by. Draw by seed or by handicap."))
        return by_score({keys[one.person]: scores[one.person] for one in playing}, asked.seed)
    return by_seed(tuple(keys.values()), asked.seed)


def drawn_by(one: EntrantKept, playing: Sequence[EntrantKept]) -> str:
    """Return what a player is drawn by: name and club in small letters, as the list of entries has it."""
    words = f"{one.name}|{one.club or ''}".casefold()
    alike = sum(f"{each.name}|{each.club or ''}".casefold() == words for each in playing)
    return words if one.name and alike == 1 else one.person


def _renamed(wish: Wish, keys: Mapping[str, str]) -> Wish:
    """Return a wish that names people by identifier as one that names them by key."""
    if isinstance(wish, Together):
        return Together(tuple(keys[one] for one in wish.players))
    if isinstance(wish, Apart):
        return Apart(tuple(keys[one] for one in wish.players))
    if isinstance(wish, Within):
        return Within(keys[wish.player], wish.part)
    assert isinstance(wish, NotBefore)
    return NotBefore(keys[wish.player], wish.time)


def drawn(at: EventLog, round_: str, groups: Sequence[GroupSet], seed: str, tap: Tap) -> Entry:
    """Have a round start in these groups, and return the entry that tells so.

    Raises:
        InputError: a score of the round is entered, or the groups are no longer those of the field; nothing was changed.
    """
    if any(one.told.get("round") == round_ for one in at.log.entries(at.event, kind=FIGURES)):
        raise InputError(said("Scores of this round are entered already, so it is not drawn anew."))
    together = [set(one.people) for one in groups]
    if any(
        not any({one.told["player"], one.content["against"]} <= some for some in together)
        for one in at.log.entries(at.event, kind=MATCH_HOLE)
        if one.told.get("round") == round_
    ):
        raise InputError(
            said("A match of this round has begun, so its players stay together. Draw the others only.")
        )
    set_groups(at.records, at.event, round_, groups)
    content = {
        "seed": seed,
        "groups": [
            {"time": one.at.isoformat("minutes"), "tee": one.tee, "players": list(one.people)}
            for one in groups
        ],
    }
    return Entry(DRAWN, tap.at, tap.ident, by=tap.by, round=round_, content=content)
