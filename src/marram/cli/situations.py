"""``marram situations``: situations for a rules evening, sampled from the book, each with its ruling."""

from collections.abc import Iterator
from itertools import islice
from secrets import randbelow

from marram.cli.show import Line, print_json, show_lines
from marram.demo.plan import COURSE_NAME
from marram.rules.former_names import incident_now
from marram.teach.situations.sampling import situations
from marram.teach.situations.situation import Situation
from marram.words.citations import named_all
from marram.words.texts import text

SEEDS = 1_000_000
"""A seed that is not given is drawn below this, so that it can be read out and typed."""


def drawn_seed() -> int:
    """Return a seed nobody asked for."""
    return randbelow(SEEDS)


def tell_situations(
    count: int, *, seed: int, incidents: list[str], provision: str, level: int | None, as_json: bool
) -> None:
    """Print situations with their rulings."""
    names = tuple(incident_now(name) for name in incidents)
    found = list(islice(situations(seed, incidents=names, provision=provision, level=level), count))
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "situations",
                "seed": seed,
                "situations": [as_document(one) for one in found],
            }
        )
        return
    show_lines(_lines(found))
    show_lines([("quiet", text("situations.again", command="situations", seed=seed))])


def as_document(one: Situation) -> dict[str, object]:
    """Return a situation as JSON holds it."""
    return {
        "incident": one.incident,
        "facts": dict(one.facts),
        "form_of_play": one.form.value,
        "played_on": one.played_on.isoformat(),
        "hole": one.hole,
        "level": one.level,
        "told": list(one.told(COURSE_NAME)),
        "headline": one.headline,
        "citations": list(one.ruling.citations),
    }


def _lines(found: list[Situation]) -> Iterator[Line]:
    for number, one in enumerate(found, start=1):
        yield "head", text("situations.title", number=number, level=text(f"situations.level.{one.level}"))
        yield "text", " ".join(one.told(COURSE_NAME))
        yield "text", text("situations.ruling", headline=one.headline)
        yield "quiet", text("situations.rests_on", citations=named_all(one.ruling.citations))
