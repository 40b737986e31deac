"""The whole book of an edition on one page that needs nothing else: no desk, no network, no further file.

Script, style, book, the weights that find by words and every sentence stand in it. Its content security policy allows
its own script and style by their digests and nothing else (Content Security Policy Level 3, 2.3.1), so that it can ask
no network even by mistake.
"""

import base64
import gzip
import hashlib
import json
from collections.abc import Mapping
from datetime import date
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

from marram.desk.shell.assets import source
from marram.desk.shell.joined_modules import joined
from marram.rules.facts.conditions import LOCAL_RULE_TITLES
from marram.rules.finding.model import text_of_file
from marram.services.cases.conditions import Conditions
from marram.services.cases.event import Event
from marram.services.offline.book import offline_book
from marram.words.language import translate
from marram.words.texts import day_words, text, texts_of


def pocket_page(conditions: Conditions, event: Event) -> tuple[bytes, Mapping[str, Any]]:
    """Return the page, and the book that stands in it.

    Args:
        conditions: the day of play, and what is known of the competition.
        event: the competition; one without a name for none.

    Raises:
        InputError: the conditions cannot be used.
    """
    book = offline_book(conditions)
    words = texts_of("offline_script") | texts_of("definitions")
    script, style = joined("offline/pocket.js", source), source("offline/book.css")
    page = _TEMPLATES.get_template("pocket.html").render(
        book=book,
        text=text,
        title=" · ".join(one for one in (event.name, text("offline.title")) if one),
        edition=_edition(book),
        about=_about(conditions, event, book),
        local_rules=_local_rules(conditions),
        notice=event.notice,
        script=Markup(script),  # noqa: S704 - the project's own file
        style=Markup(style),  # noqa: S704 - the project's own file
        script_digest=_digest(script),
        style_digest=_digest(style),
        words_json=Markup(_data(words)),  # noqa: S704 - no "<" is left in it
        book_data=_packed(json.dumps(book, ensure_ascii=False, separators=(",", ":"))),
        model_data=_packed(text_of_file()),
    )
    return page.encode(), book


def _edition(book: Mapping[str, Any]) -> str:
    return text(
        "offline.about.edition",
        edition=book["edition"],
        day=day_words(date.fromisoformat(book["clarified_to"])),
    )


def _about(conditions: Conditions, event: Event, book: Mapping[str, Any]) -> list[str]:
    lines = [_edition(book), text("offline.about.day", day=day_words(conditions.on))]
    if event.name:
        lines.append(text("offline.about.event", name=event.name))
    if conditions.form:
        lines.append(text("offline.about.form", form=conditions.form_words))
    if conditions.sides_words:
        lines.append(conditions.sides_words)
    if conditions.local is None:
        lines.append(text("offline.about.local_open"))
    elif conditions.local:
        lines.append(text("offline.about.local", codes=", ".join(conditions.local)))
    else:
        lines.append(text("offline.about.local_none"))
    return [
        *lines,
        text("offline.about.made", program=book["program"], book=book["book"]),
    ]


def _local_rules(conditions: Conditions) -> list[str]:
    """Return each code with what it is about; a code that only defines an area stands alone."""
    about = LOCAL_RULE_TITLES
    return [
        f"{code}: {translate()(about[code])}" if code in about else code for code in conditions.local or ()
    ]


def _packed(data: str) -> str:
    """Return text compressed (RFC 1952, the same bytes each time) and written in letters (RFC 4648)."""
    return base64.b64encode(gzip.compress(data.encode(), 9, mtime=0)).decode()


def _data(plain: Mapping[str, Any]) -> str:
    return json.dumps(plain, ensure_ascii=False).replace("<", "\\u003c")


def _digest(content: str) -> str:
    return base64.b64encode(hashlib.sha256(content.encode()).digest()).decode()


_TEMPLATES = Environment(
    loader=FileSystemLoader(Path(__file__).parent / "templates"),
    autoescape=True,
    undefined=StrictUndefined,
    trim_blocks=True,
)

__all__ = ["pocket_page"]
