"""The texts of pages, commands and papers, by key: ``subject.name``, each subject a file in ``english/texts``.

A key is looked up in its subject's file alone, so that a command loads no more words than it says.
"""

from collections.abc import Callable, Mapping
from datetime import date, datetime, time
from functools import cache
from importlib import import_module

from marram.words.language import language
from marram.words.place import writing

ONE, SEVERAL = ".one", ".several"
COUNTED = (ONE, SEVERAL)
"""What ends the two keys of a text that depends on a number: of one thing, and of none or several."""
NOON = 12


@cache
def english(subject: str) -> Mapping[str, str]:
    """Return the English texts of one subject, by the part of their key behind it."""
    found: Mapping[str, str] = import_module(f"marram.words.english.texts.{subject}").TEXTS
    return found


def text(key: str, /, **values: object) -> str:
    """Return a text in the reader's language, ``values`` set into its places.

    Raises:
        KeyError: the catalogue has no such key.
    """
    return set_in(sentence(key), values)


def count_text(key: str, count: int, /, **values: object) -> str:
    """Return the text of ``key`` that fits a number, which ``{count}`` stands for in it."""
    return set_in(counted_sentence(key, count), {"count": count, **values})


def counted_amount(key: str, amount: float) -> str:
    """Return the text of ``key`` that fits an amount, whole or not, which ``{amount}`` stands for in it."""
    return counted_sentence(key, 1 if amount == 1 else max(2, round(amount))).format(amount=f"{amount:g}")


def sentence(key: str) -> str:
    """Return a text in the reader's language as it stands, its places open."""
    subject, _, name = key.partition(".")
    return language().sentence(english(subject)[name])


def counted_sentence(key: str, count: int) -> str:
    """Return the text of ``key`` that fits a number, as it stands, its places open."""
    subject, _, name = key.partition(".")
    known = english(subject)
    return language().counted(known[name + ONE], known[name + SEVERAL], count)


def texts_of(subject: str) -> dict[str, str]:
    """Return every text of a subject in the reader's language, for a script that sets in values itself.

    Of a text that depends on a number there are the two forms that 1 and 2 take.
    """
    told = {}
    for name in english(subject):
        key = f"{subject}.{name}"
        if name.endswith(ONE):
            told[name] = counted_sentence(key.removesuffix(ONE), 1)
        elif name.endswith(SEVERAL):
            told[name] = counted_sentence(key.removesuffix(SEVERAL), 2)
        else:
            told[name] = sentence(key)
    return told


def set_in(sentence: str, values: Mapping[str, object]) -> str:
    """Return a sentence with values in its places; one without values stands as it is."""
    return sentence.format(**values) if values else sentence


def worded() -> str:
    """Return what words hang on beside what they tell: the language, and how times and days are written; a key for words that are held."""
    return f"{language().code} {writing()}"


def capital(words: str) -> str:
    """Return words with a capital at their start, as a sentence or a heading begins."""
    return words[:1].upper() + words[1:]


def day_words(day: date) -> str:
    """Return a day as it is spoken: ``21 June 2025``."""
    return _day("days.month.{}".format, day)


def long_day_words(day: date) -> str:
    """Return a day with its weekday: ``Saturday, 21 June 2025``."""
    return text("days.long", weekday=text(f"days.weekday.{day.isoweekday()}"), day=day_words(day))


def short_day_words(day: date) -> str:
    """Return a day in short: ``21 Jun 2025``."""
    return _day("days.short.{}".format, day)


def moment_words(moment: datetime, today: date) -> str:
    """Return a moment as its clock shows it: the time, ``14:20``, with its day where that is not today."""
    at = clock_words(moment)
    return at if moment.date() == today else text("days.moment", day=short_day_words(moment.date()), time=at)


def clock_words(moment: datetime | time | str) -> str:
    """Return a time of day as it is written where the reader is: ``14:20`` or ``2:20 pm``; a text as ISO 8601 has it."""
    at = time.fromisoformat(moment) if isinstance(moment, str) else moment
    if not writing().twelve_hours:
        return f"{at:%H:%M}"
    half = "days.before_noon" if at.hour < NOON else "days.after_noon"
    return text(half, hour=at.hour % NOON or NOON, minute=f"{at:%M}")


def _day(month: Callable[[int], str], day: date) -> str:
    key = "days.month_first" if writing().month_first else "days.day"
    return text(key, day=day.day, month=text(month(day.month)), year=day.year)
