"""The names the layer offers."""

import subprocess
import sys

import pytest

import marram.relief


def test_every_name_offered_can_be_imported_and_the_list_is_sorted():
    """Each public name resolves; a name that is not offered is refused with the list."""
    assert marram.relief.__all__ == sorted(marram.relief.__all__, key=str)
    assert all(getattr(marram.relief, name) is not None for name in marram.relief.__all__)
    with pytest.raises(AttributeError, match="it offers"):
        _ = marram.relief.relief_aeras


def test_a_question_about_distances_loads_no_drawing():
    """Drawing and GeoJSON are imported only when asked for."""
    code = "from marram.relief import relief_areas\nimport sys\nprint(*sys.modules)"
    found = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)

    assert "marram.relief.relief_areas" in found.stdout.split()
    assert "marram.relief.pictures.drawing" not in found.stdout.split()
    assert "marram.relief.pictures.geojson" not in found.stdout.split()
