"""Invitations and sign-ins: used as often as they allow, over when they are over, ended from elsewhere; only hashes are kept."""

from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from pathlib import Path

import pytest
from sqlalchemy import select

from marram.errors import InputError
from marram.records.database import Records
from marram.records.exporting import exported
from marram.records.invitations import invite, invited, open_invitations, take_back
from marram.records.people import erase
from marram.records.sign_ins import (
    LASTS,
    SEEN_EVERY,
    all_signed_in,
    end,
    has_password,
    in_role,
    join,
    password_of,
    set_password,
    signed_in,
)
from marram.records.tables import Invitation, OfficialDuty, SignIn
from marram.records.whereabouts import report, whereabouts
from tests.records.conftest import NOON
from tests.records.full import fill

HOUR = timedelta(hours=1)


@pytest.fixture
def event(records: Records, tmp_path: Path) -> str:
    return fill(records, tmp_path / "maps", signed_in=False)


def link(records: Records, event: str, role: str = "referee", uses: int = 1) -> str:
    return invite(records, event, role, now=NOON, expires_at=NOON + HOUR, uses=uses)[1]


def joined(records: Records, event: str, secret: str, name: str = "Sabine Dunlin") -> str | None:
    return join(records, event, secret, person=None, name=name, device="a phone", now=NOON)


def test_a_link_lets_in_as_often_as_it_allows(records: Records, event: str) -> None:
    """Two may join by a link for two, in its role; the third is not let in, nor is a link that nobody made."""
    secret = link(records, event, uses=2)
    first = joined(records, event, secret, "Sabine Dunlin")
    second = joined(records, event, secret, "Ruben Turnstone")

    assert first
    assert second
    assert first != second
    assert joined(records, event, secret, "Third Knot") is None
    assert joined(records, event, "nonsense") is None
    found = signed_in(records, event, first, NOON)
    assert found is not None
    assert (found.role, found.device) == ("referee", "a phone")
    assert {name for _, name in in_role(records, event, "referee")} == {
        "Jorund Saltwick",
        "Sabine Dunlin",
        "Ruben Turnstone",
    }


def test_many_at_once_use_a_link_no_more_often(records: Records, event: str) -> None:
    """Eight who join at the same moment by a link for three: three are let in."""
    secret = link(records, event, uses=3)
    with ThreadPoolExecutor(8) as pool:
        found = list(pool.map(lambda n: joined(records, event, secret, f"Official {n}"), range(8)))

    assert len([one for one in found if one]) == 3


def test_a_link_is_over_in_time_and_when_it_is_taken_back(records: Records, event: str) -> None:
    """It holds until its time, not at it; taken back, it lets in nobody more, and who joined stays."""
    secret = link(records, event, uses=5)
    mine = joined(records, event, secret)
    assert mine
    assert invited(records, event, secret, NOON + HOUR - timedelta(seconds=1))
    assert invited(records, event, secret, NOON + HOUR) is None
    (open_,) = open_invitations(records, event, NOON)
    take_back(records, event, NOON, ident=open_.id)

    assert invited(records, event, secret, NOON) is None
    assert joined(records, event, secret) is None
    assert signed_in(records, event, mine, NOON)


def test_what_cannot_join_uses_nothing_up(records: Records, event: str) -> None:
    """No name, somebody of another role, a player who is not entered: a clear fault, and the link still holds."""
    secret = link(records, event)
    chief = in_role(records, event, "chief_referee")[0][0]
    for person, name in ((None, "  "), (chief, ""), (None, "x" * 81)):
        with pytest.raises(InputError):
            join(records, event, secret, person=person, name=name, device="", now=NOON)
    player = link(records, event, "player")
    with pytest.raises(InputError, match="No player of this name"):
        joined(records, event, player, "Nobody Entered")

    assert invited(records, event, secret, NOON) is not None
    assert joined(records, event, player, " fenwin  DULSEY ")


def test_only_hashes_are_kept(records: Records, event: str) -> None:
    """Neither the secret of a link nor that of a sign-in stands in the records."""
    secret = link(records, event)
    mine = joined(records, event, secret)
    with records.reading() as connection:
        rows = [*connection.execute(select(Invitation)), *connection.execute(select(SignIn))]

    assert rows
    assert not any(secret in str(tuple(row)) or str(mine) in str(tuple(row)) for row in rows)


def test_a_sign_in_ends_by_itself_and_from_elsewhere(records: Records, event: str) -> None:
    """After eight days, or with the next request once it was ended; another event's desk does not know it."""
    secret = link(records, event, uses=2)
    first, second = joined(records, event, secret, "One"), joined(records, event, secret, "Two")
    assert first
    assert second
    found = signed_in(records, event, first, NOON)
    assert found is not None
    assert signed_in(records, event, first, NOON + LASTS) is None
    assert signed_in(records, "another event", first, NOON) is None
    end(records, event, found.id, NOON)

    assert signed_in(records, event, first, NOON) is None
    assert [one.person for one in all_signed_in(records, event, NOON)] == [
        signed_in(records, event, second, NOON).person  # type: ignore[union-attr]
    ]


def test_it_is_noted_when_a_device_was_seen(records: Records, event: str) -> None:
    """Not with each request, but after a while."""
    mine = joined(records, event, link(records, event))
    assert mine
    signed_in(records, event, mine, NOON + SEEN_EVERY / 2)
    (before,) = all_signed_in(records, event, NOON)
    signed_in(records, event, mine, NOON + 2 * SEEN_EVERY)
    (after,) = all_signed_in(records, event, NOON)

    assert before.seen_at == before.began_at < after.seen_at


def test_an_erased_person_is_signed_in_nowhere(records: Records, event: str, tmp_path: Path) -> None:
    """Sign-ins, password and last place go with the name; none of them, nor a link, is ever in an export."""
    mine = joined(records, event, link(records, event))
    assert mine
    person = signed_in(records, event, mine, NOON).person  # type: ignore[union-attr]
    set_password(records, person, "$argon2id$invented", NOON)
    report(records, event, person, hole=7, words="beside the green", now=NOON)
    assert password_of(records, event, "Sabine Dunlin") == (person, "$argon2id$invented", ("referee",))
    exported(records, tmp_path / "export")
    assert not list((tmp_path / "export").rglob("*sign_ins*")) + list((tmp_path / "export").rglob("*invit*"))
    erase(records, person)

    assert signed_in(records, event, mine, NOON) is None
    assert not has_password(records, person)
    assert whereabouts(records, event) == []
    with records.reading() as connection:
        assert (
            connection.scalar(select(OfficialDuty.role).where(OfficialDuty.person_id == person)) == "referee"
        )


def test_only_the_last_place_is_kept(records: Records, event: str) -> None:
    """A later report takes the place of the one before; an empty one leaves nothing."""
    person = in_role(records, event, "referee")[0][0]
    report(records, event, person, hole=7, words="", now=NOON)
    report(records, event, person, hole=None, words=" at   the scoring area ", now=NOON + HOUR)
    (only,) = whereabouts(records, event)

    assert (only.hole, only.words) == (None, "at the scoring area")
    report(records, event, person, hole=None, words=" ", now=NOON + HOUR)
    assert whereabouts(records, event) == []
