"""Say clearly when the Python at hand is too old, before anything is installed."""

import sys

if sys.version_info < (3, 11):  # noqa: UP036 - this runs before the project's own requirement is read
    sys.exit(
        f"marram needs Python 3.11 or newer; this is {sys.version.split()[0]}. "
        "Name another one: make PYTHON=python3.11 demo"
    )
