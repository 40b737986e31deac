"""A case begun is kept at every page, found again on any device, and ends when it is recorded or set aside."""

from sqlalchemy import func, select

from marram.records.database import Records
from marram.records.entry import new_ident
from marram.records.log import Log
from marram.records.open_cases import Begun, begin, begun, hand_to, keep_page, open_cases, set_aside
from marram.records.people import erase
from marram.records.tables import OpenCasePage
from tests.records.conftest import clock, new_event, note
from tests.records.full import fill


def started(records: Records, event: str, player: str | None = None) -> str:
    case = new_ident()
    begin(records, event, case, by=new_ident(), player=player, group=None)
    return case


def found(records: Records, case: str) -> Begun:
    one = begun(records, case)
    assert one is not None
    return one


def test_a_case_is_found_where_it_was_left(records: Records) -> None:
    """The last page of the device is kept; beginning it again by a second tap changes nothing."""
    event = new_event(records)
    case = started(records, event)
    keep_page(records, case, "phone", "/ball?hole=3", "Where is the ball?")
    keep_page(records, case, "phone", "/case?hole=3", "Was it found?")
    begin(records, event, case, by=None, player=None, group=None)
    (one,) = open_cases(records, event)

    assert one.by is not None
    assert [(page.address, page.title) for page in one.pages] == [("/case?hole=3", "Was it found?")]


def test_two_devices_overwrite_nothing(records: Records) -> None:
    """Both pages stand side by side, the latest first."""
    case = started(records, new_event(records))
    tick = clock()
    keep_page(records, case, "phone", "/case?a", "one", now=tick())
    keep_page(records, case, "tablet", "/case?b", "other", now=tick())

    assert [page.address for page in found(records, case).pages] == ["/case?b", "/case?a"]


def test_recorded_or_set_aside_it_is_open_no_longer(records: Records) -> None:
    """The entry of the same identifier ends it; later pages are not kept, nor those of a case nobody began."""
    event = new_event(records)
    recorded, aside = started(records, event), started(records, event)
    kept = Log(records).append(event, note(id=recorded))
    set_aside(records, aside)
    for case in (recorded, aside, new_ident()):
        keep_page(records, case, "phone", "/case", "late")

    assert open_cases(records, event) == []
    assert found(records, recorded).recorded == kept.number
    with records.reading() as connection:
        assert connection.scalar(select(func.count()).select_from(OpenCasePage)) == 0


def test_it_changes_hands(records: Records) -> None:
    """A case handed over is in the hands of the other official."""
    case, other = started(records, new_event(records)), new_ident()
    hand_to(records, case, other)

    assert found(records, case).by == other


def test_erasing_the_player_forgets_the_pages(records: Records, tmp_path: object) -> None:
    """An address can hold words about the player: they go when the player is erased."""
    event = fill(records, tmp_path)  # type: ignore[arg-type]
    player = Log(records).entries(event)[0].told["player"]
    case = started(records, event, player)
    keep_page(records, case, "phone", "/what?said=private", "What happened?")
    erase(records, player)

    assert found(records, case).pages == ()
