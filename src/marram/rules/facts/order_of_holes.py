"""Facts about where a round, and each of its holes, is begun (Rules 5.1, 5.3a, 6.1b)."""

from marram.rules.engine.fact import DecidedBy, yes_no

order_set_by_committee = yes_no(
    "order_set_by_committee",
    "Had the Committee set this order of holes, or told the player to play that hole then?",
    help="For example a start at several holes at once, a hole that is closed, an official who sent the group on.",
    source="5.1",
    decided_by=DecidedBy.COMMITTEE,
)
sent_there_by_committee = yes_no(
    "sent_there_by_committee",
    "Had the Committee, or somebody acting for it, sent the player to that starting point?",
    help="A wrong list of starting times or a starter's mistake is the Committee's. A player's own reading of the list is not.",
    source="5.3a, 20.2d",
    decided_by=DecidedBy.COMMITTEE,
)
