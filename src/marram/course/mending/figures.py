"""Figures of the card and of tags: pars, stroke indexes, widths, colours, names of tags written otherwise."""

import re
import unicodedata
from difflib import get_close_matches

from marram.course.checks.par_by_length import recommended_pars
from marram.course.fault import Fault
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import Setting
from marram.course.scheme import GOLF, OWN, PENALTY_AREA
from marram.said import Said, said

_WORDS = {"three": "3", "four": "4", "five": "5", "six": "6"}
_FEW = 4

COLOURS = {"red": said("red"), "yellow": said("yellow")}
"""The words for the colours of penalty areas, by the values of the tag."""


def _tag_of(fault: Fault) -> str:
    """Return the tag that a fault speaks of; empty where it speaks of none."""
    tag = fault.what.values.get("tag") if isinstance(fault.what, Said) else None
    return tag if isinstance(tag, str) else ""


def set_par(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose the pars that the Rules of Handicapping recommend for the length of a hole."""
    line = setting.line(fault)
    if line is None:
        return None
    length = line.shape.length
    pars = recommended_pars(length)
    choices = [Choice(said("Par {par}", par=par), (setting.retag(line.ident, par=str(par)),)) for par in pars]
    why = said(
        "For {length:.0f} m of line of play, Appendix F of the Rules of Handicapping recommends this; the card decides.",
        length=length,
    )
    return offer("set_par", fault, why, choices)


def choose_value(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask which of the figures for men and for women the map is for."""
    line = setting.line(fault)
    if line is None:
        return None
    choices = [
        Choice(
            said("Use that for {who}, {value}", who=who, value=value),
            (setting.retag(line.ident, **{tag: value}),),
        )
        for tag in ("par", "handicap")
        if tag == _tag_of(fault)
        for sex, who in (("men", said("men")), ("women", said("women")))
        if (value := line.tags.get(f"{tag}:{sex}"))
    ]
    return offer("choose_value", fault, said("They differ, and a map holds one."), choices)


def set_stroke_index(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose the stroke indexes that no hole has yet, where a hole has none or that of another."""
    line = setting.line(fault)
    if line is None or line.number is None or setting.course is None:
        return None
    holes = setting.course.holes
    used = {hole.stroke_index for hole in holes.values()}
    most = next((one for one in (9, 18, 27, 36) if one >= len(holes)), len(holes))
    free = [index for index in range(1, most + 1) if index not in used]
    if not 0 < len(free) <= _FEW:
        return None
    same = [line]
    if fault.check == "repeated_stroke_index":
        mine = holes.get(line.number)
        index = mine.stroke_index if mine else None
        twice = {hole.number for hole in holes.values() if hole.stroke_index == index}
        same = [one for one in setting.lines if one.number in twice]
    choices = [
        Choice(
            said("Hole {one} has stroke index {index}", one=one.number, index=index),
            (setting.retag(one.ident, handicap=str(index)),),
        )
        for index in free
        for one in same
    ]
    why = said("Each stroke index is given once, and no hole has this one yet; the card decides.")
    return offer("set_stroke_index", fault, why, choices)


def read_number(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose the number in a tag that is written with other things beside it, or with a comma."""
    line = setting.line(fault)
    ident = fault.feature if fault.feature in setting.features else line.ident if line else ""
    tag = _tag_of(fault)
    if not ident or not tag:
        return None
    text = unicodedata.normalize("NFKC", setting.tags(ident).get(tag, ""))
    wanted = _width(text) if tag == "width" else _holes(text) if tag == "holes" else _whole(text)
    choices = (
        [
            Choice(
                said("Read {text!r} as {tag}={wanted}", text=text, tag=tag, wanted=wanted),
                (setting.retag(ident, **{tag: wanted}),),
            )
        ]
        if wanted
        else []
    )
    if not choices:
        choices = [
            Choice(
                said("Take {tag} away", tag=tag),
                (setting.retag(ident, **{tag: None}),),
                (said("it is then unknown"),),
            )
        ]
    return offer(
        "read_number",
        fault,
        said("It cannot be read as it stands, and {tag} was left out so far.", tag=tag),
        choices,
    )


def _whole(text: str) -> str:
    words = [_WORDS.get(word.casefold(), word) for word in text.split()]
    numbers = re.findall(r"(?<![\d.,-])0*([1-9]\d?)(?![\d]|[.,]\d)", " ".join(words))
    return numbers[0] if len(numbers) == 1 else ""


def _width(text: str) -> str:
    found = re.fullmatch(
        r"(?:ca\.?|~|≈)?\s*(\d{1,3}(?:[.,]\d{1,6})?)\s*(?:m|metres?|meters?)?\.?", text.strip(), re.IGNORECASE
    )
    if found:
        return found[1].replace(",", ".") if float(found[1].replace(",", ".")) > 0 else ""
    feet = re.fullmatch(r"(\d{1,3}(?:[.,]\d{1,6})?)\s*(?:ft|feet|foot|')\.?", text.strip(), re.IGNORECASE)
    return f"{float(feet[1].replace(',', '.')) * 0.3048:.2f}" if feet else ""


def _holes(text: str) -> str:
    numbers = re.findall(r"\d+", text)
    sound = numbers and all(0 < int(one) < 100 for one in numbers)
    return ";".join(str(int(one)) for one in numbers) if sound and not re.search(r"\d\s*-\s*\d", text) else ""


def read_tag(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose the tags that a value which is not known may mean."""
    if fault.feature not in setting.features:
        return None
    tags = setting.tags(fault.feature)
    key = "marram" if "marram" in tags else "golf"
    given = tags.get(key, "").lower().replace("-", "_").replace(" ", "_")
    known = {**dict.fromkeys((*OWN, PENALTY_AREA), "marram"), **dict.fromkeys(GOLF, "golf")}
    near = get_close_matches(given, list(known), n=3, cutoff=0.6)
    choices = []
    for value in near:
        changed: dict[str, str | None] = {"golf": None, "marram": None, known[value]: value}
        choices.append(
            Choice(
                said("Read it as {key}={value}", key=known[value], value=value),
                (setting.retag(fault.feature, **changed),),
            )
        )
    return offer(
        "read_tag",
        fault,
        said("{key}={value} is not known; this is what it looks like.", key=key, value=tags.get(key)),
        choices,
    )


def set_colour(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask the colour of a penalty area whose tags do not say it, or say two."""
    tags = setting.tags(fault.feature) if fault.feature in setting.features else {}
    choices = []
    for colour, golf in (("red", "lateral_water_hazard"), ("yellow", "water_hazard")):
        changed: dict[str, str | None] = {"colour": colour}
        if tags.get("marram", "").startswith(("red_", "yellow_")):
            changed["marram"] = f"{colour}_penalty_area"
        elif "golf" in tags:
            changed["golf"] = golf
        choices.append(
            Choice(said("It is {colour}", colour=COLOURS[colour]), (setting.retag(fault.feature, **changed),))
        )
    why = said("Its stakes or lines on the ground have one colour, and the options depend on it.")
    return offer("set_colour", fault, why, choices if tags else [])


def mark_water(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask the colour of water that no penalty area covers, where it is drawn as an area."""
    shape = setting.shape(fault.feature) if fault.feature in setting.features else None
    if shape is None or "Polygon" not in shape.geom_type:
        return None
    choices = [
        Choice(
            said("Its edge is a {colour} penalty area's", colour=COLOURS[colour]),
            (setting.retag(fault.feature, golf=golf),),
        )
        for colour, golf in (("red", "lateral_water_hazard"), ("yellow", "water_hazard"))
    ]
    why = said(
        "Water on the course is a penalty area, marked or not (Definition of penalty area); its edge is taken as drawn."
    )
    return offer("mark_water", fault, why, choices)
