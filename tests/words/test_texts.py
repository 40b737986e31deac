"""The texts of pages, commands and papers: every key that is used exists, and every one that exists is used."""

import re
from pathlib import Path
from string import Formatter

import pytest

import marram
from marram.course.model import Kind
from marram.docs.messages import messages
from marram.errors import InputError
from marram.said import Said, said
from marram.words.english import texts as folder
from marram.words.ground import ground_words
from marram.words.language import language
from marram.words.spoken import spoken
from marram.words.texts import COUNTED, ONE, SEVERAL, count_text, english
from tests.words.letters import altered
from tests.words.made_up import speaking

SOURCE = Path(marram.__path__[0])
SUBJECTS = sorted(path.stem for path in Path(folder.__path__[0]).glob("[a-z]*.py"))
SCRIPTS = {
    "map_script": "shell",
    "editor_script": "course",
    "marking_script": "course",
    "holes_script": "holes",
    "offline_script": "offline",
    "offline_map_script": "offline",
}


WORDLESS = {"english", "vendor", "records"}
"""Folders that say nothing by key: the texts themselves, libraries, and the records, whose columns are no texts."""


def source_of(*endings: str) -> str:
    paths = (path for path in SOURCE.rglob("*") if path.suffix in endings)
    return "\n".join(path.read_text(encoding="utf-8") for path in paths if not WORDLESS & set(path.parts))


PYTHON = source_of(".py", ".html")
JAVASCRIPT = source_of(".js")
_SUBJECT = f"(?:{'|'.join(SUBJECTS)})"
USED = re.compile(rf"""["']({_SUBJECT}(?:\.[a-z0-9_-]+)+)["']""")
STEMS = re.compile(rf"""["']({_SUBJECT}\.(?:[a-z0-9_.-]*\.)?)(?:\{{|["'])""")


def assumed(key: str) -> str:
    """Return the key of the text for what a drawing took for granted: ``relief.NAME`` is what the area says."""
    return key.replace("relief.", "relief.assumed.", 1)


def used_keys() -> set[str]:
    """Return what looks like a key in modules and templates."""
    found = set(USED.findall(PYTHON))
    return found | set(map(assumed, found))


FILES = (".csv", ".py", ".js", ".css", ".html", ".pdf", ".md", ".typ")


def keys(subject: str) -> set[str]:
    return {f"{subject}.{name}" for name in english(subject)}


def base(key: str) -> str:
    return key.removesuffix(ONE).removesuffix(SEVERAL)


def test_every_key_that_is_used_exists() -> None:
    """A text asked for by a key that nobody wrote would be found only by whoever opens that page."""
    known = {base(key) for subject in SUBJECTS for key in keys(subject)}

    modules = {".".join(path.with_suffix("").parts[-2:]) for path in SOURCE.rglob("*.py")}
    found = {one for one in USED.findall(PYTHON) if not one.endswith(FILES)} - modules

    assert {one for one in found if one not in known and assumed(one) not in known} == set()


@pytest.mark.parametrize("subject", [one for one in SUBJECTS if not one.endswith("_script")])
def test_every_text_of_a_page_is_said(subject: str) -> None:
    """No text is left over: its key, or the stem that a value completes, stands in some module or template."""
    used, stems = used_keys(), tuple(set(STEMS.findall(PYTHON)))

    assert {key for key in keys(subject) if base(key) not in used and not key.startswith(stems)} == set()


def test_counted_texts_come_in_pairs() -> None:
    """What is said of one thing has a partner for several."""
    for subject in SUBJECTS:
        counted = {name for name in english(subject) if name.endswith(COUNTED)}
        assert {base(name) + ONE for name in counted} | {base(name) + SEVERAL for name in counted} == counted


def test_each_kind_of_ground_is_called_once() -> None:
    """The words for a kind are its term of the Rules, but for a mapped tee and what the Rules call an obstruction."""
    others = {Kind.TEEING_AREA: "tee", Kind.OBSTRUCTION: "immovable obstruction"}
    for kind in Kind:
        assert ground_words(kind) == others.get(kind, kind.value.replace("_", " "))


def test_messages_have_places_that_can_be_filled() -> None:
    """Each message a translator gets is a sentence with named places."""
    for one in messages():
        for sentence in filter(None, one):
            assert all(name != "" for _, name, _, _ in Formatter().parse(sentence) if name is not None)


def test_a_sentence_from_below_is_put_into_the_language(locales: Path) -> None:
    """A layer that knows no catalogue says a sentence; whoever shows it translates it and what is set into it."""
    told = said(
        "within {distance:.2f} m of the edge{of}: measure on the ground",
        distance=1,
        of=said(" of the {kind}", kind=Kind.BUNKER),
    )

    assert told == "within 1.00 m of the edge of the bunker: measure on the ground"
    assert spoken(told) == told
    with speaking(locales):
        of = altered(" of the {kind}").format(kind=altered("bunker"))
        whole = altered("within {distance:.2f} m of the edge{of}: measure on the ground")
        assert spoken(told) == whole.format(distance=1, of=of)
        assert spoken("no message") == "no message"


def test_a_sentence_survives_being_copied() -> None:
    """Results are copied into plain data; the message goes with them."""
    from copy import deepcopy

    copied = deepcopy(said("hole {hole}", hole=3))

    assert isinstance(copied, Said)
    assert (copied, copied.message, copied.values) == ("hole 3", "hole {hole}", {"hole": 3})


def test_a_language_without_a_catalogue_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    """English is never shown in silence to somebody who asked for another language."""
    monkeypatch.setenv("MARRAM_LANGUAGE", "tlh")
    language.cache_clear()
    with pytest.raises(InputError, match="MARRAM_LANGUAGE is 'tlh'"):
        count_text("marking.count", 2)
    monkeypatch.undo()
    language.cache_clear()


@pytest.mark.parametrize("subject", SCRIPTS)
def test_every_text_of_a_script_is_said(subject: str) -> None:
    """No text is handed to a script that does not say it."""
    used = set(re.findall(r"""[tT]ext\(\s*["']([a-z0-9_.]+)["']""", JAVASCRIPT)) | set(
        re.findall(r"""["']([a-z0-9_.]+)["']""", JAVASCRIPT)
    )
    stems = tuple(re.findall(r"`([a-z_]+\.)\$\{", JAVASCRIPT))

    assert {
        name for name in english(subject) if base(name) not in used and not name.startswith(stems)
    } == set()


SENTENCE = re.compile(r"""(["'`])([A-Z][a-z]+(?: [a-z]+){2,}[^"'`]*)\1""")


def test_no_script_holds_a_sentence_of_its_own() -> None:
    """Scripts say what the page hands them; only a fault in marram itself is worded in them."""
    code = re.sub(r"//.*", "", JAVASCRIPT)

    assert [one for _, one in SENTENCE.findall(code) if not one.startswith("The page has no words")] == []


def test_no_template_holds_a_word_of_its_own() -> None:
    """Between the tags of a template, and in what is read aloud, stands nothing but texts of the catalogue."""
    for path in SOURCE.rglob("templates/*.html"):
        page = re.sub(
            r"\{%.*?%\}|\{\{.*?\}\}|\{#.*?#\}|<script.*?</script>",
            "",
            path.read_text(encoding="utf-8"),
            flags=re.DOTALL,
        )
        words = re.findall(
            r"""(?:>|(?:aria-label|title|placeholder|alt)=")([^<>"]*[A-Za-z]{2,}[^<>"]*)""", page
        )
        assert [one.strip() for one in words if one.strip() not in {"marram", "UTC"}] == [], path.name
