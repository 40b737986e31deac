"""What lies on a course, in the terms of the Rules' Definitions: kinds of mapped ground, and areas of the course.

The words of a kind stand under its value (:class:`marram.course.model.Kind`); an ending says where another is used.
"""

TEXTS: dict[str, str] = {
    "teeing_area": "tee",
    "fairway": "fairway",
    "putting_green": "putting green",
    "bunker": "bunker",
    "red_penalty_area": "red penalty area",
    "yellow_penalty_area": "yellow penalty area",
    "boundary": "boundary",
    "out_of_bounds": "out of bounds",
    "path": "path",
    "obstruction": "immovable obstruction",
    "barrier": "barrier",
    "integral_object": "integral object",
    "ground_under_repair": "ground under repair",
    "temporary_water": "temporary water",
    "no_play_zone": "no play zone",
    "dropping_zone": "dropping zone",
    "water": "water",
    "wetland": "wetland",
    "rough": "rough",
    "trees": "trees",
    "stake": "stake",
    "marking": "marking",
    "evacuation_point": "evacuation point",
    # Said of a place where a ball lies
    "path.underfoot": "path (immovable obstruction)",
    "barrier.underfoot": "wall, fence or the like",
    "named": "{ground}: {name}",
    # In a list of what can be drawn
    "boundary.drawn": "boundary (the course lies inside)",
    # On the map, where there is little room
    "red_penalty_area.label": "Red",
    "yellow_penalty_area.label": "Yellow",
    "no_play_zone.label": "No play",
    # Areas of the course, as they end a sentence
    "area.teeing_area": "in the teeing area",
    "area.general_area": "in the general area",
    "area.penalty_area": "in a penalty area",
    "area.bunker": "in a bunker",
    "area.putting_green": "on the putting green",
    "area.none": "out of bounds",
    "area.wrong_green": "on a wrong green, in the general area",
    "perhaps": "perhaps {where}",
    # The same as names
    "name.teeing_area": "the teeing area",
    "name.general_area": "the general area",
    "name.penalty_area": "a penalty area",
    "name.bunker": "a bunker",
    "name.putting_green": "the putting green",
    "name.none": "out of bounds",
    "name.wrong_green": "a wrong green (general area)",
}
