"""How somebody tells it: facts about marking, lifting and cleaning a ball (Rule 14.1)."""

TOLD: dict[str, str] = {
    "cleaned_when_lifted.yes": "The lifted ball was cleaned, more than the Rule allows on which it was lifted.",
    "cleaned_when_lifted.no": "The lifted ball was not cleaned more than that Rule allows.",
    "reason_was_reasonable.yes": "{player} had good reason to lift it.",
    "reason_was_reasonable.no": "{player} had no good reason to lift it.",
    "reason_for_lifting": "The ball was lifted {answer}.",
    "reason_for_lifting.asked_as_interfering": "The ball was lifted because another player asked for it.",
    "reason_for_lifting.taking_relief": "The ball was lifted to take relief, or to see whether it is allowed, and relief was then taken.",
    "spot_marking": "The spot was marked {answer}.",
    "spot_marking.not_marked": "The spot was not marked.",
    "who_lifted": "The ball was lifted by {answer}.",
}
