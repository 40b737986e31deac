"""Write what changed between the editions as the package keeps it; `--check` only compares."""

import json
import sys
from pathlib import Path

from marram.teach.what_changed.kept import FILE, found_now

if __name__ == "__main__":
    target = Path(str(FILE))
    text = json.dumps(found_now(), indent=1, ensure_ascii=False) + "\n"
    if not target.exists() or target.read_text(encoding="utf-8") != text:
        if "--check" in sys.argv:
            sys.exit("Out of date: what changed between the editions. Run `make changes`.")
        target.write_text(text, encoding="utf-8")
