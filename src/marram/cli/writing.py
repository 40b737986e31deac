"""Files that a command writes: all of them, or none."""

from collections.abc import Mapping
from pathlib import Path

from marram.errors import InputError


def write_files(files: Mapping[Path, bytes]) -> None:
    """Write finished contents; where one place cannot take its file, nothing is written.

    Raises:
        InputError: a folder is missing, or a file would take the place of a folder; every fault is listed.
    """
    faults = [
        f"{path} cannot be written: there is no folder {path.parent}. Make it, or name another."
        for path in files
        if not path.parent.is_dir()
    ]
    faults += [f"{path} cannot be written: it is a folder. Name a file." for path in files if path.is_dir()]
    if faults:
        raise InputError(*faults)
    for path, content in files.items():
        path.write_bytes(content)
