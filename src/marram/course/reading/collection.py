"""The bytes of a GeoJSON file as the collection of features they hold, or why they hold none."""

import json
import re
from typing import Any

from marram.course.progress import READING, STEP, Progress, no_progress
from marram.course.reading.source import Source
from marram.json_faults import json_fault
from marram.said import Said, said
from marram.visible import visible

_HALF = re.compile(rb"\\u[dD][89a-fA-F]")
"""In a file: half of a character, alone or beside the other half."""


class _NoNumber(ValueError):
    """``NaN`` or ``Infinity``, which Python reads and JSON does not have (RFC 8259, section 6)."""


def _refuse_constant(written: str) -> float:
    raise _NoNumber(written)


def _without_halves(document: Any) -> Any:
    """Return JSON with halves of characters, which no file can keep, as visible symbols."""
    written = json.dumps(document, ensure_ascii=False)
    return json.loads(re.sub("[\ud800-\udfff]", lambda half: visible(half[0]), written))


class _Twice(ValueError):
    """A key stands twice in one object: which of the two is meant cannot be told."""


def collection_of(
    name: str, data: bytes, source: Source, progress: Progress = no_progress
) -> dict[str, Any] | None:
    """Return the FeatureCollection (RFC 7946) in a file; where it holds none the source is given up, and says why.

    Args:
        name: the file's name, for the fault.
        data: its bytes, in UTF-8, UTF-16 or UTF-32 (RFC 8259).
        source: takes the fault.
        progress: told how far the work is.
    """
    why: Said
    again = said("Export the map as GeoJSON again.")
    try:
        document = json.loads(
            data, object_pairs_hook=_Objects(data, progress), parse_constant=_refuse_constant
        )
        if _HALF.search(data):
            document = _without_halves(document)
    except _Twice as twice:
        why = said("the key {key} stands twice in one object", key=repr(visible(str(twice))))
        again = said("Leave one of the two.")
    except _NoNumber as none:
        why = said("{written} is no number", written=str(none))
    except (ValueError, RecursionError) as error:
        why = json_fault(error)
    else:
        if (
            isinstance(document, dict)
            and document.get("type") == "FeatureCollection"
            and isinstance(document.get("features"), list)
        ):
            return document
        source.give_up(
            "not_a_collection",
            said("{name} is not a GeoJSON FeatureCollection", name=name),
            said("Export the whole map, with a 'features' list."),
        )
        return None
    source.give_up("not_json", said("{name} is not JSON: {why}", name=name, why=why), again)
    return None


class _Objects:
    """Makes each object of a file as it is read, with every key once, and tells how many of them were."""

    def __init__(self, data: bytes, progress: Progress) -> None:
        self._all = max(data.count(b"{"), 1)  # braces within texts aside
        self._made = 0
        self._progress = progress

    def __call__(self, pairs: list[tuple[str, Any]]) -> dict[str, Any]:
        self._made += 1
        if self._made % STEP == 0:
            self._progress(READING, min(self._made / self._all, 1.0))
        found = dict(pairs)
        if len(found) < len(pairs):
            keys = [key for key, _ in pairs]
            raise _Twice(next(key for key in found if keys.count(key) > 1))
        return found
