"""Items of one Rule, drawn as matched sets: for each form one of the same incident and level, told with other facts.

What makes an item hard is first of all what happened; so forms are built of pairs (or threes, or fours) that have it in common,
as parallel forms are from matched subtests (matched random subtests: Gulliksen, Theory of Mental Tests, 1950; from memory).
"""

from collections.abc import Container, Iterator
from random import Random

from marram.rules.former_names import incident_now
from marram.rules.incidents import incident
from marram.teach.book.contents import local_rules, of_rule
from marram.teach.examinations.item import Item
from marram.teach.quizzes.drafting import Told, told_in
from marram.teach.quizzes.quiz import is_taken_up, question
from marram.teach.situations.reaching import reached_from
from marram.teach.situations.sampling import situation
from marram.teach.situations.situation import Situation

MOST_FACTS = 7
"""From how many facts on a situation is no item: it takes longer to read than to decide (own choice)."""
_TRIES = 6
_TWINS = 12
"""Situations of one incident that are drawn for the other forms, before another one is tried (own choice)."""
_FIRST = 3
"""How many items are tried in turn as the one that the others are matched with (own choice)."""


def provisions_of_rule(rule: int) -> list[str]:
    """Return the provisions of a Rule that rulings rest on; those of the Model Local Rules for 0."""
    found = local_rules() if rule == 0 else of_rule(rule)
    return [one.citation for one in found if one.citation in reached_from()]


def unlike(one: Item, other: Item) -> tuple[int, ...]:
    """Return how unlike two items are: by what happened, how much there is to weigh, what they rest on, the answers there are."""
    here, there = one.question.situation, other.question.situation
    here_theme, there_theme = (incident(each.incident).theme for each in (here, there))
    apart = [abs(a - b) for a, b in zip(one.weight, other.weight, strict=True)]
    common = set(here.ruling.citations) & set(there.ruling.citations)
    return here.incident != there.incident, here_theme != there_theme, apart[0], -len(common), apart[1]


def are_twins(one: Item, other: Item) -> bool:
    """Return whether two items tell of the same incident with other facts, so that nobody reads the same twice."""
    here, there = one.question.situation, other.question.situation
    return here.incident == there.incident and here.facts != there.facts


def _tells_the_same(one: Item, other: Item) -> bool:
    here, there = one.question.situation, other.question.situation
    return here.incident == there.incident and here.facts == there.facts


class Draw:
    """Items of one Rule, its provisions by turns."""

    def __init__(self, rule: int, lot: Random) -> None:
        self.rule, self.lot = rule, lot
        self.turns = lot.sample(provisions_of_rule(rule), len(provisions_of_rule(rule)))
        self.next = 0
        self.pool: list[Item] = []
        self.done: set[Told] = set()
        """Facts that are an item already, or can be none: what they lead to is always the same."""

    def several(
        self,
        grade: int,
        forms: int,
        used: set[str],
        retired: Container[str],
        told: set[str],
        *,
        exact: bool,
    ) -> list[Item] | None:
        """Return an item for each form, all of the grade, or unless exact of the nearest level; ``None`` where too few are.

        Args:
            grade: the level wanted, 1 to 3.
            forms: how many items.
            used: items that were drawn already, by identifier; those drawn now are added.
            retired: items that are not used any more.
            told: provisions that the paper has already; those of the items returned are added.
            exact: whether another level will not do.
        """
        new = self._more(_TRIES * forms, used, retired)
        self.pool.extend(one for _, one in zip(range(3 * forms), new, strict=False))
        for level in (grade,) if exact else sorted({1, 2, 3}, key=lambda each: (abs(each - grade), each)):
            fitting = [one for one in self.pool if one.level == level]
            if level == grade and len(fitting) < forms:
                more = list(self._more(2 * _TRIES * forms, used, retired))
                self.pool += more
                fitting += [one for one in more if one.level == level]
            fitting.sort(
                key=lambda one: len(set(one.question.situation.ruling.citations) - told), reverse=True
            )
            chosen = self._matched(fitting, forms, used, retired)
            if chosen:
                break
        else:
            return None
        for one in chosen:
            self.pool.remove(one)
            told.update(one.question.situation.ruling.citations)
        return chosen

    def _matched(
        self, fitting: list[Item], forms: int, used: set[str], retired: Container[str]
    ) -> list[Item]:
        """Return twins, if need be drawn for one of the first; else the first with those most like it; none where too few are."""
        for first in fitting[:_FIRST]:
            twins: list[Item] = []
            for one in fitting:
                if all(are_twins(other, one) for other in (first, *twins)):
                    twins.append(one)
            for one in self._twins(first, used, retired) if len(twins) < forms - 1 else ():
                self.pool.append(one)
                if one.level == first.level and all(are_twins(other, one) for other in (first, *twins)):
                    twins.append(one)
                if len(twins) == forms - 1:
                    break
            if len(twins) >= forms - 1:
                return [first, *sorted(twins, key=lambda one: unlike(first, one))[: forms - 1]]
        if not fitting:
            return []
        chosen = fitting[:1]
        for one in sorted(fitting[1:], key=lambda each: unlike(fitting[0], each)):
            if not any(_tells_the_same(other, one) for other in chosen):
                chosen.append(one)
        return chosen[:forms] if len(chosen) >= forms else []

    def _twins(self, first: Item, used: set[str], retired: Container[str]) -> Iterator[Item]:
        """Yield further items of the incident of one, resting on a provision of the Rule as it does."""
        one = first.question.situation
        cited = [each for each in self.turns if each in one.ruling.citations]
        for at in range(_TWINS if cited else 0):
            found = situation(one.incident, self.lot, cited[at % len(cited)])
            item = self._item(found, used, retired)
            if item is not None:
                yield item

    def _more(self, most: int, used: set[str], retired: Container[str]) -> Iterator[Item]:
        for _ in range(most if self.turns else 0):
            provision = self.turns[self.next % len(self.turns)]
            self.next += 1
            name = incident_now(self.lot.choice(reached_from()[provision]))
            item = self._item(situation(name, self.lot, provision), used, retired)
            if item is not None:
                yield item

    def _item(self, found: Situation | None, used: set[str], retired: Container[str]) -> Item | None:
        """Return the item of a situation; ``None`` where it is none, or one that was drawn or retired before."""
        if found is None or len(found.facts) >= MOST_FACTS or told_in(found) in self.done:
            return None
        asked = question(found, self.lot)
        if asked is not None and not is_taken_up(asked, self.lot):
            return None
        self.done.add(told_in(found))
        if asked is None:
            return None
        one = Item(asked, self.rule, found.level)
        if one.ident in used or one.ident in retired:
            return None
        used.add(one.ident)
        return one
