"""A PostgreSQL server of the tests' own, on a socket in a folder of its own; it is stopped with the tests."""

import os
import pwd
import shutil
import signal
import subprocess
import tempfile
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path

import psycopg

MISSING = (
    "PostgreSQL is not installed, so its tests are skipped. Install it with: sudo apt-get install postgresql"
)


def programs() -> Path | None:
    """Return the folder with the newest server there is: where Debian puts it, or on the path."""
    found = sorted(
        Path("/usr/lib/postgresql").glob("*/bin/initdb"), key=lambda path: int(path.parents[1].name)
    )
    on_path = shutil.which("initdb")
    return found[-1].parent if found else Path(on_path).resolve().parent if on_path else None


class Server:
    """A server with a cluster of its own, below a folder with a short path (a socket's may have 107 letters)."""

    def __init__(self) -> None:
        found = programs()
        assert found is not None
        self.programs = found
        self.folder = Path(tempfile.mkdtemp(prefix="marram-pg-"))
        self.user = _user_who_may()
        if self.user is not None:
            os.chown(self.folder, self.user.pw_uid, self.user.pw_gid)
        self._run(
            "initdb", "-D", self.data, "-A", "trust", "-U", "marram", "-E", "UTF8", "--locale=C", "--no-sync"
        )
        self.start()

    @property
    def data(self) -> str:
        return str(self.folder / "data")

    def start(self) -> None:
        options = f"-k {self.folder} -c listen_addresses='' -c shared_buffers=16MB -c max_connections=60"
        self._run(
            "pg_ctl", "-D", self.data, "-w", "-s", "-o", options, "-l", str(self.folder / "log"), "start"
        )

    def kill(self) -> None:
        """End every process of the server at once, and return when none is left."""
        while running := self._processes():
            for process in running:
                with suppress(ProcessLookupError):
                    os.kill(process, signal.SIGKILL)
        # nobody else can be running it; where nobody buries the dead, its locks would seem to be held
        for lock in (self.folder / "data" / "postmaster.pid", *self.folder.glob(".s.PGSQL.*")):
            lock.unlink(missing_ok=True)

    def _processes(self) -> list[int]:
        """Return the processes of this server: those that work in its folder; the dead work nowhere."""
        found = []
        for path in Path("/proc").glob("[0-9]*/cwd"):
            with suppress(OSError):
                if path.readlink() == self.folder / "data":
                    found.append(int(path.parent.name))
        return found

    def stop(self) -> None:
        self._run("pg_ctl", "-D", self.data, "-m", "immediate", "-s", "stop")
        shutil.rmtree(self.folder, ignore_errors=True)

    def create(self, name: str, template: str = "template1") -> str:
        """Make a database and return its address."""
        with psycopg.connect(self._of("postgres"), autocommit=True) as connection:
            connection.execute(f'CREATE DATABASE "{name}" TEMPLATE "{template}"')
        return self._of(name)

    def drop(self, name: str) -> None:
        with psycopg.connect(self._of("postgres"), autocommit=True) as connection:
            connection.execute(f'DROP DATABASE "{name}" WITH (FORCE)')

    def _of(self, name: str) -> str:
        return f"postgresql://marram@/{name}?host={self.folder}"

    def _run(self, program: str, *arguments: str) -> None:
        command: Sequence[str] = (str(self.programs / program), *arguments)
        as_user = (
            {}
            if self.user is None
            else {"user": self.user.pw_uid, "group": self.user.pw_gid, "extra_groups": []}
        )
        done = subprocess.run(
            command,
            cwd=self.folder,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.PIPE if program == "initdb" else subprocess.DEVNULL,
            text=True,
            check=False,
            **as_user,  # type: ignore[call-overload]
        )
        assert done.returncode == 0, done.stderr or (self.folder / "log").read_text()


def _user_who_may() -> pwd.struct_passwd | None:
    """Return whom the server runs as: it refuses to run as root."""
    if os.geteuid() != 0:
        return None
    try:
        return pwd.getpwnam("postgres")
    except KeyError:
        return pwd.getpwnam("nobody")
