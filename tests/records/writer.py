"""A process that adds entries until it is killed: says what it is about to give, and what was acknowledged.

Run as ``python -m tests.records.writer ADDRESS EVENT NAME FIRST LAST THREADS``. The identifiers follow from name and number, so that a process
started anew gives the same entries again, as a phone does that never heard an answer.
"""

import os
import sys
from itertools import count
from threading import Lock, Thread
from uuid import NAMESPACE_OID, uuid5

from marram.errors import InputError
from marram.records.database import opened
from marram.records.entry import Entry, Part
from marram.records.group_commit import GroupCommit
from marram.records.log import Log
from tests.records.conftest import NOON


def entry(name: str, number: int) -> Entry:
    """The entry of this name and number: always the same one, with a part at every third."""
    parts = (Part("note", f"{name} {number}".encode()),) if number % 3 == 0 else ()
    ident = str(uuid5(NAMESPACE_OID, f"{name} {number}"))
    return Entry(
        "note", NOON, ident, hole=1 + number % 18, content={"words": f"{name} {number}"}, parts=parts
    )


def main(address: str, event: str, *more: str) -> None:
    name, first, last, threads = more
    numbers, saying = iter(range(int(first), int(last))), Lock()
    with opened(address) as records, GroupCommit(Log(records)) as log:

        def work() -> None:
            for _ in count():
                with saying:
                    number = next(numbers, None)
                if number is None:
                    return
                try:
                    kept = log.append(event, entry(name, number))
                except InputError as fault:  # the server has gone: said in a line, which no pipe holds up
                    os.write(2, f"{fault}\n".encode())
                    return
                with saying:
                    os.write(1, f"{number} {kept.number}\n".encode())  # one line at once, or none

        workers = [Thread(target=work) for _ in range(int(threads))]
        for one in workers:
            one.start()
        for one in workers:
            one.join()
    os.write(1, b"done\n")


if __name__ == "__main__":
    main(*sys.argv[1:])
