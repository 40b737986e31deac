"""Incidents: the round."""

from marram.rules.incidents.incident import Incident

THEME = "The round"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "started_off_time",
        "A player did not start at the starting time",
        "5.3a",
        THEME,
        "book.rule_05_start_and_pace:started_off_time",
        "late early tee time five minutes arrived missed start not ready traffic overslept starting six four "
        "both players by minutes seconds",
    ),
    Incident(
        "unreasonable_delay",
        "A player unreasonably delayed play",
        "5.6a",
        THEME,
        "book.rule_05_start_and_pace:unreasonable_delay",
        "slow play pace waiting held up bad time warned forgot club went back phone halfway house search "
        "toilet refreshment undue hold",
    ),
    Incident(
        "stroke_took_long",
        "A player took more than 40 seconds for a stroke",
        "5.6b(1)",
        THEME,
        "book.rule_05_start_and_pace:stroke_took_long",
        "pace of play timing seconds slow bad time clock stopwatch 40 policy 50 60 minute "
        "takes too long over putt",
    ),
    Incident(
        "left_the_group",
        "A player did not stay in the group",
        "5.4",
        THEME,
        "book.rule_05_start_and_pace:left_the_group",
        "grouping changed alone three-ball joined other group swapped played holes separately",
    ),
    Incident(
        "practised_before_round",
        "A player practised on the course before or between rounds",
        "5.2",
        THEME,
        "book.rule_05_practice:practised_before_round",
        "practice putting green tested warm up chipped rolled ball morning range competition day stroke "
        "play match first tee rubbed play-off",
    ),
    Incident(
        "practised_during_round",
        "A player made a practice stroke during the round",
        "5.5",
        THEME,
        "book.rule_05_practice:practised_during_round",
        "practice ball chip putt hit another replayed again chipped waiting range swing courtesy suspended "
        "practised practising between holes foam plastic cone stopped second green just finished completed last near "
        "holing",
    ),
    Incident(
        "stopped_play",
        "A player stopped playing",
        "5.7a",
        THEME,
        "book.rule_05_suspension:stopped_play",
        "lightning thunder rain shelter injury walked in off quit storm ill left the course heat agreed "
        "discontinued because of danger "
        "withdrew did not finish the round",
    ),
    Incident(
        "played_after_suspension",
        "A player played on after play was suspended",
        "5.7b",
        THEME,
        "book.rule_05_suspension:played_after_suspension",
        "siren danger lightning darkness horn suspended hooter continued stroke suspension signal "
        "normal suspension signalled between holes teed off group",
    ),
    Incident(
        "resumed_off_time",
        "Play goes on: was the player back in time?",
        "5.7c",
        THEME,
        "book.rule_05_suspension:resumed_off_time",
        "resume restart after suspension resumption late early refused lightning",
    ),
    Incident(
        "ball_when_play_stopped",
        "What happens with the ball when play was stopped",
        "5.7d",
        THEME,
        "book.rule_05_suspension:ball_when_play_stopped",
        "lifted moved suspension resume suspended bunker marker gone blew replace another ball overnight "
        "wind during",
    ),
    Incident(
        "concession",
        "A stroke, a hole or the match was conceded",
        "3.2b",
        THEME,
        "book.rule_03_matches:concession",
        "gimme given picked up conceded that's good pick it claimed concede withdraw declined caddie "
        "misunderstanding misunderstood halved shorten holes match play putt withdrawn ball "
        "one partner of a foursomes or four-ball side conceded another ball lifted",
    ),
    Incident(
        "hole_or_match_result",
        "Who won the hole or the match, or are they tied?",
        "3.2a",
        THEME,
        "book.rule_03_match_result:hole_or_match_result",
        "halved half agreed tie agree level all square dormie extended extra holes sudden death winner result "
        "fewer strokes match play before teeing off",
    ),
    Incident(
        "play_off_not_completed",
        "Play-off in stroke play: somebody was disqualified, conceded or gave up",
        "3.3a",
        THEME,
        "book.rule_03_play_off:play_off_not_completed",
        "playoff play off tie sudden death extra holes conceded defeat disqualified withdrew winner order",
    ),
    Incident(
        "strokes_told",
        "A player gave the opponent a wrong number of strokes",
        "3.2d(1)",
        THEME,
        "book.rule_03_matches:strokes_told",
        "how many match play information lie asked score count miscounted refused answer opponent "
        "said he lay three really four put right before opponent played",
    ),
    Incident(
        "penalty_told",
        "A player did not tell the opponent about a penalty",
        "3.2d(2)",
        THEME,
        "book.rule_03_matches:penalty_told",
        "match play information hid silent tell inform report unaware",
    ),
    Incident(
        "match_score_wrong",
        "The players agreed on a wrong match score",
        "3.2d(3)",
        THEME,
        "book.rule_03_matches:match_score_wrong",
        "up down holes match play all square wrong score agreed next tee",
    ),
    Incident(
        "handicap_declared_wrong",
        "A player declared a wrong handicap in a match",
        "3.2c(1)",
        THEME,
        "book.rule_03_matches:handicap_declared_wrong",
        "net match strokes too high too low play off",
    ),
    Incident(
        "handicap_strokes_misapplied",
        "A handicap stroke was forgotten or wrongly applied in a match",
        "3.2c(2)",
        THEME,
        "book.rule_03_matches:handicap_strokes_misapplied",
        "net match stroke index shot allocation agreed result",
    ),
    Incident(
        "did_not_hole_out",
        "A player did not hole out",
        "3.3c",
        THEME,
        "book.rule_03_scorecard:did_not_hole_out",
        "picked up gimme tapped in conceded stroke play short putt ball lifting marking marked without",
    ),
    Incident(
        "hole_score_wrong",
        "A wrong hole score was returned, or none",
        "3.3b(3)",
        THEME,
        "book.rule_03_scorecard:hole_score_wrong",
        "scorecard lower higher signed wrong score too low forgot stroke penalty left out card "
        "unknown penalty close competition no missing signs four five "
        "marker wrote too few",
    ),
    Incident(
        "scorecard_fault",
        "The scorecard was not certified, returned late, or changed",
        "3.3b(2)",
        THEME,
        "book.rule_03_scorecard:scorecard_fault",
        "signature marker total points card signed unsigned not attested certify electronic late wrong "
        "addition missing knowingly added up returned sign did altered "
        "wrong scorecard handed in",
    ),
    Incident(
        "marker_changed_or_missing",
        "A player changed markers, or played holes without one",
        "3.3b",
        THEME,
        "book.rule_03_marker:marker_changed_or_missing",
        "scorekeeper alone left score kept certify half",
    ),
    Incident(
        "card_handicap_wrong",
        "The handicap on the card is missing or wrong in a net competition",
        "3.3b(4)",
        THEME,
        "book.rule_03_scorecard:card_handicap_wrong",
        "scorecard handicap box empty blank too high too low net no",
    ),
    Incident(
        "conduct",
        "A player misbehaved",
        "1.2",
        THEME,
        "book.rule_01_playing_by_the_rules:conduct",
        "code of conduct club thrown abuse language cheating threw throw swore temper damage green "
        "etiquette cheated misconduct spirit of the game slammed dishonest spectator sandbagging "
        "disqualify behaviour behavior distracted warning serious swearing bad foul",
    ),
    Incident(
        "ignored_a_rule",
        "A Rule or penalty was ignored, alone or by agreement",
        "1.3b(1)",
        THEME,
        "book.rule_01_playing_by_the_rules:ignored_a_rule",
        "waive gimme cheating agreed cheated gimmes mulligan agreement concede holes shorten match "
        "did not apply knowingly left out concealed opponent's breach let go overlooked match play putts",
    ),
    Incident(
        "other_person_acted",
        "Somebody else did what the player may not do",
        "1.3c(1)",
        THEME,
        "book.rule_01_playing_by_the_rules:other_person_acted",
        "spectator friend moved improved caddie gallery helped asked request consent branch father parent "
        "broke tree twig",
    ),
    Incident(
        "estimate_wrong",
        "A spot, line or distance the player estimated turned out wrong",
        "1.3b(2)",
        THEME,
        "book.rule_01_playing_by_the_rules:estimate_wrong",
        "video reasonable judgement measuring judgment crossing point misjudged wrong place television "
        "evidence replay",
    ),
)
