"""Figures as they are given: read exactly, every fault told at once."""

from collections.abc import Iterable
from decimal import Decimal, InvalidOperation
from fractions import Fraction

from marram.errors import BadHandicap, shown
from marram.handicap.arithmetic import is_tenth
from marram.said import said

ZERO = Fraction(0)


class Checking:
    """Reads figures and keeps what is wrong with them, so that all faults can be told together."""

    def __init__(self) -> None:
        self.faults: list[str] = []

    def done(self) -> None:
        """Raise every fault found.

        Raises:
            BadHandicap: at least one figure cannot be used.
        """
        if self.faults:
            raise BadHandicap(*self.faults)

    def fault(self, fault: str) -> None:
        """Keep a fault."""
        self.faults.append(fault)

    def number(
        self,
        what: str,
        given: object,
        *,
        least: Fraction | int | None = None,
        most: Fraction | int | None = None,
        whole: bool = False,
        tenths: bool = False,
    ) -> Fraction:
        """Read an exact number; where it is none, keep the fault and return 0.

        Args:
            what: what the figure is, as the Rules call it.
            given: an ``int``, ``Decimal`` or ``Fraction``, or one written out (``"72.4"``).
            least: the smallest value it can have.
            most: the largest.
            whole: whether it must be whole.
            tenths: whether it has one decimal at most.
        """
        read = _exact(given)
        if read is None:
            self.fault(_no_number(what, given))
            return ZERO
        if whole and read.denominator != 1:
            self.fault(said("{what} is a whole number, not {given}.", what=what, given=shown(given)))
        elif tenths and not is_tenth(read):
            self.fault(
                said("{what} has one decimal at most; {given} has more.", what=what, given=decimal(read))
            )
        elif (least is not None and read < least) or (most is not None and read > most):
            self.fault(_outside(what, given, least, most))
        else:
            return read
        return ZERO

    def whole_number(
        self, what: str, given: object, *, least: int | None = None, most: int | None = None
    ) -> int:
        """Read a whole number; where it is none, keep the fault and return 0."""
        return self.number(what, given, least=least, most=most, whole=True).numerator

    def index(self, given: object, what: str = "") -> Fraction:
        """Read a Handicap Index: ``"14.3"``, ``"+1.4"`` for a plus one, or a number (a plus one negative).

        A minus sign in text is refused: lists of some countries wrote every handicap with one.
        """
        named = what or said("Handicap Index")
        if isinstance(given, str):
            written = given.strip().replace(",", ".")
            if written[:1] in {"-", "−", "–"}:
                self.fault(
                    said(
                        "{what}: {given} can be read in two ways. Write '+1.4' for a plus handicap, '1.4' for any other.",
                        what=named,
                        given=shown(given),
                    )
                )
                return ZERO
            plus = written.startswith("+")
            read = _exact(written.removeprefix("+").strip())
            if read is None:
                self.fault(_no_number(named, given))
                return ZERO
            given = -read if plus else read
        return self.number(named, given, least=LEAST_INDEX, most=MOST_INDEX, tenths=True)

    def indexes(self, what: str, given: Iterable[int], holes: int) -> tuple[int, ...]:
        """Read stroke indexes: each hole has one, no two the same, none above 18 (18 holes: 1 to 18, each once)."""
        read = tuple(given)
        known = [one for one in read if isinstance(one, int) and 1 <= one <= 18]
        if len(read) != holes:
            self.fault(
                said(
                    "{what}: {count} for {holes} holes. Give one for each hole.",
                    what=what,
                    count=len(read),
                    holes=holes,
                )
            )
        if len(known) != len(read) or len(set(known)) != len(known):
            self.fault(
                said(
                    "{what} are whole numbers from 1 to 18, no two the same; {given} are not.",
                    what=what,
                    given=shown(read),
                )
            )
        return read


LEAST_INDEX = Fraction(-99, 10)
"""No plus handicap of ten or better is known; a bound against slips of the pen, ours."""
MOST_INDEX = Fraction(54)
"""The maximum Handicap Index (Rule 5.3)."""


def _exact(given: object) -> Fraction | None:
    if isinstance(given, bool) or not isinstance(given, (int, Decimal, Fraction, str)):
        return None
    if isinstance(given, (int, Fraction)):
        return Fraction(given)
    try:
        read = Decimal(given.strip().replace("−", "-")) if isinstance(given, str) else given
    except InvalidOperation:
        return None
    return Fraction(read) if read.is_finite() and abs(read.adjusted()) < 10 else None


def _no_number(what: str, given: object) -> str:
    if type(given).__name__ in {"float", "float64"}:
        return said(
            "{what}: {given} is a floating-point number, which holds no tenth exactly. Give it as text or as a Decimal.",
            what=what,
            given=shown(given),
        )
    return said("{what} is a number such as 72 or 72.4, not {given}.", what=what, given=shown(given))


def _outside(what: str, given: object, least: Fraction | int | None, most: Fraction | int | None) -> str:
    if least is None:
        return said(
            "{what} is {most} at most, not {given}.", what=what, most=decimal(most), given=_written(given)
        )
    if most is None:
        return said(
            "{what} is {least} at least, not {given}.", what=what, least=decimal(least), given=_written(given)
        )
    return said(
        "{what} lies between {least} and {most}; {given} does not.",
        what=what,
        least=decimal(least),
        most=decimal(most),
        given=_written(given),
    )


def _written(given: object) -> str:
    return decimal(given) if isinstance(given, Fraction) else shown(given)


def decimal(value: Fraction | int | None, places: int = 4) -> str:
    """Return a number in decimals, cut after some places where it goes on (then with ``…``)."""
    read = Fraction(value or 0)
    scaled = abs(read) * 10**places
    cut = scaled.numerator // scaled.denominator
    digits = f"{cut:0{places + 1}d}"
    whole, behind = digits[:-places], digits[-places:].rstrip("0")
    more = "…" if scaled.denominator != 1 else ""
    sign = "-" if read < 0 else ""
    return f"{sign}{whole}{'.' if behind or more else ''}{behind or ('0' if more else '')}{more}"
