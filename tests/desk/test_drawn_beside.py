"""Drawings made by a process beside the desk: the same as without it, made without it where it is not there, and no process left behind."""

import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import suppress

import pytest
from fastapi import FastAPI

from marram.desk.app import create_app
from marram.desk.rulings import drawings
from marram.desk.rulings.drawn_beside import STARTS, DrawnBeside
from tests.desk.asking import TestClient
from tests.desk.places import Ground

ASKED = "what=ball_in_penalty_area&penalty_area_colour=red&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"


@pytest.fixture
def beside() -> Iterator[DrawnBeside]:
    found = DrawnBeside()
    found.start()
    yield found
    found.stop()


@pytest.fixture
def desk(beside: DrawnBeside) -> FastAPI:
    made = create_app()
    made.state.drawn_beside = beside
    return made


@pytest.fixture
def case(ground: Ground) -> str:
    places = f"ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&previous={ground.fairway(along=230)}"
    return f"hole=9&{places}&{ASKED}"


def asked(app: FastAPI, page: str, script: bool = False) -> str:
    answer = TestClient(app).get(page, headers={"HX-Request": "true"} if script else {})
    assert answer.status_code == 200
    return answer.text


def test_they_are_those_that_the_desk_makes_itself(
    desk: FastAPI, case: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """On a page that holds them, after the words, and for the player; the desk itself draws nothing."""
    alone = {page: asked(create_app(), f"/{page}?{case}") for page in ("case", "drawings", "player")}

    def drawn_here(*_: object) -> None:
        raise AssertionError("the desk drew by itself")

    monkeypatch.setattr(drawings, "figures_of", drawn_here)
    assert {page: asked(desk, f"/{page}?{case}") for page in alone} == alone
    assert alone["drawings"].count("<svg") == 3


def test_they_are_begun_with_the_words(desk: FastAPI, case: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """A page that asks for them after its words finds them begun, once."""
    begun: list[object] = []
    begin = DrawnBeside.begin
    monkeypatch.setattr(DrawnBeside, "begin", lambda self, *of: begun.append(of) or begin(self, *of))
    assert "option-A-title" not in asked(desk, f"/case?{case}", script=True)
    assert len(begun) == 1
    assert "option-A-title" in asked(desk, f"/drawings?{case}")
    assert len(begun) == 1


def test_another_map_is_told_once_more(beside: DrawnBeside, case: str) -> None:
    """The holes as they are cut on a day are another map; both are kept, and each drawn on its own."""
    made = [create_app() for _ in range(6)]
    for one in [*made, *made]:
        one.state.drawn_beside = beside
        assert asked(one, f"/drawings?{case}").count("<svg") == 3


def test_where_it_ended_the_desk_draws_and_starts_another(
    desk: FastAPI, beside: DrawnBeside, case: str
) -> None:
    """One that is killed between two drawings is started again; one that ends each time is not, in the end."""
    seen = set()
    for number in range(STARTS + 2):
        if beside.pid is not None:
            seen.add(beside.pid)
            os.kill(beside.pid, signal.SIGTERM)
            with suppress(ChildProcessError):
                os.waitid(os.P_PID, beside.pid, os.WEXITED | os.WNOWAIT)
        assert asked(desk, f"/drawings?{case}&strokes_before={number}").count("<svg") == 3
    assert len(seen) == STARTS
    assert beside.pid is None


def test_none_is_asked_once_the_desk_is_stopped(desk: FastAPI, beside: DrawnBeside, case: str) -> None:
    beside.stop()
    assert asked(desk, f"/drawings?{case}").count("<svg") == 3
    assert beside.pid is None


@pytest.mark.parametrize("how", [signal.SIGKILL, signal.SIGTERM, signal.SIGINT])
def test_it_ends_with_the_desk_however_that_ends(how: signal.Signals) -> None:
    """What it listens to is closed by the machine, and its own end can be seen from here: the pipe it still holds is closed."""
    reads, writes = os.pipe()
    program = (
        "from marram.desk.rulings.drawn_beside import DrawnBeside; import signal, time\n"
        "signal.signal(signal.SIGINT, signal.default_int_handler)\n"  # a shell's job may have been told to ignore it
        "beside = DrawnBeside(); beside.start(); print(beside.pid, flush=True); time.sleep(600)"
    )
    with subprocess.Popen(
        [sys.executable, "-c", program], stdout=subprocess.PIPE, stderr=writes, text=True
    ) as desk:
        os.close(writes)
        assert desk.stdout is not None
        assert int(desk.stdout.readline()) != desk.pid
        desk.send_signal(how)
        with os.fdopen(reads, "rb") as told:
            told.read()  # ends when nobody holds the other end any more: neither the desk nor its process
        assert desk.wait() != 0
