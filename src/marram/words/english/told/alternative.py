"""How somebody tells it: facts about the Local Rule alternative to stroke and distance (Model Local Rule E-5)."""

TOLD: dict[str, str] = {
    "alternative_ball_dropped.yes": "Under the Local Rule for an alternative to stroke and distance a ball had been dropped already.",
    "alternative_ball_dropped.no": "Under the Local Rule for an alternative to stroke and distance no ball had been dropped yet.",
    "alternative_ball_in_area.yes": "The dropped ball lay in the relief area: in the general area, between the two lines, not nearer the hole.",
    "alternative_ball_in_area.no": "The dropped ball lay outside the relief area of the Local Rule.",
}
