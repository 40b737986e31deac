"""Install what the tests need and pip does not bring, from Debian's packages; say so where that is not possible."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

TESTS = {
    "chromium": "the browser tests",
    "postgresql": "the tests of records on PostgreSQL",
    "libnss3-tools": "the browser test of the secure connection",
}
"""The packages, and which tests are skipped without them."""
PROGRAMS = {"libnss3-tools": "certutil"}
"""The program of a package that is called otherwise."""


def is_there(package: str) -> bool:
    """Tell whether the program of a package can be found; Debian keeps PostgreSQL's server off the path."""
    if package == "postgresql":
        return bool(shutil.which("initdb") or any(Path("/usr/lib/postgresql").glob("*/bin/initdb")))
    return shutil.which(PROGRAMS.get(package, package)) is not None


def main(package: str) -> int:
    """Return 0 when the package is there or may be missing; 1 when it must be there (CI) and is not."""
    if is_there(package):
        return 0
    if shutil.which("apt-get") and os.geteuid() == 0:
        print(f"Installing Debian's {package} for {TESTS[package]}.")  # noqa: T201 - a script's own output
        subprocess.run(["apt-get", "update", "-qq"], check=False)  # noqa: S607 - the system's own tool
        subprocess.run(["apt-get", "install", "-y", "-qq", package], check=False)  # noqa: S603, S607 - the same
    if is_there(package):
        return 0
    print(  # noqa: T201 - a script's own output
        f"{package} is not installed, so {TESTS[package]} will be skipped. "
        f"Install it with: sudo apt-get install {package}"
    )
    return 1 if os.environ.get("CI") == "true" else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
