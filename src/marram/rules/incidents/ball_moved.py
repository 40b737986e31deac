"""Incidents: the ball at rest moved."""

from marram.rules.incidents.incident import Incident

THEME = "The ball at rest moved"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "ball_may_have_moved",
        "The ball at rest moved, or may have moved",
        "9.2",
        THEME,
        "book.rule_09_ball_at_rest_moved:ball_may_have_moved",
        "cause unknown virtually certain rocked oscillated why wobbled settled sank oscillate unsure "
        "not sure deeper video showed who address naked eye",
    ),
    Incident(
        "ball_moved_by_player",
        "The player or caddie moved the ball at rest",
        "9.4",
        THEME,
        "book.rule_09_player:ball_moved_by_player",
        "kicked trod practice swing address foot club trolley cart equipment partner stepped on ball "
        "dropped marker hit knocked nudged buggy addressed rake towel stood ran over touched loose "
        "impediment leaf tossed measuring removing green accidentally putter dragged flagstick fell "
        "bumped rolled by accident "
        "kicked a tree club thrown",
    ),
    Incident(
        "ball_lifted_by_player",
        "The player or caddie lifted the ball at rest, or touched it on purpose",
        "9.4",
        THEME,
        "book.rule_09_player:ball_handled_by_player",
        "picked up rotated touched took by mistake not marked without marking fairway rough wrongly "
        "thought out of bounds preferred lies thinking relief hole won pocketed",
    ),
    Incident(
        "ball_dislodged_from_tree",
        "The player brought the ball down from a tree or bush",
        "9.4",
        THEME,
        "book.rule_09_player:ball_dislodged_from_tree",
        "shook climbed fell tree stuck knocked threw club into",
    ),
    Incident(
        "ball_moved_during_swing",
        "The ball began to move after the backswing for the stroke had begun",
        "9.1b",
        THEME,
        "book.rule_09_ball_at_rest_moved:ball_moved_during_swing",
        "backswing downswing address grass rolled as it was struck wind",
    ),
    Incident(
        "ball_moved_by_natural_forces",
        "Wind, water or gravity moved the ball at rest",
        "9.3",
        THEME,
        "book.rule_09_natural_forces:moved_by_natural_forces",
        "wind blew rain rolled slope gravity dropped placed replaced back moved by itself green down "
        "after carried away into hole off out of bounds gust",
    ),
    Incident(
        "ball_moved_by_opponent",
        "The opponent lifted, touched or moved the player's ball (match play)",
        "9.5",
        THEME,
        "book.rule_09_others:ball_moved_by_opponent",
        "match concession picked up stepped kicked knocked away conceded search searching opponent's "
        "caddie trolley "
        "rotated deliberately touched fairway lifted by caddie",
    ),
    Incident(
        "ball_moved_by_outside_influence",
        "An outside influence lifted or moved the ball at rest",
        "9.6",
        THEME,
        "book.rule_09_others:moved_by_outside_influence",
        "spectator animal dog bird another player competitor another ball stolen trolley fox crow "
        "gull cow mower greenkeeper buggy bag paper caught knocked stepped picked up took hit struck "
        "kicked child squirrel other marshal blown "
        "ran off with it provisional flagstick blown over disappeared "
        "fan sprinkler water thief pocketed",
    ),
    Incident(
        "ball_marker_moved",
        "The ball-marker was lifted or moved before the ball was put back",
        "9.7",
        THEME,
        "book.rule_09_ball_marker:ball_marker_moved",
        "coin marker green stuck to shoe trod kicked disc wind blown opponent replacing accidentally "
        "by accident turned over "
        "another player picked up by mistake",
    ),
    Incident(
        "moved_ball_not_replaced",
        "The player made a stroke at a moved ball without replacing it",
        "9.4",
        THEME,
        "book.rule_09_wrong_spot:moved_ball_not_replaced",
        "wrong place failed to replace unaware did not played from where it rolled",
    ),
    Incident(
        "ball_put_back_when_not_allowed",
        "The player put back a ball that had to be played from its new spot",
        "9.3",
        THEME,
        "book.rule_09_wrong_spot:ball_put_back_when_not_allowed",
        "wind replaced wrong place wrongly put back lifted",
    ),
)
