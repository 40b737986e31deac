"""A briefing as a JSON document and back: strictly read, every fault with its place."""

import json
from collections.abc import Mapping
from dataclasses import asdict
from typing import Any

from marram.errors import InputError, shown
from marram.json_faults import json_fault
from marram.said import said
from marram.teach.briefings.deck import PARTS, Deck, Page, Topic

KIND = "briefing"
_DECK = {"marram", "kind", "title", "topic", "pages", "version", "left_out"}
_PAGE = {"incident", "facts", "form", "made", "edited", "was"}


def as_document(deck: Deck) -> dict[str, Any]:
    """Return a deck as a JSON document."""
    return {"marram": 1, "kind": KIND, **asdict(deck)}


def written(deck: Deck) -> bytes:
    """Return a deck as a file, one line for each value, so that changes can be compared."""
    return (json.dumps(as_document(deck), indent=2, ensure_ascii=False) + "\n").encode()


def read(text: str | bytes) -> Deck:
    """Return the deck that a file holds.

    Raises:
        InputError: it holds none; every fault is listed.
    """
    try:
        document = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise InputError(said("The briefing is not JSON: {why}.", why=json_fault(error))) from None
    return read_document(document)


def read_document(document: Any) -> Deck:
    """Return the deck that a JSON document holds.

    Raises:
        InputError: it holds none; every fault is listed.
    """
    if not isinstance(document, dict) or document.get("kind") != KIND:
        raise InputError(
            said('This is no briefing: give a file that \'marram briefing\' wrote ("kind": "briefing").')
        )
    faults: list[str] = []
    faults += [
        said("The briefing has a key {key} that nothing is known of; leave it out.", key=shown(key))
        for key in sorted(set(document) - _DECK)
    ]
    topic = _topic(document.get("topic"), faults)
    title = _words(document, "title", "", faults)
    version = _number(document, "version", 1, faults)
    left_out = _number(document, "left_out", 0, faults)
    pages = document.get("pages")
    if not isinstance(pages, list) or not pages:
        faults.append(said("pages: give a list of one page at least."))
        pages = []
    read_pages = [_page(one, f"pages[{number}]", faults) for number, one in enumerate(pages)]
    if faults or topic is None:
        raise InputError(*faults)
    return Deck(title, topic, tuple(one for one in read_pages if one is not None), version, left_out)


def _topic(given: Any, faults: list[str]) -> Topic | None:
    if not isinstance(given, dict) or not isinstance(given.get("kind"), str):
        faults.append(said("topic: give an object with kind, given, seed and count."))
        return None
    words = given.get("given", [])
    if not isinstance(words, list) or not all(isinstance(one, str) for one in words):
        faults.append(said("topic.given: give a list of words."))
        words = []
    return Topic(
        given["kind"], tuple(words), _number(given, "seed", 1, faults), _number(given, "count", 20, faults)
    )


def _page(given: Any, where: str, faults: list[str]) -> Page | None:
    if not isinstance(given, dict):
        faults.append(said("{where}: give an object.", where=where))
        return None
    faults += [
        said("{where} has a key {key} that nothing is known of; leave it out.", where=where, key=shown(key))
        for key in sorted(set(given) - _PAGE)
    ]
    made, edited, facts = (given.get(key, {}) for key in ("made", "edited", "facts"))
    if not isinstance(made, Mapping) or any(not isinstance(made.get(part), str) for part in PARTS):
        faults.append(said("{where}.made: give words for {parts}.", where=where, parts=", ".join(PARTS)))
        return None
    if not isinstance(edited, Mapping) or any(
        part not in PARTS or not isinstance(words, str) or not words.strip() for part, words in edited.items()
    ):
        faults.append(said("{where}.edited: give words, only for {parts}.", where=where, parts=", ".join(PARTS)))  # fmt: skip
        return None
    if not isinstance(facts, Mapping):
        faults.append(said("{where}.facts: give an object.", where=where))
        return None
    words = [_words(given, key, where, faults) for key in ("incident", "form", "was")]
    return Page(words[0], dict(facts), words[1], dict(made), dict(edited), words[2])


def _words(given: Mapping[str, Any], key: str, where: str, faults: list[str]) -> str:
    found = given.get(key, "")
    if isinstance(found, str):
        return found
    place = f"{where}.{key}" if where else key
    faults.append(said("{where}: give words in quotation marks.", where=place))
    return ""


def _number(given: Mapping[str, Any], key: str, otherwise: int, faults: list[str]) -> int:
    found = given.get(key, otherwise)
    if isinstance(found, int) and not isinstance(found, bool) and found >= 0:
        return found
    faults.append(said("{where}: give a whole number, 0 at least.", where=key))
    return otherwise
