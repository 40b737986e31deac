"""Reading questions before they are asked: those that wait, as a reader sees them, and what the reader says of each."""

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import islice
from random import Random

from marram.errors import InputError
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import incident
from marram.rules.ruling import Ruling
from marram.rules.story.story import Happened
from marram.said import said
from marram.teach.quizzes.approved import LENGTH, Marks, Read, mark_of, mark_of_act
from marram.teach.quizzes.drafting import Question, draft, may_be_asked
from marram.teach.quizzes.strokes import GOES_ON, MAY_END, act_told, drafted_act
from marram.teach.situations.reaching import taught
from marram.teach.situations.sampling import NAMES, situations
from marram.words.headline import headline

MOST_TIMES = 3
"""Situations drawn for each question that is wanted, before it is taken that there are no more (own choice)."""
GOOD, NOT_GOOD = "+", "-"


@dataclass(frozen=True, slots=True)
class WaitingAct:
    """A drafted act of a story about strokes, and the mark it is entered by."""

    mark: str
    act: Happened
    ruling: Ruling

    def shown(self) -> str:
        """Return it as a reader sees it: what happened and what was done then, and what it comes to."""
        told = " ".join(act_told(self.act, self.ruling, NAMES[0]))
        ruled = headline(self.ruling, FormOfPlay.STROKE_PLAY)
        return f"{self.act.incident}/{self.mark} {told}\n  * {ruled}  ({', '.join(self.ruling.citations)})"


@dataclass(frozen=True, slots=True)
class Waiting:
    """A drafted question, and the mark it is entered by."""

    mark: str
    question: Question

    def shown(self) -> str:
        """Return it as a reader sees it: what happened, the answers in an order of their own, the right one starred, what it rests on."""
        one = self.question.situation
        told = " ".join(one.told("the course"))
        lines = [f"{one.incident}/{self.mark} {told}"]
        answers = list(self.question.answers)
        Random(self.mark).shuffle(answers)  # noqa: S311 - a seed, no secret
        for each in answers:
            rests = f"  ({', '.join(one.ruling.citations)})" if each.near is None else ""
            lines.append(f"  {'*' if each.near is None else ' '} {each.words}{rests}")
        return "\n".join(lines)


def incidents_asked() -> list[str]:
    """Return the incidents about which questions can be drafted."""
    return [one.name for one in taught() if may_be_asked(one.name)]


def drafted(name: str, seed: int, count: int) -> Iterator[Waiting]:
    """Yield the different questions among those that so many situations of an incident lead to.

    Args:
        name: the incident.
        seed: of the situations.
        count: how many questions are drafted, the same one as often as it comes.

    Raises:
        UnknownIncident: there is no such incident.
        InputError: of the incident no situation can be told.
    """
    drawn = islice(situations(seed, incidents=(incident(name).name,)), MOST_TIMES * count)
    found = islice((one for one in map(draft, drawn) if one is not None), count)
    met = set[str]()
    for one in found:
        mark = mark_of(one)
        if mark not in met:
            met.add(mark)
            yield Waiting(mark, one)


def unread(
    names: Iterable[str], seed: int, count: int, read: Read, *, again: bool = False
) -> Iterator[Waiting]:
    """Yield those of :func:`drafted` that nobody has read; with ``again`` those that were read and refused."""
    for name in names:
        approved, refused = (part.get(name, frozenset()) for part in (read.approved, read.refused))
        for one in drafted(name, seed, count):
            if one.mark in refused if again else one.mark not in approved | refused:
                yield one


def unread_acts(seed: int, count: int, read: Read, *, again: bool = False) -> Iterator[WaitingAct]:
    """Yield the different acts among so many that stories about strokes are put together of, those that nobody has read."""
    lot = Random(f"acts {seed}")  # noqa: S311 - a seed, no secret
    met = set[str]()
    for number in range(count):
        followed = number % 2 == 0
        drawn = drafted_act(GOES_ON if followed else MAY_END, lot, followed=followed)
        if drawn is None:
            continue
        one, ruling = drawn
        mark = mark_of_act(one, ruling)
        refused = mark in read.refused.get(one.incident, frozenset())
        waits = refused if again else not refused and mark not in read.approved.get(one.incident, frozenset())
        if waits and mark not in met:
            met.add(mark)
            yield WaitingAct(mark, one, ruling)


def entered(lines: Iterable[str], read: Read) -> Read:
    """Return what was read with what a reader says now: ``INCIDENT/MARK +`` for good, ``INCIDENT/MARK -`` for not good.

    Raises:
        InputError: a line says neither, or names no incident; every such line is listed, and nothing is entered.
    """
    approved, refused = _open(read.approved), _open(read.refused)
    faults = []
    known = {one.name for one in taught()}
    for number, line in enumerate(lines, start=1):
        if not line.strip():
            continue
        name, _, rest = line.partition("/")
        mark, _, verdict = rest.strip().partition(" ")
        verdict = verdict.strip()[:1]
        if name not in known or len(mark) != LENGTH or verdict not in (GOOD, NOT_GOOD):
            faults.append(
                said(
                    "Line {number} is no verdict: write INCIDENT/MARK, a space, then + for good or - for not good.",
                    number=number,
                )
            )
            continue
        (approved if verdict == GOOD else refused)[name].add(mark)
        (refused if verdict == GOOD else approved)[name].discard(mark)
    if faults:
        raise InputError(*faults)
    return Read(_closed(approved), _closed(refused))


def _open(marks: Marks) -> defaultdict[str, set[str]]:
    return defaultdict(set, {name: set(each) for name, each in marks.items()})


def _closed(marks: dict[str, set[str]]) -> Marks:
    return {name: frozenset(each) for name, each in marks.items()}
