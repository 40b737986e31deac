"""Which kind of relief an option is, as an official names it: free, penalty area, unplayable ball, and so on."""

from marram.rules.relief_option import ReliefKind, ReliefOption

_FREE_RULES = ("13", "15", "16", "25", "F", "E", "D")
_OWN_FAMILY = ("17", "18", "19")


def family(option: ReliefOption) -> str:
    """Return ``free``, the Rule (``17``, ``18``, ``19``), ``dropping_zone``, ``preferred`` or ``other``."""
    rule = option.citation.removeprefix("Clarification ").split(".")[0].split("-")[0]
    if option.kind is ReliefKind.PREFERRED_LIE:
        return "preferred"
    if not option.penalty:
        return "free" if rule in _FREE_RULES else "other"
    if option.kind is ReliefKind.DROPPING_ZONE:
        return "dropping_zone"
    if option.kind is ReliefKind.STROKE_AND_DISTANCE and rule not in _OWN_FAMILY:
        return "18"
    return rule if rule in _OWN_FAMILY else "other"
