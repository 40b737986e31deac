"""What was typed into the fields of a card: scores, the time of the return, the handicap it shows."""

from collections.abc import Mapping, Sequence
from datetime import datetime, time
from itertools import product

from marram.competition.cards.acts import By
from marram.competition.results.card import HoleScore
from marram.desk.cards.card_page import field_name
from marram.desk.cards.scoring_here import ScoringHere
from marram.desk.day.navigation import club_time
from marram.errors import InputError, shown
from marram.said import said
from marram.services.cards.figures_typed import read_handicap, read_score
from marram.services.results.event_results import CardKey


def read_scores(
    here: ScoringHere, key: CardKey, given: Mapping[str, str]
) -> tuple[dict[tuple[str, By], dict[int, HoleScore]], list[str]]:
    """Return the figures of a form, by ball and who gives them, and every fault of them in words."""
    scores: dict[tuple[str, By], dict[int, HoleScore]] = {}
    faults: list[str] = []
    for number, ball in enumerate(here.competition.balls(key[0]) or ("",), start=1):
        for by, hole in product(By, here.competition.holes):
            typed = given.get(field_name(by, hole.number, number))
            if typed is None:
                continue
            try:
                scores.setdefault((ball, by), {})[hole.number] = read_score(typed)
            except InputError as error:
                faults += [said("Hole {hole}: {fault}", hole=hole.number, fault=one) for one in error.faults]
    return scores, faults


def read_moment(here: ScoringHere, key: CardKey, given: str) -> datetime:
    """Return a time of day, on the day of the round, on the clocks of the club.

    Raises:
        InputError: it is no time of day.
    """
    try:
        clock = time.fromisoformat(given.strip())
    except ValueError:
        raise InputError(
            said("{given} is no time of day; give one such as 15:30.", given=shown(given[:20]))
        ) from None
    return datetime.combine(here.competition.day(key[1]), clock, club_time(here.kept).tzinfo)


def read_handicaps(balls: Sequence[str], given: Mapping[str, str]) -> dict[str, int | str]:
    """Return the handicap a card shows of each partner who plays a ball, by player; nothing for an empty field.

    Raises:
        InputError: one is none; every fault is listed.
    """
    found: dict[str, int | str] = {}
    faults: list[str] = []
    for number, ball in enumerate(balls, start=1):
        try:
            shows = read_handicap(given.get(f"handicap-{number}", ""))
        except InputError as fault:
            faults += fault.faults
            continue
        if shows is not None:
            found[ball] = shows
    if faults:
        raise InputError(*faults)
    return found
