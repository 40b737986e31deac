"""No sentence goes past the catalogue in the source: every one that a person may read is a message of it."""

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

import marram
from marram.docs.messages import messages
from marram.said import Said, all_of, counted, joined, one_of, said, sentences
from marram.words.spoken import spoken
from tests.words.letters import altered
from tests.words.made_up import speaking

SOURCE = Path(marram.__path__[0])

WORDED = (
    "cli",
    "competition",
    "course",
    "desk",
    "handicap",
    "paper",
    "relief",
    "services",
    "rules/engine",
    "rules/story",
)
"""Where what is found or refused is worded; what the book says has a catalogue of its own."""
FILES = (
    "errors.py",
    "schema.py",
    "visible.py",
    "rules/local_rules/adoption.py",
    "rules/incidents/__init__.py",
)

PINNED = ("rules/engine/counting.py", "rules/engine/otherwise.py")
"""What writes files for whoever works on marram."""

SENTENCE = re.compile(r"[A-Za-z]{2,} [a-z]+ [a-z]+|[A-Za-z]{2,} [a-z]{2,}[.:;,]|[a-z]{2,}[,:] [a-z]{2,} ")
"""What reads like words for a person: three in a row, or two and a stop."""

REPORTS = {"Fault", "error", "warn", "note", "refuse", "give_up", "Unreadable", "CannotOpen", "Choice"}
"""What is called with what is wrong, or what is proposed."""

OURS = {"BookError", "AttributeError", "exception"}
"""Faults of marram itself, for whoever mends it: of its encoding, of a name asked for, in the log."""

NOT_SAID = {
    "year of birth": "a heading that lists of entries have",
    "date of birth": "the same",
    "end of data": "what Python's csv module says",
    "Hole lies outside shell": "what GEOS says; the words for it stand beside it",
    "Holes are nested": "the same",
    "Interior is disconnected": "the same",
    "Too few points in geometry component": "the same",
    "Ring Self-intersection": "the same",
    "{} imports itself by way of {}; take the circle apart.": "to whoever writes a script of the desk, not to its reader",
    "{}, line {}: write the import or export as {} says.": "the same",
    "{} stands twice in {}. Leave it in one room.": "to whoever writes a room of the desk, not to its reader",
    "{} is mounted outside of {}, where no role is asked for.": "the same",
    "No role may use {}: enter each in its room of marram/desk/people/rights.py.": "the same",
    "Something is in the application that is none of its rooms, where no role is asked for.": "the same",
    "scoring area, {}": "a place as the file of an event writes it, in its own words",
    "equipe de deux": "a heading of a list, as clubs write it",
    "vor und nachname": "likewise",
    "last name first name": "likewise",
    "first name last name": "likewise",
    "surname first name": "likewise",
    "barras de salida": "likewise",
    "timeout graceful shutdown": "a line of the server's own, known again by these words and kept from the reader",
    "Map data © OpenStreetMap contributors, ODbL 1.0": "a credit, as its licence asks for it",
    "back to version {}": "the note of a version, kept as it was written",
    "; what was prepared from {} is set aside": "the same",
    "changes of the course file taken over": "the same",
    "changes of the course file left out": "the same",
    "{} ({} times)": "the same",
    "and {} more": "the same",
}
"""Words in the source that are no message, and why."""


def worded() -> Iterator[Path]:
    for folder in WORDED:
        yield from sorted({*(SOURCE / folder).rglob("*.py")} - {SOURCE / file for file in PINNED})
    yield from (SOURCE / file for file in FILES)


def called(node: ast.AST) -> str:
    func = node.func if isinstance(node, ast.Call) else None
    return str(getattr(func, "id", getattr(func, "attr", "")))


def is_refusal(node: ast.AST) -> bool:
    """Whether a call makes an error for people, a fault, or adds to a list of faults."""
    name = called(node)
    if name in OURS:
        return False
    if name in {"append", "extend"} and isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
        return "faults" in ast.unparse(node.func.value)
    return name in REPORTS or name.endswith("Error") or re.match(r"Bad[A-Z]|Unknown[A-Z]", name) is not None


def words_of(node: ast.AST) -> str:
    """Return a literal's words, a brace for each value; empty for what is no literal of words."""
    if isinstance(node, ast.JoinedStr):
        return "".join(str(one.value) if isinstance(one, ast.Constant) else "{}" for one in node.values)
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else ""


@cache
def known() -> frozenset[str]:
    """Every message."""
    return frozenset(sentence for one in messages() for sentence in one)


def past_the_catalogue(source: str) -> list[str]:
    """Return the words in a source that are no message: sentences anywhere, f-strings where something is refused."""
    found: list[str] = []

    def look(node: ast.AST, *, refused: bool) -> None:
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            return  # a docstring
        if isinstance(node, ast.arg):
            return  # its type, written as text where it is known to the checker alone
        if called(node) in OURS:
            return
        words = words_of(node)
        if words:
            plain = (
                refused
                and re.search(r"[A-Za-z{]", words)
                and (isinstance(node, ast.JoinedStr) or " " in words)
            )
            if (plain or SENTENCE.search(words)) and words not in known() and words not in NOT_SAID:
                found.append(words)
            return
        if called(node) in {"said", "counted"} and isinstance(node, ast.Call):
            for value in (*node.args[2:], *(one.value for one in node.keywords)):
                look(value, refused=False)
            return  # what it begins with is a message: docs/messages.py reads it here
        inner = is_refusal(node) or (refused and called(node) in {"", "tuple", "list"})
        for child in ast.iter_child_nodes(node):
            look(child, refused=inner or (refused and not isinstance(node, ast.Call)))

    look(ast.parse(source), refused=False)
    return found


def test_every_sentence_is_a_message() -> None:
    """A fault, a proposal or a report worded in the source without the catalogue is named with its file."""
    left = {str(path.relative_to(SOURCE)): past_the_catalogue(path.read_text("utf-8")) for path in worded()}

    assert {file: words for file, words in left.items() if words} == {}


@pytest.mark.parametrize(
    "line",
    [
        'faults.warn("dry", f"this pond has {depth} m of water", said("Fill it."))',
        'faults.error("dry", "this pond has no water", said("Fill it."))',
        'Fault(Severity.NOTE, "dry", f"{name} {depth}", said("Fill it."))',
        'raise InputError(f"{where}: {fault}")',
        'raise InputError(*(f"{where}: {fault}" for fault in error.faults))',
        'faults.append(f"{where}: {fault}")',
        'source.refuse("dry", reason, "Give degrees.", ident)',
        'yield f"{name} stand in no starting time."',
        'what = "a sentence that nobody translates"',
        'Choice(f"Use {name}", edits)',
    ],
)
def test_a_sentence_past_the_catalogue_is_found(line: str) -> None:
    """What somebody would write first, a plain text or an f-string, is found by the test above."""
    assert len(past_the_catalogue(line)) == 1


def test_what_is_put_together_keeps_its_messages(locales: Path) -> None:
    """Sentences joined, listed, counted or added are put into the language part by part."""
    hole = said("hole {hole}", hole=3)
    three = counted("{count} of its parts is not in the file", "{count} of its parts are not in the file", 3)
    both = sentences(three, "", hole)

    assert (str(all_of([1, 2, 3])), str(one_of("ab")), str(one_of(["x"]))) == ("1, 2 and 3", "a or b", "x")
    assert str(both) == "3 of its parts are not in the file hole 3"
    assert isinstance(three + ": " + hole, Said)
    with speaking(locales):
        marked = altered("hole {hole}").format(hole=3)
        parts = altered("{count} of its parts are not in the file").format(count=3)
        assert spoken(joined(", ")) == spoken("") == ""
        assert spoken(both) == f"{parts} {marked}"
        assert spoken(three + ": " + hole) == f"{parts}: {marked}"
        assert spoken(joined(", ", hole, "x")) == f"{marked}, x"
        assert spoken(all_of([hole, 4])) == altered("{before} and {last}").format(before=marked, last=4)
