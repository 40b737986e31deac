"""The command line. Heavy libraries are imported only by the commands that need them."""


def main() -> None:
    """Run the command line."""
    from marram.cli.app import run

    run()
