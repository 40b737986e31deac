"""How somebody tells it: facts about a ball in motion that hits something, is stopped, or is helped (Rule 11)."""

TOLD: dict[str, str] = {
    "both_on_green.yes": "Both balls lay on the putting green before the stroke.",
    "both_on_green.no": "At least one of the two balls lay off the putting green before the stroke.",
    "could_be_holed.yes": "There was still a reasonable chance that the ball could be holed.",
    "could_be_holed.no": "There was no reasonable chance any more that the ball could be holed.",
    "hit_on_green_certain.yes": "It is virtually certain that it happened on the putting green.",
    "hit_on_green_certain.no": "It is not virtually certain that it happened on the putting green.",
    "meant_to_affect_ball.yes": "It was done deliberately, to affect where a ball in motion might come to rest.",
    "meant_to_affect_ball.no": "It was not done to affect where a ball in motion might come to rest.",
    "needed_for_points.yes": "The ball had to be holed to score a point, to tie the hole or to stay below the maximum.",
    "needed_for_points.no": "Nothing hung on holing the ball.",
    "on_green_when_at_rest.yes": "That person, animal or thing was on the putting green then.",
    "on_green_when_at_rest.no": "That person, animal or thing was not on the putting green then.",
    "played_from_green.yes": "The stroke was made from the putting green.",
    "played_from_green.no": "The stroke was made from off the putting green.",
    "deflector": "Who stopped or deflected the ball: {answer}.",
    "moved_in_path": "What was lifted, moved or altered: {answer}.",
    "putt_hit": "What the ball hit: {answer}.",
    "rests_on": "It came to rest {answer}.",
    "why_stopped": "When it was stopped, {answer}.",
    "would_have_stopped": "The ball would have come to rest {answer}.",
}
