"""The book of one day as a document: the graphs of every incident with equal parts shared, and the words of every end.

What a phone without a network walks (``desk/offline/static/walker.js``). The conditions that are known (day, form of play,
sides, Local Rules in force) are settled in it; those that are not are asked, as the desk asks them.
"""

import hashlib
import json
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from marram import __version__
from marram.rules.cost import Cost, cost_of
from marram.rules.editions import clarified_to
from marram.rules.engine.fact import FACTS, Fact
from marram.rules.engine.graph import Graph, GraphNode, Vertex, vertices
from marram.rules.engine.request import book, book_among, conditions_of
from marram.rules.facts.conditions import LOCAL_RULES, FormOfPlay, Sides
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.finding.ranking import WORDS_OF_AREA, Context
from marram.rules.findings import Finding
from marram.rules.incidents import INCIDENTS
from marram.rules.incidents.incident import Incident
from marram.rules.penalty import general
from marram.rules.plain import as_plain
from marram.rules.rather import UNASKED, rather
from marram.rules.ruling import Action, Outcome, Ruling
from marram.services.cases.conditions import Conditions
from marram.services.cases.made_with import book_digest
from marram.services.cases.rulings import SHOWN
from marram.services.offline.likely_written import likely_tables
from marram.services.offline.pool import Pool
from marram.services.offline.sheets import Sheets
from marram.services.offline.telling import TABLES, mode_of, reason_that_tells, told_at
from marram.words.headline import cost_words, ends_the_hole
from marram.words.language import language, translate
from marram.words.messages import amount_words, say, term
from marram.words.penalties import count_words
from marram.words.provisions import cited
from marram.words.questions import question_words
from marram.words.sheet import sheet
from marram.words.stakes import certain_strokes, chosen_strokes

FORMAT_VERSION = 2
"""Version of the document; it grows when a reader of the old one would misread the new one."""


def offline_book(conditions: Conditions) -> dict[str, Any]:
    """Return the book under some conditions, as plain data for JSON.

    Keys: ``incidents`` (name, title, rule, theme, ``root``: the vertex it begins at, and ``rather``: an answer known unasked
    by which it is another one), ``questions`` (each
    ``[fact, citation, ways, child …]``), ``ways`` (what leads to each child: answers, or ``at_most``/``above``), ``ends``
    (each an outcome: its sheet by form of play, and what it costs), ``sheets``, ``options`` and ``sentences`` by their
    place. A vertex below 0 is the end number ``-1 - vertex``, another one a question.

    Raises:
        InputError: the conditions cannot be used.
    """
    return _Writer(conditions).document()


def book_bytes(conditions: Conditions) -> bytes:
    """Return the book under some conditions as JSON, without a space too many."""
    return json.dumps(offline_book(conditions), ensure_ascii=False, separators=(",", ":")).encode()


_MOST_STROKES = 20
"""Penalty strokes up to here are said in words of the book; no ruling comes to so many."""

_WITH_TELLING = 5
"""How long the row of an end is that the way to it adds to."""


class _Writer:
    """What has been written so far of one book."""

    def __init__(self, conditions: Conditions) -> None:
        self.conditions = conditions
        form = conditions.form
        self.forms: tuple[FormOfPlay | None, ...] = (form,) if form else (None, *FormOfPlay)
        self.words = Sheets()
        self.facts, self.citations, self.ways = Pool(), Pool(), Pool()
        self.questions, self.ends = Pool(), Pool()
        self.costs, self.actions = Pool(), Pool()

    def document(self) -> dict[str, Any]:
        incidents = [self._incident(one) for one in INCIDENTS]
        body = {
            "incidents": incidents,
            "facts": self.facts.rows,
            "citations": self.citations.rows,
            "ways": self.ways.rows,
            "questions": self.questions.rows,
            "ends": self.ends.rows,
            "costs": self.costs.rows,
            "actions": self.actions.rows,
            "sheets": self.words.sheets.rows,
            "options": self.words.options.rows,
            "sentences": self.words.sentences.rows,
        }
        digest = hashlib.sha256(json.dumps(body).encode()).hexdigest()[:16]
        return {"marram": FORMAT_VERSION, "kind": "offline_book", **self._head(digest), **body}

    def _head(self, digest: str) -> dict[str, Any]:
        given = self.conditions
        return {
            "program": __version__,
            "book": book_digest(),
            "digest": digest,
            "language": language().code,
            "edition": given.edition,
            "played_on": given.on.isoformat(),
            "clarified_to": clarified_to(given.on).isoformat(),
            "form_of_play": given.form.value if given.form else None,
            "sides": given.sides.value if given.sides else None,
            "local_rules": None if given.local is None else list(given.local),
            "said_of": _said_of(given),
            "likely": likely_tables(given),
            "shown": SHOWN,
            "forms": [form.value if form else None for form in self.forms],
            "reminder": say("TERMS", "reminder"),
            "answered": self._answered(),
            "tells": self._tells(),
            "or": say("TERMS", "or"),
            "strokes": [say("TERMS", f"strokes.{one}") for one in ("0", "1", "n")],
            "counts": [count_words(one) for one in range(_MOST_STROKES)],
            "if_taken": say("TERMS", "cost.if_taken"),
            "settled": say("TERMS", "settled"),
        }

    def _answered(self) -> dict[str, str]:
        """Return the conditions that are known and stay questions of the graph."""
        given = self.conditions
        if given.local is None:
            return {}
        facts = {fact: code in given.local for code, fact in LOCAL_RULES.items()}
        return {fact.name: fact.token(answer) for fact, answer in facts.items() if self._kept_open(fact)}

    def _tells(self) -> dict[int, dict[str, dict[str, str]]]:
        """Return what each answer of a fact tells, by which fact of a way decides; of a number any answer."""
        token = {"True": "yes", "False": "no"}
        return {
            mode: {
                fact: {token.get(word, word): found.value for word, found in told.items()}
                for fact, told in table.items()
                if self.facts.keyed(fact) is not None
            }
            for mode, table in TABLES.items()
        }

    def _incident(self, one: Incident) -> dict[str, Any]:
        who = self.conditions.sides
        root, asks_sides = self._root(one.name, who)
        written = {
            "name": one.name,
            "title": translate()(one.title),
            "rule": one.rule,
            "theme": translate()(one.theme),
            "former": one.for_teaching,
            "root": root,
        }
        if one.name in UNASKED:
            written["rather"] = self._rather(one.name)
        if who is None and asks_sides:  # answered, the incident goes on in the tree of those sides
            written["among"] = {
                each.value: self._root(one.name, each)[0] for each in Sides if each is not Sides.INDIVIDUAL
            }
        return written

    def _rather(self, name: str) -> list[Any]:
        """Write by which answer, known unasked, an incident is rather another one: the fact, the answer, the end, the citation."""
        fact_name, token = UNASKED[name]
        fact = FACTS[fact_name]
        other = rather(name, {fact: fact.parse(token)})
        assert other is not None
        return [self._fact(fact), token, self._end(other), self._citation(other.citation)]

    def _root(self, name: str, who: Sides | None) -> tuple[int, bool]:
        """Return the vertex an incident begins at, and whether it asks who plays together."""
        given = self.conditions
        local = None if given.local is None else frozenset(given.local)
        form = FormOfPlay.MATCH_PLAY if who is Sides.THREE_BALL and given.form is None else given.form
        known = dict(conditions_of(name, given.on, form, local))
        if who is not None:
            known[the_sides] = who
        known = {fact: answer for fact, answer in known.items() if not self._kept_open(fact)}
        pages = book(name) if who in (None, Sides.INDIVIDUAL) else book_among(name, who)
        with pages.lock:
            whole = Graph(pages.graph).restrict(pages.graph.reduce(pages.root), known)
        found = list(vertices(whole))
        return self._vertices(whole), any(
            isinstance(one, GraphNode) and one.fact is the_sides for one in found
        )

    def _kept_open(self, fact: Fact[Any]) -> bool:
        """Whether a condition stays a question of the graph, answered ahead, since its answer tells what is found."""
        return any(fact.name in table for table in TABLES.values())

    def _vertices(self, root: Vertex) -> int:
        """Write all below a vertex, the children first, and return its number."""
        number: dict[int, int] = {}
        told = told_at(root)
        pending = [root]
        while pending:
            here = pending[-1]
            if not isinstance(here, GraphNode):
                end = self._end(here)
                self._told(here, end, told[id(here)])
                number[id(pending.pop())] = -1 - end
                continue
            left = [child for child in here.children if id(child) not in number]
            if left:
                pending += left
                continue
            pending.pop()
            children = [number[id(child)] for child in here.children]
            row = (self._fact(here.fact), self._citation(here.citation), self._ways(here), *children)
            number[id(here)] = self.questions.place(row)
        return number[id(root)]

    def _ways(self, node: GraphNode) -> int:
        ways: list[Any] = []
        for branch in node.branches:
            if branch.answers:
                ways.append([node.fact.token(answer) for answer in branch.answers])
            elif branch.at_most is not None:
                ways.append({"at_most": as_plain(branch.at_most)})
            else:
                ways.append({"above": as_plain(branch.above)})
        return self.ways.place(ways, repr(ways))

    def _citation(self, citation: str) -> int:
        return self.citations.place([citation, cited(citation).statement], citation)

    def _fact(self, fact: Fact[Any]) -> int:
        if (known := self.facts.keyed(fact.name)) is not None:
            return known
        words = question_words(fact)
        written: dict[str, Any] = {
            "name": fact.name,
            "kind": words.kind,
            "question": words.question,
            "help": words.help,
            "source": words.source,
            "decided_by": words.decided_by,
        }
        if fact.answers:
            written["answers"] = [[one.token, one.words] for one in words.answers]
        else:
            written |= {
                "unit": fact.unit,
                "unit_words": words.unit_words,
                "minimum": fact.minimum,
                "whole": fact.whole,
            }
            written["one"] = amount_words(1, fact.unit)
            if fact.maximum != float("inf"):
                written["maximum"] = fact.maximum
        return self.facts.place(written, fact.name)

    def _end(self, outcome: Outcome) -> int:
        """Write an end: its sheets by form of play, what it costs, and what the way to it may add."""
        bare = replace(outcome, reasons=())
        if (known := self.ends.keyed(bare)) is not None:
            return known
        row: list[Any] = [self._sheets(bare)]
        if isinstance(bare, Ruling):
            row += [self._cost(cost_of(bare)), self._action(bare.action)]
            if mode := mode_of(bare):
                row += [mode, {}]
        return self.ends.place(row, bare)

    def _sheets(self, outcome: Outcome) -> list[int]:
        sheets = [self.words.place(sheet(outcome, form_of_play=form)) for form in self.forms]
        return sheets[:1] if len(set(sheets)) == 1 else sheets

    def _told(self, outcome: Outcome, end: int, told: Mapping[int, frozenset[Finding | None]]) -> None:
        """Add to an end its sheets for each thing that the ways to it may find."""
        row = self.ends.rows[end]
        if len(row) < _WITH_TELLING or not isinstance(outcome, Ruling):
            return
        mode, variants = row[3], row[4]
        for found in told[mode]:
            if found is not None and found.value not in variants:
                variants[found.value] = self._sheets(
                    replace(outcome, reasons=(reason_that_tells(found, mode),))
                )

    def _cost(self, cost: Cost) -> int:
        if (known := self.costs.keyed(cost)) is not None:
            return known
        words = [self.words.sentences.place(cost_words(cost, form)) for form in self.forms]
        loses = ends_the_hole(cost.penalties, Action.REPLACE, FormOfPlay.MATCH_PLAY)
        numbers = [certain_strokes(cost), chosen_strokes(cost)]
        return self.costs.place([cost.weight, int(loses), words, *numbers], cost)

    def _action(self, action: Action | None) -> int:
        if action is None:
            return -1
        with_ball = ends_the_hole((general(""),), action, FormOfPlay.MATCH_PLAY)
        row = [self.words.sentences.place(term(action)), int(with_ball), int(action is Action.PLAY_ON)]
        return self.actions.place(row, action)


def _said_of(given: Conditions) -> dict[str, str]:
    """Return what a finding knows without its being said, as it would be said: of the competition, and by the area of the ball."""
    areas = {area.value: words for area, words in WORDS_OF_AREA.items()}
    return {**areas, "competition": Context(form_of_play=given.form, sides=given.sides).words()}


__all__ = ["FORMAT_VERSION", "book_bytes", "offline_book"]
