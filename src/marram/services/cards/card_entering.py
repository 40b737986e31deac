"""What is entered of a card, for desk, shell and Python alike: figures, rulings beside it settled, the return, answers, what was found out.

Each function adds its entries to the log, and records what the Rules then make of the card.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from marram.competition.cards.acts import By, SettledAs
from marram.competition.results.card import HoleScore, OutKind
from marram.errors import InputError
from marram.rules.engine.request import fact_named
from marram.rules.result import NeedFacts
from marram.said import said
from marram.services.cards.card_log import (
    ANSWERED,
    ENDED,
    FOUND_OUT,
    RETURNED,
    SETTLED,
    CardKept,
    entering,
)
from marram.services.log.tap import About, Tap, entered, taken_back
from marram.services.results.event_results import CardKey
from marram.services.results.scored import Scored


def enter_figures(
    here: Scored, key: CardKey, scores: Mapping[tuple[str, By], Mapping[int, HoleScore]], tap: Tap
) -> None:
    """Enter figures by ball and who gives them: only what differs from what was seen becomes an entry.

    Raises:
        InputError: the competition is closed, or the card is returned.
    """
    here.refuse_closed()
    card = here.card(key).kept
    if card.returned is not None:
        raise InputError(
            said(
                "The card is returned, and nothing on it may be changed (Rule 3.3b(2)). Enter what was found out."
            )
        )
    for (ball, by), mine in scores.items():
        for one in entering(card, by, mine, tap, ball):
            here.add(one)


def settle_ruling(here: Scored, key: CardKey, ruling: str, how: SettledAs, tap: Tap) -> None:
    """Say whether the penalty of a ruling beside the card is in the scores.

    Raises:
        InputError: the competition is closed, or no such ruling lies beside the card.
    """
    here.refuse_closed()
    if ruling not in {one.ruling for one in here.card(key).beside}:
        raise InputError(said("No such ruling lies beside this card. Look at the card for those that do."))
    here.add(entered(SETTLED, tap, _about(here.card(key).kept), {"ruling": ruling, "how": how.value}))
    here.rule(key, tap)


@dataclass(frozen=True)
class ReturnGiven:
    """The return of a card, as it is told.

    Attributes:
        player_certified: whether the player certified.
        marker_certified: whether the marker did.
        at: when it was returned; ``None``: now.
        promptly: whether that was promptly; ``None``: nobody said.
        handicap: the handicap it shows, below 0 for a plus one, "none" where it shows none; ``None``: nobody looked.
        handicaps: the same of each partner who plays a ball, by identifier.
        as_it_is: whether it has left the scoring area with figures that differ or are missing.
    """

    player_certified: bool = True
    marker_certified: bool = True
    at: datetime | None = None
    promptly: bool | None = None
    handicap: int | str | None = None
    handicaps: Mapping[str, int | str] = field(default_factory=dict)
    as_it_is: bool = False

    def content(self) -> dict[str, Any]:
        """Return what its entry holds."""
        content: dict[str, Any] = {
            "player_certified": self.player_certified,
            "marker_certified": self.marker_certified,
        }
        if self.at is not None:
            content["at"] = self.at.isoformat()
        if self.promptly is not None:
            content["promptly"] = self.promptly
        if self.handicap is not None:
            content["handicap"] = self.handicap
        if self.handicaps:
            content["handicaps"] = dict(self.handicaps)
        return content


def return_card(here: Scored, key: CardKey, given: ReturnGiven, tap: Tap, note: str = "") -> None:
    """Enter the return. Rulings beside the card are settled first; what else is open is confirmed.

    Raises:
        InputError: the competition is closed, or the card is not ready; every fault is listed.
    """
    here.refuse_closed()
    _ready(here, key, as_it_is=given.as_it_is)
    here.add(entered(RETURNED, tap, _about(here.card(key).kept), given.content(), note=note))
    here.rule(key, tap)


def answer_finding(here: Scored, key: CardKey, finding: str, value: str, tap: Tap) -> None:
    """Answer what the Rules ask about something wrong with the card.

    Raises:
        InputError: they ask nothing under this name, or it is no answer.
    """
    found = next((one for one in here.card(key).outcome.findings if one.name == finding), None)
    if found is None or not isinstance(found.result, NeedFacts):
        raise InputError(said("The Rules ask nothing of that name about this card. Look at the card."))
    name = found.result.fact
    fact = fact_named(name)
    token = fact.token(fact.parse(value))
    here.add(
        entered(ANSWERED, tap, _about(here.card(key).kept), {"finding": found.name, "facts": {name: token}})
    )
    here.rule(key, tap)


def find_out(
    here: Scored, key: CardKey, at: tuple[str, int], score: HoleScore, tap: Tap, *, note: str = ""
) -> None:
    """Enter the actual score of a ball on a hole, found out after the return; also after the close, as Rule 20.2e decides then.

    Raises:
        InputError: the card is not returned, or there is no such ball, hole or score.
    """
    ball, hole = at
    now = here.card(key)
    if now.kept.returned is None:
        raise InputError(said("The card is not returned yet. Enter the figures of player and marker."))
    if ball not in (now.kept.balls or ("",)):
        raise InputError(said("Say whose score it is: the card shows a ball of each partner."))
    if hole not in {one.number for one in here.competition.holes}:
        raise InputError(said("There is no hole {hole} on this card. Choose one of its holes.", hole=hole))
    if score is None:
        raise InputError(said("Say what the actual score of the hole was."))
    here.add(entered(FOUND_OUT, tap, _about(now.kept, ball, hole), {"score": score}, note=note))
    here.rule(key, tap)


def end_round(
    here: Scored, key: CardKey, how: OutKind, tap: Tap, *, citation: str = "", note: str = ""
) -> None:
    """End a round without a card that counts.

    Raises:
        InputError: the competition is closed, or nobody said under which Rule somebody is disqualified.
    """
    here.refuse_closed()
    if how is OutKind.DISQUALIFIED and not citation.strip():
        raise InputError(said("Say under which Rule the player is disqualified, such as 1.2b."))
    content = {"how": how.value, **({"citation": citation.strip()} if citation.strip() else {})}
    here.add(entered(ENDED, tap, _about(here.card(key).kept), content, note=note))


def take_back(here: Scored, key: CardKey, entry: str, why: str, tap: Tap) -> None:
    """Withdraw the entry of a return, or of an end, that was entered by mistake; the entry itself stays in the log.

    Raises:
        InputError: the competition is closed, it is no such entry, or nobody said why.
    """
    here.refuse_closed()
    card = here.card(key).kept
    if entry not in {one.id for one in (card.returned, card.ended) if one is not None}:
        raise InputError(
            said("Neither a return nor an end of the round is entered that could be taken back.")
        )
    here.add(taken_back(entry, why, tap, _about(card)))
    here.rule(key, tap)


def _about(card: CardKept, ball: str = "", hole: int | None = None) -> About:
    return About(ball or card.player, card.round, hole)


def _ready(here: Scored, key: CardKey, *, as_it_is: bool) -> None:
    """Let a card be returned only with every ruling beside it settled, and what is open on it confirmed.

    Raises:
        InputError: it is not ready; every fault is listed.
    """
    now = here.card(key)
    faults: list[str] = []
    if now.kept.returned is not None or now.kept.ended is not None:
        faults.append(said("The card is returned already, or the round ended without one."))
    faults += [
        said("Hole {hole}: two figures were entered at once. Say which is right.", hole=one.hole)
        for one in now.kept.at_once
    ]
    faults += [
        said(
            "A ruling lies beside the card: {words}. Say whether its penalty is included.",
            words=one.words or one.ruling,
        )
        for one in now.card.unsettled(now.beside)
    ]
    if (now.card.differences() or now.card.missing(By.MARKER)) and not as_it_is:
        faults.append(
            said(
                "Figures differ or are missing. Ask player and marker; where the card has left the scoring area as it is, say so."
            )
        )
    if faults:
        raise InputError(*faults)
