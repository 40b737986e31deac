"""Words for Rule 23."""

PROVISIONS: dict[str, str] = {
    "23.2a": "In Four-Ball the lower score of the partners counts, and one of them must complete the hole; otherwise the side loses it, or in stroke play has no score.",
    "Clarification 23.2a/1": "If no ball is correctly holed in a match, the side whose player was last to pick up or to be out of the hole wins it.",
    "23.2b": "In Four-Ball stroke play the side returns one scorecard.",
    "23.2b(2)": "Each score that counts must be identified to the partner who made it; otherwise the side is disqualified. A wrong score matters only where it counts for the side.",
    "23.4": "One partner may represent the side. An arriving partner joins only between two holes; a stroke before that gets the general penalty.",
    "23.6": "Partners play in the order they think best.",
    "23.6 Exception": "A player whose next stroke was conceded and who plays on in a way that helps the partner costs the side the partner's score for the hole.",
    "23.8": "In Four-Ball a player does not watch from behind, on or near the line, while the partner plays, to learn something for the own next stroke. Rule 10.2b(4) limits standing there as well.",
    "23.7": "In Four-Ball partners may share clubs if they have no more than 14 together.",
    "23.9a": "A penalty normally falls only on the partner in breach.",
    "23.9a(1)": "Penalty strokes, or the general penalty in a match, normally count only for the partner in breach.",
    "23.9a(2)": "Both partners get the penalty for clubs, for a breach that helps the partner, and in a match for one that hurts an opponent.",
    "23.9a(2) Exception": "Playing a wrong ball is never treated as helping the partner or hurting an opponent.",
    "23.8a(1)": "Edition of 2019: a penalty normally counts only for the partner in breach.",
    "23.8a(2)": "Edition of 2019: both partners get the penalty for clubs, for a breach that helps the partner, and in a match for one that hurts an opponent.",
    "23.8a(2) Exception": "Edition of 2019: playing a wrong ball is never treated as helping the partner or hurting an opponent.",
    "23.8b": "Edition of 2019: for some Rules one partner's disqualification is the side's; for some both partners must be in breach; for all others that partner has no score for the hole.",
    "23.9b": "For some Rules one partner's disqualification is the side's; for some both partners must be in breach; for all others that partner has no score for the hole.",
}

NOTES: dict[str, str] = {
    "lower_score_counts": "The lower of the two scores is the side's score.",
    "score_of_one_partner_counts": "The score of the partner who completed the hole is the side's score; the other need not hole out.",
    "side_loses_hole": "The side loses the hole.",
    "side_wins_hole": "The side wins the hole.",
    "hole_is_tied": "The Committee should rule that the hole is tied.",
    "a_partner_holes_out": "One of the partners goes back and holes out.",
    "only_counting_score_matters": "No penalty: the score does not count for the side.",
    "join_on_next_hole": "The partner joins on the next hole; until then advice and help are allowed, but no stroke.",
    "both_partners_get_it": "It falls on the side: in stroke play the partner's scores get it as well, in a match the score is adjusted once.",
    "partner_has_no_score": "The player's score stands without penalty, but the partner's score for the hole cannot count.",
    "standing_behind_has_another_limit": "If the player stood there while the partner took the stance, rule on that as well, as for a caddie standing behind.",
    "partner_behind_in_2019": "The edition of 2019 has no such Rule for partners. Rule on it as a caddie standing behind the player (Rule 10.2b(4)), since a partner must not help in ways a caddie must not.",
    "look_up_list_of_rules": "Look up the list in this Rule: it names for which Rules the whole side is out, and for which both partners must be in breach.",
}
