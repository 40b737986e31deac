"""Incidents: making a stroke, advice and help."""

from marram.rules.incidents.incident import Incident

THEME = "Making a stroke, advice and help"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "swing_in_doubt",
        "Was the swing a stroke?",
        "10.1",
        THEME,
        "book.rule_10_what_is_a_stroke:swing_made",
        "swing stopped checked downswing given up missed on purpose air shot whiff practice swing hit the ball "
        "branch caught club clubhead came off flew off head broke shaft snapped definition count counts as",
    ),
    Incident(
        "ball_struck_unfairly",
        "The ball was pushed, scooped, hit twice, or not hit with the clubhead",
        "10.1a",
        THEME,
        "book.rule_10_making_a_stroke:ball_struck",
        "double hit scrape scoop push spoon back of clubhead fairly struck twice billiard snooker "
        "pool cue backhanded left-handed shaft grip end whiff raked putt used handle putter "
        "raked into the hole",
    ),
    Incident(
        "club_anchored",
        "The club, a hand or a forearm was held against the body during the stroke",
        "10.1b",
        THEME,
        "book.rule_10_making_a_stroke:club_anchored",
        "anchoring long putter belly putter anchor point broomhandle chest forearm arm lock armlock",
    ),
    Incident(
        "stood_across_line",
        "The player stood across, or with a foot on, the line of play",
        "10.1c",
        THEME,
        "book.rule_10_making_a_stroke:stood_across_line",
        "croquet style straddle astride between legs putt putting",
    ),
    Incident(
        "moving_ball_played",
        "A stroke was made at a moving ball",
        "10.1d",
        THEME,
        "book.rule_10_making_a_stroke:moving_ball_played",
        "rolling falling off tee water wobbling oscillating hit putted moving still swung "
        "struck while rolling on the green on purpose",
    ),
    Incident(
        "advice_exchanged",
        "Advice was given, asked for or received",
        "10.2a",
        THEME,
        "book.rule_10_advice:advice_exchanged",
        "which club information distance touched bag partner team spectator what did you hit told tip "
        "coaching asked yardage looked into bag overheard gave swing shouted captain line of putt "
        "texted chip about wind how to play suggested phone iron "
        "moved towel another player's clubs opponent's",
    ),
    Incident(
        "line_of_play_shown",
        "The line of play was pointed out to the player",
        "10.2b(1)",
        THEME,
        "book.rule_10_other_help:line_of_play_shown",
        "show line putt touch green object towel bag blind shot caddie pointed flag touched flagstick "
        "hill stood marker post laser pointer shadow putter "
        "partner standing behind hole during stroke",
    ),
    Incident(
        "object_set_down_for_aim",
        "An object was set down, or a mark made, to help with aim, stance or swing",
        "10.2b(3)",
        THEME,
        "book.rule_10_other_help:object_set_down",
        "alignment rod club on ground self-standing putter ball-marker line aiming laid feet stick "
        "left standing tee sand dew",
    ),
    Incident(
        "caddie_behind_ball",
        "The caddie (or partner) stood behind the player on the line of play",
        "10.2b(4)",
        THEME,
        "book.rule_10_other_help:caddie_behind_ball",
        "restricted area alignment lining up stance back away lined stood behind standing extension putt",
    ),
    Incident(
        "helped_in_stroke",
        "The player had help or protection while making the stroke",
        "10.2b(5)",
        THEME,
        "book.rule_10_other_help:helped_in_stroke",
        "umbrella physical help shade sun rain wind distraction held branch caddie during blocked "
        "shielded shield ball stand standing shadow assistance supported",
    ),
    Incident(
        "second_caddie",
        "A second person caddied for the player",
        "10.3a(1)",
        THEME,
        "book.rule_10_caddies:second_caddie",
        "two caddies change caddie walking along changed swapped bag carrier parent caddy friend clubs "
        "finished round competitor player",
    ),
    Incident(
        "shared_caddie_in_breach",
        "A caddie shared by players broke a Rule: which of them gets the penalty?",
        "10.3a(2)",
        THEME,
        "book.rule_10_caddies:shared_caddie_in_breach",
        "shared caddie",
    ),
    Incident(
        "caddie_acted",
        "The caddie did something for the player: was it allowed?",
        "10.3b",
        THEME,
        "book.rule_10_caddies:caddie_acted",
        "caddie lift mark replace drop concede authorised rake clean picked up marked dropped raked "
        "ball bunker repaired unplayable removed leaf fairway",
    ),
)
