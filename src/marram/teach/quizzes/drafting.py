"""A question as it is drafted: a situation and rulings to choose from, exactly one of them right."""

from dataclasses import dataclass, replace
from functools import cache

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.finding_of import finding_of
from marram.rules.findings import Finding
from marram.rules.ruling import Action
from marram.teach.quizzes.apart import (
    MAY_BE_TAKEN_AWAY,
    differs_by_price_of_relief,
    is_allowed_too,
    told_apart,
)
from marram.teach.quizzes.believable import is_believable
from marram.teach.quizzes.given_away import gives_itself_away
from marram.teach.quizzes.near import Near, near_rulings
from marram.teach.quizzes.of_incident import comes_to_one_thing, findings_of
from marram.teach.quizzes.prices_of_relief import at_several_prices, priced_apart
from marram.teach.quizzes.saying import (
    FURTHER_RELIEF,
    SAID_WITH_FINDING,
    SCORED_ALONE,
    decided_by_finding,
    names_others,
    of_the_player,
    said_as_answer,
)
from marram.teach.quizzes.standing_out import BORNE, OF_FINDINGS, Mark, marks
from marram.teach.situations.situation import Situation
from marram.words.headline import headline
from marram.words.messages import term
from marram.words.texts import text

MOST_ANSWERS = 4
FEWEST_ANSWERS = 3
Told = tuple[str, FormOfPlay, frozenset[tuple[str, str]]]
"""What tells a situation from others: the incident, the form of play, the facts."""
ASKS_FOR_SCORE = frozenset({"four_ball_hole", "maximum_score_hole", "par_bogey_hole", "stableford_points"})
"""Incidents of which a penalty, or what is to be done next, is no answer: how many points."""
UNASKED = frozenset(
    {
        "ball_broke",
        "ball_in_two_areas",
        "ball_to_be_replaced",
        "breach_by_another_kept_quiet",
        "conduct",
        "four_ball_hole_completed",
        "hole_or_match_result",
        "played_on_after_concession",
        "play_off_not_completed",
        "ruling_requested_in_match",
        "ruling_was_wrong",
        "team_player_disqualified",
    }
)
"""Incidents whose answers are told with the situation, or mean the same in other words.

Of a ball in two areas, it is told which of them it touches: the area that is named is the answer (Rule 2.2c). A request for
a ruling in a match is in time or not: that is one wrong answer, and two are needed. Of a hole or a match it is told how it
ended, and by that who won it (Rule 3.2a). Where a ball broke or has to be replaced, or another's breach was kept quiet, nothing
is ever penalised, and only penalties lie near.
"""
ONLY_BY_FINDING = frozenset({"decided_among_players", "two_balls"})
"""Incidents of which, where nothing is penalised, only what is found can be asked: what the play cost that it was about, is not told."""
RELIEF_UNDER_WAY = frozenset({"back_on_the_line_drop", "ball_dropped", "ball_placed_after_two_drops", "crossing_point_was_wrong", "dropped_in_penalty_area", "dropped_once_more", "dropped_with_disability", "mistake_in_relief_noticed", "relief_ball_moved_by_nature"})  # fmt: skip
"""Incidents told while relief is being taken, which may have its own price: a stroke more or less is then no wrong answer."""
OF_ONE_FORM = frozenset({Finding.HOLE_MAY_BE_GIVEN_UP, Finding.MATCH_LIMIT_ONLY, Finding.MATCH_PLAY_ONLY, Finding.NO_CARD_IN_MATCH, Finding.NO_PLAY_OFF_IN_MATCH, Finding.NOT_IN_MATCH_PLAY, Finding.ONE_BALL_IN_EACH_MATCH})  # fmt: skip
"""Findings that name a form of play: in another one they answer nothing."""
_OVER_AND_OPEN = {Finding.HOLE_MAY_BE_GIVEN_UP, Finding.HOLE_GOES_ON}
"""Until the player has holed out or stopped, both are true in Stableford, Maximum Score and Par/Bogey (Rule 6.5)."""
_ASKED_ANYHOW = frozenset({"accumulated_loose_impediments", "animal_dung", "ant_hill"})
"""Incidents of Local Rules by which something may be taken away: few other rulings lie near them."""
_CARDS = frozenset(
    {
        Finding.CARD_HOLDS,
        Finding.COMMITTEE_CORRECTS,
        Finding.LOWER_SCORE_COUNTS,
        Finding.PARTNERS_SCORE_COUNTS,
        Finding.SCORE_STANDS,
    }
)
"""What is found of a card that costs nothing: none of them is wrong where another is right."""
_AGREEMENTS = frozenset({Finding.AGREEMENT_DOES_NOT_BIND, Finding.CALL_OFF_AGREEMENT, Finding.NO_AGREEMENT})
"""An agreement that has to be called off does not stand either (Rule 1.3b(1))."""
_SCORES_OF_SIDE = frozenset({Finding.PARTNERS_SCORE_COUNTS, Finding.LOWER_SCORE_COUNTS})
"""Where one partner alone completed the hole, that score is the lower one too (Rule 23.2a)."""
_NOTHING_CONCEDED = frozenset({Finding.CONCESSION_VOID, Finding.MATCH_STANDS})
"""After a concession without effect the match stands as played."""
_FIRST_TEE = {Finding.ORDER_OF_DRAW, Finding.HONOUR_BY_LOT}
"""Where there is no draw, the honour on the first tee goes by agreement or by lot (Rule 6.4a(1)), and no draw is told of."""
_TURNS = {Finding.TURN_BY_ORIGINAL, Finding.TURN_BY_PREVIOUS_STROKE}
"""Spots by which it goes whose ball is the farthest from the hole: that it plays first is no wrong answer (Rule 6.4d(1))."""
_WON = {Finding.HOLE_WON, Finding.HOLE_WON_BY_OTHER}


@dataclass(frozen=True, slots=True)
class Answer:
    """One answer that can be chosen.

    Attributes:
        words: the ruling, in what it costs and what is to be done next; what it finds would give it away.
        headline: the ruling in one line, with what it finds.
        near: what would have to be otherwise for it to be right; ``None`` for the right one.
    """

    words: str
    headline: str
    near: Near | None = None


@dataclass(frozen=True, slots=True)
class Question:
    """A situation, its answers as they are shown, and the place of the right one."""

    situation: Situation
    answers: tuple[Answer, ...]
    right: int


def told_in(one: Situation) -> Told:
    """Return what tells a situation from others: not who it happens to, nor on which hole."""
    return one.incident, one.form, frozenset((name, str(answer)) for name, answer in one.facts.items())


def draft(one: Situation) -> Question | None:
    """Return the question about a situation, the right answer first; ``None`` where too few other rulings lie near it.

    Of the same facts it is the same question, so that whoever reads it reads it for all.

    Where nothing is penalised and the finding is what is asked for (whose turn, how many points), the answers are findings.
    """
    if not may_be_asked(one.incident) or gives_itself_away(one):
        return None
    if at_several_prices(one.ruling) and not priced_apart(one.ruling):
        return None  # which relief costs what could not be said shortly
    if asks_for_finding(one.incident):
        return _drafted(one, by_finding=True)
    if decided_by_finding(one.ruling, one.form):
        found = _drafted(one, by_finding=True)
        if found is not None or one.incident in ONLY_BY_FINDING:
            return found
    return _drafted(one, by_finding=False)


@cache
def may_be_asked(name: str) -> bool:
    """Whether a question can be asked about an incident: its answers are not told with it, and there are enough of them."""
    if name in UNASKED:
        return False
    return not asks_for_finding(name) or len(findings_of(name)) >= FEWEST_ANSWERS


@cache
def asks_for_finding(name: str) -> bool:
    """Whether of an incident only what is found can be asked: whatever is answered, it comes to one thing without penalty."""
    return name in ASKS_FOR_SCORE or comes_to_one_thing(name)


def _drafted(one: Situation, *, by_finding: bool) -> Question | None:
    right = Answer(said_as_answer(one, one.ruling, one.form, by_finding), of_the_player(one, one.headline))
    chosen: dict[str, Answer] = {}
    held: Answer | None = None
    kept = [(one.ruling, one.form)]
    for near in near_rulings(one):
        if by_finding and not _another_finding(one, near):
            continue
        if (
            near.misjudged
            and MAY_BE_TAKEN_AWAY.intersection(one.ruling.notes)
            and one.incident not in _ASKED_ANYHOW
        ):
            continue  # nobody takes it for dear to move what may be moved
        if finding_of(near.ruling) in SCORED_ALONE and not (by_finding and near.form is one.form):
            continue  # such a score names its form of play
        if one.incident in SAID_WITH_FINDING and near.incident:
            continue  # another incident finds something else
        if not by_finding and is_allowed_too(one.ruling, near.ruling):
            continue
        further = one.incident in FURTHER_RELIEF and one.ruling.penalties == near.ruling.penalties
        if (
            one.incident in RELIEF_UNDER_WAY
            and not further
            and differs_by_price_of_relief(one.ruling, near.ruling)
        ):
            continue
        said = said_as_answer(one, near.ruling, near.form, by_finding)
        if said in {right.words, *chosen} or not is_believable(one, near):
            continue
        ruled = (near.ruling, near.form)
        if by_finding or all(told_apart(ruled, other) for other in kept):
            found = Answer(said, of_the_player(one, headline(near.ruling, near.form)), near)
            last = len(chosen) == MOST_ANSWERS - 2
            if last and _marks(one, right, [*chosen.values(), found], by_finding):
                held = held or found
                continue
            kept.append(ruled)
            chosen[said] = found
        if len(chosen) == MOST_ANSWERS - 1:
            break
    if held is not None and len(chosen) < MOST_ANSWERS - 1:
        chosen[held.words] = held
    if len(chosen) < FEWEST_ANSWERS - 1 or _marks(one, right, [*chosen.values()], by_finding) - BORNE:
        return None
    answers = _without_playing_on(_with_names(one, [right, *chosen.values()], by_finding))
    return Question(one, tuple(answers), 0)


def _with_names(one: Situation, answers: list[Answer], by_finding: bool) -> list[Answer]:
    """Return answers that say of each penalty whose it is, where one of them names somebody else."""
    ruled = [
        (one.ruling, one.form) if each.near is None else (each.near.ruling, each.near.form)
        for each in answers
    ]
    if by_finding or not names_others(ruling for ruling, _ in ruled):
        return answers
    return [
        replace(answer, words=said_as_answer(one, ruling, form, by_finding, whose=True))
        for answer, (ruling, form) in zip(answers, ruled, strict=True)
    ]


def _marks(one: Situation, right: Answer, wrong: list[Answer], by_finding: bool) -> frozenset[Mark]:
    found = marks(one, right.words, [(each.words, each.near) for each in wrong if each.near is not None])
    return found & OF_FINDINGS if by_finding else found


def _without_playing_on(answers: list[Answer]) -> list[Answer]:
    """Return answers without "play on" where none says anything else to be done: a penalty alone would stand out among them."""
    tail = text("quizzes.answer", total="", next=term(Action.PLAY_ON, ".short"))
    shorter = [one.words.removesuffix(tail) for one in answers]
    if any(text("quizzes.answer", total="", next="") in words for words in shorter):
        return answers
    return [replace(one, words=words) for one, words in zip(answers, shorter, strict=True)]


def _another_finding(one: Situation, near: Near) -> bool:
    """Whether a near ruling is a finding too, of the same incident; what is found of a match only is none elsewhere."""
    if near.incident or near.misjudged:
        return False
    if not asks_for_finding(one.incident) and not decided_by_finding(near.ruling, near.form):
        return False
    if finding_of(near.ruling) is Finding.NO_CARD_IN_MATCH:
        return False  # of a card nothing is told where it decides nothing
    if {finding_of(one.ruling), finding_of(near.ruling)} in (_WON, _OVER_AND_OPEN, _FIRST_TEE):
        return False  # of whom a hole is said to be won, an answer does not say
    if finding_of(one.ruling) in _TURNS and finding_of(near.ruling) is Finding.FARTHER_FIRST:
        return False
    if any(
        {finding_of(one.ruling), finding_of(near.ruling)} <= alike
        for alike in (_CARDS, _SCORES_OF_SIDE, _NOTHING_CONCEDED, _AGREEMENTS)
    ):
        return False
    if one.incident == "four_ball_card" and finding_of(near.ruling) in _SCORES_OF_SIDE:
        return False  # what holds of every hole in Four-Ball (Rule 23.2b) is no wrong answer
    return finding_of(near.ruling) not in OF_ONE_FORM or near.form is one.form
