"""Which column of a list tells what: proposed by likeness, or as it was kept from an earlier list."""

import json
import re
import unicodedata
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path

from rapidfuzz.fuzz import ratio

from marram.competition.entries.entry import Column
from marram.errors import InputError
from marram.said import said

Columns = Mapping[str, Column | None]
"""What each heading tells, by its plain form; ``None``: it is not read, whatever it is like."""

LIKE = 84
"""How alike a heading and a known one are at least, of 100; ours, tried on headings with slips of the pen."""

_BOTH_NAMES = (
    *("name vorname", "nachname vorname", "vorname nachname", "vor und nachname", "vorname name"),
    *(
        "last name first name",
        "first name last name",
        "surname first name",
        "name surname",
        "nom prenom",
        "prenom nom",
    ),
)
"""Headings of one column with both names, in the order of the heading; a comma in the cell turns them."""

_IN_BRACKETS = re.compile(r"[(\[][^()\[\]]*[)\]]")

KNOWN: dict[Column, tuple[str, ...]] = {
    Column.NAME: ("name", "player", "full name", "player name", "spieler", "nom complet", "jugador", "golfer", *_BOTH_NAMES),
    Column.FAMILY_NAME: ("family name", "last name", "surname", "nachname", "familienname", "nom", "apellido", "efternamn"),
    Column.GIVEN_NAME: ("given name", "first name", "forename", "vorname", "prenom", "nombre", "fornamn"),
    Column.HANDICAP_INDEX: ("handicap index", "handicap", "hcp", "hcpi", "hi", "index", "hcp index", "whs index", "vorgabe", "stammvorgabe", "exact handicap"),
    Column.CLUB: ("club", "home club", "golf club", "golfclub", "verein", "heimatclub", "club name", "klubb"),
    Column.SEX: ("sex", "gender", "geschlecht", "geschl", "m/f", "m/w", "sexe", "sexo", "kon"),
    Column.BORN: ("born", "year of birth", "date of birth", "birth date", "dob", "geboren", "geburtsdatum", "jahrgang", "geburtsjahr", "geb", "geb datum", "geb am", "jg", "jahrg"),
    Column.NUMBER: ("number", "member number", "membership number", "licence", "license", "mitgliedsnummer", "dgv nr", "id", "golf id", "player id"),
    Column.SIDE: ("side", "pair", "pairing", "paar", "paarung", "pareja", "equipe de deux"),
    Column.TEAM: ("team", "team name", "mannschaft", "equipe", "equipo", "lag"),
    Column.TEES: ("tee", "tees", "teeing ground", "abschlag", "abschlage", "depart", "barras de salida"),
}  # fmt: skip


def plain(heading: str) -> str:
    """Return a heading in small letters without accents, stops and line breaks."""
    bare = unicodedata.normalize("NFKD", heading).encode("ascii", "ignore").decode()
    return " ".join(re.sub(r"[^a-z0-9/]+", " ", bare.lower()).split())


def proposed(headings: Sequence[str], kept: Columns | None = None) -> dict[int, Column]:
    """Return what each column seems to tell, by its place; a column that is like nothing known is left out.

    What was kept from an earlier list goes before likeness. No two columns tell the same: the likest one does.
    """
    found: dict[int, Column] = {}
    likely: list[tuple[float, int, Column]] = []
    for place, heading in enumerate(headings):
        written = plain(heading)
        if not written:
            continue
        if kept and written in kept:
            agreed = kept[written]
            if agreed is not None and agreed not in found.values():
                found[place] = agreed
            continue
        short = plain(_IN_BRACKETS.sub(" ", heading)) or written  # "HCP (as of May)" is "HCP"
        for column, known in KNOWN.items():
            alike = max(ratio(way, one) for way in (written, short) for one in known)
            if alike >= LIKE:
                likely.append((alike, place, column))
    for _alike, place, column in sorted(likely, key=lambda one: (-one[0], one[1])):
        if place not in found and column not in found.values():
            found[place] = column
    return found


def names_players(columns: Iterable[Column]) -> bool:
    """Tell whether columns tell who each line is about."""
    named = set(columns)
    return Column.NAME in named or {Column.FAMILY_NAME, Column.GIVEN_NAME} <= named


def kept_columns(path: Path) -> dict[str, Column]:
    """Read which columns were agreed on: a JSON object from headings to what they tell.

    Raises:
        InputError: the file is no such object, or names what no column can tell.
    """
    try:
        given = json.loads(path.read_text(encoding="utf-8"))
        return {plain(heading): Column(column) for heading, column in given.items()}
    except (ValueError, AttributeError):
        known = ", ".join(one.value for one in Column)
        raise InputError(
            said(
                '{file} is to be a JSON object from headings to one of {known}, such as {{"Spieler": "name"}}.',
                file=path.name,
                known=known,
            )
        ) from None


def keep_columns(columns: Mapping[str, Column], path: Path) -> None:
    """Write which columns were agreed on, for the next list of the same kind."""
    told = {heading: column.value for heading, column in columns.items()}
    path.write_text(json.dumps(told, indent=2, ensure_ascii=False) + "\n", encoding="utf-8")
