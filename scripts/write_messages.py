"""Write every message marram says as a gettext template, for translators: `write_messages.py marram.pot`."""

import sys
from pathlib import Path

from babel.messages.catalog import Catalog
from babel.messages.pofile import write_po

from marram import __version__
from marram.docs.messages import messages
from marram.words.language import DOMAIN


def main(target: Path) -> None:
    """Write the template."""
    catalog = Catalog(domain=DOMAIN, project="marram", version=__version__, fuzzy=False)
    for one in messages():
        catalog.add((one.sentence, one.several) if one.several else one.sentence)
    with target.open("wb") as file:
        write_po(file, catalog, sort_output=False)
    sys.stdout.write(f"{len(catalog)} messages in {target}.\n")


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit("Say where to write them: write_messages.py marram.pot")
    main(Path(sys.argv[1]))
