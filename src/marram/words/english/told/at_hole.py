"""How somebody tells it: facts about a ball in or at the hole (Definition of holed)."""

TOLD: dict[str, str] = {
    "ball_in_hole": "The ball was {answer}.",
    "ball_in_hole.all_below": "The ball was at rest in the hole, stuck in its side, with all of it below the surface.",
    "ball_in_hole.came_out": "The ball went into the hole, but bounced or rolled out again.",
}
