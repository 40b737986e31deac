"""The path to a ruling as a picture: the questions that decided it down the middle, beside each where another answer leads.

What was so runs down as a thick line with a dot at each answer; other answers leave it as thin broken lines to a ruling that
is not this one. Nothing rests on colour: the way is thick and whole, what leaves it thin and broken.
"""

from dataclasses import dataclass

from marram.relief.pictures.lettering import wrapped
from marram.relief.pictures.markup import Node, add, root, say, written
from marram.relief.pictures.styles import AREA, GROUND, INK, PAPER, stroke
from marram.teach.explaining import Decided, Explained, Instead
from marram.words.texts import count_text, text

NARROW, WIDE = 390.0, 1040.0
"""Picture units across: a usual phone, and a slide."""
MOST_BRANCHES = 2
"""Other answers drawn at a question (own choice: what an audience can follow); how many more there are is said."""
MOST_RULINGS = 2
"""Rulings named at another answer, where it depends on more (own choice); with more of them one alone, and how many others."""
_SIZE, _ROW = 16.0, 21.0
_MARGIN, _WAY = 12.0, 26.0
"""The edge of the picture, and where the way runs from it on a phone; on a slide it runs down the middle."""
_BESIDE = 22.0
"""From the way to the words beside it."""
_PAD = 9.0
_GAP = 18.0


@dataclass(slots=True)
class _Pen:
    """Where the next thing is drawn, and on what."""

    svg: Node
    y: float
    wide: bool
    headline: str
    branches: int

    @property
    def width(self) -> float:
        return WIDE if self.wide else NARROW

    @property
    def way(self) -> float:
        """Where the way runs: questions before it and other answers behind it, or all of them behind it."""
        return 0.5 * WIDE if self.wide else _WAY


TYPE = "Atkinson Hyperlegible Next, system-ui, sans-serif"
"""The type of the pages, and of drawings of relief."""


def path_svg(
    why: Explained, *, wide: bool = False, prefix: str = "path", branches: int = MOST_BRANCHES
) -> str:
    """Return the path to a ruling as SVG.

    Args:
        why: the ruling explained.
        wide: side by side for a slide, instead of one under the other for a phone.
        prefix: starts the ids, so that several drawings can stand in one page.
        branches: how many other answers are drawn at a question.
    """
    steps = [one for one in why.decided if one.matters]
    width = WIDE if wide else NARROW
    drawn = root(width, 10, {"role": "img", "aria-labelledby": f"{prefix}-name", "font-family": TYPE})
    say(drawn, "title", told(why), id=f"{prefix}-name")
    add(drawn, "rect", x=0, y=0, width=width, height=10, fill=PAPER, class_="ground")
    pen = _Pen(drawn, _MARGIN, wide, why.headline, branches)
    style = {**stroke(AREA, 5), "stroke-linecap": "round"}
    way = add(drawn, "line", style, x1=pen.way, y1=_MARGIN + 8, x2=pen.way, y2=0)
    for number, one in enumerate(steps, start=1):
        _step(pen, number, one)
    way.set("y2", f"{pen.y + 6:.0f}")
    _end(pen, why.headline)
    height = pen.y + _MARGIN
    drawn.set("viewBox", f"0 0 {width:.0f} {height:.0f}")
    drawn.set("height", f"{height:.0f}")
    drawn[1].set("height", f"{height:.0f}")
    return written(drawn)


def told(why: Explained) -> str:
    """Return what the picture shows, in words, for whoever does not see it."""
    steps = [one for one in why.decided if one.matters]
    parts = [text("pathway.step", asked=one.asked, answer=one.answer) for one in steps]
    return " ".join((*parts, text("pathway.end", headline=why.headline)))


def _step(pen: _Pen, number: int, one: Decided) -> None:
    left = pen.way + _BESIDE
    room = pen.way - _BESIDE - _MARGIN if pen.wide else pen.width - _MARGIN - left
    top = pen.y
    beside = pen.way - _BESIDE if pen.wide else left
    y = _lines(pen, one.asked, (beside, top), room, before=pen.wide)
    y = _lines(pen, one.answer, (beside, y), room, bold=True, before=pen.wide)
    y = _lines(pen, text("pathway.by", citation=one.citation), (beside, y), room, small=True, before=pen.wide)
    add(pen.svg, "circle", {**stroke(AREA, 3), "fill": PAPER}, cx=pen.way, cy=top + 12, r=11)
    say(
        pen.svg,
        "text",
        str(number),
        {"text-anchor": "middle", "font-weight": "700"},
        x=pen.way,
        y=top + 17,
        font_size=13,
        fill=INK,
    )
    others = [each for each in one.instead if not each.same]
    if pen.wide:
        down = top
        for each in others[: pen.branches]:
            down = _branch(pen, each, (left + 24, down), (pen.way + 13, top + 12)) + 8
        if len(others) > pen.branches:
            down = _lines(
                pen,
                count_text("pathway.more", len(others) - pen.branches),
                (left + 24, down),
                pen.width - left - 24 - _MARGIN,
                small=True,
            )
        pen.y = max(y, down) + _GAP
        return
    for each in others[: pen.branches]:
        y = _branch(pen, each, (left + 24, y + 6), (pen.way, y + 6))
    if len(others) > pen.branches:
        y = _lines(
            pen,
            count_text("pathway.more", len(others) - pen.branches),
            (left + 24, y + 4),
            pen.width - left - 40,
            small=True,
        )
    pen.y = y + _GAP


def _branch(pen: _Pen, other: Instead, at: tuple[float, float], start: tuple[float, float]) -> float:
    """Draw where another answer leads, from a point of the way; return where it ends."""
    x, top = at
    width = pen.width - _MARGIN - x
    frame = add(
        pen.svg, "rect", {**stroke(INK, 1.2, "4 3"), "fill": GROUND}, x=x, y=top, width=width, height=1, rx=6
    )
    y = top + _PAD - 2
    y = _lines(
        pen,
        text(
            "pathway.otherwise",
            answers=text("why.or").join(other.answers),
        ),
        (x + _PAD, y),
        width - 2 * _PAD,
        small=True,
    )
    others = [each for each in other.rulings if each != pen.headline] or list(other.rulings)
    kept = others if len(others) <= MOST_RULINGS and not other.more else others[:1]
    for ruling in kept:
        y = _lines(pen, ruling, (x + _PAD, y), width - 2 * _PAD, bold=True, small=True)
    more = len(other.rulings) - len(kept) + other.more
    if more:
        y = _lines(pen, count_text("why.more", more), (x + _PAD, y), width - 2 * _PAD, small=True)
    frame.set("height", f"{y + _PAD - top:.0f}")
    middle = top + 18
    bend = x - 14
    add(
        pen.svg,
        "path",
        {**stroke(INK, 1.6, "5 4"), "fill": "none"},
        d=f"M{start[0]:.0f} {start[1]:.0f} L{bend - 4:.0f} {start[1]:.0f} L{bend:.0f} {middle:.0f} L{x - 5:.0f} {middle:.0f}"
        if pen.wide
        else f"M{start[0]:.0f} {middle:.0f} L{x - 5:.0f} {middle:.0f}",
    )
    add(
        pen.svg,
        "path",
        fill=INK,
        d=f"M{x - 8:.0f} {middle - 5:.0f} L{x:.0f} {middle:.0f} L{x - 8:.0f} {middle + 5:.0f} Z",
    )
    return y + _PAD


def _end(pen: _Pen, headline: str) -> None:
    """Draw the ruling that the way ends in."""
    width = (0.62 * pen.width if pen.wide else pen.width) - 2 * _MARGIN
    left = 0.5 * (pen.width - width)
    top = pen.y
    frame = add(
        pen.svg, "rect", {**stroke(AREA, 4), "fill": PAPER}, x=left, y=top, width=width, height=1, rx=8
    )
    y = _lines(pen, text("pathway.ruling"), (left + 14, top + 8), width - 28, small=True)
    y = _lines(pen, headline, (left + 14, y), width - 28, bold=True)
    frame.set("height", f"{y + 10 - top:.0f}")
    pen.y = y + 10


def _lines(
    pen: _Pen,
    words: str,
    at: tuple[float, float],
    width: float,
    *,
    bold: bool = False,
    small: bool = False,
    before: bool = False,
) -> float:
    """Write words in rows from a corner on, or up to it with ``before``; return where they end."""
    size, row = (_SIZE - 1.5, _ROW - 2) if small else (_SIZE, _ROW)
    x, y = at
    for line in wrapped(words, size, bold=bold, width=width):
        y += row
        style = {**({"font-weight": "700"} if bold else {}), **({"text-anchor": "end"} if before else {})}
        say(pen.svg, "text", line, style, x=x, y=y - 5, font_size=size, fill=INK)
    return y
