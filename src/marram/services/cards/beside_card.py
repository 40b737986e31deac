"""The rulings that lie beside a card: those of the log that bear a penalty of the player, as they stand now."""

from collections.abc import Iterable, Mapping

from marram.competition.cards.scorecard import Beside
from marram.records.entry import Kept
from marram.rules.penalty import OWN, PenaltyKind, Who

RULING = "ruling"
_OWN = frozenset(one.value for one in OWN)
_STROKES = frozenset({PenaltyKind.STROKES.value, PenaltyKind.GENERAL.value})
_OFF_THE_TOTAL = frozenset({PenaltyKind.POINTS_DEDUCTED.value, PenaltyKind.HOLES_DEDUCTED.value})


def beside_card(entries: Iterable[Kept], balls: Mapping[str, str] | None = None) -> tuple[Beside, ...]:
    """Return the rulings with a penalty among entries of one player and round, the first given first.

    One that is withdrawn or corrected is left out, and so is one that rules on the card itself: its penalty is worked
    out of the card. Where it was ruled otherwise than computed, what was given counts. A ruling whose penalty is not known,
    as where relief at a price was offered and nobody recorded what the player did, lies beside the card with no strokes.

    Args:
        entries: the entries about the players of a card.
        balls: the name of each ball on the card by the identifier of its player, where partners each play one.
    """
    known, names = list(entries), balls or {}
    gone = {one.corrects for one in known if one.kind in (RULING, "withdrawn")}
    found = []
    for one in known:
        if one.kind != RULING or one.id in gone or one.content.get("finding"):
            continue
        strokes, under = _penalty(one)
        deducted = _deducted(one)
        ball = names.get(one.told.get("player", ""), "")
        others = tuple(name for name in names.values() if name != ball) if ball else ()
        partner, struck = _partners(one, ball, others) if ball else (0, ())
        if strokes or under or deducted or partner or struck or _not_known(one):
            hole, words = one.told.get("hole"), str(one.content.get("headline", "")).rstrip(".")
            found.append(Beside(one.id, hole, strokes, words, under, deducted, ball, partner, struck))
    return tuple(found)


def _penalty(ruling: Kept) -> tuple[int, str]:
    """Return the penalty strokes of a ruling, and the provision under which it disqualifies; empty where it does not.

    Strokes are those the story comes to, with relief that was or must be taken at a price.
    """
    given = ruling.content.get("instead")
    if given is not None:
        rules = ruling.content.get("rules") or ("1.3c",)
        return given.get("penalty_strokes") or 0, str(rules[0]) if given.get("disqualified") else ""
    outcome = ruling.content.get("outcome") or {}
    combined = outcome.get("combined") or {}
    own = [one for one in combined.get("penalties") or () if one.get("who") in _OWN]
    counted = outcome.get("count") or {}
    strokes = counted.get("total")
    if strokes is None:
        strokes = sum(one.get("strokes", 0) for one in own if one.get("kind") in _STROKES)
    out = next((one for one in own if one.get("kind") == PenaltyKind.DISQUALIFICATION.value), None)
    return strokes, "" if out is None else str(out.get("citation", ""))


_OF_PARTNERS = frozenset({Who.EACH_PARTNER.value, Who.OTHER_PARTNER.value, Who.SIDE.value})
"""Those whose penalty is (also) one of the partner of the player who is ruled on."""


def _partners(ruling: Kept, ball: str, others: tuple[str, ...]) -> tuple[int, tuple[str, ...]]:
    """Return the strokes that a ruling gives the other partners, and the balls that have no score on the hole."""
    if ruling.content.get("instead") is not None:
        return 0, ()
    combined = (ruling.content.get("outcome") or {}).get("combined") or {}
    penalties = list(combined.get("penalties") or ())
    theirs = [one for one in penalties if one.get("who") in _OF_PARTNERS]
    out = PenaltyKind.DISQUALIFICATION_FOR_HOLE.value
    struck = [ball] if any(one.get("kind") == out and one.get("who") in _OWN for one in penalties) else []
    struck += others if any(one.get("kind") == out for one in theirs) else ()
    return sum(one.get("strokes", 0) for one in theirs if one.get("kind") in _STROKES), tuple(struck)


def _deducted(ruling: Kept) -> int:
    """Return the points or holes that a ruling takes off the total of the round (Rules 21.1c and 21.3c until 2022)."""
    if ruling.content.get("instead") is not None:
        return 0
    combined = (ruling.content.get("outcome") or {}).get("combined") or {}
    own = [one for one in combined.get("penalties") or () if one.get("who") in _OWN]
    return sum(one.get("strokes", 0) for one in own if one.get("kind") in _OFF_THE_TOTAL)


def _not_known(ruling: Kept) -> bool:
    """Whether a ruling may bear a penalty that the entry does not tell."""
    if ruling.content.get("instead") is not None:
        return False
    if ruling.content.get("otherwise"):
        return True
    acts = (ruling.content.get("case") or {}).get("incidents") or ()
    relief = ((ruling.content.get("outcome") or {}).get("combined") or {}).get("relief") or ()
    return not any(one.get("option") for one in acts) and any(one.get("penalty") for one in relief)
