"""Every kind of entries is declared once, read strictly, and every fault of an entry is told at once."""

from datetime import UTC, datetime

import pytest

from marram.errors import InputError
from marram.records.entry import Entry, Part, new_ident
from marram.services.kinds.registry import checked, kind_named, kinds
from marram.words.english.texts.log import TEXTS

NOW = datetime(2025, 6, 21, 12, tzinfo=UTC)


def test_every_kind_has_its_words() -> None:
    """What a page calls an entry of each kind stands in the catalogue."""
    assert [name for name in kinds() if f"kind.{name}" not in TEXTS] == []


def test_a_kind_that_is_none_is_refused_with_the_nearest() -> None:
    """A slip of the pen is told."""
    with pytest.raises(InputError, match="Did you mean 'play_resumed'"):
        kind_named("play_resumd")


def test_all_faults_of_an_entry_are_told_at_once() -> None:
    """What is missing, unknown, of the wrong shape, and sealed beside it without belonging there."""
    entry = Entry(
        "position_kept", NOW, content={"suspension": "x", "ball": "gone", "colour": "white"}, hole=0
    )
    with pytest.raises(InputError) as fault:
        checked(entry)
    told = " ".join(fault.value.faults)

    for words in ("needs player", "give the number of a hole", "ball is 'gone'", "'colour' is not known"):
        assert words in told, words
    with pytest.raises(InputError, match="holds no photograph"):
        checked(Entry("withdrawn", NOW, corrects=new_ident(), parts=(Part("photograph", b"x"),)))


@pytest.mark.parametrize(
    ("kind", "content", "match"),
    [
        ("opinion_given", {"asked": "x", "agrees": True}, "asked is 'x'; give a UUID"),
        ("ruling", {"case": {}, "outcome": {}, "headline": "", "instead": {}}, "otherwise is not true"),
        ("play_resumed", {"suspension": new_ident(), "at": "noon"}, "give a time with its distance"),
        ("withdrawn", {"a": 1}, "give no content"),
        ("card_figures", {"by": "player", "figures": {"1": 0}}, "hole 1 is 0; give 1 to 99"),
        ("card_figures", {"by": "player", "figures": {"first": 4}}, "first is no number of a hole"),
        ("card_figures", {"by": "caddie", "figures": {"1": 4}}, "by is 'caddie'; give one of player, marker"),
        ("card_returned", {"player_certified": True, "marker_certified": True, "at": "noon"}, "at is noon"),
        ("card_settled", {"ruling": "x", "how": "included"}, "ruling is 'x'; give a UUID"),
        ("card_found_out", {"score": 100}, "100 is no score"),
        ("tie_decided", {"method": "countback", "order": []}, "give play_off or lot"),
        ("list_published", {"digest": "f" * 63, "document": {"kind": "results"}}, "digest is no SHA-256"),
        ("list_published", {"digest": "f" * 64, "document": {"kind": "menu"}}, "the document is none of"),
    ],
)
def test_what_no_such_entry_can_hold_is_refused(kind: str, content: dict[str, object], match: str) -> None:
    """Shapes are right or told, and so is what is right in shape and wrong in sense."""
    with pytest.raises(InputError, match=match):
        checked(Entry(kind, NOW, content=content))


def test_an_entry_as_its_kind_wants_it_is_returned_as_it_is() -> None:
    """Nothing is filled in or changed."""
    entry = Entry("play_suspended", NOW, content={"how": "immediate", "cause": "lightning"})

    assert checked(entry) is entry
