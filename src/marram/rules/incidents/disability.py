"""Incidents: players with disabilities."""

from marram.rules.incidents.incident import Incident

THEME = "Players with disabilities"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "blind_player",
        "Help for a player who is blind",
        "25.2",
        THEME,
        "book.rule_25_disability:blind_player",
        "aide coach guide vision sighted visually impaired blind golfer caddie",
    ),
    Incident(
        "amputee_player",
        "A player who is an amputee",
        "25.3",
        THEME,
        "book.rule_25_disability:amputee_player",
        "prosthesis prosthetic artificial limb anchoring one arm leg armed golfer",
    ),
    Incident(
        "mobility_device",
        "A player with an assistive mobility device",
        "25.4",
        THEME,
        "book.rule_25_disability:mobility_device",
        "wheelchair crutch cane aide",
    ),
    Incident(
        "wheeled_device_relief",
        "Relief for a player with a wheeled mobility device",
        "25.4m",
        THEME,
        "book.rule_25_disability:wheeled_device_relief",
        "wheelchair lateral bunker unplayable",
    ),
    Incident(
        "intellectual_disability",
        "A player with an intellectual disability",
        "25.5",
        THEME,
        "book.rule_25_disability:intellectual_disability",
        "aide supervisor",
    ),
    Incident(
        "delay_with_disability",
        "A player with a disability takes long",
        "25.6a",
        THEME,
        "book.rule_25_disability:delay_with_disability",
        "pace slow play delay wheelchair blind",
    ),
    Incident(
        "dropped_with_disability",
        "A player with a disability dropped the ball: was it from knee height?",
        "25.6b",
        THEME,
        "book.rule_25_disability:dropped_with_disability",
        "wheelchair blind drop height seated",
    ),
)
