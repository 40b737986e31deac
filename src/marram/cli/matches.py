"""``marram matches``: brackets and round robins."""

from collections.abc import Mapping, Sequence
from pathlib import Path

from marram.cli.show import Line, print_json, show_lines
from marram.competition.draw.order import by_handicap as in_order_of_handicap
from marram.competition.draw.order import by_seed
from marram.competition.draw.round_robin import round_robin
from marram.competition.entries.entry import Entry
from marram.competition.entries.reading import read_entries
from marram.competition.matches.bracket import Meeting, moved_on
from marram.competition.matches.seeding import numerical_draw
from marram.errors import InputError, did_you_mean, shown
from marram.said import said, sentences
from marram.words.spoken import spoken
from marram.words.texts import text


def tell_bracket(
    file: Path, seed: str, seeded: Sequence[str], winners: Sequence[str], *, by_handicap: bool, as_json: bool
) -> None:
    """Print every round of a bracket, as far as matches are decided."""
    entries = _entries(file)
    top = [_key(one) for one in seeded]
    won, faults = _winners(winners)
    faults += [
        sentences(said("{key} is not among the entries.", key=shown(key)), did_you_mean(key, entries))
        for key in dict.fromkeys((*top, *won.values()))
        if key not in entries
    ]
    if faults:
        raise InputError(*faults)
    indexes = {key: one.handicap_index for key, one in entries.items() if key not in top}
    others = in_order_of_handicap(indexes, seed) if by_handicap else by_seed(tuple(indexes), seed)
    rounds = moved_on(numerical_draw((*top, *others)), won)
    names = {key: one.name for key, one in entries.items()}
    if as_json:
        told = [[_plain(one, names) for one in meetings] for meetings in rounds]
        print_json({"marram": 1, "kind": "bracket", "seed": seed, "rounds": told})
        return
    lines: list[Line] = []
    for number, meetings in enumerate(rounds, start=1):
        lines.append(("head", text("draw.round", number=number)))
        lines += [("text", _words(one, names)) for one in meetings]
    show_lines(lines)


def tell_round_robin(file: Path, as_json: bool) -> None:
    """Print the matches of each round."""
    entries = _entries(file)
    names = {key: one.name for key, one in entries.items()}
    rounds = round_robin(tuple(entries))
    if as_json:
        told = [[[{"key": key, "name": names[key]} for key in pair] for pair in pairs] for pairs in rounds]
        print_json({"marram": 1, "kind": "round_robin", "rounds": told})
        return
    lines: list[Line] = []
    for number, pairs in enumerate(rounds, start=1):
        lines.append(("head", text("draw.round", number=number)))
        lines += [("text", text("draw.match", first=names[one], second=names[two])) for one, two in pairs]
    show_lines(lines)


def _entries(file: Path) -> Mapping[str, Entry]:
    found = read_entries(file)
    if found.faults:
        raise InputError(
            *(text("entries.line", line=one.line, fault=spoken(one.fault)) for one in found.faults)
        )
    return {one.key: one for one in found.entries}


def _key(given: str) -> str:
    return given.strip().casefold()


def _winners(given: Sequence[str]) -> tuple[dict[tuple[int, int], str], list[str]]:
    won: dict[tuple[int, int], str] = {}
    faults: list[str] = []
    for one in given:
        at, _, key = one.partition("=")
        round_, _, number = at.partition(".")
        if not (round_.strip().isdecimal() and number.strip().isdecimal() and key.strip()):
            faults.append(
                said("--winner is {given}; give round, match and key, such as 1.3=4711.", given=shown(one))
            )
            continue
        won[int(round_), int(number)] = _key(key)
    return won, faults


def _plain(one: Meeting, names: Mapping[str, str]) -> dict[str, object]:
    def side(key: str | None) -> dict[str, str] | None:
        return None if key is None else {"key": key, "name": names[key]}

    return {
        "number": one.number,
        "first": side(one.first),
        "second": side(one.second),
        "winner": side(one.winner),
    }


def _words(one: Meeting, names: Mapping[str, str]) -> str:
    empty = text("draw.bye" if one.round == 1 else "draw.open")
    first, second = (names[key] if key else empty for key in (one.first, one.second))
    words = text("draw.numbered", number=one.number, match=text("draw.match", first=first, second=second))
    return text("draw.won", match=words, winner=names[one.winner]) if one.winner else words
