"""What an entry is about, in a few words."""

from marram.errors import InputError
from marram.records.entry import Kept
from marram.rules.incidents import incident
from marram.services.kinds.registry import kinds
from marram.services.log.log import RULING
from marram.words.language import translate
from marram.words.texts import text


def title_of(entry: Kept) -> str:
    """Return what an entry is about, in words."""
    if entry.kind != RULING:
        return text(f"log.kind.{entry.kind}") if entry.kind in kinds() else entry.kind
    try:
        acts = entry.content["case"]["incidents"]
        return " · ".join(translate()(incident(act["incident"]).title) for act in acts)
    except (InputError, KeyError, TypeError):
        return text("log.kind.ruling")
