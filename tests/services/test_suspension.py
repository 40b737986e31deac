"""Play stopped: what each group must do follows Rule 5.7b (Rules of Golf 2019 and 2023), by where it is known to be."""

from collections.abc import Iterator
from datetime import UTC, datetime, time, timedelta
from pathlib import Path

import pytest

from marram.desk.log.kept import KeptHere
from marram.errors import InputError
from marram.records.entry import Entry, new_ident
from marram.rules.facts.conditions import FormOfPlay
from marram.services.day.suspension import (
    GroupStops,
    Stopped,
    Where,
    on_now,
    position,
    resuming,
    suspending,
    suspensions,
    what_groups_do,
    what_to_do,
)
from marram.services.kinds.suspension import Ball, Cause, Suspension
from marram.words.english.texts.suspension import TEXTS
from tests.clubs import club

NOON = datetime(2025, 6, 21, 12, tzinfo=UTC)
STROKES, MATCH = FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY
IMMEDIATE, NORMAL = Suspension.IMMEDIATE, Suspension.NORMAL


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


def stopped(kept: KeptHere, how: Suspension = NORMAL, at: datetime = NOON) -> Stopped:
    kept.add(suspending(new_ident(), at, how, Cause.DARKNESS))
    found = on_now(kept.log, kept.event_id)
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("how", "where", "form", "say"),
    [
        (IMMEDIATE, Where.ON_A_HOLE, STROKES, ["stop_at_once"]),
        (IMMEDIATE, Where.BETWEEN_HOLES, MATCH, ["stop_at_once"]),
        (IMMEDIATE, Where.UNKNOWN, None, ["stop_at_once"]),
        (NORMAL, Where.BETWEEN_HOLES, STROKES, ["no_next_hole"]),
        (NORMAL, Where.ON_A_HOLE, STROKES, ["may_finish", "marker"]),
        (NORMAL, Where.ON_A_HOLE, MATCH, ["may_finish", "match"]),
        (NORMAL, Where.ON_A_HOLE, None, ["may_finish", "match", "marker"]),
        (NORMAL, Where.UNKNOWN, STROKES, ["if_between", "if_on_hole", "marker"]),
        (NORMAL, Where.UNKNOWN, MATCH, ["if_between", "if_on_hole", "match"]),
        (IMMEDIATE, Where.NOT_STARTED, STROKES, ["not_started"]),
    ],
)
def test_what_a_group_must_do(how: Suspension, where: Where, form: FormOfPlay | None, say: list[str]) -> None:
    """Rule 5.7b(1): nobody plays another stroke. 5.7b(2): between two holes none is begun; a hole begun may be played out,
    in a match only while the opponent plays on too, in stroke play only while the marker stays."""
    keys = what_to_do(how, where, form)

    assert [one.removeprefix("do.") for one in keys] == say
    assert set(keys) <= TEXTS.keys()


def told(
    kept: KeptHere, one: Stopped, seen: list[Entry] | None = None, at: time = time(12)
) -> list[GroupStops]:
    groups = kept.groups_on(NOON.date())
    return what_groups_do(one, groups, [kept.add(entry) for entry in seen or []], STROKES, at)


def test_a_group_is_where_its_balls_were_noted(kept: KeptHere) -> None:
    """All between two holes: between; one on a hole: on it; a ruling tells where a group was last, and no more than that."""
    first, second, third, fourth = kept.groups_on(NOON.date())
    one = stopped(kept)
    for player in first.players:
        kept.add(position(new_ident(), NOON, one, player=player.id, ball=Ball.BETWEEN_HOLES))
    kept.add(position(new_ident(), NOON, one, player=second.players[0].id, ball=Ball.BETWEEN_HOLES))
    kept.add(position(new_ident(), NOON, one, player=second.players[1].id, ball=Ball.LEFT, hole=7))
    seen = [Entry("note", NOON, player=third.players[2].id, hole=5)]
    one = suspensions(kept.log, kept.event_id)[0]
    found = {each.group.id: each for each in told(kept, one, seen)}

    assert found[first.id].where is Where.BETWEEN_HOLES
    assert (found[second.id].where, found[second.id].hole) == (Where.ON_A_HOLE, 7)
    assert (found[third.id].where, found[third.id].hole) == (Where.UNKNOWN, 5)
    assert found[fourth.id].where is Where.UNKNOWN


def test_some_of_a_group_between_two_holes_are_not_all_of_it(kept: KeptHere) -> None:
    """Rule 5.7b(2) turns on all players of the group: of one noted between holes and others unknown both cases are said."""
    first, second, *_ = kept.groups_on(NOON.date())
    one = stopped(kept)
    kept.add(position(new_ident(), NOON, one, player=first.players[0].id, ball=Ball.BETWEEN_HOLES))
    kept.add(position(new_ident(), NOON, one, player=second.players[0].id, ball=Ball.LEFT, hole=4))
    kept.add(position(new_ident(), NOON, one, player=second.players[1].id, ball=Ball.BETWEEN_HOLES))
    for player in second.players:  # noted again, once all of them had holed out
        kept.add(position(new_ident(), NOON, one, player=player.id, ball=Ball.BETWEEN_HOLES))
    found = {each.group.id: each for each in told(kept, suspensions(kept.log, kept.event_id)[0])}

    assert found[first.id].where is Where.UNKNOWN
    assert found[first.id].say[:2] == ("do.if_between", "do.if_on_hole")
    assert found[second.id].where is Where.BETWEEN_HOLES


def test_a_group_with_a_later_start_has_not_started(kept: KeptHere) -> None:
    """Before its starting time a group waits, unless it was seen on the course."""
    groups = kept.groups_on(NOON.date())
    found = told(
        kept, stopped(kept), [Entry("note", NOON, player=groups[3].players[0].id, hole=1)], time(8, 15)
    )

    assert [each.where for each in found] == [Where.UNKNOWN, Where.UNKNOWN, Where.NOT_STARTED, Where.UNKNOWN]


def test_the_last_suspension_holds_until_play_is_resumed(kept: KeptHere) -> None:
    """A normal suspension that becomes immediate is the immediate one; once play goes on, none holds."""
    stopped(kept)
    one = stopped(kept, IMMEDIATE, NOON + timedelta(minutes=10))
    assert one.how is IMMEDIATE
    with pytest.raises(InputError, match="give a later time"):
        resuming(new_ident(), NOON, one, NOON)
    at = NOON + timedelta(hours=1)
    with pytest.raises(InputError, match="in position"):
        resuming(new_ident(), NOON, one, at, in_position_at=at + timedelta(minutes=1))
    kept.add(resuming(new_ident(), NOON, one, at, in_position_at=at - timedelta(minutes=10)))

    assert on_now(kept.log, kept.event_id) is None
    assert suspensions(kept.log, kept.event_id)[0].resumed[0].content["at"] == at.isoformat()


def test_two_notes_of_one_ball_both_stand(kept: KeptHere) -> None:
    """What two officials kept of the same ball stands side by side; a ball on no hole is not kept."""
    one, player = stopped(kept), kept.groups_on(NOON.date())[0].players[0].id
    for lie in ("bunker", "fairway"):
        kept.add(position(new_ident(), NOON, one, player=player, ball=Ball.LEFT, hole=3, lie=lie))

    found = suspensions(kept.log, kept.event_id)[0].positions
    assert [kept_.content["lie"] for kept_ in found] == ["fairway", "bunker"]
    with pytest.raises(InputError, match="on which hole"):
        position(new_ident(), NOON, one, player=player, ball=Ball.LEFT)
