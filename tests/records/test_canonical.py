"""Equal contents have equal bytes."""

import json
import struct
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from marram.errors import InputError
from marram.records.canonical import LARGEST, canonical

SAMPLES = {
    "0000000000000000": "0",
    "8000000000000000": "0",
    "0000000000000001": "5e-324",
    "8000000000000001": "-5e-324",
    "7fefffffffffffff": "1.7976931348623157e+308",
    "ffefffffffffffff": "-1.7976931348623157e+308",
    "4340000000000000": "9007199254740992",
    "c340000000000000": "-9007199254740992",
    "4430000000000000": "295147905179352830000",
    "44b52d02c7e14af5": "9.999999999999997e+22",
    "44b52d02c7e14af6": "1e+23",
    "44b52d02c7e14af7": "1.0000000000000001e+23",
    "444b1ae4d6e2ef4e": "999999999999999700000",
    "444b1ae4d6e2ef4f": "999999999999999900000",
    "444b1ae4d6e2ef50": "1e+21",
    "3eb0c6f7a0b5ed8c": "9.999999999999997e-7",
    "3eb0c6f7a0b5ed8d": "0.000001",
    "41b3de4355555553": "333333333.3333332",
    "41b3de4355555554": "333333333.33333325",
    "41b3de4355555555": "333333333.3333333",
    "41b3de4355555556": "333333333.3333334",
    "41b3de4355555557": "333333333.33333343",
    "becbf647612f3696": "-0.0000033333333333333333",
    "43143ff3c1cb0959": "1424953923781206.2",
}
"""RFC 8785 (June 2020), Appendix B: doubles by their bits, and how they are written."""

PLAIN = st.recursive(
    st.none()
    | st.booleans()
    | st.integers(-LARGEST, LARGEST)
    | st.floats(allow_nan=False, allow_infinity=False)
    | st.text(st.characters(exclude_categories=["Cs"])),
    lambda inner: (
        st.lists(inner, max_size=4)
        | st.dictionaries(st.text(st.characters(exclude_categories=["Cs"])), inner, max_size=4)
    ),
    max_leaves=12,
)


@pytest.mark.parametrize(("bits", "written"), SAMPLES.items())
def test_numbers_are_written_as_the_standard_has_them(bits: str, written: str) -> None:
    """RFC 8785, Appendix B: every sample of a number."""
    assert canonical(struct.unpack(">d", bytes.fromhex(bits))[0]) == written


def test_keys_are_sorted_and_strings_escaped_as_the_standard_has_them() -> None:
    """RFC 8785, 3.2.3: keys by their UTF-16 code units, with the keys of its example; 3.2.2.2: escapes."""
    keys = ["\u20ac", "\r", "\ufb33", "1", "\U0001f600", "\u0080", "\u00f6"]
    order = ["\r", "1", "\u0080", "\u00f6", "\u20ac", "\U0001f600", "\ufb33"]

    assert list(json.loads(canonical(dict.fromkeys(keys, 0)))) == order
    assert canonical('\u20ac$\u000f\nA\'B"\\"/') == '"\u20ac$\\u000f\\nA\'B\\"\\\\\\"/"'
    assert canonical({"b": [True, None, {}, []], "a": 1.0}) == '{"a":1,"b":[true,null,{},[]]}'


def as_double(digits: str) -> float:
    """A whole number that only a double can hold is one (RFC 7493, 2.2)."""
    return int(digits) if abs(int(digits)) <= LARGEST else float(digits)


@given(PLAIN)
def test_what_is_written_reads_back_and_is_written_the_same_again(thing: Any) -> None:
    """Reading the canonical form gives what was written, and its canonical form is the same."""
    text = canonical(thing)

    assert json.loads(text, parse_int=as_double) == thing
    assert canonical(json.loads(text)) == text


@pytest.mark.parametrize(
    "thing", [float("nan"), float("inf"), LARGEST + 2, 10**400, "\ud800", {1: 2}, {"a": b"x"}, [object()]]
)
def test_what_has_no_one_form_is_refused(thing: Any) -> None:
    """Nothing is kept that another reader of JSON would read otherwise."""
    with pytest.raises(InputError):
        canonical(thing)
