"""Incidents: free relief."""

from marram.rules.incidents.incident import Incident

THEME = "Free relief"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "abnormal_course_condition",
        "A path, other immovable obstruction, ground under repair, animal hole or temporary water interferes",
        "16.1",
        THEME,
        "book.rule_16_conditions:something_interferes",
        "cart path sprinkler casual water puddle rabbit hole GUR building cable immovable "
        "nearest point of relief french drain burrowing animal snow ice stance bridge drain cover "
        "two conditions at once another condition further relief "
        "heap of cut grass piled for removal pile of branches temporary water line of play",
    ),
    Incident(
        "dangerous_animal",
        "A dangerous animal is near the ball",
        "16.2",
        THEME,
        "book.rule_16_conditions:dangerous_animal",
        "snake bees wasps nest alligator fire ants bear danger",
    ),
    Incident(
        "embedded_ball",
        "The ball is embedded in the ground",
        "16.3",
        THEME,
        "book.rule_16_embedded:embedded_ball",
        "plugged pitch-mark soft ground bunker face rough fairway "
        "bounced out came to rest in another pitch-mark own under lip of sand",
    ),
    Incident(
        "lifted_to_see",
        "The player lifted the ball to see whether free relief is allowed",
        "16.4",
        THEME,
        "book.rule_16_embedded:lifted_to_see",
        "check embedded look cleaned not marked",
    ),
    Incident(
        "no_play_zone",
        "A no play zone: the ball lies in it, or it interferes with stance or swing",
        "2.4",
        THEME,
        "book.rule_16_no_play_zone:no_play_zone",
        "environmentally sensitive area protected flowerbed nursery prohibited flower bed ESA "
        "played from ground under repair where play is prohibited",
    ),
    Incident(
        "back_on_the_line_drop",
        "A ball dropped back on the line came to rest: is it in the relief area?",
        "14.3c",
        THEME,
        "book.back_on_the_line_drop:dropped_back_on_the_line",
        "rolled nearer drop again flagline relief area",
    ),
    Incident(
        "something_in_the_way",
        "Something is in the way: may it be moved, or is there free relief?",
        "2.3",
        THEME,
        "book.rule_02_course:something_in_the_way",
        "boundary fence wall stake integral object tree root branch",
    ),
    Incident(
        "ball_in_two_areas",
        "The ball touches two areas of the course",
        "2.2c",
        THEME,
        "book.rule_02_course:ball_in_two_areas",
        "edge fringe bunker penalty area green general area",
    ),
)
