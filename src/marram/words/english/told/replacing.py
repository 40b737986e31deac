"""How somebody tells it: facts about putting a ball back on its spot (Rule 14.2)."""

TOLD: dict[str, str] = {
    "ball_marker_left.yes": "The ball-marker was left at the spot.",
    "ball_marker_left.no": "The ball-marker was taken away.",
    "lie_altered.yes": "The lie was altered before the ball was put back.",
    "lie_altered.no": "The lie was as it had been.",
    "original_ball_unavailable.yes": "The original was out of easy reach, cut or cracked, played by another, or play was being resumed.",
    "original_ball_unavailable.no": "The original could easily be got back and was undamaged.",
    "replaced_in_right_way.yes": "It was set down by hand on the spot and let go, so that it stayed.",
    "replaced_in_right_way.no": "It was not set down by hand on the spot and let go.",
    "replaced_on_right_spot.yes": "It was put down on the required spot.",
    "replaced_on_right_spot.no": "It was put down on a wrong spot.",
    "spot_that_stays_exists.yes": "There was a spot in that area, not nearer the hole, where the ball would stay.",
    "spot_that_stays_exists.no": "There was no spot in that area, not nearer the hole, where the ball would stay.",
    "area_of_placing_spot": "The spot where the ball had to be placed was in {answer}.",
    "area_of_placing_spot.putting_green": "The spot where the ball had to be placed was on the putting green of the hole being played.",
    "ball_stays_on_spot.yes": "The ball stays on its spot, at the first or second attempt.",
    "ball_stays_on_spot.no": "The ball does not stay on its spot, at two attempts.",
    "ball_stays_on_spot.moved_later": "The ball stayed on its spot, and later wind, water or gravity moved it.",
    "material_of_lie": "The ball had lain in {answer}.",
    "replaced_by": "The ball was put back by {answer}.",
}
