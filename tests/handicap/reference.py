"""The published values kept beside the repository (``../shared/reference-values.json``), each with its source."""

import json
import os
from pathlib import Path
from typing import Any

import pytest

SHARED = Path(__file__).parents[3] / "shared" / "reference-values.json"


def published() -> dict[str, dict[str, Any]]:
    """Return the values by identifier; fail under CI, skip with a reason elsewhere, when they are not there."""
    if not SHARED.exists():
        reason = "reference-values.json is not beside the repository (../shared)"
        if os.environ.get("CI") == "true":
            pytest.fail(reason)
        pytest.skip(reason, allow_module_level=True)
    values = json.loads(SHARED.read_text(encoding="utf-8"), parse_float=str)
    return {one["id"]: one for one in values}
