"""How somebody tells it: facts about the ball as equipment and about other equipment (Rules 4.2 and 4.3)."""

TOLD: dict[str, str] = {
    "equipment_breach_again.yes": "It was the second, separate breach of this Rule in the round.",
    "equipment_breach_again.no": "It was the first breach of this Rule in the round.",
    "green_map_within_limits.yes": "The material is within the limits of size and scale.",
    "green_map_within_limits.no": "The material is beyond the limits of size and scale.",
    "medical_use_accepted.yes": "The Committee finds a medical reason and no unfair advantage.",
    "medical_use_accepted.no": "The Committee finds no medical reason, or an unfair advantage.",
    "stroke_at_ball_counted.yes": "A stroke that counts was made at it.",
    "stroke_at_ball_counted.no": "No stroke that counts was made at it.",
    "tape_not_excessive.yes": "It was no more than the injury called for.",
    "tape_not_excessive.no": "It was more than the injury called for.",
    "ball_damage": "What could be clearly seen: {answer}.",
    "ball_fault": "About the ball: {answer}.",
    "ball_set_down": "What was put down was {answer}.",
    "equipment_use": "How equipment was used: {answer}.",
    "lifting_fault.none": "The ball was lifted with good reason, marked first and not cleaned.",
    "lifting_fault.no_reason": "The ball was marked, but there was no reason to believe it cut or cracked on this hole.",
    "lifting_fault.not_marked": "The spot was not marked before the ball was lifted.",
    "lifting_fault.cleaned": "The ball was lifted with good reason and marked, but then cleaned.",
    "lifting_fault.no_reason_and_cleaned": "The ball was marked, but there was no reason to believe it cut or cracked on this hole, and it was cleaned as well.",
    "lifting_fault.not_marked_and_more": "The spot was not marked before the ball was lifted, and there was no reason for it, or the ball was cleaned as well.",
}
