"""Words for the Model Local Rules of area F: abnormal course conditions and integral objects."""

PROVISIONS: dict[str, str] = {
    "F-2.1": "Where adopted: relief for an embedded ball only in ground cut to fairway height or less.",
    "F-2.2": "Where adopted: no relief for a ball embedded in the stacked turf face above a bunker.",
    "F-3": "Where adopted: ground under repair whose marking ends at a road, path or other obstruction is one abnormal course condition with it.",
    "F-4": "Where adopted: ground unusually damaged, for example by spectators or vehicles in the wet, is ground under repair if a referee or a member of the Committee declares it so.",
    "F-5": "Where adopted: for a ball in the general area, free relief when an immovable obstruction on the line of play lies within two club-lengths of the green and of the ball.",
    "F-6": "Where adopted: a condition that it names gives no relief when it interferes with the stance only.",
    "F-7": "Where adopted: free relief from a seam of laid turf that the ball touches or that is in the way of the swing; the stance does not count, and all seams of one area are one.",
    "F-8": "Where adopted: cracks in ground cut to fairway height or less are ground under repair.",
    "F-9": "Where adopted: tree roots showing in ground cut to fairway height or less are ground under repair for a ball lying in such ground.",
    "F-10": "Where adopted: damage by the animals named is ground under repair in the general area.",
    "F-11": "Where adopted: the player may treat an ant hill as a loose impediment or as ground under repair.",
    "F-12": "Where adopted: the player may treat dung of the animals named as a loose impediment or as ground under repair.",
    "F-13": "Where adopted: damage that can clearly be seen to come from hooves is ground under repair.",
    "F-14": "Where adopted: on the holes named, ground in the general area or in a bunker under a temporary accumulation of the loose impediments named is ground under repair.",
    "F-16": "Where adopted: a flooded bunker that is named is ground under repair in the general area for the round, and no bunker.",
    "F-17": "Where adopted: all roads and paths are immovable obstructions, also those without an artificial surface.",
    "F-18": "Where adopted: the movable objects named are treated as immovable obstructions.",
    "F-21": "Where adopted: painted lines and dots are ground under repair.",
    "F-22": "Where adopted: a stroke whose ball is known to have hit a temporary power line or cable hung above the ground is played again without penalty; a fixed cable gives relief in a penalty area too, and a cable trench under grass is ground under repair.",
    "F-23": "Where adopted: a temporary immovable obstruction also gives relief when it stands on the straight line between ball and hole, or within one club-length of doing so; in a bunker or penalty area without penalty inside it, or for one stroke outside.",
}

NOTES: dict[str, str] = {
    "seams_count_as_one": "All seams of one patch of turf count as one: if any of them interferes after the drop, drop again as Rule 14.3c(2) says.",
    "bunker_is_general_area": "This bunker is general area today: the Rules on touching sand do not apply in it.",
    "named_object_stays": "Leave the object where it is; it may not be taken away.",
    "no_line_of_play_relief": "An obstruction that is only on the line of play gives no relief here.",
    "clear_of_line_of_play_too": "The nearest point must be clear of the obstruction for lie, stance, swing and line of play.",
    "move_along_the_arc": "Look for the nearest point at about the same distance from the hole, where the obstruction no longer stands between ball and hole, nor within one club-length of it.",
    "joined_conditions_are_one": "Take relief from the ground and the obstruction together: the nearest point must be clear of both.",
    "conditions_one_by_one": "Ground and obstruction are two conditions here: take relief from one, and if the other then interferes, take relief again.",
    "ants_may_sting": "Ants may bite or sting: keep hands and feet out of the hill. Fire ants are dangerous animals, and relief from them may be taken anywhere under Rule 16.2.",
    "repair_hoof_damage_on_green": "On the putting green the player may also repair the damage, without delay (Rule 13.1c(2)).",
    "rising_part_is_not_replayed": "A stroke whose ball hit the part that rises from the ground is not played again.",
}
