"""What an act of a story shows by itself, beyond its ruling, so that nothing is asked that the acts have said."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from marram.rules.facts.ball import Area
from marram.rules.penalty import OWN, Penalty, PenaltyKind, Who, strokes
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Action, Ruling
from marram.rules.story.kinds_of_acts import (
    AFTER_A_DROP,
    AFTER_A_STROKE,
    AFTER_THE_STROKE,
    AT_THE_BOUNDARY,
    FAILS_TO_REPLACE,
    INSTEAD_OF_STROKE_AND_DISTANCE,
    NOT_SOLELY_FROM_A_BALL,
    OF_THE_PLAYER_NOT_THE_BALL,
    ORIGINAL_FOUND,
    RELIEF_TAKEN_ANEW,
    REPLACING,
    STROKE_AT_A_DROPPED_BALL_LOOKED_BACK_AT,
    TAKES_STROKE_AND_DISTANCE,
    TELLS_OF_TWO_BALLS,
    WHERE_A_MOVED_BALL_MAY_END,
    WRONG_PLACES,
)


@dataclass(frozen=True, slots=True)
class Deed:
    """One act of a story.

    Attributes:
        ruling: what the Rules say of it by itself.
        incident: the name of what happened; empty where only the ruling is known.
        lay_dry: whether its ball is told to have lain in another area of the course than a penalty area.
        chose_provisional: whether of several ways the player went on with the provisional ball.
        played_on_before: whether strokes were told between the act before and this one.
    """

    ruling: Ruling
    incident: str = ""
    lay_dry: bool = False
    chose_provisional: bool = False
    played_on_before: bool = False

    @property
    def strokes_by_own_side(self) -> bool:
        """Whether it costs the player strokes, or the hole in a match."""
        return any(only_strokes(one) for one in self.ruling.penalties)

    @property
    def plays_the_ball(self) -> bool:
        """Whether it is, or ends in, a stroke at the player's ball; a stroke at a wrong ball is none."""
        if any(citation.startswith("6.3c(1)") for citation in self.ruling.citations):
            return False
        return self.ruling.stroke is not None or any(
            one.citation.startswith("14.7a") for one in self.ruling.penalties
        )

    @property
    def has_a_stroke(self) -> bool:
        """Whether it holds a completed stroke, at whatever ball."""
        return self.plays_the_ball or self.ruling.stroke is not None

    @property
    def breach_before_its_stroke_ended(self) -> bool:
        """Whether its breach came before or in the stroke it holds, not after: a ball deflected is hit by then."""
        return self.has_a_stroke and not any(
            one.citation.startswith(AFTER_THE_STROKE) for one in self.ruling.penalties
        )

    @property
    def follows_a_drop(self) -> bool:
        """Whether it can only have happened after a ball was dropped or placed in taking relief."""
        return self.incident in AFTER_A_DROP or any(
            citation.startswith(("14.3a", "14.3b", "14.3c")) for citation in self.ruling.citations
        )

    @property
    def follows_relief(self) -> bool:
        """Whether it shows that the relief offered just before was taken: a drop, or a wrong place."""
        return self.follows_a_drop or self.incident in WRONG_PLACES

    @property
    def looks_back_at_the_stroke(self) -> bool:
        """Whether, told after the stroke at a dropped ball, it holds no other stroke than that one."""
        return self.incident in STROKE_AT_A_DROPPED_BALL_LOOKED_BACK_AT

    @property
    def is_replacing(self) -> bool:
        """Whether it is the replacing of a ball."""
        return self.incident in REPLACING

    @property
    def follows_a_stroke(self) -> bool:
        """Whether it happens to a ball that was played, so that play had gone on."""
        return self.incident in AFTER_A_STROKE

    @property
    def finds_the_ball(self) -> bool:
        """Whether a ball turns out to be playable: perhaps the one an act before took for lost or out of bounds."""
        found = self.incident == "ball_found_in_time" or self.incident in AT_THE_BOUNDARY
        return found and self.ruling.action is Action.PLAY_AS_IT_LIES

    @property
    def tells_of_two_balls(self) -> bool:
        """Whether a player in doubt had played two balls, or one of them, when it happened (Rule 20.1c(3))."""
        return self.incident in TELLS_OF_TWO_BALLS

    @property
    def concedes(self) -> bool:
        """Whether it concedes a stroke, the hole or the match: nothing is left to be done with the ball."""
        over = (Action.HOLED, Action.HOLE_OVER)
        return self.incident == "concession" and self.ruling.action in over

    @property
    def can_be_between_holes(self) -> bool:
        """Whether it is a breach that needs no ball in play: advice, delay, equipment, conduct."""
        strokes_or_hole = (PenaltyKind.STROKES, PenaltyKind.GENERAL)
        return any(
            one.kind in strokes_or_hole and one.citation.startswith(OF_THE_PLAYER_NOT_THE_BALL)
            for one in self.ruling.penalties
        )

    @property
    def shows_play_went_on(self) -> bool:
        """Whether, told after a ball was to be replaced, it shows that the ball had been played since."""
        return self.follows_a_stroke and self.incident not in WHERE_A_MOVED_BALL_MAY_END

    @property
    def is_about_a_ball_at_rest(self) -> bool:
        """Whether it is about a ball lying somewhere on the course."""
        ruling = self.ruling
        of_a_ball = ("8.1", "9.", "12.", "13.1", "14.1", "15.", "16.", "19.")
        return ruling.action is Action.REPLACE or any(key.startswith(of_a_ball) for key in ruling.citations)

    @property
    def befalls_a_ball_at_rest(self) -> bool:
        """Whether it is about a ball lying somewhere, searched for or about to be played, or offers relief for one."""
        lies = bool(self.ruling.relief) or self.is_about_a_ball_at_rest
        return lies or any(
            key.startswith(("7.", "10.2b", "13.3", "E-2", "E-3")) for key in self.ruling.citations
        )

    @property
    def is_with_a_ball(self) -> bool:
        """Whether a ball has any part in it: one struck, lying, dropped or put back."""
        shown = self.has_a_stroke or self.follows_a_stroke or self.follows_relief or self.is_replacing
        return shown or self.befalls_a_ball_at_rest or self.ruling.action is not Action.PLAY_ON

    @property
    def fails_to_replace(self) -> bool:
        """Whether it is the stroke at a moved ball that was not replaced (1.3c(4) Exception)."""
        return self.incident in FAILS_TO_REPLACE and any(
            one.citation.startswith("14.7a") for one in self.ruling.penalties
        )

    @property
    def may_fail_to_replace(self) -> bool:
        """Whether it may be that stroke: a wrong place, with nothing that says why."""
        return not self.incident or self.incident == "played_from_wrong_place"

    @property
    def pays_stroke_and_distance(self) -> bool:
        """Whether it is stroke and distance itself, with its stroke among its penalties."""
        return any(
            one.kind is PenaltyKind.STROKES and one.citation.startswith(("18.1", "18.2b"))
            for one in self.ruling.penalties
        )

    @property
    def takes_stroke_and_distance(self) -> bool:
        """Whether it tells how stroke and distance is taken, with its price in its own options."""
        return self.incident in TAKES_STROKE_AND_DISTANCE and bool(self.ruling.relief)

    @property
    def wants_to_play_again(self) -> bool:
        """Whether the player only says to play again: where relief must be taken, nothing new."""
        return (
            self.incident == "play_again_from_previous_spot"
            and self.ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF
        )

    @property
    def voids_relief(self) -> bool:
        """Whether the relief taken just before turns out to be none: its stroke is not spent.

        A ball played from where the original was lost, or beside a penalty area the ball was not in, costs stroke
        and distance instead (Rules 17.1c and 18.2b); a mistake noticed in time is corrected (Rule 14.5b). Where the
        relief stands, the finding of the original counts its stroke itself (Rule 17.1c).
        """
        if self.incident == "found_after_penalty_area_relief":
            return True
        if self.incident in RELIEF_TAKEN_ANEW and self.ruling.action is Action.TAKE_RELIEF:
            return True
        if self.incident in ("mistake_in_relief_noticed", "dropped_in_penalty_area"):
            return True
        if self.played_on_before:
            return False  # the ball was played from where it was put; another one is lost since
        return (
            self.incident in INSTEAD_OF_STROKE_AND_DISTANCE
            and self.ruling.action is not Action.PLAY_OTHER_BALL
        )

    @property
    def starts_provisional(self) -> bool:
        """Whether a provisional ball was played and nothing yet decides which ball counts."""
        return self.incident in ("another_ball_played", "ball_after_provisional") and (
            self.ruling.action is Action.PLAY_ON and not self.ruling.penalties
        )

    @property
    def tells_of_provisional(self) -> bool:
        """Whether it tells of a provisional ball, in play or not."""
        return self.incident in ORIGINAL_FOUND or self.starts_provisional or self.puts_provisional_in_play

    @property
    def abandons_provisional(self) -> bool:
        """Whether the original is played on, so that the provisional ball leaves nothing behind (18.3c(3))."""
        goes_on = (Action.PLAY_AS_IT_LIES, Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF)
        ruling = self.ruling
        in_water = any(one.citation.startswith("17.") for one in ruling.relief)
        if self.incident == "ball_found_in_time":
            return in_water or ruling.action in goes_on
        if self.incident in AT_THE_BOUNDARY:
            return ruling.action in goes_on
        if self.incident in ("ball_not_found", "ball_in_penalty_area"):
            return in_water or (self.incident == "ball_in_penalty_area" and ruling.action in goes_on)
        if self.incident in ORIGINAL_FOUND:
            return "18.3c(3)" in ruling.citations or "provisional_strokes_do_not_count" in ruling.notes
        return False

    @property
    def puts_provisional_in_play(self) -> bool:
        """Whether the provisional ball is the ball in play under stroke and distance (18.3c(2))."""
        by_rule = self.ruling.action is Action.PLAY_PROVISIONAL or "18.3c(2)" in self.ruling.citations
        return by_rule or self.chose_provisional

    @property
    def solely_from_a_ball(self) -> bool:
        """Whether its penalty may come solely from playing one ball."""
        return any(
            only_strokes(one) and not one.citation.startswith(NOT_SOLELY_FROM_A_BALL)
            for one in self.ruling.penalties
        )


NOTHING_DONE = Deed(Ruling())
"""In the place of an act of somebody else: for the player nothing happened."""


def with_areas(deeds: Sequence[Deed], areas: Sequence[Area | None]) -> list[Deed]:
    """Return acts that know where their ball lay, as far as it was told; a ball put back lies where it lay before."""
    found: list[Deed] = []
    for deed, area in zip(deeds, areas, strict=True):
        before = deed.is_replacing and bool(found) and found[-1].lay_dry
        dry = before if area is None else area is not Area.PENALTY_AREA
        found.append(replace(deed, lay_dry=dry))
    return found


def by_another_player(deed: Deed, *, match: bool) -> Deed:
    """Return an act as one of another player: in a match the opponent; of another side what its side bears."""
    one_of_them = Who.OPPONENT if match else Who.OTHER_PLAYER
    theirs = {Who.PLAYER: one_of_them, Who.ONE_PARTNER: one_of_them}
    theirs |= {Who.SIDE: Who.OTHER_SIDE, Who.EACH_PARTNER: Who.OTHER_SIDE}
    named = tuple(replace(one, who=theirs.get(one.who, one.who)) for one in deed.ruling.penalties)
    return replace(deed, ruling=replace(deed.ruling, penalties=named))


def relief_already_paid(deed: Deed) -> Deed:
    """Return an act that tells how relief was taken whose stroke is counted with the act before."""
    free = tuple(replace(option, penalty=0) for option in deed.ruling.relief)
    return replace(deed, ruling=replace(deed.ruling, relief=free))


def drop_already_paid(deed: Deed, *, relief_before: bool) -> Deed:
    """Return a drop back on the line with the stroke of its relief counted once.

    Its ruling names the relief it was dropped under; that stroke is the one of the act before, if that offered the
    relief, else its own. What is left of the option is where the ball must come to rest.
    """
    ruling = deed.ruling
    if deed.incident != "back_on_the_line_drop" or not ruling.relief:
        return deed
    free = tuple(replace(option, penalty=0) for option in ruling.relief)
    if ruling.action is Action.PLAY_AS_IT_LIES:
        free = ()
    cost = ruling.relief[0]
    own = ruling if relief_before else ruling.also(strokes(cost.penalty, cost.citation))
    return replace(deed, ruling=replace(own, relief=free))


def stroke_and_distance_told(deed: Deed, earlier: Sequence[Deed]) -> Deed:
    """Return an act without the stroke of stroke and distance that an act before tells of.

    A ball played though lost or out of bounds is put right under stroke and distance (Rule 18.2b), which counts once:
    whether the ball was told as lost before, or how it was put right is told after.
    """
    if deed.takes_stroke_and_distance and earlier and _put_right_under_it(earlier[-1]):
        return relief_already_paid(deed)
    if not _put_right_under_it(deed):
        return deed
    lost = [
        one for one in earlier if "18.2b" in one.ruling.citations and offers_stroke_and_distance(one.ruling)
    ]
    if not lost and not any(one.puts_provisional_in_play for one in earlier):
        return deed
    left = tuple(one for one in deed.ruling.penalties if not one.citation.startswith("18.2b"))
    return replace(deed, ruling=replace(deed.ruling, penalties=left))


def _put_right_under_it(deed: Deed) -> bool:
    """Whether a ball played though lost or out of bounds was put right, under stroke and distance."""
    return deed.incident == "own_ball_out_of_play_played" and deed.pays_stroke_and_distance


def only_strokes(penalty: Penalty) -> bool:
    """Whether a penalty costs the player strokes, or the hole in a match."""
    return penalty.who in OWN and penalty.kind in (PenaltyKind.STROKES, PenaltyKind.GENERAL)


def disqualifies(part: Ruling) -> bool:
    """Whether a ruling disqualifies the player."""
    return any(one.kind is PenaltyKind.DISQUALIFICATION and one.who in OWN for one in part.penalties)


def without_strokes(ruling: Ruling) -> Ruling:
    """Return a ruling without what it costs the player: it came solely from a ball that does not count."""
    return replace(ruling, penalties=tuple(one for one in ruling.penalties if not only_strokes(one)))


def offers_stroke_and_distance(ruling: Ruling) -> bool:
    """Whether stroke and distance is among the relief offered."""
    return any(one.kind is ReliefKind.STROKE_AND_DISTANCE for one in ruling.relief)
