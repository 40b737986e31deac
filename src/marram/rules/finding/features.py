"""What a sentence is weighed by: stems, denied or not, stems side by side or near each other, and kinds of things.

Everything here is done alike in ``desk/rulings/static/features.js``.
"""

from collections.abc import Iterator, Sequence

from marram.rules.finding.sentence import Word

NEAR = 3
"""Two stems with fewer than so many words between them are near each other."""

DENIED = "!"
"""What stands before the stem of a word that is denied: "no provisional" speaks against a provisional."""


def features(found: Sequence[Word]) -> list[str]:
    """Return what a sentence is weighed by, each once, in a fixed order."""
    return list(dict.fromkeys(_features(found)))


def _features(found: Sequence[Word]) -> Iterator[str]:
    stems = [one.stem for one in found]
    for place, one in enumerate(found):
        yield DENIED + one.stem if one.denied else one.stem
        for thing in one.things:
            yield f"<{thing}>"
        if place + 1 < len(stems):
            yield f"{one.stem} {stems[place + 1]}"
        for far in range(place + 2, min(place + 1 + NEAR, len(stems))):
            yield f"{one.stem}~{stems[far]}"
        for near in range(max(place - NEAR, 0), min(place + 1 + NEAR, len(stems))):
            for thing in one.things:
                if near != place:
                    yield f"<{thing}>{stems[near]}" if near > place else f"{stems[near]}<{thing}>"
