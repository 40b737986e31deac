"""What interferes with the ball, the stance or the swing, by its name: "it" would be the area or the Local Rule told before."""

_PLACES = {
    "accumulated_loose_impediments": ("the leaves", "on leaves"),
    "crack_in_ground": ("the crack", "on cracks"),
    "flooded_bunker": ("the water", ""),
    "ground_beside_obstruction": ("the ground under repair", ""),
    "movable_treated_as_immovable": ("the stake", ""),
    "obstruction_near_green": ("the sprinkler head", ""),
    "painted_line": ("the line", "on painted lines"),
    "road_or_path": ("the path", ""),
    "temporary_immovable_obstruction": ("the stand", ""),
    "tree_root": ("the root", "on roots"),
    "turf_seam": ("the seam", "on seams"),
    "unusual_damage": ("the damaged ground", ""),
}
"""By incident: what may interfere, and how the Local Rule that is about it is called."""
_THINGS = {
    "temporary_line_in_the_way/{}+temporary_line_thing.covered_trench": "the trench",
    "temporary_line_in_the_way/{}": "the cable",
}
"""The same where it is one of two things, by the key of its sentences."""


def _of(key: str, thing: str) -> dict[str, str]:
    """Return how interference by a thing is told."""
    first = thing[0].upper() + thing[1:]
    was = "were" if thing == "the leaves" else "was"
    it = "they" if thing == "the leaves" else "it"
    facts = {
        "interference.ball": f"The ball touched {thing}.",
        "interference.ball_above_ground": f"The ball lay off the ground, on {thing}.",
        "interference.stance_or_swing+only_stance_interference.yes": "",
        "interference.stance_or_swing": f"{first} interfered with the intended swing.",
        "interference.line_of_play": f"{first} {was} only on the line of play.",
        "interference.none": f"{first} interfered with neither ball, stance, swing nor line of play: {it} {was} only near.",
        "interference.out_of_bounds_only": f"Only a part of {thing} that lies out of bounds interfered.",
        "only_stance_interference.yes": f"{first} interfered with the intended stance only, not with the swing.",
        "only_stance_interference.no": f"{first} interfered with more than the stance.",
        "local_interference.ball": f"The ball touched {thing}.",
        "local_interference.swing": f"{first} interfered with the intended swing.",
        "local_interference.stance_only": f"{first} interfered with the intended stance only.",
        "local_interference.none": f"{first} interfered with neither ball, stance nor swing.",
        "condition_at_fairway_height.yes": f"The part of {thing} that interferes is in ground cut to fairway height or less too.",
        "condition_at_fairway_height.no": f"The part of {thing} that interferes is in longer grass.",
        "condition_named_without_stance.yes": f"As adopted, Model Local Rule F-6 covers {thing}.",
        "condition_named_without_stance.no": f"As adopted, Model Local Rule F-6 does not cover {thing}.",
    }
    return {key.format(fact): sentence for fact, sentence in facts.items()}


def _as_adopted(incident: str, about: str) -> dict[str, str]:
    """Return what a Local Rule says of the stance, called by what it is about, so that no other is meant."""
    if not about:
        return {}
    return {
        f"{incident}/stance_left_out.yes": f"As adopted, the Local Rule {about} leaves out interference with the stance only.",
        f"{incident}/stance_left_out.no": f"As adopted, the Local Rule {about} gives relief from interference with the stance too.",
    }


_STAND = {
    "stand_interference.physical+only_stance_interference.yes": "The stand did not interfere with the line of sight.",
    "stand_interference.physical": "The stand interfered with the intended swing, and not with the line of sight.",
    "stand_interference.line_of_sight": "The stand was only in the line of sight: on the straight line from ball to hole.",
    "stand_interference.both": "The stand interfered with the intended swing, and was in the line of sight as well.",
    "stand_interference.none": "The stand interfered with neither ball, stance nor swing, and was not in the line of sight.",
    "stand_within_reach.yes": "The ball could reasonably be struck far enough to reach the stand.",
    "stand_within_reach.no": "The ball could not reasonably be struck far enough to reach the stand.",
}
CASES: dict[str, str] = {
    # A ball in a bunker that is ground under repair as a whole is in it: the opening says so.
    "flooded_bunker/interference.ball+bunker_taken_out_of_play.yes": "",
    **{f"temporary_immovable_obstruction/{fact}": sentence for fact, sentence in _STAND.items()},
    **{
        key: sentence
        for incident, (thing, about) in _PLACES.items()
        for key, sentence in {**_of(incident + "/{}", thing), **_as_adopted(incident, about)}.items()
    },
    **{key: sentence for pattern, thing in _THINGS.items() for key, sentence in _of(pattern, thing).items()},
}
