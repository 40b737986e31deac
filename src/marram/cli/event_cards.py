"""``marram event``: the scoring area from the shell, with the same entries and checks as at the desk."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, time
from zoneinfo import ZoneInfo

from marram.cli.event_here import Here, event_here, list_lines, named
from marram.cli.event_options import Where
from marram.cli.show import Line, print_json, question_lines, show_lines
from marram.competition.cards.acts import By, SettledAs
from marram.competition.results.card import HoleScore, OutKind
from marram.errors import InputError, shown
from marram.records.starting_sheet import time_zone
from marram.rules.plain import as_plain
from marram.rules.result import NeedFacts
from marram.said import said
from marram.services.cards.card_entering import (
    ReturnGiven,
    answer_finding,
    end_round,
    enter_figures,
    find_out,
    return_card,
    settle_ruling,
    take_back,
)
from marram.services.cards.figures_typed import read_handicap, read_score
from marram.services.cards.handicap_told import handicaps_told
from marram.services.results.event_results import CardKey, CardNow
from marram.words.sheet import sheet
from marram.words.spoken import spoken
from marram.words.texts import text


def list_cards(where: Where, number: int, as_json: bool) -> None:
    """Print how the card of every side of a round stands."""
    with event_here(where) as here:
        round_ = here.round(number)
        labels = here.scored.competition.labels
        cards = here.scored.cards(round_.id)
        on_sheet = [
            here.scored.competition.side_of.get(player.id, player.id)
            for group in here.scored.groups[round_.id]
            for player in group.players
        ]
        known = [
            (labels[side], cards.get(side)) for side in dict.fromkeys((*on_sheet, *cards)) if side in labels
        ]
    if as_json:
        told = [{"side": side, "state": _state(card)} for side, card in known]
        print_json({"marram": 1, "kind": "event cards", "round": number, "cards": told})
        return
    lines: list[Line] = [("item", f"{side}: {text(f'cards.state.{_state(card)}')}") for side, card in known]
    list_lines(text("cards.round", number=number), lines, text("cards.none"))


def _state(card: CardNow | None) -> str:
    if card is None or not card.begun:
        return "nothing"
    if card.kept.ended is not None or (card.kept.returned is not None and card.outcome.out is not None):
        return "out"
    if card.kept.returned is None:
        return "entering"
    return "returned" if card.outcome.settled else "open"


def show_card(where: Where, name: str, number: int, as_json: bool) -> None:
    """Print a card as it stands: figures, what lies beside it, what is still to be done, what the Rules ask and rule."""
    with event_here(where) as here:
        key = here.card(name, number)
        now = here.scored.card(key)
        label = here.scored.competition.labels[key[0]]
        if as_json:
            print_json({"marram": 1, "kind": "event card", **_told(label, number, now)})
            return
        show_lines(_lines(here, key, now))


def _told(label: str, number: int, now: CardNow) -> Mapping[str, object]:
    return {
        "side": label,
        "round": number,
        "state": _state(now),
        "figures": [
            {"ball": ball, "hole": hole, **{by.value: score for by, score in given.items()}}
            for (ball, hole), given in sorted(
                now.card.figures.items(), key=lambda one: (one[0][1], one[0][0])
            )
        ],
        "beside": [as_plain(one) | {"settled": _settled(now, one.ruling)} for one in now.beside],
        "to_do": [spoken(one) for one in now.outcome.to_do],
        "findings": [
            {
                "name": one.name,
                "asks": one.result.fact if isinstance(one.result, NeedFacts) else None,
                "words": sheet(one.result, form_of_play=now.under.form, given=one.facts).headline,
            }
            for one in now.outcome.findings
        ],
        "gross": {row.player: list(row.gross) for row in now.outcome.card.rows},
    }


def _settled(now: CardNow, ruling: str) -> str | None:
    how = now.card.settled.get(ruling)
    return None if how is None else how.value


def _lines(here: Here, key: CardKey, now: CardNow) -> Iterator[Line]:
    label = here.scored.competition.labels[key[0]]
    yield "title", f"{text('cards.card.title', name=label)}: {text(f'cards.state.{_state(now)}')}"
    holes = [one.number for one in here.scored.competition.holes]
    for ball in now.card.balls:
        for by in By:
            given = [now.card.figures.get((ball, hole), {}).get(by) for hole in holes]
            if any(one is not None for one in given):
                row = " ".join("." if one is None else str(one) for one in given)
                whose = text("event_kept.scorer" if by is By.SCORER else f"cards.by.{by.value}")
                yield "text", f"{ball}, {whose}: {row}"
    for told in handicaps_told(here.scored.competition, key[0]):
        yield "text", told.title
        yield from (("item", one) for one in told.steps)
    for one in now.beside:
        entry = here.log.entry(one.ruling)
        number = "?" if entry is None else entry.number
        settled = _settled(now, one.ruling)
        how = text("event_kept.to_settle" if settled is None else f"cards.settle.{settled}")
        yield "item", f"{text('log.kind.ruling')} {number}: {one.words} ({how})"
    yield from (("item", spoken(one)) for one in now.outcome.to_do)
    for finding in now.outcome.findings:
        words = sheet(finding.result, form_of_play=now.under.form, given=finding.facts)
        yield "item", f"{finding.name}: {words.headline}"
        if isinstance(finding.result, NeedFacts):
            yield from question_lines(words, "event_kept.answer")
    if now.outcome.out is not None:
        out = text(f"competition.out.{now.outcome.out.kind.value}")
        yield "caution", " ".join(filter(None, (out, now.outcome.out.citation)))


def enter(
    where: Where, name: str, number: int, by: str, scores: str, holes: Sequence[str], ball: str
) -> None:
    """Enter figures: all in a row from the first hole of the card, or of single holes."""
    with event_here(where) as here:
        key = here.card(name, number)
        numbers = [one.number for one in here.scored.competition.holes]
        found = _in_a_row(scores, numbers) | _single(holes, numbers)
        if not found:
            raise InputError(said("Give scores: --scores for all holes in their order, or --hole for one."))
        given = {(here.ball(key, ball), named(By, by, "--given-by")): found}
        enter_figures(here.scored, key, given, here.tap)


def _in_a_row(scores: str, numbers: Sequence[int]) -> dict[int, HoleScore]:
    given = scores.replace(",", " ").split()
    if len(given) > len(numbers):
        raise InputError(
            said(
                "--scores holds {count} scores, and the card {holes} holes.",
                count=len(given),
                holes=len(numbers),
            )
        )
    return {hole: read_score(one) for hole, one in zip(numbers, given, strict=False) if one not in (".", "?")}


def _single(holes: Sequence[str], numbers: Sequence[int]) -> dict[int, HoleScore]:
    found: dict[int, HoleScore] = {}
    for one in holes:
        hole, _, score = one.partition("=")
        if not (hole.isascii() and hole.isdecimal() and int(hole) in numbers):
            raise InputError(
                said(
                    "--hole is {given}; give a hole of the card and its score, such as 7=5.", given=shown(one)
                )
            )
        found[int(hole)] = read_score(score)
    return found


def settle(where: Where, name: str, number: int, ruling: int, how: str) -> None:
    """Settle a ruling beside a card, by its number in the log."""
    with event_here(where) as here:
        key = here.card(name, number)
        beside = [here.log.entry(one.ruling) for one in here.scored.card(key).beside]
        found = next((one.id for one in beside if one is not None and one.number == ruling), "")
        settle_ruling(here.scored, key, found, named(SettledAs, how, "HOW"), here.tap)


@dataclass(frozen=True, slots=True)
class Brought:
    """The return of a card, as typed."""

    not_certified: Sequence[str] = ()
    at: str = ""
    promptly: str = ""
    handicaps: Sequence[str] = ()
    as_it_is: bool = False
    note: str = ""


def bring_in(where: Where, name: str, number: int, typed: Brought) -> None:
    """Enter the return of a card."""
    with event_here(where) as here:
        key = here.card(name, number)
        missing = {named(By, one, "--not-certified") for one in typed.not_certified}
        own, partners = _handicaps(here, key, typed.handicaps)
        given = ReturnGiven(
            By.PLAYER not in missing,
            By.MARKER not in missing,
            _moment(here, key, typed.at) if typed.at else None,
            _yes_no(typed.promptly),
            own,
            partners,
            typed.as_it_is,
        )
        return_card(here.scored, key, given, here.tap, typed.note)


def _handicaps(
    here: Here, key: CardKey, given: Sequence[str]
) -> tuple[int | str | None, dict[str, int | str]]:
    """Return the handicap a card shows, and those of partners: ``12``, or ``NAME=12``."""
    own: int | str | None = None
    partners: dict[str, int | str] = {}
    for one in given:
        name, _, value = one.rpartition("=")
        shows = read_handicap(value)
        if name and shows is not None:
            partners[here.ball(key, name)] = shows
        else:
            own = shows
    return own, partners


def _moment(here: Here, key: CardKey, given: str) -> datetime:
    try:
        clock = time.fromisoformat(given)
    except ValueError:
        raise InputError(
            said("{given} is no time of day; give one such as 15:30.", given=shown(given))
        ) from None
    zone = time_zone(here.scored.records, here.scored.event)
    day = here.scored.competition.day(key[1])
    moment = datetime.combine(day, clock)
    return moment.replace(tzinfo=ZoneInfo(zone)) if zone else moment.astimezone()


def _yes_no(given: str) -> bool | None:
    known = {"": None, "yes": True, "no": False}
    if given not in known:
        raise InputError(said("--promptly is {given}; give yes or no.", given=shown(given)))
    return known[given]


def answer(where: Where, name: str, number: int, finding: str, value: str) -> None:
    """Answer what the Rules ask about a card."""
    with event_here(where) as here:
        answer_finding(here.scored, here.card(name, number), finding, value, here.tap)


def found_out(where: Where, name: str, number: int, given: str, ball: str, note: str) -> None:
    """Enter the actual score of a hole, found out after the return."""
    with event_here(where) as here:
        key = here.card(name, number)
        numbers = [one.number for one in here.scored.competition.holes]
        ((hole, score),) = _single([given], numbers).items()
        find_out(here.scored, key, (here.ball(key, ball), hole), score, here.tap, note=note)


def end(where: Where, name: str, number: int, how: str, citation: str, note: str) -> None:
    """End a round without a card that counts."""
    with event_here(where) as here:
        kind = named(OutKind, how, "HOW")
        end_round(here.scored, here.card(name, number), kind, here.tap, citation=citation, note=note)


def back(where: Where, name: str, number: int, why: str) -> None:
    """Withdraw the end of a round, or the return of a card, that was entered by mistake."""
    with event_here(where) as here:
        key = here.card(name, number)
        kept = here.scored.card(key).kept
        standing = kept.ended or kept.returned
        take_back(here.scored, key, "" if standing is None else standing.id, why, here.tap)
