"""Write what teaching keeps in the package: what changed between two days, what Local Rules change, which provisions rulings cite.

``--check`` only compares.
"""

import json
import sys
from pathlib import Path

from marram.teach.situations import reaching
from marram.teach.what_changed import adopted, kept

if __name__ == "__main__":
    old = []
    for file, now in (
        (kept.FILE, kept.found_now()),
        (adopted.FILE, adopted.adopted_now()),
        (reaching.FILE, reaching.reached_now()),
    ):
        target = Path(str(file))
        text = json.dumps(now, indent=1, ensure_ascii=False) + "\n"
        if not target.exists() or target.read_text(encoding="utf-8") != text:
            old.append(target.name)
            if "--check" not in sys.argv:
                target.write_text(text, encoding="utf-8")
    if old and "--check" in sys.argv:
        sys.exit(f"Out of date: {', '.join(old)}. Run `make changes`.")
