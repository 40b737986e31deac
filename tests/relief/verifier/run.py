"""Many balls on one map: asked, checked, counted."""

from collections import Counter
from dataclasses import dataclass, field, replace

from tests.relief.verifier.asking import area_read, ask
from tests.relief.verifier.ball_places import ground_of
from tests.relief.verifier.balls import AREAS, BALL, Balls
from tests.relief.verifier.check_answer import check_answer
from tests.relief.verifier.question import Violation


@dataclass
class Tally:
    """What was tried and found: counts by name, and every violation with its question and option."""

    counts: Counter = field(default_factory=Counter)
    found: list = field(default_factory=list)
    refused: Counter = field(default_factory=Counter)
    states: Counter = field(default_factory=Counter)

    @property
    def kinds(self):
        """How many answers each kind of violation was found in."""
        return Counter(violation.sort for _, _, violation in self.found)


def try_map(file, count, *, name=None, seed=1, progress=None):
    """Ask about so many balls on a map and check every answer."""
    tally = Tally()
    for question in Balls(file, name, seed).questions(count):
        tally.counts["balls"] += 1
        tally.counts[question.sort] += 1
        try_ball(question, tally)
        if progress:
            progress(tally)
    return tally


def try_ball(question, tally):
    """Ask about one ball and check what comes back."""
    ground = ground_of(question.file, question.course, question.hole)
    _area(question, ground, tally)
    try:
        answers = ask(question)
    except LookupError as error:
        tally.refused[str(error)] += 1
        return
    except Exception as error:  # noqa: BLE001  (what is no answer is a finding)
        tally.found.append((question, "", Violation("crash", f"{type(error).__name__}: {error}")))
        return
    if "nearest_point_exists" in question.facts:
        _one_of_two(question, answers, tally)
    for answer in answers:
        tally.counts["options"] += 1
        tally.states[question.sort, answer.state, answer.why if answer.state != "Refused" else ""] += 1
        if answer.state == "Refused":
            tally.refused[answer.why] += 1
        seen = set()
        for violation in check_answer(question, ground, answer, tally.counts):
            if violation.sort not in seen:
                seen.add(violation.sort)
                tally.found.append((question, answer.option, violation))


def _one_of_two(question, answers, tally):
    """In a bunker and on the green either complete or maximum available relief is the answer (16.1c(1), 16.1d)."""
    said = question.facts["nearest_point_exists"]
    other = replace(
        question, facts={**question.facts, "nearest_point_exists": "no" if said == "yes" else "yes"}
    )
    both = {}
    for one in (*answers, *ask(other)):
        if one.option["reference"] in {"nearest_point", "maximum_point"}:
            both[one.option["reference"]] = one
    if len(both) < 2 or any(one.why == "no_interference" for one in both.values()):
        return
    drawn = [one for one in both.values() if one.state == "Drawn"]
    if len(drawn) != 1:
        words = ", ".join(f"{name}: {one.state} {one.why}" for name, one in both.items())
        option = next(iter(both.values())).option
        tally.found.append(
            (question, option, Violation("neither or both of complete and maximum relief", words))
        )


def _area(question, ground, tally):
    ball = ground.flat.metres([question.ball])[0]
    wanted = {None if one is None else AREAS[one] for one in ground.area_at(ball, BALL)}
    try:
        read = area_read(question)
    except Exception as error:  # noqa: BLE001
        tally.found.append((question, "", Violation("crash", f"{type(error).__name__}: {error}")))
        return
    if read not in wanted:
        tally.found.append((question, "", Violation("area of the ball", f"read {read}, it is {wanted}")))
