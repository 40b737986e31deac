"""Incidents: the ball in motion was stopped or deflected."""

from marram.rules.incidents.incident import Incident

THEME = "The ball in motion was stopped or deflected"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "deflected_off_green",
        "A ball played from off the green accidentally hit a person, animal, equipment or other thing",
        "11.1b(1)",
        THEME,
        "book.rule_11_accidental_deflection:deflected_off_green",
        "rub of the green spectator trolley bag cart bird caddie own hit player himself buggy rake "
        "tree rebound in pocket another came to rest hood referee deer ricochet landed lodged "
        "clothing golf in flight opponent "
        "tee shot original provisional lying another player's ball",
    ),
    Incident(
        "putt_hit_something",
        "A ball played from the putting green accidentally hit something",
        "11.1b(2)",
        THEME,
        "book.rule_11_accidental_deflection:putt_hit_something",
        "putt hits ball marker flagstick caddie foot rake hole-liner animal another player hit on "
        "green collided collide two balls leaf towel insect beetle club putter own dog shoe struck at "
        "rest",
    ),
    Incident(
        "stroke_from_green_not_replayed",
        "A stroke from the green that had to be replayed was not: the player played on",
        "11.1b(2)",
        THEME,
        "book.rule_11_accidental_deflection:stroke_from_green_not_replayed",
        "replay replayed did not replay putt hole-liner caddie dog played from where it came to rest "
        "failed cancelled",
    ),
    Incident(
        "deliberately_deflected",
        "Somebody deliberately deflected or stopped a ball in motion",
        "11.2",
        THEME,
        "book.rule_11_deliberate_acts:deliberately_deflected",
        "stop ball kick catch concede placed bag backstop foot caught swatted hit moving stopped "
        "knocked away spectator left clubs opponent putt thrown as stuck out player own on purpose "
        "picked up intercepted",
    ),
    Incident(
        "helped_ball_in_motion",
        "Something was lifted, moved or altered while a ball was in motion",
        "11.3",
        THEME,
        "book.rule_11_deliberate_acts:helped_ball_in_motion",
        "lift rake divot loose impediment removed rolling tamped backstop bag out of the way "
        "flagstick another pressed down picked up leaf marker club",
    ),
)
