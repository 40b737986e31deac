"""A changed starting time in words."""

from marram.services.publishing.changes import StartChanged
from marram.words.texts import text


def changed_words(one: StartChanged, name: str = "") -> str:
    """Return in words what changed for a player, by a name where the list holds none."""
    called = name or one.who

    def start(at: tuple[str, int]) -> str:
        return text("publishing.start", time=at[0], tee=at[1])

    if one.was is None or one.now is None:
        if one.now is not None:
            return text("publishing.start.new", name=called, now=start(one.now))
        assert one.was is not None
        return text("publishing.start.gone", name=called, was=start(one.was))
    return text("publishing.start.changed", name=called, was=start(one.was), now=start(one.now))
