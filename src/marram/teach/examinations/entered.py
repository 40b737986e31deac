"""Answers of printed papers as an examiner types them: a line for each candidate, the number and then a letter for each item."""

from collections.abc import Mapping, Sequence

from marram.errors import InputError, shown
from marram.said import said

NONE = "-"
"""What stands for an item that was not answered."""


def read_entered(given: str, forms: Mapping[int, Sequence[int]]) -> dict[int, dict[int, int]]:
    """Return for each candidate's number the place chosen for each item, counted from 1; items not answered are left out.

    Args:
        given: what was typed; spaces and commas between letters say nothing, and :data:`NONE` is no answer.
        forms: for each candidate's number, how many answers each item of their form has.

    Raises:
        InputError: a line cannot be read; every fault is listed.
    """
    found: dict[int, dict[int, int]] = {}
    faults: list[str] = []
    for line in filter(None, (one.strip() for one in given.splitlines())):
        digits = line[: len(line) - len(line.lstrip("0123456789"))]
        number = int(digits) if digits.isascii() and len(digits) < len("10000") and digits else 0
        letters = [one for one in line[len(digits) :].upper() if not one.isspace() and one not in ",;.:"]
        if number not in forms:
            faults.append(said("{line}: begin with the number of a candidate.", line=shown(line)))
        elif number in found:
            faults.append(said("Candidate {number} is there twice.", number=number))
        elif len(letters) != len(forms[number]):
            faults.append(
                said(
                    "Candidate {number}: {given} answers; the form has {count} items. Write {none} where nothing was ticked.",
                    number=number,
                    given=len(letters),
                    count=len(forms[number]),
                    none=NONE,
                )
            )
        else:
            found[number] = {}
            for item, (one, many) in enumerate(zip(letters, forms[number], strict=True), start=1):
                place = "ABCDEFGH"[:many].find(one)
                if place >= 0:
                    found[number][item] = place
                elif one != NONE:
                    faults.append(
                        said(
                            "Candidate {number}, item {item}: {given}; give one of {letters}, or {none}.",
                            number=number,
                            item=item,
                            given=shown(one),
                            letters=", ".join("ABCDEFGH"[:many]),
                            none=NONE,
                        )
                    )
    if not found and not faults:
        faults.append(said("There are no answers: write a line for each candidate."))
    if faults:
        raise InputError(*faults)
    return found
