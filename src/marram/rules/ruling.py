"""What a provision can end in: a ruling, a judgement, another incident, or "not covered".

All are plain data; what is a penalty stands in :mod:`marram.rules.penalty`. Words for people are made from them in :mod:`marram.words`, never here. What a ruling
request returns beside them, the next question, stands in :mod:`marram.rules.result`.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from enum import Enum
from typing import Any, Self

from marram.rules.penalty import Penalty, Who, disqualified, general, strokes
from marram.rules.relief_option import ReliefOption


class Action(Enum):
    """What happens next with the ball."""

    PLAY_AS_IT_LIES = "play_as_it_lies"
    REPLACE = "replace"
    """Replace the ball on its original spot (Rule 14.2), which is estimated if not known."""
    TAKE_RELIEF = "take_relief"
    """Use one of the relief options listed; playing the ball as it lies is not allowed."""
    PLAY_AS_IT_LIES_OR_TAKE_RELIEF = "play_as_it_lies_or_take_relief"
    """The player chooses: as it lies, or one of the relief options listed."""
    DROP = "drop"
    """Drop a ball in the relief area already determined."""
    DROP_AGAIN = "drop_again"
    """Drop again in the same relief area."""
    PLACE = "place"
    """Place a ball on the spot the notes describe."""
    REPLAY = "replay"
    """Play again from where that stroke was made."""
    PLAY_FROM_TEEING_AREA = "play_from_teeing_area"
    PLAY_PROVISIONAL = "play_provisional"
    """Continue with the provisional ball."""
    PLAY_OTHER_BALL = "play_other_ball"
    """Continue with the other ball that is in play, as the notes describe."""
    LIFT = "lift"
    """Lift the ball out of the way; the notes say what follows."""
    GO_ON_WITH_RELIEF = "go_on_with_relief"
    """The ball has been lifted to take relief: go on with that relief, whichever it is."""
    PLAY_ON = "play_on"
    """Nothing more to do with the ball; the play of the hole continues."""
    STOP_PLAY = "stop_play"
    """Stop, and stay stopped until play may be resumed."""
    HOLED = "holed"
    """The ball is holed; the hole is complete."""
    HOLE_OVER = "hole_over"
    """The play of this hole is over for the player (lost, conceded, or picked up)."""
    CORRECT_MISTAKE = "correct_mistake"
    """Correct the mistake first, as the notes and corrections describe."""


class Stroke(Enum):
    """Whether a stroke already made counts."""

    COUNTS = "counts"
    DOES_NOT_COUNT = "does_not_count"
    OPPONENT_MAY_CANCEL = "opponent_may_cancel"
    """Match play: the opponent may promptly cancel it; otherwise it counts."""


class WhichBall(Enum):
    """Which ball may be used."""

    ORIGINAL = "original"
    """The original ball, unless it cannot be recovered with reasonable effort in a few seconds (Rule 14.2a)."""
    ORIGINAL_OR_ANOTHER = "original_or_another"
    ANOTHER = "another"
    """A ball other than the original, which is in pieces (Rule 4.2b)."""


class Deadline(Enum):
    """Until when a mistake may be corrected."""

    BEFORE_STROKE = "before_stroke"
    """Before making a stroke at the ball."""
    BEFORE_NEXT_HOLE = "before_next_hole"
    """Before a stroke to begin another hole; on the final hole, before returning the scorecard."""
    BEFORE_SCORECARD = "before_scorecard"
    BEFORE_RESULT = "before_result"
    """Before the result of the match is final, or the competition closed."""
    PROMPTLY = "promptly"


@dataclass(frozen=True, slots=True)
class Correction:
    """What putting a mistake right takes: what to do (a note key), until when, and what follows if not."""

    what: str
    until: Deadline
    otherwise: Penalty | None = None


@dataclass(frozen=True, slots=True)
class Reason:
    """One fact that led to the ruling, its answer, and the provision that read it.

    ``answers`` holds the answers the branch stands for; a threshold has ``above`` or ``at_most``.
    """

    fact: str
    citation: str
    answers: tuple[Any, ...] = ()
    above: Any = None
    at_most: Any = None


@dataclass(frozen=True, slots=True)
class Ruling:
    """A ruling. Equality ignores ``reasons``: two paths to the same outcome are the same ruling.

    Attributes:
        penalties: every penalty for a breach; the cost of a relief option stands in the option.
        action: what happens next with the ball.
        which_ball: which ball may be used, where it matters.
        relief: the relief options, side by side.
        stroke: whether a stroke already made counts, where that is in question.
        corrections: what putting a mistake right takes, and until when.
        notes: message keys, in order, that add to the procedure.
        cautions: message keys of safety cautions.
        citations: provisions the ruling rests on, the deciding one first.
        reasons: the facts read, in order.
    """

    penalties: tuple[Penalty, ...] = ()
    action: Action | None = None
    which_ball: WhichBall | None = None
    relief: tuple[ReliefOption, ...] = ()
    stroke: Stroke | None = None
    corrections: tuple[Correction, ...] = ()
    notes: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    citations: tuple[str, ...] = ()
    reasons: tuple[Reason, ...] = field(default=(), compare=False)

    def under(self, *citations: str) -> Self:
        """Add provisions the ruling rests on."""
        return replace(self, citations=_joined(self.citations, citations))

    def note(self, *keys: str) -> Self:
        """Add notes to the procedure (message keys)."""
        return replace(self, notes=_joined(self.notes, keys))

    def caution(self, *keys: str) -> Self:
        """Add safety cautions (message keys)."""
        return replace(self, cautions=_joined(self.cautions, keys))

    def next(self, action: Action, which_ball: WhichBall | None = None) -> Self:
        """Set what happens next with the ball."""
        return replace(self, action=action, which_ball=which_ball or self.which_ball)

    def play_as_it_lies(self) -> Self:
        """The ball is played as it lies."""
        return self.next(Action.PLAY_AS_IT_LIES)

    def replace_ball(self) -> Self:
        """The original ball is replaced on its original spot (Rule 14.2)."""
        return self.next(Action.REPLACE, WhichBall.ORIGINAL)

    def stroke_counts(self) -> Self:
        """The stroke made counts."""
        return replace(self, stroke=Stroke.COUNTS)

    def stroke_does_not_count(self) -> Self:
        """The stroke made does not count."""
        return replace(self, stroke=Stroke.DOES_NOT_COUNT)

    def with_options(self, *options: ReliefOption, may_play_as_it_lies: bool = True) -> Self:
        """Add relief options; say whether the ball may also be played as it lies."""
        action = Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF if may_play_as_it_lies else Action.TAKE_RELIEF
        return replace(self, relief=self.relief + options, action=action)

    def correct(self, what: str, until: Deadline, otherwise: Penalty | None = None) -> Self:
        """Add what putting a mistake right takes."""
        return replace(self, corrections=(*self.corrections, Correction(what, until, otherwise)))

    def also(self, *penalties: Penalty) -> Self:
        """Add penalties."""
        cited = tuple(penalty.citation for penalty in penalties)
        return replace(self, penalties=self.penalties + penalties, citations=_joined(self.citations, cited))


@dataclass(frozen=True, slots=True)
class Judgement:
    """The Rules leave this to the referee's or the Committee's judgement.

    Attributes:
        citation: the provision that leaves it so.
        decided_by: who decides.
        criteria: message keys of what to weigh.
        outcomes: the rulings it can end in.
        reasons: the facts read, in order.
    """

    citation: str
    decided_by: str
    criteria: tuple[str, ...]
    outcomes: tuple[Ruling, ...] = ()
    reasons: tuple[Reason, ...] = field(default=(), compare=False)


@dataclass(frozen=True, slots=True)
class NotCovered:
    """Said plainly: this is not computed. ``why`` is a message key."""

    why: str
    citation: str = ""
    reasons: tuple[Reason, ...] = field(default=(), compare=False)


@dataclass(frozen=True, slots=True)
class HandOver:
    """What happened is rather another incident, which is ruled on there with the answers given so far.

    Attributes:
        incident: the name of that incident.
        citation: the provision that tells the two apart.
        facts: what the answers given say in the terms of that incident, by fact name, as tokens.
        reasons: the facts read, in order.
    """

    incident: str
    citation: str
    facts: tuple[tuple[str, str], ...] = ()
    reasons: tuple[Reason, ...] = field(default=(), compare=False)

    def carry(self, given: Mapping[str, Any]) -> dict[str, Any]:
        """Return the facts to rule on that incident with: those given here, and what they say there."""
        return {**given, **dict(self.facts)}


Outcome = Ruling | Judgement | NotCovered | HandOver
"""Everything a provision can end in."""


def no_penalty(citation: str) -> Ruling:
    """Begin a ruling without penalty."""
    return Ruling(citations=(citation,))


def penalty(count: int, citation: str, who: Who = Who.PLAYER) -> Ruling:
    """Begin a ruling with a penalty of ``count`` strokes."""
    return Ruling().also(strokes(count, citation, who))


def general_penalty(citation: str, who: Who = Who.PLAYER) -> Ruling:
    """Begin a ruling with the general penalty."""
    return Ruling().also(general(citation, who))


def disqualification(citation: str, who: Who = Who.PLAYER) -> Ruling:
    """Begin a ruling with disqualification."""
    return Ruling().also(disqualified(citation, who))


def _joined(before: tuple[str, ...], added: tuple[str, ...]) -> tuple[str, ...]:
    return before + tuple(dict.fromkeys(one for one in added if one not in before))
