"""A ballot as it is published: the seed, the method in words, every entry's key with its digest, in the order drawn."""

from collections.abc import Sequence

from marram.competition.entries.ballot import Choosing, Field, digest
from marram.competition.entries.entry import Entry
from marram.services.publishing.documents import BALLOT, Document
from marram.words.texts import text


def ballot_document(
    name: str, entries: Sequence[Entry], field: Field, *, seed: str, places: int, choosing: Choosing
) -> Document:
    """Return a ballot as it is published, from which alone anybody can draw it again.

    Args:
        name: of the event; empty where it is not known.
        entries: everybody who entered.
        field: what was drawn, before withdrawals.
        seed: the seed.
        places: how many play.
        choosing: who has a place before others; with lowest handicaps first each entry shows its own.
    """
    drawn = (*field.playing, *field.reserves)
    by_index = choosing is Choosing.LOWEST_HANDICAPS
    return {
        "marram": 1,
        "kind": BALLOT,
        "event": name,
        "seed": seed,
        "places": places,
        "method": text("publishing.method"),
        "lowest_handicaps_first": by_index,
        "entries": sorted(one.key for one in entries),
        "refused": sorted(one.key for one in field.refused),
        "order": [
            {
                "key": one.key,
                "digest": digest(seed, one),
                **(
                    {"handicap_index": None if one.handicap_index is None else str(one.handicap_index)}
                    if by_index
                    else {}
                ),
            }
            for one in drawn
        ],
    }
