"""How somebody tells it: facts about the course: which areas a ball touches, and what kind of thing is in the way."""

TOLD: dict[str, str] = {
    "touches_bunker.yes": "Part of the ball touched sand inside the edge of a bunker.",
    "touches_bunker.no": "No part of the ball touched sand inside a bunker.",
    "touches_green.yes": "Part of the ball touched the putting green of the hole being played.",
    "touches_green.no": "No part of the ball touched the putting green.",
    "touches_penalty_area.yes": "Part of the ball was in a penalty area or above its edge.",
    "touches_penalty_area.no": "No part of the ball was in a penalty area or above its edge.",
    "thing_in_the_way": "In the way was {answer}.",
    "thing_in_the_way.condition": "In the way was something artificial that stays where it is, water, or something about the ground.",
}
