"""Words for the Model Local Rules of area K: pace of play."""

PROVISIONS: dict[str, str] = {
    "K-1": "By this Local Rule each player of a group that finishes over the time limit and more than the starting interval behind the group in front is penalised.",
    "K-2": "By this Local Rule players of a group out of position are told, and timed stroke by stroke. A stroke over the time allowed is a bad time: for the first one stroke, for the second the general penalty, for the third disqualification.",
    "K-3": "In the 2019 list: groups have a set time for each hole, and a group over time and out of position is penalised on the scale of the policy. Since 2023: another scale for bad times, with a warning first (K-5 in the 2019 list).",
    "K-5": "By this Local Rule, until 2022, the first bad time brings a warning, the second one stroke, the third the general penalty and the fourth disqualification.",
    "K-4": "By this Local Rule groups are timed at checkpoints; a group that is late there and out of position is penalised on the scale of the policy.",
}

NOTES: dict[str, str] = {
    "without_policy_only_delay": "Without a pace of play policy only an unreasonable delay by a player is penalised (Rule 5.6a).",
    "both_time_and_position": "Both are needed: over the time, and out of position behind the group in front.",
    "tell_group_to_catch_up": "No penalty for this; tell the group to catch up.",
    "no_bad_time_untimed": "A stroke counts as a bad time only once the player has been told that the group is out of position and timed.",
    "tell_of_bad_time_first": "This bad time does not count. Tell the player of the earlier one now.",
    "bad_times_carry_over": "Tell the player at once. Bad times count on through the round, also if the group catches up.",
    "scale_of_notice_decides": "If the notice to players gives another scale of penalties or other times, apply that one.",
    "warn_now": "Tell the player or the group of the warning now, and write it down.",
}
