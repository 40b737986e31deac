"""Why a ruling is what it is."""

TEXTS: dict[str, str] = {
    "decided": "What decided it",
    "alone": "Read on the way; another answer alone would change nothing",
    "told": "{told} ({citation})",
    "or": "; or: ",
    "instead": "Had the answer been: {answers}",
    "instead_one_of": "Had the answer been: {answers}, depending on what else is so",
    "same": "The same with: {answers}",
    "more.one": "or {count} other ruling, depending on more",
    "more.several": "or {count} other rulings, depending on more",
}
