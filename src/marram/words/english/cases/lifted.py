"""The ball at rest that was lifted, touched or moved, by the player or in a match by the opponent: one case told of each fact.

What was done and why stands here instead of "a Rule allowed it": whoever reads it has to know whether one does.
"""

_BY_PLAYER = ("ball_lifted_by_player", "ball_moved_by_player")
_WHY_LIFTED = {
    "handling_allowed.yes+cleaned_when_lifted": "It was done to identify the ball, which could not be done otherwise.",
    "handling_allowed.yes+after_lifting.relief_given_up": "",
    "handling_allowed.yes+after_lifting.goes_elsewhere": "",
    "handling_allowed.yes+after_lifting.went_elsewhere": "",
    "handling_allowed.yes+after_lifting.goes_back": "A Rule allowed it to be lifted there.",
    "cleaned_when_lifted.yes": "The lifted ball was wiped clean all over.",
    "after_lifting.goes_elsewhere+area_of_ball.penalty_area": "It was done without marking the spot, and penalty area relief is to be taken.",
    "after_lifting.went_elsewhere+area_of_ball.penalty_area": "It was done without marking the spot, and penalty area relief has been taken.",
    "after_lifting.goes_elsewhere": "It was done without marking the spot, and free relief from an immovable obstruction is to be taken.",
    "after_lifting.went_elsewhere": "It was done without marking the spot, and free relief from an immovable obstruction has been taken.",
}
"""Facts of a ball that a Rule allows to be lifted: to identify it (Rule 7.3), or to take relief, where no spot need be marked (Rule 14.1a)."""

CASES: dict[str, str] = {
    "ball_lifted_by_player/opening+handled_as.only_touched": "{player} touched the ball at rest, without moving it.",
    "ball_lifted_by_player/handling_allowed.yes+handled_as.only_touched": "The spot had been marked, and the ball could not be identified without touching it.",
    "ball_lifted_by_player/handling_allowed.no+handled_as.only_touched": "It was done to wipe mud off the ball.",
    "ball_lifted_by_player/handling_allowed.no+handled_as.lifted": "It was done to clean the ball, as on a putting green.",
    "ball_lifted_by_player/opening": "{player} lifted the ball at rest.",
    "ball_moved_by_player/opening+handling_allowed.yes": "{player} lifted the ball at rest.",
    "ball_moved_by_player/movement_accidental.no+handling_allowed.yes": "",
    **{f"{name}/{key}": sentence for name in _BY_PLAYER for key, sentence in _WHY_LIFTED.items()},
    "ball_moved_by_player/moved_while.taking_relief": "It happened in finding out whether a Rule gave relief, and none was then taken.",
    "ball_moved_by_player/moved_while.moving_away_from_ball": "The ball had rolled to rest against a foot of {player}, and moved only as that foot was taken away.",
    "caddie_acted/reason_for_lifting.no_rule_allowed": "The ball was lifted to clean it.",
    "caddie_acted/cleaned_when_lifted.yes": "The lifted ball was wiped clean all over.",
    "ball_moved_by_opponent/opening+opponent_act.lifted_or_moved_on_purpose": "In a match the opponent lifted {player}'s ball at rest.",
    "ball_moved_by_opponent/opponent_act.lifted_or_moved_on_purpose": "It was done on purpose, without a concession, a request or a mistake about whose ball it was.",
    "ball_moved_by_opponent/opening+opponent_act.at_players_request": "In a match the opponent lifted {player}'s ball at rest, as {player} had asked.",
    "ball_moved_by_opponent/opponent_act.at_players_request": "",
    "ball_moved_by_opponent/opening+opponent_act.conceded_hole_or_match": "In a match the opponent conceded the hole, and lifted {player}'s ball at rest.",
    "ball_moved_by_opponent/opponent_act.conceded_hole_or_match": "",
    "ball_moved_by_opponent/opening+opponent_act.conceded_stroke": "In a match the opponent conceded {player}'s next stroke, and lifted {player}'s ball at rest.",
    "ball_moved_by_opponent/opponent_act.conceded_stroke": "",
    "ball_moved_by_opponent/opening+opponent_act.lifted_as_own": "In a match the opponent lifted {player}'s ball at rest, taking it for the opponent's own.",
    "ball_moved_by_opponent/opponent_act.lifted_as_own": "",
    "ball_moved_by_opponent/opening+opponent_act.moved_by_accident": "In a match the opponent moved {player}'s ball at rest by accident.",
    "ball_moved_by_opponent/opponent_act.moved_by_accident": "",
    "ball_moved_by_opponent/opening+opponent_act.touched_on_purpose": "In a match the opponent touched {player}'s ball at rest on purpose, without moving it.",
    "ball_moved_by_opponent/opponent_act.touched_on_purpose": "",
    "ball_moved_by_opponent/opponent_cause_known.yes+opponent_act": "",
    "ball_moved_by_opponent/moved_while.taking_relief": "It happened while the opponent was taking relief for the opponent's own ball.",
    "ball_moved_by_opponent/moved_while.moving_away_from_ball": "The ball had rolled to rest against a foot of the opponent, and moved only as that foot was taken away.",
    "ball_marker_moved/marker_move_allowed.no+who_moved_marker.player": "No Rule allowed the ball-marker to be moved.",
    "ball_marker_moved/marker_move_allowed.yes+who_moved_marker.player": "It was moved to one side, because another player had asked for it.",
    "ball_marker_moved/marker_move_allowed.yes+who_moved_marker.opponent": "It was moved to one side, as {player} had asked.",
    "moved_ball_not_replaced/known_before_stroke.yes": "Before that stroke it was virtually certain that the ball had been moved.",
    "moved_ball_not_replaced/known_before_stroke.no": "Before that stroke it was not virtually certain that the ball had been moved.",
    "moved_ball_not_replaced/what_moved_ball.one_of_these+form.match_play": "It is certain that either the opponent or a spectator moved the ball, but not which.",
    "moved_ball_not_replaced/what_moved_ball.one_of_these": "It is certain that either a spectator or another player moved the ball, but not which.",
    "moved_ball_not_replaced/lifted_and_replaced_on_green.no": "The ball did not lie on the putting green then.",
    "moved_ball_not_replaced/put_in_play_by_hand.yes": "It was the first stroke since {player} had put this ball in play by dropping it.",
    "moved_ball_not_replaced/put_in_play_by_hand.no": "Until the wind moved it, the ball had lain where it came to rest after a stroke.",
    "serious_breach.uncertain": "{player} could not tell whether the wrong place gave a significant advantage.",
    "dropping_zone_provided.no": "There was no dropping zone for this spot, only for others.",
}
