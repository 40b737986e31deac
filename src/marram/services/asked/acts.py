"""Every act of the trade that a player may ask about beforehand, in the order it is told.

An act is data: what it is called stands in the catalogue (``may.act.NAME``), what it costs is what the book rules of the same
act done. What stays open, such as whether the lie is improved by it, is left open, and told as what it hangs on.
"""

from marram.services.asked.acts_at_the_moment import MOTION, OTHERS, STOPPED, ZONES
from marram.services.asked.acts_in_play import EQUIPMENT, HELP, PLAY
from marram.services.asked.acts_on_the_ground import GROUND, RELIEF, THINGS
from marram.services.asked.acts_with_the_ball import CHANGED, DROPPED, LIFTED
from marram.services.asked.asked_act import AskedAct

GROUPS: dict[str, tuple[AskedAct, ...]] = {
    "things": THINGS,
    "ground": GROUND,
    "relief": (*RELIEF, *ZONES),
    "lifted": LIFTED,
    "changed": CHANGED,
    "dropped": DROPPED,
    "help": HELP,
    "equipment": EQUIPMENT,
    "play": PLAY,
    "others": OTHERS,
    "motion": MOTION,
    "stopped": STOPPED,
}
"""The acts by what they are about (``may.group.NAME``)."""

ACTS: tuple[AskedAct, ...] = tuple(act for group in GROUPS.values() for act in group)

__all__ = ["ACTS", "GROUPS", "AskedAct"]
