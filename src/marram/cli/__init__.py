"""The command line. Heavy libraries are imported only by the commands that need them."""

import atexit
import gc
import os

OBJECTS_BEFORE_COLLECTING = 100_000
"""How many more objects than are freed may be made before Python looks for cycles: loading modules makes few."""


def main() -> None:
    """Run the command line.

    Unless the environment asks for them, numpy starts no threads for large matrices: there are none here, and on
    two cores starting them costs about as much processor time as the rest of ``import shapely``. What is left at
    the end of the program is not searched for cycles.
    """
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    gc.set_threshold(OBJECTS_BEFORE_COLLECTING)
    atexit.register(gc.freeze)
    from marram.cli.app import run

    run()
