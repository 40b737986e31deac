"""How somebody tells it: facts about marking, lifting and cleaning a ball (Rule 14.1)."""

TOLD: dict[str, str] = {
    "cleaned_when_lifted.yes": "The lifted ball was cleaned more than the Rule under which it was lifted allows.",
    "cleaned_when_lifted.no": "The lifted ball was not cleaned more than the Rule under which it was lifted allows.",
    "reason_was_reasonable.yes": "{player} had good reason to lift it.",
    "reason_was_reasonable.no": "{player} had no good reason to lift it.",
    "reason_for_lifting": "The ball was lifted {answer}.",
    "reason_for_lifting.asked_as_interfering": "The ball was lifted because another player asked for it.",
    "reason_for_lifting.taking_relief": "The ball was lifted to take relief that a Rule allows, which {player} is about to do.",
    "spot_marking.not_marked": "The spot was not marked.",
    "spot_marking.right": "The spot was marked with a ball-marker right behind the ball.",
    "spot_marking.wrong": "Only a twig marked the spot.",
    "who_lifted.caddie_without_authority": "The caddie lifted it without being authorised this time.",
    "who_lifted.player_or_authorised": "{player} lifted it.",
    "who_lifted.someone_else": "A spectator lifted it without being authorised.",
}
