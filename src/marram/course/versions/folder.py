"""Where the versions of a map are kept, apart from how, so that a command that has none loads no more."""

import os
from hashlib import sha256
from pathlib import Path


def default_folder(course_file: Path) -> Path:
    """Return where versions of a course file are kept by default, below the user's own data.

    The XDG Base Directory Specification names the place; the file's own path keeps courses apart.
    """
    data = Path(os.environ.get("XDG_DATA_HOME") or Path.home() / ".local" / "share")
    mark = sha256(str(course_file.resolve()).encode()).hexdigest()[:10]
    return data / "marram" / "maps" / f"{course_file.stem}-{mark}"
