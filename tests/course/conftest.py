"""Puts the helpers of this folder on the path of its tests."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
