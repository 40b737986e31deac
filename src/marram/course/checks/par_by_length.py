"""Which pars the Rules of Handicapping recommend for a length (Appendix F, below 610 m of altitude)."""

from typing import NamedTuple


class Lengths(NamedTuple):
    """The lengths recommended for one par, in metres; ``longest`` is ``None`` where there is no limit."""

    shortest: float
    longest: float | None


MEN = {3: Lengths(0, 240), 4: Lengths(220, 450), 5: Lengths(410, 650), 6: Lengths(610, None)}
"""Rules of Handicapping, Appendix F, men, in the metres it gives."""

WOMEN = {3: Lengths(0, 200), 4: Lengths(180, 380), 5: Lengths(340, 550), 6: Lengths(520, None)}
"""Rules of Handicapping, Appendix F, women, in the metres it gives."""


def recommended_pars(length: float) -> tuple[int, ...]:
    """Return the pars recommended for a hole of this length, for men or for women, lowest first.

    Args:
        length: along the line of play, in metres.
    """
    return tuple(
        par
        for par in MEN
        if any(
            lengths[par].shortest <= length
            and (lengths[par].longest is None or length <= (lengths[par].longest or 0))
            for lengths in (MEN, WOMEN)
        )
    )
