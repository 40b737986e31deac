"""A bracket or a round robin in words, as page and paper show it."""

from fractions import Fraction

from marram.paper.event.bracket_sheet import BracketOnPaper, MatchLine
from marram.services.kinds.brackets import Plan
from marram.services.matches.bracket_kept import BracketMeeting, BracketNow
from marram.words.spoken import spoken
from marram.words.texts import text


def stage_words(now: BracketNow, stage: int) -> str:
    """Return what a round of it is called: the final and the two before it by their names."""
    matches = len(now.stages[stage - 1])
    known = {1: "final", 2: "semi_final", 4: "quarter_final"}
    if now.plan is Plan.BRACKET and matches in known:
        return text(f"matches.bracket.{known[matches]}")
    return text("draw.round", number=stage)


def points_words(points: Fraction) -> str:
    """Return points with their half as it is written."""
    whole, half = divmod(points, 1)
    return text("matches.bracket.points", whole=whole or "") if half else str(whole)


def bracket_on_paper(now: BracketNow) -> BracketOnPaper:
    """Return it as its sheet needs it."""

    def line(one: BracketMeeting) -> MatchLine:
        decided = one.decided
        on = decided.winner if decided is not None else (one.first or one.second) if one.bye else None
        return MatchLine(
            now.names[one.first] if one.first else "",
            now.names[one.second] if one.second else "",
            one.bye,
            now.names[on] if on else "",
            "" if decided is None else spoken(decided.words),
        )

    return BracketOnPaper(
        now.plan is Plan.BRACKET,
        tuple(
            (stage_words(now, number), tuple(map(line, stage)))
            for number, stage in enumerate(now.stages, start=1)
        ),
        str(now.entry.content["seed"]),
        tuple((one.place, now.names[one.side], points_words(one.points)) for one in now.table),
    )
