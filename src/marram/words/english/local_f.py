"""Words for the Model Local Rules of area F: abnormal course conditions and integral objects."""

PROVISIONS: dict[str, str] = {
    "F-2.1": "Where adopted: relief for an embedded ball only in ground cut to fairway height or less.",
    "F-5": "Where adopted: for a ball in the general area, free relief when an immovable obstruction on the line of play lies within two club-lengths of the green and of the ball.",
    "F-6": "Where adopted: a condition that it names gives no relief when it interferes with the stance only.",
    "F-7": "Where adopted: free relief from a seam of laid turf that the ball touches or that is in the way of the swing; the stance does not count, and all seams of one area are one.",
    "F-8": "Where adopted: cracks in ground cut to fairway height or less are ground under repair.",
    "F-9": "Where adopted: tree roots showing in ground cut to fairway height or less are ground under repair for a ball lying in such ground.",
    "F-10": "Where adopted: damage by the animals named is ground under repair in the general area.",
    "F-16": "Where adopted: a flooded bunker that is named is ground under repair in the general area for the round, and no bunker.",
    "F-17": "Where adopted: all roads and paths are immovable obstructions, also those without an artificial surface.",
    "F-18": "Where adopted: the movable objects named are treated as immovable obstructions.",
    "F-23": "Where adopted: a temporary immovable obstruction also gives free relief when it stands on the straight line between ball and hole, or within one club-length of doing so.",
}

NOTES: dict[str, str] = {
    "seams_count_as_one": "All seams of one patch of turf count as one: if any of them interferes after the drop, drop again as Rule 14.3c(2) says.",
    "bunker_is_general_area": "This bunker is general area today: the Rules on touching sand do not apply in it.",
    "named_object_stays": "Leave the object where it is; it may not be taken away.",
    "no_line_of_play_relief": "An obstruction that is only on the line of play gives no relief here.",
    "clear_of_line_of_play_too": "The nearest point must be clear of the obstruction for lie, stance, swing and line of play.",
    "move_along_the_arc": "Look for the nearest point at about the same distance from the hole, where the obstruction no longer stands between ball and hole, nor within one club-length of it.",
    "stand_outside_general_area": "Relief from a temporary immovable obstruction in a bunker, in a penalty area or on a green is not worked out here; apply the full text of the Local Rule.",
}
