"""Sentences by writers who saw nothing of the finding, each with the incidents its acts may be ruled under."""

import json
from pathlib import Path

FILE = Path(__file__).parent / "unseen_sentences.json"


def unseen() -> list[tuple[str, list[frozenset[str]]]]:
    """Return each sentence with the incidents that each of its acts may be ruled under."""
    plain = json.loads(FILE.read_text(encoding="utf-8"))["sentences"]
    return [(one["sentence"], [frozenset(act) for act in one["acts"]]) for one in plain]
