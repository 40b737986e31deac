"""Words are compared without their endings (stems as the Snowball project publishes them for English)."""

import pytest

from marram.word_stems import stem


@pytest.mark.parametrize(
    "words",
    [
        ("rake", "rakes", "raked", "raking"),
        ("bounce", "bounces", "bouncing"),
        ("tread", "treads", "treading"),
    ],
)
def test_forms_of_one_word_have_one_stem(words: tuple[str, ...]) -> None:
    """Endings and doubled letters do not count."""
    assert len({stem(word) for word in words}) == 1


@pytest.mark.parametrize("number", ["9.4b", "18.3c(2)", "e-5"])
def test_a_number_is_its_own_stem(number: str) -> None:
    """What is no word is compared as it stands."""
    assert stem(number) == number
