"""Facts about what lies between the incidents of one situation (Rules 1.3c(4), 6.1b, 6.3c, 14.5 and 14.7b)."""

from enum import Enum

from marram.rules.engine.fact import Fact, choice, yes_no
from marram.rules.relief_option import ReliefKind, ReliefOption

MOST_INCIDENTS = 6
"""How many incidents of one situation can be combined at once."""

_GAPS = range(1, MOST_INCIDENTS)


class EarlierMistake(Enum):
    """Whether a mistake that must be corrected had been, when something else happened."""

    CORRECTED = "corrected"
    SAME_BALL = "same_ball"
    """Not yet, and what happened was solely a matter of playing the ball whose strokes do not count."""
    SOMETHING_ELSE = "something_else"
    """Not yet, but what happened had nothing to do with playing that ball."""


intervening_event = tuple(
    yes_no(
        f"intervening_event_{gap}",
        f"Between incidents {gap} and {gap + 1}: was a stroke completed, or did the player become aware of a breach?",
        help="Being told of a breach, knowing of it or being unsure about it all count as being aware.",
        source="1.3c(4)",
    )
    for gap in _GAPS
)
"""Whether an intervening event separates an incident from the next."""

acts_related = tuple(
    yes_no(
        f"acts_related_{gap}",
        f"Does the breach of incident {gap + 1} belong to the one before it (the same act, or close to it in time and purpose)?",
        help="Look at how close the acts are in purpose, time and place, and at whether they breach the same Rule.",
        source="1.3c(4) (2019)",
    )
    for gap in _GAPS
)
"""Edition 2019: whether a breach and the one before it come from a single act or related acts."""

moved_ball_not_replaced_before = tuple(
    yes_no(
        f"moved_ball_not_replaced_{gap}",
        f"Is incident {gap + 1} a stroke at the ball moved just before it, made without replacing that ball?",
        help="If so, moving it and not replacing it cost one general penalty in total.",
        source="1.3c(4) Exception",
    )
    for gap in _GAPS
)
"""Whether playing from a wrong place was the failure to replace the ball moved just before."""

earlier_mistake = tuple(
    choice(
        f"earlier_mistake_{gap}",
        f"Before incident {gap + 1} a mistake had to be corrected. Had that been done when incident {gap + 1} happened?",
        {
            EarlierMistake.CORRECTED: "yes: play had gone on with the right ball, or from the right place",
            EarlierMistake.SAME_BALL: "no, and it came solely from playing the ball whose strokes do not count",
            EarlierMistake.SOMETHING_ELSE: "no, but it had nothing to do with playing that ball",
        },
        help="Such a mistake: a wrong ball, a serious breach, a stroke from outside the teeing area, a wrong order.",
        source="6.1b(2), 6.3c(1), 14.7b(1), 22.3",
    )
    for gap in _GAPS
)
"""Whether a mistake that must be corrected before the next hole had been, at the next incident."""

with_ball_corrected = tuple(
    yes_no(
        f"with_ball_corrected_{gap}",
        f"Did the penalty of incident {gap} come only from acts with the ball wrongly put down and later corrected?",
        help="For example moving that ball. Not if the act also helps the ball played instead, such as a lie improved.",
        source="14.5c",
    )
    for gap in _GAPS
)
"""Whether an incident's penalty came solely from acts with a ball that was then lifted to correct a mistake."""

ball_settled = tuple(
    yes_no(
        f"ball_settled_{gap}",
        f"By the end of incident {gap + 1}, had the ball been played, or put where the ruling before requires?",
        help="Replaced, dropped or placed as the earlier incident requires, or a stroke made at it. If not, that still stands.",
        source="14.4, 14.5a",
    )
    for gap in _GAPS
)
"""Whether what an earlier incident requires or allows for the ball had been done, or overtaken by a stroke."""


class Taken(Enum):
    """What the player did with the relief that was offered: a member for each kind of relief, and two more."""

    NOTHING_YET = "nothing_yet"
    """No ball has been put into play, nor played as it lies."""
    AS_IT_LIES = "as_it_lies"
    STROKE_AND_DISTANCE = ReliefKind.STROKE_AND_DISTANCE.value
    BACK_ON_THE_LINE = ReliefKind.BACK_ON_THE_LINE.value
    LATERAL = ReliefKind.LATERAL.value
    FREE = ReliefKind.FREE.value
    MAXIMUM_AVAILABLE = ReliefKind.MAXIMUM_AVAILABLE.value
    EXTENDED = ReliefKind.EXTENDED.value
    DROPPING_ZONE = ReliefKind.DROPPING_ZONE.value
    UNDER_WHERE_IT_CAME_TO_REST = ReliefKind.UNDER_WHERE_IT_CAME_TO_REST.value
    PROVISIONAL = ReliefKind.PROVISIONAL.value
    NEAREST_SPOT = ReliefKind.NEAREST_SPOT.value
    PREFERRED_LIE = ReliefKind.PREFERRED_LIE.value
    REPLAY = ReliefKind.REPLAY.value
    COMPLETE_RELIEF_OUTSIDE = ReliefKind.COMPLETE_RELIEF_OUTSIDE.value
    BACK_ON_THE_LINE_OUTSIDE_BUNKER = "back_on_the_line_outside_bunker"
    """Rule 19.3b: out of the bunker, for two strokes."""
    LAST_STROKE_OUTSIDE_PENALTY_AREA = "last_stroke_outside_penalty_area"
    """Rule 17.2: back where the last stroke from outside the penalty area was made."""
    BACK_ON_THE_LINE_FROM_PENALTY_AREA = "back_on_the_line_from_penalty_area"
    """Rule 17.2b: on the line through where the ball first went into the penalty area."""
    LATERAL_FROM_PENALTY_AREA = "lateral_from_penalty_area"
    """Rule 17.2b: beside where the ball first went into the penalty area."""


def taken_as(option: ReliefOption) -> Taken:
    """Return how an option is named where it was taken: options of one kind at different places have their own name."""
    if option.citation.startswith("17.2"):
        return _FROM_PENALTY_AREA[option.kind]
    if option.citation == "19.3b":
        return Taken.BACK_ON_THE_LINE_OUTSIDE_BUNKER
    return Taken(option.kind.value)


_FROM_PENALTY_AREA = {
    ReliefKind.STROKE_AND_DISTANCE: Taken.LAST_STROKE_OUTSIDE_PENALTY_AREA,
    ReliefKind.BACK_ON_THE_LINE: Taken.BACK_ON_THE_LINE_FROM_PENALTY_AREA,
    ReliefKind.LATERAL: Taken.LATERAL_FROM_PENALTY_AREA,
}


option_taken = tuple(
    choice(
        f"option_taken_{act}",
        f"After incident {act}: what did the player do of what could be done?",
        {
            Taken.NOTHING_YET: "nothing yet: no ball was dropped or placed, and the ball was not played",
            Taken.AS_IT_LIES: "played the ball as it lay",
            Taken.STROKE_AND_DISTANCE: "went back under stroke and distance",
            Taken.BACK_ON_THE_LINE: "took relief back on the line",
            Taken.LATERAL: "took lateral relief",
            Taken.FREE: "took free relief",
            Taken.MAXIMUM_AVAILABLE: "took maximum available relief",
            Taken.EXTENDED: "took the alternative to stroke and distance",
            Taken.DROPPING_ZONE: "dropped in the dropping zone",
            Taken.UNDER_WHERE_IT_CAME_TO_REST: "dropped or placed under where the ball had come to rest",
            Taken.PROVISIONAL: "went on with the provisional ball",
            Taken.NEAREST_SPOT: "placed on the nearest spot that would do",
            Taken.PREFERRED_LIE: "placed for a preferred lie, or within reach of a mobility device",
            Taken.REPLAY: "played the stroke again",
            Taken.COMPLETE_RELIEF_OUTSIDE: "took complete relief outside for a stroke",
            Taken.BACK_ON_THE_LINE_OUTSIDE_BUNKER: "took relief back on the line outside the bunker, for two strokes",
            Taken.LAST_STROKE_OUTSIDE_PENALTY_AREA: "went back to where the last stroke from outside the penalty area was made",
            Taken.BACK_ON_THE_LINE_FROM_PENALTY_AREA: "went back on the line to where the ball went into the penalty area",
            Taken.LATERAL_FROM_PENALTY_AREA: "took lateral relief where the ball went into the penalty area",
        },
        help="A ball wrongly dropped or placed under an option was put into play under it all the same.",
        source="1.3c(4), 14.3, 14.4",
    )
    for act in range(1, MOST_INCIDENTS + 1)
)
"""Which of the options that a ruling offers the player took: its strokes count, whatever happens next."""


class StoryBall(Enum):
    """The balls that one story can be about; each keeps its name through the story."""

    IN_PLAY = "in_play"
    """The ball that the player is playing the hole with: the original, or one put in play for it."""
    PROVISIONAL = "provisional"
    SECOND_PROVISIONAL = "second_provisional"
    OTHER_PLAYERS = "other_players"
    """A ball of another player: hit, moved, lifted or played in the story."""


about_ball = tuple(
    choice(
        f"about_ball_{act}",
        f"Incident {act}: which ball was it about?",
        {
            StoryBall.IN_PLAY: "the original ball, or the one in play for it; or it had nothing to do with one ball alone",
            StoryBall.PROVISIONAL: "the provisional ball, and it came solely from playing that ball",
            StoryBall.SECOND_PROVISIONAL: "a second provisional ball, and it came solely from playing that ball",
            StoryBall.OTHER_PLAYERS: "a ball of another player",
        },
        help="What comes solely from playing a provisional ball does not count once that ball is abandoned.",
        source="18.3c(3)",
    )
    for act in range(1, MOST_INCIDENTS + 1)
)
"""Which of the balls of the story an incident was about."""


class AfterHole(Enum):
    """When something happened that is told after the hole was completed."""

    BEFORE = "before"
    """Before: it only came to light, or was only told, afterwards."""
    AFTER = "after"
    """On the hole that was completed, with nothing left to play there (Rule 6.5)."""
    LATER_HOLE = "later_hole"


after_hole = tuple(
    choice(
        f"after_hole_{gap}",
        f"Incident {gap + 1} is told after the hole was completed. When did it happen?",
        {
            AfterHole.BEFORE: "before the hole was completed: it is only told, or came to light, afterwards",
            AfterHole.AFTER: "after the hole was completed, still on that hole",
            AfterHole.LATER_HOLE: "on a later hole",
        },
        help="Once a player has holed out, has a stroke conceded or the result of the hole is decided, what is done with that ball costs nothing there.",
        source="6.5",
    )
    for gap in _GAPS
)
"""When something was done with the ball that is told after the hole was completed."""

play_resumed = tuple(
    yes_no(
        f"play_resumed_{gap}",
        f"Play had stopped. Had it been resumed, as the Committee or the players said, before the stroke of incident {gap + 1}?",
        help="While play is stopped, no stroke is made, but for a hole that may be finished after a normal suspension.",
        source="5.7b, 5.7c",
    )
    for gap in _GAPS
)
"""Whether play that an act tells as stopped had been resumed when a later act was a stroke."""

same_provisional = tuple(
    yes_no(
        f"same_provisional_{act}",
        f"Incident {act}: is the provisional ball the one that the story had put in play before?",
        help="If so, its stroke and distance counts once. Not if it is a further provisional ball.",
        source="18.3c(2)",
    )
    for act in range(1, MOST_INCIDENTS + 1)
)
"""Whether a provisional ball that comes into play is one already told of."""

BETWEEN: tuple[Fact[bool] | Fact[EarlierMistake] | Fact[Taken] | Fact[StoryBall] | Fact[AfterHole], ...] = (
    *intervening_event,
    *acts_related,
    *moved_ball_not_replaced_before,
    *earlier_mistake,
    *with_ball_corrected,
    *ball_settled,
    *option_taken,
    *about_ball,
    *same_provisional,
    *after_hole,
    *play_resumed,
)
"""Every fact that lies between two incidents of a story, or says what the player chose after one."""
