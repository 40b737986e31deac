"""One question: a situation and rulings to choose from, exactly one of them right."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache
from random import Random

from marram.errors import InputError
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.finding_of import finding_of
from marram.rules.findings import Finding
from marram.rules.ruling import Action, Ruling
from marram.said import said
from marram.teach.quizzes.apart import (
    MAY_BE_TAKEN_AWAY,
    differs_by_price_of_relief,
    is_allowed_too,
    step_families,
    told_apart,
)
from marram.teach.quizzes.believable import comes_to_one_thing, findings_of, is_believable, offers_free_relief
from marram.teach.quizzes.given_away import gives_itself_away
from marram.teach.quizzes.near import Near, near_rulings
from marram.teach.situations.sampling import situations
from marram.teach.situations.situation import Situation
from marram.words.headline import costs_something, headline, next_words, total_words
from marram.words.messages import term
from marram.words.texts import capital, text

MOST_ANSWERS = 4
FEWEST_ANSWERS = 3
MOST_IN_VAIN = 60
"""Situations drawn one after the other of which none gives a question, before it is said that none can (own choice)."""
ASKS_FOR_SCORE = frozenset({"four_ball_hole", "maximum_score_hole", "par_bogey_hole", "stableford_points"})
"""Incidents of which a penalty, or what is to be done next, is no answer: how many points."""
UNASKED = frozenset(
    {
        "ball_in_two_areas",
        "conduct",
        "played_on_after_concession",
        "play_off_not_completed",
        "ruling_requested_in_match",
        "ruling_was_wrong",
        "team_player_disqualified",
    }
)
"""Incidents whose answers are told with the situation, or mean the same in other words.

Of a ball in two areas, it is told which of them it touches: the area that is named is the answer (Rule 2.2c). A request for
a ruling in a match is in time or not: that is one wrong answer, and two are needed.
"""
IN_SHORT = {
    "correct_wrong_ball_when_lost": "under_stroke_and_distance",
    "put_relief_right": "put_down_right",
}
"""Mistakes that are put right, by what answers say of them: in full they would stand out by their length."""
ONLY_BY_FINDING = frozenset({"decided_among_players", "two_balls"})
"""Incidents of which, where nothing is penalised, only what is found can be asked: what the play cost that it was about, is not told."""
TAKEN_UP = 0.4
"""Of questions whose right answer costs nothing, how many are asked: about half of all rulings do, and most wrong answers
do not, so that whoever chose such an answer whatever was told was right in 45 of 100 questions, and is now in 29 (own
choice; one in four is chance)."""
RELIEF_UNDER_WAY = frozenset({"back_on_the_line_drop", "ball_dropped", "ball_placed_after_two_drops", "crossing_point_was_wrong", "dropped_in_penalty_area", "dropped_once_more", "dropped_with_disability", "mistake_in_relief_noticed", "relief_ball_moved_by_nature"})  # fmt: skip
"""Incidents told while relief is being taken, which may have its own price: a stroke more or less is then no wrong answer."""
OF_ONE_FORM = frozenset({Finding.HOLE_MAY_BE_GIVEN_UP, Finding.MATCH_LIMIT_ONLY, Finding.MATCH_PLAY_ONLY, Finding.NO_CARD_IN_MATCH, Finding.NO_PLAY_OFF_IN_MATCH, Finding.NOT_IN_MATCH_PLAY, Finding.ONE_BALL_IN_EACH_MATCH})  # fmt: skip
"""Findings that name a form of play: in another one they answer nothing."""
SCORED_ALONE = frozenset({Finding.HOLE_LOST, Finding.MAXIMUM_SCORE, Finding.NO_POINTS})
"""What a hole comes to where each is scored on its own (Rule 21): as an answer among penalties, for the form of play names it."""
_OVER_AND_OPEN = {Finding.HOLE_MAY_BE_GIVEN_UP, Finding.HOLE_GOES_ON}
"""Until the player has holed out or stopped, both are true in Stableford, Maximum Score and Par/Bogey (Rule 6.5)."""
_SAID_ALREADY = frozenset({Finding.DID_NOT_HELP_PARTNER})
"""Findings that only say again what is told."""
_ASKED_ANYHOW = frozenset({"accumulated_loose_impediments", "animal_dung", "ant_hill"})
"""Incidents of Local Rules by which something may be taken away: few other rulings lie near them."""
_CARDS = frozenset(
    {Finding.CARD_HOLDS, Finding.COMMITTEE_CORRECTS, Finding.PARTNERS_SCORE_COUNTS, Finding.SCORE_STANDS}
)
"""What is found of a card that costs nothing: none of them is wrong where another is right."""
_SCORES_OF_SIDE = frozenset({Finding.PARTNERS_SCORE_COUNTS, Finding.LOWER_SCORE_COUNTS})
"""Where one partner alone completed the hole, that score is the lower one too (Rule 23.2a)."""
_NOTHING_CONCEDED = frozenset({Finding.CONCESSION_VOID, Finding.MATCH_STANDS})
"""After a concession without effect the match stands as played."""
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


def questions(
    seed: int, *, incidents: tuple[str, ...] = (), provision: str = "", level: int | None = None
) -> Iterator[Question]:
    """Yield questions without end, the same for the same seed; the arguments are those of :func:`situations`.

    Raises:
        InputError: of what was asked for no question can be made, as far as was tried; or as for :func:`situations`.
    """
    in_vain = 0
    drawn = situations(seed, incidents=incidents, provision=provision, level=level)
    for number, one in enumerate(drawn):
        lot = Random(f"{seed} {number}")  # noqa: S311 - a seed, no secret
        found = question(one, lot)
        if found is not None and is_taken_up(found, lot):
            yield found
        in_vain = 0 if found is not None else in_vain + 1
        if in_vain == MOST_IN_VAIN:
            raise InputError(
                said(
                    "{count} situations of {incident} were drawn, and no question can be asked of them: too few other "
                    "rulings lie near. Ask about more incidents, another provision or another level.",
                    count=MOST_IN_VAIN,
                    incident=", ".join(incidents) or one.incident,
                )
            )


def is_taken_up(found: Question, lot: Random) -> bool:
    """Whether a question is asked, so that no answer can be taken for the right one because it costs nothing."""
    wrong = [answer.near.ruling for answer in found.answers if answer.near is not None]
    gives_away = not costs_something(found.situation.ruling) and any(costs_something(one) for one in wrong)
    return not gives_away or lot.random() < TAKEN_UP


def question(one: Situation, lot: Random) -> Question | None:
    """Return the question about a situation; ``None`` where too few other rulings lie near it.

    Where nothing is penalised and the finding is what is asked for (whose turn, how many points), the answers are findings.
    """
    if not may_be_asked(one.incident) or gives_itself_away(one):
        return None
    if asks_for_finding(one.incident):
        return _question(one, lot, by_finding=True)
    if decided_by_finding(one.ruling, one.form):
        found = _question(one, lot, by_finding=True)
        if found is not None or one.incident in ONLY_BY_FINDING:
            return found
    return _question(one, lot, by_finding=False)


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


def _question(one: Situation, lot: Random, *, by_finding: bool) -> Question | None:
    right = Answer(_said(one, one.ruling, one.form, by_finding), one.headline)
    chosen: dict[str, Answer] = {}
    free: Answer | None = None
    kept = [(one.ruling, one.form)]
    for near in near_rulings(one, lot):
        if by_finding and not _another_finding(one, near):
            continue
        if (
            near.misjudged
            and MAY_BE_TAKEN_AWAY.intersection(one.ruling.notes)
            and one.incident not in _ASKED_ANYHOW
        ):
            continue  # nobody takes it for dear to move what may be moved
        if near.form is not one.form and finding_of(near.ruling) in SCORED_ALONE:
            continue  # such a score names its form of play
        if not by_finding and is_allowed_too(one.ruling, near.ruling):
            continue
        if one.incident in RELIEF_UNDER_WAY and differs_by_price_of_relief(one.ruling, near.ruling):
            continue
        said = _said(one, near.ruling, near.form, by_finding)
        if said in {right.words, *chosen} or not is_believable(one, near):
            continue
        ruled = (near.ruling, near.form)
        if by_finding or all(told_apart(ruled, other) for other in kept):
            found = Answer(said, headline(near.ruling, near.form), near)
            if (
                not by_finding
                and len(chosen) == MOST_ANSWERS - 2
                and _costs_alone(one.ruling, [*chosen.values(), found])
            ):
                free = free or found
                continue
            kept.append(ruled)
            chosen[said] = found
        if len(chosen) == MOST_ANSWERS - 1:
            break
    if free is not None and len(chosen) < MOST_ANSWERS - 1:
        chosen[free.words] = free
    if len(chosen) < FEWEST_ANSWERS - 1:
        return None
    answers = _without_playing_on([right, *chosen.values()])
    right = answers[0]
    lot.shuffle(answers)
    return Question(one, tuple(answers), answers.index(right))


def _costs_alone(right: Ruling, wrong: list[Answer]) -> bool:
    """Whether the right answer costs something, and no wrong one does: it would stand out."""
    return costs_something(right) and not any(
        costs_something(one.near.ruling) for one in wrong if one.near is not None
    )


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
    if {finding_of(one.ruling), finding_of(near.ruling)} in (_WON, _OVER_AND_OPEN):
        return False  # of whom a hole is said to be won, an answer does not say
    if any(
        {finding_of(one.ruling), finding_of(near.ruling)} <= alike
        for alike in (_CARDS, _SCORES_OF_SIDE, _NOTHING_CONCEDED)
    ):
        return False
    return finding_of(near.ruling) not in OF_ONE_FORM or near.form is one.form


def decided_by_finding(ruling: Ruling, form: FormOfPlay) -> bool:
    """Whether what a ruling finds is all it says: nothing is penalised, nothing is to be done with a ball."""
    silent = ruling.action in {None, Action.PLAY_ON, Action.HOLE_OVER, Action.HOLED}
    if finding_of(ruling) in (*SCORED_ALONE, *_SAID_ALREADY):
        return False
    return silent and total_words(ruling, form).casefold() not in headline(ruling, form).casefold()


def _said(one: Situation, ruling: Ruling, form: FormOfPlay, by_finding: bool) -> str:
    """Return an answer in words: what a ruling comes to and what follows, alike in form, so that none stands out.

    Where free relief is in question, an answer without it says so: else it would only be less complete.
    """
    if by_finding:
        finding = None if decided_by_finding(ruling, form) else finding_of(ruling)
        return headline(ruling, form) if finding is None else text("quizzes.finding", finding=term(finding))
    finding = finding_of(ruling)
    if finding in SCORED_ALONE:
        return text("quizzes.answer_alone", total=term(finding))
    total, then = capital(total_words(ruling, form)), next_words(ruling, form)
    if ruling.action is Action.HOLED:
        then = text("quizzes.holed")
    if "go_on_under_that_rule" in ruling.notes:
        then = text("quizzes.goes_elsewhere")
    if then and ruling.action is Action.CORRECT_MISTAKE and len(ruling.corrections) == 1:
        in_short = IN_SHORT.get(ruling.corrections[0].what)
        then = text(f"quizzes.{in_short}") if in_short else then
    if MAY_BE_TAKEN_AWAY.intersection(ruling.notes):
        is_free = "free" in step_families(ruling)
        then = text("quizzes.taken_away_or_free" if is_free else "quizzes.taken_away")
    if then and not ruling.penalties and _denies_free_relief(one, ruling):
        then = text("quizzes.no_free", next=then)
    return (
        text("quizzes.answer", total=total, next=then) if then else text("quizzes.answer_alone", total=total)
    )


def _denies_free_relief(one: Situation, ruling: Ruling) -> bool:
    """Whether an answer has to say that it leaves no free relief; what may be moved out of the way is no such question."""
    if "free" in step_families(ruling) or not offers_free_relief(one.incident):
        return False
    if ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
        return True
    asked = "free" in step_families(one.ruling) or finding_of(ruling) is Finding.NO_FREE_RELIEF
    return ruling.action is Action.PLAY_AS_IT_LIES and asked
