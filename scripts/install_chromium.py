"""Install Debian's Chromium for the browser tests, where that is possible; say so where it is not."""

import os
import shutil
import subprocess
import sys


def main() -> int:
    """Return 0 when Chromium is there or may be missing; 1 when it must be there (CI) and is not."""
    if shutil.which("chromium"):
        return 0
    if shutil.which("apt-get") and os.geteuid() == 0:
        print("Installing Debian's Chromium for the browser tests.")  # noqa: T201 - a script's own output
        subprocess.run(["apt-get", "update", "-qq"], check=False)  # noqa: S607 - the system's own tool
        subprocess.run(["apt-get", "install", "-y", "-qq", "chromium"], check=False)  # noqa: S607 - the same
    if shutil.which("chromium"):
        return 0
    print(  # noqa: T201 - a script's own output
        "Chromium is not installed, so the browser tests will be skipped. Install it with: sudo apt-get install chromium"
    )
    return 1 if os.environ.get("CI") == "true" else 0


if __name__ == "__main__":
    sys.exit(main())
