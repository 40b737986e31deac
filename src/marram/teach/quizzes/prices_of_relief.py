"""What relief costs, by the names that answers call it by."""

from marram.rules.relief_family import family
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Action, Ruling


def at_several_prices(ruling: Ruling) -> bool:
    """Whether relief must be taken, none of it free, and some of it costs more than the rest."""
    prices = {option.penalty for option in ruling.relief}
    return ruling.action is Action.TAKE_RELIEF and len(prices) > 1 and 0 not in prices


def priced_apart(ruling: Ruling) -> bool:
    """Whether relief must be taken at several prices, and what is had for each can be told by its name."""
    return at_several_prices(ruling) and all(len(each) == 1 for each in prices_by_family(ruling).values())


def prices_by_family(ruling: Ruling) -> dict[str, frozenset[int]]:
    """Return what relief of each family costs."""
    return {
        each: frozenset(option.penalty for option in ruling.relief if family(option) == each)
        for each in in_order(ruling)
    }


def in_order(ruling: Ruling) -> tuple[str, ...]:
    """Return the families of the relief that a ruling offers, each once, in the order they are offered in."""
    return tuple(dict.fromkeys(family(option) for option in ruling.relief))


def step_families(ruling: Ruling) -> frozenset[str]:
    """Return the families of the relief that a ruling offers."""
    return frozenset(family(option) for option in ruling.relief)


def costs(ruling: Ruling) -> set[tuple[str, int]]:
    """Return what the relief that a ruling offers costs, by its family."""
    return {(family(option), option.penalty) for option in ruling.relief}


def is_only_free(ruling: Ruling) -> bool:
    """Whether a ruling offers free relief, and none that must be paid for."""
    return is_free(ruling) and not any(option.penalty for option in ruling.relief)


def is_free(ruling: Ruling) -> bool:
    """Whether a ruling offers relief at no cost; a stroke played again costs one in any case."""
    return any(
        not option.penalty and option.kind is not ReliefKind.STROKE_AND_DISTANCE for option in ruling.relief
    )
