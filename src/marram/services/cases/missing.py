"""The relief that a ruling does not offer, with the fact that stands against it: asked of the book where it is shown."""

from marram.rules.nearby import missing_relief
from marram.rules.ruling import Ruling
from marram.services.cases.rulings import Ruled
from marram.words.missing import with_missing
from marram.words.sheet import Sheet


def sheet_with_missing(ruled: Ruled) -> Sheet | None:
    """Return the sheet of what was ruled, with the relief that is not offered and why; ``None`` where nothing was."""
    if ruled.sheet is None or ruled.asked.what is None or not isinstance(ruled.result, Ruling):
        return ruled.sheet
    request = ruled.asked.conditions.request()
    codes = request["local_rules"]
    missing = missing_relief(
        ruled.asked.what,
        ruled.known,
        ruled.result,
        played_on=request["played_on"],
        form_of_play=request["form_of_play"],
        local_rules=None if codes is None else frozenset(codes),
        sides=request.get("sides"),
    )
    return with_missing(ruled.sheet, missing)
