"""What a published bracket or round robin says, by identifier."""

from marram.services.matches.bracket_kept import BracketMeeting, BracketNow
from marram.services.publishing.documents import BRACKET, WHO, Document
from marram.services.results.competition_kept import CompetitionKept


def bracket(name: str, competition: CompetitionKept, now: BracketNow) -> Document:
    """Return a bracket or a round robin as it stands, by identifier."""

    def side(first: str | None) -> Document | None:
        return None if first is None else {WHO: competition.side_of.get(first, first)}

    def result(one: BracketMeeting) -> Document:
        decided = one.decided
        at = None if decided is None or decided.winner is None else decided.winner == one.first
        return {
            "number": one.number,
            "first": side(one.first),
            "second": side(one.second),
            "winner": None if at is None else "first" if at else "second",
            "result": "" if decided is None else str(decided.words),
        }

    return {
        "marram": 1,
        "kind": BRACKET,
        "event": name,
        "plan": now.plan.value,
        "seed": now.entry.content["seed"],
        "seeded": now.entry.content["seeded"],
        "rounds": [[result(one) for one in stage] for stage in now.stages],
        "table": [
            {**(side(one.side) or {}), "place": one.place, "points": str(float(one.points))}
            for one in now.table
        ],
    }
