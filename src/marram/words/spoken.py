"""What the layers beneath the words say, in the reader's language."""

from enum import Enum

from marram.said import Said, in_english
from marram.words.language import language, translate
from marram.words.texts import english, text


def spoken(sentence: str) -> str:
    """Return a sentence of a layer below in the reader's language; one that is no message stays as it is."""
    if not sentence:
        return ""  # the message of nothing is the head of a gettext catalogue
    if not isinstance(sentence, Said):
        return translate()(sentence)
    values = {name: _value(value) for name, value in sentence.values.items()}
    if sentence.several:
        count = sentence.values["count"]
        assert isinstance(count, int)
        return language().counted(sentence.message, sentence.several, count).format(**values)
    return translate()(sentence.message).format(**values)


def _value(value: object) -> object:
    if isinstance(value, Said):
        return spoken(value)
    if isinstance(value, Enum):
        return text(f"ground.{value.value}") if value.value in english("ground") else in_english(value)
    return value
