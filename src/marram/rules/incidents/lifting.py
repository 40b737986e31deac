"""Incidents: marking, lifting, cleaning, replacing."""

from marram.rules.incidents.incident import Incident

THEME = "Marking, lifting, cleaning, replacing"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "ball_lifted",
        "A ball was lifted: who, why, marked, cleaned?",
        "14.1",
        THEME,
        "book.rule_14_lifting:ball_lifted",
        "mark marker coin rotated aligned cleaned wiped identify cracked caddie authority picked up "
        "lifted without marking not marked marked with a tee lifted for relief then changed mind put it back "
        "marked with a leaf twig natural object",
    ),
    Incident(
        "ball_to_be_replaced",
        "A ball has to be replaced: lie altered, or it will not stay",
        "14.2",
        THEME,
        "book.rule_14_replacing:ball_to_be_replaced",
        "replace spot lie altered sand divot rolls off nearest spot",
    ),
    Incident(
        "ball_put_back",
        "A ball was put back by a wrong person, in a wrong way or on a wrong spot",
        "14.2b",
        THEME,
        "book.rule_14_replaced_ball:ball_put_back",
        "replaced caddie dropped instead marker left in place wrong spot coin ball-mark logo turned rotated "
        "caddie replaced the ball the player had lifted",
    ),
)
