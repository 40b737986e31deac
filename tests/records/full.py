"""Records with something in every table, all of it invented."""

from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path

from sqlalchemy import select

from marram.records import tables
from marram.records.briefings import keep_briefing
from marram.records.classes import answer_class, begin_class
from marram.records.database import Records
from marram.records.entry import Entry, Part, new_ident
from marram.records.events import Given, Official, Player, Start, new_club, new_course, new_event
from marram.records.examinations import answer, keep_examination, sitters
from marram.records.examinations import begin as start_examination
from marram.records.invitations import invite
from marram.records.log import Log
from marram.records.maps import take_over
from marram.records.open_cases import begin, keep_page
from marram.records.retired_items import retire
from marram.records.sign_ins import in_role, join, set_password
from marram.records.whereabouts import report
from tests.records.conftest import clock
from tests.records.test_maps import made_folder

GIVEN = Given(
    name="Quillsand Midsummer Cup",
    conditions={"form_of_play": "stroke_play", "local_rules": ["E-5"]},
    round_name="First round",
    played_on=date(2025, 6, 21),
    players=[Player("Fenwin Dulsey", "3.2"), Player("Maris Quillan-Roe"), Player("=Osric Tarnbeck", "+1.4")],
    officials=[
        Official("Ottiline Brackmere", "chief_referee"),
        Official("Jorund Saltwick", "referee", "holes 1 to 9"),
    ],
    starts=[
        Start(time(8, 0), 1, ("Fenwin Dulsey", "Maris Quillan-Roe")),
        Start(None, 10, ("=Osric Tarnbeck",)),
    ],
)


def fill(records: Records, folder: Path, *, signed_in: bool = True) -> str:
    """Put something into every table, but where nobody is to be signed in; return the event."""
    club = new_club(records, "Quillsand Links", "Europe/London")
    course = new_course(records, club, "Quillsand Links", "course.geojson")
    made_folder(folder)
    take_over(records, course, folder)
    event = new_event(records, club, GIVEN)
    with records.changing() as session:
        team, side = new_ident(), new_ident()
        session.add(tables.Team(id=team, event_id=event, name="Quillsand"))
        session.flush()
        session.add(tables.Side(id=side, event_id=event, team_id=team, name=""))
        session.flush()
        entrant = session.scalars(select(tables.Entrant)).first()
        assert entrant is not None
        entrant.side_id = side
        player = entrant.person_id
    log = Log(records, clock())
    told = datetime(2025, 6, 21, 9, tzinfo=UTC)
    for number in range(5):
        parts = (
            Part("note", f"said {number} »so«\r\n".encode()),
            Part("photograph", bytes(range(256)), "image/jpeg"),
        )
        log.append(
            event,
            Entry("ruling", told, player=player, hole=7, content={"n": number}, parts=parts[: number % 3]),
        )
    case = new_ident()
    begin(records, event, case, by=None, player=player, group=None)
    keep_page(records, case, new_ident(), "/ball?hole=7", "Where is the ball?")
    answer_class(records, begin_class(records, event, told), new_ident(), 2, told)
    keep_briefing(records, event, "Told", "{}", told)
    sat = keep_examination(records, event, "{}", ["A"], minutes=60, candidates=1, now=told)
    start_examination(records, sat, told)
    answer(records, sitters(records, sat)[0], [(1, 2, 1)], told)
    retire(records, sat, "0123456789", ["too easy"], told)
    if signed_in:
        sign_in(records, event)
    return event


def sign_in(records: Records, event: str) -> None:
    """An invitation, somebody who joined by it, with a password, at a place."""
    noon = datetime(2025, 6, 21, 12, tzinfo=UTC)
    _, secret = invite(records, event, "referee", now=noon, expires_at=noon + timedelta(days=1), uses=2)
    (person, _), *_ = in_role(records, event, "referee")
    join(records, event, secret, person=person, name="", device="a phone", now=noon)
    set_password(records, person, "$argon2id$invented", noon)
    report(records, event, person, hole=7, words="beside the green", now=noon)


def everything(records: Records) -> dict[str, list[tuple[object, ...]]]:
    """Every row of every table."""
    with records.reading() as connection:
        return {
            table.name: [tuple(row) for row in connection.execute(select(table).order_by(*table.primary_key))]
            for table in tables.Table.metadata.sorted_tables
        }
