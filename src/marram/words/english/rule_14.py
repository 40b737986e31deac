"""Words for Rule 14."""

PROVISIONS: dict[str, str] = {
    "14.7a": "A stroke from a wrong place gets the general penalty.",
}
