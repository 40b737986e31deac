"""``marram event``: entries, the draw and the officials of an event that records keep, as the desk has them."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from marram.cli import long_work
from marram.cli.event_here import Here, clock, event_here
from marram.cli.event_options import Where
from marram.cli.exits import BAD_INPUT
from marram.cli.show import Line, print_json, show_lines
from marram.competition.conditions.reading import read_event_file
from marram.competition.entries.ballot import Choosing
from marram.competition.entries.columns import keep_columns, kept_columns
from marram.competition.entries.reading import read_entries
from marram.competition.entries.writing import index_as_written, write_entries
from marram.errors import InputError, did_you_mean, shown
from marram.records.field_changes import GroupSet
from marram.records.people import names
from marram.records.starting_sheet import conditions, round_conditions
from marram.said import said, sentences
from marram.services.day.officials_placed import placed, placing, proposal
from marram.services.field.ballot_kept import Lots, ballot_file, lots_cast
from marram.services.field.draw_kept import Asked, DrawFound, drawn
from marram.services.field.draw_round import draw_of_round
from marram.services.field.entry_put_right import EntrySays, putting_right
from marram.services.field.field_kept import (
    columns_remembered,
    entries_kept,
    field_now,
    index_of,
    taken,
    withdrawing,
)
from marram.services.field.handicap_limit import limit_in
from marram.services.publishing.formats import written
from marram.words.spoken import spoken
from marram.words.texts import clock_words, text


def tell_field(where: Where, output: Path | None, as_json: bool) -> None:
    """Print who plays, who waits and who withdrew; write who plays where asked."""
    with event_here(where) as here:
        now = field_now(here.at)
        waiting = [one.person for one in now.reserves]
        called = names(here.scored.records, [*waiting, *now.refused, *now.withdrawn])
    playing = entries_kept(now.playing)
    if output is not None:
        write_entries(playing, output)
    parts = {
        "reserves": [called.get(one, "") for one in waiting],
        "refused": [called.get(one, "") for one in now.refused],
        "withdrawn": [called.get(one, "") for one in now.withdrawn],
    }
    if as_json:
        told = [
            {"name": one.name, "handicap_index": index_as_written(one.handicap_index), "club": one.club}
            for one in playing
        ]
        print_json({"marram": 1, "kind": "event field", "playing": told, **parts})
        return
    heads = {
        "reserves": "entries.reserves",
        "refused": "entries.over_limit",
        "withdrawn": "entries.withdrawn",
    }
    lines: list[Line] = [("head", text("entries.playing"))]
    lines += [
        (
            "item",
            text(
                "entries.player",
                name=one.name,
                index=index_as_written(one.handicap_index) or text("entries.no_index"),
                club=one.club or text("entries.no_club"),
            ),
        )
        for one in playing
    ]
    for name, some in parts.items():
        lines += [("head", text(heads[name])), *(("item", one) for one in some)] if some else []
    show_lines(lines)


def take(where: Where, file: Path, columns: Path | None) -> None:
    """Take every entry of a list, or none; headings once taken are remembered in the records."""
    with event_here(where) as here:
        kept = (
            kept_columns(columns) if columns is not None and columns.exists() else columns_remembered(here.at)
        )
        with long_work.shown("entries"):
            found = read_entries(file, kept)
            entry = taken(here.at, found, found.columns, here.tap)
        here.scored.add(entry)
        if columns is not None and not columns.exists():
            keep_columns(found.columns, columns)


def cast_lots(
    where: Where, seed: str, places: int, limit: str | None, publish: Path | None, *, lowest: bool
) -> None:
    """Cast lots for the places, and write the ballot as it is published where asked."""
    with event_here(where) as here:
        choosing = Choosing.LOWEST_HANDICAPS if lowest else Choosing.BALLOT
        lots = Lots(seed.strip(), places, None if limit is None else limit_in(limit), choosing)
        with long_work.shown("lots"):
            entry = lots_cast(here.at, lots, here.tap)
        here.scored.add(entry)
        if publish is not None:
            from marram.cli.writing import write_files

            document = ballot_file(here.scored.records, here.name, field_now(here.at))
            write_files({publish: written(document)})


def withdraw(where: Where, name: str, note: str) -> None:
    """Have somebody withdraw; the first reserve moves up into the very place."""
    with event_here(where) as here:
        now = field_now(here.at)
        known = names(here.scored.records, [one.person for one in now.reserves])
        by_name = {one.name.casefold(): one.person for one in now.playing}
        by_name |= {called.casefold(): who for who, called in known.items()}
        here.scored.add(withdrawing(here.at, by_name.get(name.strip().casefold(), ""), here.tap, note))


def put_right(where: Where, name: str, says: Mapping[str, str | None]) -> None:
    """Put right what an entry says; what is not named stays as it is."""
    with event_here(where) as here:
        here.scored.refuse_closed()
        playing = {one.name.casefold(): one for one in field_now(here.at).playing}
        one = playing.get(name.strip().casefold())
        if one is None:
            raise InputError(
                sentences(said("{name} does not play.", name=shown(name)), did_you_mean(name, playing))
            )
        now = {
            "handicap_index": index_as_written(index_of(one.handicap_index)),
            "sex": one.sex or "",
            "tees": one.tees or "",
            "playing_handicap": ""
            if one.playing_handicap is None
            else f"{one.playing_handicap}".replace("-", "+"),
        }
        told = EntrySays(**(now | {key: value for key, value in says.items() if value is not None}))
        conditions_ = read_event_file(conditions(here.scored.records, here.scored.event))
        here.scored.add(putting_right(here.at, conditions_, one.person, told, here.tap))


@dataclass(frozen=True, slots=True)
class DrawAsked:
    """What a draw goes by, as typed."""

    seed: str
    first: str
    second: str
    minutes: int
    places: int
    tees: tuple[int, ...]
    order: str
    clubs_apart: bool
    not_again: bool
    wishes: Sequence[str]

    def asked(self) -> Asked:
        """Return what the draw goes by.

        Raises:
            InputError: a time is none, or there is no such order.
        """
        if self.order not in ("seed", "handicap", "score"):
            raise InputError(
                said("--order is {given}; give seed, handicap or score.", given=shown(self.order))
            )
        return Asked(
            self.seed.strip(),
            clock(self.first),
            self.minutes,
            self.places,
            self.tees,
            self.order,
            self.clubs_apart,
            self.not_again,
            "\n".join(self.wishes),
            clock(self.second) if self.second else None,
        )


def draw_round(where: Where, number: int, asked: DrawAsked, *, keep: bool, as_json: bool) -> None:
    """Draw a round by the wishes of its lines; keep it where asked. Exit code 2 where wishes clash."""
    with event_here(where) as here:
        this = here.round(number)
        with long_work.shown("draw"):
            found = draw_of_round(here.scored, number, asked.asked())
        _show(here, asked.seed, found, as_json)
        if keep and not found.clash:
            here.scored.add(drawn(here.at, this.id, found.groups, asked.seed, here.tap))
    if found.clash:
        raise SystemExit(BAD_INPUT)


def _show(here: Here, seed: str, found: DrawFound, as_json: bool) -> None:
    called = here.scored.competition.players
    if as_json:
        told = [_group(one, called) for one in found.groups]
        clash = [spoken(one) for one in found.clash]
        print_json(
            {"marram": 1, "kind": "draw", "seed": seed, "groups": told, "clash": clash, "moved": found.moved}
        )
    elif found.clash:
        show_lines([("title", text("draw.clash")), *(("item", spoken(one)) for one in found.clash)])
    else:
        lines: list[Line] = [("title", text("draw.title", seed=seed))]
        for one in found.groups:
            players = ", ".join(called[who] for who in one.people)
            at = clock_words(one.at)
            lines.append(("item", text("draw.group", time=at, tee=one.tee, players=players)))
        show_lines(lines)


def _group(one: GroupSet, called: Mapping[str, str]) -> dict[str, object]:
    return {
        "time": one.at.isoformat("minutes"),
        "tee": one.tee,
        "players": [{"key": called[who], "name": called[who]} for who in one.people],
    }


def officials(where: Where, number: int, seed: str, at: Sequence[str], *, keep: bool) -> None:
    """Print where officials are in a round; propose places with a seed, put some by hand, keep them where asked."""
    with event_here(where) as here:
        this = here.round(number)
        records, event = here.scored.records, here.scored.event
        now = placed(records, event, this.id)
        places = {one.key: one.at for one in now}
        if seed:
            own = round_conditions(records, event)[this.id].get("minutes_of_play")
            holes = [one.number for one in here.scored.competition.holes] or list(range(1, 19))
            minutes = own or here.scored.competition.file.minutes_of_play
            places |= proposal(records, event, this.id, holes, minutes=minutes, seed=seed)
        for given in at:
            name, _, place = given.partition("=")
            keys = [one.key for one in now if one.duty.name.casefold() == name.strip().casefold()]
            if not keys:
                known = ", ".join(one.duty.name for one in now) or "–"
                raise InputError(
                    said("--at names {name}; give one of {names}.", name=shown(name), names=known)
                )
            places |= dict.fromkeys(keys, place.strip())
        show_lines(
            [
                ("title", text("day.officials")),
                *(
                    ("item", f"{one.duty.name}: {places.get(one.key) or text('paper.officials.no_place')}")
                    for one in now
                ),
            ]
        )
        if keep:
            here.scored.add(placing(places, this.id, seed, here.tap))
