"""A command stopped from the keyboard says so in a sentence, and leaves nothing half-written."""

import subprocess
import sys
from pathlib import Path

STOPPED_WHILE_WRITING = """
import os, signal, sys
from pathlib import Path
from marram.cli import writing
from marram.cli.exits import faults_as_exit_codes

whole = writing._write_draft

def stopped_after_the_first(draft, content):
    whole(draft, content)
    os.kill(os.getpid(), signal.SIGINT)

writing._write_draft = stopped_after_the_first
signal.signal(signal.SIGINT, signal.default_int_handler)  # as in a terminal, however this was started
with faults_as_exit_codes():
    writing.write_files({Path(sys.argv[1]) / name: b"1" for name in ("one", "two")})
"""


def test_a_stop_is_a_sentence_and_nothing_is_half_written(tmp_path: Path) -> None:
    """Exit code 130 (POSIX: 128 and SIGINT), one line on standard error, and an empty folder."""
    run = [sys.executable, "-c", STOPPED_WHILE_WRITING, str(tmp_path)]
    ended = subprocess.run(run, capture_output=True, text=True, check=False)

    assert ended.returncode == 130
    assert len(ended.stderr.strip().splitlines()) == 1
    assert "Traceback" not in ended.stderr
    assert list(tmp_path.iterdir()) == []
