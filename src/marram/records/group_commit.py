"""Many who add entries at once share one synchronisation of the disk: whoever waits when it begins is in it.

Nobody waits for a time to pass: while one transaction is being written the next entries gather, and go together.
Each caller hears that an entry is kept only after the disk has it, as without.
"""

from concurrent.futures import Future
from queue import SimpleQueue
from threading import Thread
from typing import Self

from marram.errors import InputError
from marram.records.entry import Entry, Kept
from marram.records.log import Log
from marram.said import said

MOST = 256
"""Entries of one transaction at most (own choice), so that the first of them does not wait for too many others."""


class GroupCommit:
    """A log that many threads add to.

    Args:
        log: the log.
    """

    def __init__(self, log: Log) -> None:
        self.log = log
        self._waiting: SimpleQueue[tuple[str, Entry, Future[Kept]] | None] = SimpleQueue()
        self._closed = False
        self._writer = Thread(target=self._write, name="log", daemon=True)
        self._writer.start()

    def append(self, event: str, entry: Entry) -> Kept:
        """Add an entry; once this returns it is on the disk. The same entry given again is not added twice.

        Raises:
            InputError: it cannot be kept, corrects what is not there, or its identifier is that of another entry.
        """
        if self._closed:
            raise InputError(said("The log is closed; nothing was saved. Open it again."))
        answer: Future[Kept] = Future()
        self._waiting.put((event, entry, answer))
        return answer.result()

    def close(self) -> None:
        """Write what waits, and stop."""
        self._closed = True
        self._waiting.put(None)
        self._writer.join()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def _write(self) -> None:
        while (first := self._waiting.get()) is not None:
            batch = [first]
            last = False
            while len(batch) < MOST and not self._waiting.empty():
                if (one := self._waiting.get()) is None:
                    last = True
                    break
                batch.append(one)
            self._commit(batch)
            if last:
                return

    def _commit(self, batch: list[tuple[str, Entry, Future[Kept]]]) -> None:
        try:
            answers = self.log.append_all([(event, entry) for event, entry, _ in batch])
        except BaseException as error:  # noqa: BLE001 - whatever it is, every caller hears it
            for _, _, waiting in batch:
                waiting.set_exception(error)
            return
        for (_, _, waiting), answer in zip(batch, answers, strict=True):
            if isinstance(answer, InputError):
                waiting.set_exception(answer)
            else:
                waiting.set_result(answer)
