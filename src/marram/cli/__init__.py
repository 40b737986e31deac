"""The command line. Heavy libraries are imported only by the commands that need them."""

import gc

OBJECTS_BEFORE_COLLECTING = 100_000
"""How many more objects than are freed may be made before Python looks for cycles: loading modules makes few."""


def main() -> None:
    """Run the command line."""
    gc.set_threshold(OBJECTS_BEFORE_COLLECTING)
    from marram.cli.app import run

    run()
