"""What is wrong with a file that is to be JSON, in words of the catalogue and with the line: Python's own words name no remedy."""

import json
from collections.abc import Mapping

from marram.said import Said, said

_PLAIN: Mapping[str, Said] = {
    "Expecting value": said("a value is missing, or is none that JSON knows"),
    "Expecting property name enclosed in double quotes": said("a key in double quotes is missing"),
    "Expecting ':' delimiter": said("a colon is missing"),
    "Expecting ',' delimiter": said("a comma is missing"),
    "Illegal trailing comma before end of object": said("a comma stands before the end"),
    "Illegal trailing comma before end of array": said("a comma stands before the end"),
    "Extra data": said("something stands after the end"),
    "Unterminated string starting at": said("quotes are not closed"),
    "Invalid control character at": said("a line ends within quotes, or a control character stands there"),
    "Invalid \\escape": said("a backslash stands where JSON has none"),
    "Invalid \\uXXXX escape": said("a backslash stands where JSON has none"),
    "Unexpected UTF-8 BOM (decode using utf-8-sig)": said("a byte order mark stands at the start"),
}
"""What the reader of Python's json says (:class:`json.JSONDecodeError`, up to 3.14), and how it is told."""


def json_fault(error: ValueError | RecursionError) -> Said:
    """Return what is wrong, as it follows "is not JSON: ", with where it is.

    Args:
        error: what reading the file's bytes as text, or the text as JSON, raised.
    """
    if isinstance(error, RecursionError):
        return said("too many brackets stand in one another")
    if isinstance(error, UnicodeDecodeError):
        line = error.object.count(b"\n", 0, error.start) + 1
        return said("line {line} has letters that are not in UTF-8 (save the file as UTF-8)", line=line)
    if not isinstance(error, json.JSONDecodeError):
        return said("a number in it has thousands of digits")  # more than sys.get_int_max_str_digits()
    if not error.doc.strip():
        return said("it is empty")
    what = _PLAIN.get(error.msg.removesuffix(":"), said("it cannot be read there"))
    return said("line {line}, column {column}: {what}", line=error.lineno, column=error.colno, what=what)
