"""Papers drawn to cover the book: parallel forms with the same Rules at the same levels, from a seed."""

from collections import Counter
from collections.abc import Container, Mapping, Sequence
from dataclasses import dataclass
from random import Random

from marram.errors import InputError
from marram.said import said
from marram.teach.examinations.blueprint import LEVELS, WEIGHTS, shares
from marram.teach.examinations.item import Item
from marram.teach.examinations.matched import Draw, provisions_of_rule

MOST_ITEMS, MOST_FORMS = 120, 4


@dataclass(frozen=True, slots=True)
class Form:
    """One form of an examination: its letter and its items in order."""

    letter: str
    items: tuple[Item, ...]

    @property
    def provisions(self) -> frozenset[str]:
        """The provisions that the right answers rest on."""
        return frozenset(found for one in self.items for found in one.question.situation.ruling.citations)

    @property
    def levels(self) -> Counter[int]:
        """How many items of each difficulty there are."""
        return Counter(one.level for one in self.items)


@dataclass(frozen=True, slots=True)
class Examination:
    """An examination.

    Attributes:
        seed: the seed.
        level: its level, 1 to 3.
        open_book: whether the book may be used.
        forms: its parallel forms.
    """

    seed: int
    level: int
    open_book: bool
    forms: tuple[Form, ...]


def examination(
    seed: int,
    count: int = 60,
    *,
    level: int = 2,
    forms: int = 2,
    open_book: bool = False,
    retired: Container[str] = frozenset(),
    weights: Mapping[int, float] = WEIGHTS,
) -> Examination:
    """Return an examination, the same for the same arguments.

    Each place of the blueprint is filled in every form with an item of the same Rule and, where the book has enough of them,
    of the same incident and level with other facts; provisions that no form had come first.

    Args:
        seed: the seed.
        count: items of a form.
        level: of the paper, 1 to 3.
        forms: how many.
        open_book: whether the book may be used; it changes what is printed, and no item.
        retired: items that are not used any more, by :attr:`Item.ident`.
        weights: of the Rules; 0 for the Model Local Rules.

    Raises:
        InputError: count, level or forms are out of range; every fault is listed.
    """
    faults = []
    if not 1 <= count <= MOST_ITEMS:
        faults.append(said("Items of a paper: give 1 to {most}.", most=MOST_ITEMS))
    if level not in LEVELS:
        faults.append(said("The level of a paper is 1, 2 or 3."))
    if not 1 <= forms <= MOST_FORMS:
        faults.append(said("Forms of an examination: give 1 to {most}.", most=MOST_FORMS))
    if faults:
        raise InputError(*faults)
    lot = Random(seed)  # noqa: S311 - a seed, no secret
    wanted, grades = _places(weights, count, level)
    used: set[str] = set()
    told: set[str] = set()
    drawn = {rule: Draw(rule, lot) for rule in wanted}
    kept: list[tuple[int, list[Item]]] = []
    left: list[int] = []
    for rule in sorted(
        wanted, key=lambda one: (len(drawn[one].turns), one)
    ):  # those with the least to choose from first
        open_grades = [grade for grade in grades if grades[grade]]
        lot.shuffle(open_grades)
        open_grades.sort(key=lambda grade: -grades[grade])
        for grade in open_grades:
            found = drawn[rule].several(grade, forms, used, retired, told, exact=True)
            if found:
                grades[grade] -= 1
                kept.append((rule, found))
                break
        else:
            left.append(rule)
    spare = sorted(drawn, key=lambda rule: (-weights[rule], rule))
    for rule in left:  # where the book has no more items of a Rule, one of the weightiest stands in
        grade = max(grades, key=lambda each: (grades[each], -each))
        tries = ((each, exact) for exact in (True, False) for each in (rule, *spare))
        found = next(
            filter(
                None,
                (
                    drawn[each].several(grade, forms, used, retired, told, exact=exact)
                    for each, exact in tries
                ),
            ),
            None,
        )
        if not found:
            raise InputError(
                said("The book has too few items left for so many. Ask for fewer items or forms.")
            )
        grades[grade] -= 1
        kept.append((rule, found))
    kept.sort(key=lambda each: wanted.index(each[0]))
    items = balanced([found for _, found in kept], forms)
    return Examination(seed, level, open_book, tuple(_form(at, each, lot) for at, each in enumerate(items)))


def balanced(places: Sequence[Sequence[Item]], forms: int) -> list[list[Item]]:
    """Return the items of each form: at each place the harder one goes to the form that has had the easier ones so far.

    The places that differ most are given out first, so that the smaller ones make up for what is left.

    Args:
        places: for each place of the paper an item for each form.
        forms: how many forms there are.
    """
    load = [[0, 0] for _ in range(forms)]
    found: list[list[Item]] = [[] for _ in places]
    apart = [max(one.weight for one in items) != min(one.weight for one in items) for items in places]
    spread = [max(one.weight[0] for one in items) - min(one.weight[0] for one in items) for items in places]
    for at in sorted(range(len(places)), key=lambda each: (-spread[each], each)):
        order = list(range(forms))
        if apart[at]:
            order.sort(key=lambda form: (*load[form], form))
        items = sorted(places[at], key=lambda one: one.weight, reverse=True) if apart[at] else places[at]
        given = dict(zip(order, items, strict=True))
        found[at] = [given[form] for form in range(forms)]
        for form, one in given.items():
            load[form] = [a + b for a, b in zip(load[form], one.weight, strict=True)]
    return [[items[form] for items in found] for form in range(forms)]


def _places(weights: Mapping[int, float], count: int, level: int) -> tuple[list[int], dict[int, int]]:
    """Return for each place of a paper its Rule; and how many items there are of each level."""
    possible = {rule: weight for rule, weight in weights.items() if provisions_of_rule(rule)}
    rules = [rule for rule, many in shares(possible, count).items() for _ in range(many)]
    return rules, shares(LEVELS[level], count)


def _form(at: int, items: Sequence[Item], lot: Random) -> Form:
    """Return a form, the right answers spread evenly over the places."""
    placed = []
    turn: list[int] = []
    for one in items:
        many = len(one.question.answers)
        turn = turn or lot.sample(range(4), 4)
        place = next((each for each in turn if each < many), 0)
        turn = [each for each in turn if each != place]
        placed.append(one.at(place))
    return Form("ABCD"[at], tuple(placed))
