"""The made-up language for the tests that look for words which bypass the catalogue."""

from pathlib import Path

import pytest

from tests.words.made_up import write_made_up


@pytest.fixture(scope="session")
def locales(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a folder with the catalogue of the made-up language."""
    folder = tmp_path_factory.mktemp("locales")
    write_made_up(folder)
    return folder
