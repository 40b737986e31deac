"""How somebody tells it: facts about the Local Rule alternative to stroke and distance (Model Local Rule E-5)."""

TOLD: dict[str, str] = {
    "alternative_ball_dropped.yes": "A ball had been dropped under this Local Rule already.",
    "alternative_ball_dropped.no": "No ball had been dropped under this Local Rule yet.",
    "alternative_ball_in_area.yes": "It lay in the relief area: in the general area, between the two lines, not nearer the hole.",
    "alternative_ball_in_area.no": "It lay outside the relief area of the Local Rule.",
}
