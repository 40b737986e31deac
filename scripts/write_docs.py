"""Write the generated pages of docs/ as they should now be; `--check` only compares."""

import sys
from pathlib import Path

from marram.docs import PAGES

DOCS = Path(__file__).parents[1] / "docs"

if __name__ == "__main__":
    stale = []
    for name, page in PAGES.items():
        target, text = DOCS / name, page()
        if not target.exists() or target.read_text(encoding="utf-8") != text:
            stale.append(name)
            if "--check" not in sys.argv:
                target.write_text(text, encoding="utf-8")
    if "--check" in sys.argv and stale:
        sys.exit(f"Out of date: {', '.join(stale)}. Run `make docs`.")
