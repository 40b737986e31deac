"""Facts about Local Rules that make ground or small things abnormal course conditions (area F)."""

from marram.rules.engine.fact import DecidedBy, yes_no

ball_in_stacked_turf_face = yes_no(
    "ball_in_stacked_turf_face",
    "Is the ball embedded in the stacked turf face above a bunker?",
    help="A wall or face of turf sods, also where it is not grown over. The notice names the bunkers, or all.",
    source="F-2.2",
    decided_by=DecidedBy.MAP,
)
ground_tied_to_obstruction = yes_no(
    "ground_tied_to_obstruction",
    "Is the ground under repair joined to the road, path or other obstruction by its marking?",
    help="The white line ends at the obstruction, so that ground and obstruction touch.",
    source="F-3",
    decided_by=DecidedBy.MAP,
)
ground_marked_under_repair = yes_no(
    "ground_marked_under_repair",
    "Is the damaged ground marked, or named in the notice, as ground under repair?",
    help="Look for a white line or stakes, and read the notice.",
    source="Definitions: ground under repair",
    decided_by=DecidedBy.COMMITTEE,
)
declared_on_the_spot = yes_no(
    "declared_on_the_spot",
    "Does a referee or Committee member declare this unusual damage ground under repair?",
    help="For ground torn up by spectators, vehicles or rain, not for a divot hole or a bad lie. Decide it here.",
    source="F-4",
)
dung_of_animal_named = yes_no(
    "dung_of_animal_named",
    "Is it dung of a kind of animal that the Local Rule names?",
    help="For example geese, sheep or deer.",
    source="F-12",
    decided_by=DecidedBy.COMMITTEE,
)
clearly_hoof_damage = yes_no(
    "clearly_hoof_damage",
    "Can it be seen clearly that hooves made the damage?",
    help="In doubt it is no hoof damage.",
    source="F-13",
)
hoof_damage_relief_on_green = yes_no(
    "hoof_damage_relief_on_green",
    "Does the Local Rule give relief for a ball on the putting green too?",
    help="On the green the damage may be repaired anyway (Rule 13.1c(2)); read the notice.",
    source="F-13",
    decided_by=DecidedBy.COMMITTEE,
)
accumulation_named = yes_no(
    "accumulation_named",
    "Does the Local Rule name this hole and this kind of loose impediment?",
    help="For example fallen leaves on the 4th and 7th holes. A few leaves are no accumulation.",
    source="F-14",
    decided_by=DecidedBy.COMMITTEE,
)
ball_found_in_accumulation = yes_no(
    "ball_found_in_accumulation",
    "Has the ball been found?",
    help="Within three minutes of search.",
    source="F-14",
)
certain_in_accumulation = yes_no(
    "certain_in_accumulation",
    "Is it known or virtually certain (about 95 %) that it lies in the accumulation?",
    help="That leaves lie about is not enough; ask who saw the ball come down. It may as well lie in rough.",
    source="16.1e",
)
