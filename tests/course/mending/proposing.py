"""Drafts of broken maps, and what is proposed and accepted on them."""

import json

from marram.course import load
from marram.course.mending.draft import accept, draft_of
from tests.course.mending.broken import BREAKS, document, features


def broken(*breaks):
    """Return the draft of nine holes broken in some ways: pairs of a break's name and a hole."""
    found = features()
    for name, hole in breaks:
        BREAKS[name](found, hole)
    return draft_of(document(found))


def proposal(draft, check):
    """Return the only proposal for a check."""
    (found,) = [one for one in draft.proposals if one.fault.check == check]
    return found


def mended(draft, most=60):
    """Return a draft with the first choice of the first proposal accepted, again and again."""
    for _ in range(most):
        if not draft.proposals:
            return draft
        draft = accept(draft, draft.proposals[0].choices[0])
    raise AssertionError([(one.mending, str(one.fault)) for one in draft.proposals])


def opened(draft, folder):
    """Return the map of a draft as ``load`` opens it."""
    path = folder / "mended.geojson"
    path.write_text(json.dumps(draft.document))
    return load(path)


def after(draft, ident):
    return next(one for one in draft.document["features"] if one["id"] == ident)
