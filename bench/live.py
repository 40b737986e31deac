"""How long after somebody recorded a ruling the others have it: 200 devices on one stream each, beside one device alone.

The devices run in a process of their own, so that they do not slow the desk down. The delay counts from the moment the
recording transaction returned until the event has arrived at a device, in milliseconds; both figures come from one run.
"""

import asyncio
import json
import multiprocessing
import os
import statistics
import sys
import tempfile
import time
from datetime import UTC, datetime
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

DEVICES = 200
ENTRIES = 40
PAUSE = 0.25


async def device(port: int, heard: list[tuple[int, float]], ready: asyncio.Semaphore, cookie: str) -> None:
    reader, writer = await asyncio.open_connection("127.0.0.1", port)
    writer.write(
        f"GET /api/live HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nCookie: {cookie}\r\nAccept: text/event-stream\r\n\r\n".encode()
    )
    is_ready = False
    while line := await reader.readline():
        if not is_ready and line.startswith(b"event: cases"):
            is_ready = True
            ready.release()
        if line.startswith(b"data: {") and "number" in (told := json.loads(line[6:])):
            heard.append((told["number"], time.monotonic()))


async def devices(port: int, cookie: str, count: int, begin: object, ends: tuple[object, object]) -> None:
    done, answers = ends
    heard: list[tuple[int, float]] = []
    ready = asyncio.Semaphore(0)
    tasks = [asyncio.create_task(device(port, heard, ready, cookie)) for _ in range(count)]
    for _ in range(count):
        await ready.acquire()
    begin.set()
    await asyncio.to_thread(done.wait)
    await asyncio.sleep(2)
    for one in tasks:
        one.cancel()
    answers.put(heard)


def run_devices(*given: object) -> None:
    asyncio.run(devices(*given))


def measured(port: int, kept: object, cookie: str, count: int) -> dict[str, float]:
    from marram.records.entry import Entry

    context = multiprocessing.get_context("spawn")
    begin, done, answers = context.Event(), context.Event(), context.Queue()
    process = context.Process(target=run_devices, args=(port, cookie, count, begin, (done, answers)))
    process.start()
    begin.wait()
    before, started = time.process_time(), time.monotonic()
    recorded: dict[int, float] = {}
    for number in range(ENTRIES):
        entry = Entry("ruling", datetime.now(UTC), hole=1 + number % 18, content={"headline": "invented"})
        found = kept.log.append(kept.event_id, entry).number
        recorded[found] = time.monotonic()
        time.sleep(PAUSE)
    cpu = (time.process_time() - before) / (time.monotonic() - started)
    done.set()
    heard = answers.get()
    process.join()
    delays = sorted(1000 * (at - recorded[number]) for number, at in heard if number in recorded)
    return {
        "devices": count,
        "heard": len(delays),
        "expected": count * ENTRIES,
        "p50_ms": round(statistics.median(delays), 1),
        "p95_ms": round(delays[int(0.95 * len(delays))], 1),
        "most_ms": round(delays[-1], 1),
        "cpu_of_the_desk": round(cpu, 3),
    }


def main() -> None:
    from marram.desk.people.door import COOKIE
    from tests.clubs import club
    from tests.desk.serving import served
    from tests.desk.signing_in import guarded, signed_in

    with tempfile.TemporaryDirectory() as folder, club(Path(folder)) as kept:
        app = guarded(kept)
        cookie = f"{COOKIE}={signed_in(app, kept, 'referee').cookies[COOKIE]}"
        with served(app) as address:
            port = int(address.rpartition(":")[2])
            print(f"load average {os.getloadavg()[0]:.1f}, {os.cpu_count()} cores")
            for count in (1, DEVICES):
                print(json.dumps(measured(port, kept, cookie, count)), flush=True)


if __name__ == "__main__":
    main()
