"""How somebody tells it: facts about Local Rules that make ground or small things abnormal course conditions (area F)."""

TOLD: dict[str, str] = {
    "accumulation_named.yes": "The Local Rule names this hole and this kind of loose impediment.",
    "accumulation_named.no": "The Local Rule does not name this hole, or not this kind of loose impediment.",
    "ball_found_in_accumulation.yes": "The ball was found.",
    "ball_found_in_accumulation.no": "The ball was not found.",
    "ball_in_stacked_turf_face.yes": "The ball was embedded in the stacked turf face above a bunker.",
    "ball_in_stacked_turf_face.no": "The ball was not in the stacked turf face of a bunker.",
    "certain_in_accumulation.yes": "It is virtually certain that the ball lies in the accumulation.",
    "certain_in_accumulation.no": "It is not virtually certain that the ball lies in the accumulation.",
    "clearly_hoof_damage.yes": "It can be seen clearly that hooves made the damage.",
    "clearly_hoof_damage.no": "It cannot be seen clearly that hooves made the damage.",
    "declared_on_the_spot.yes": "A referee declared this unusual damage ground under repair.",
    "declared_on_the_spot.no": "Nobody on the Committee declared this damage ground under repair.",
    "dung_of_animal_named.yes": "It was dung of a kind of animal that the Local Rule names.",
    "dung_of_animal_named.no": "It was not dung of a kind of animal that the Local Rule names.",
    "ground_marked_under_repair.yes": "The damaged ground was marked, or named in the notice, as ground under repair.",
    "ground_marked_under_repair.no": "The damaged ground was neither marked nor named as ground under repair.",
    "ground_tied_to_obstruction.yes": "The marking joins the ground under repair to the road, path or other obstruction.",
    "ground_tied_to_obstruction.no": "The marking does not join the ground under repair to the obstruction.",
    "hoof_damage_relief_on_green.yes": "The Local Rule gives relief for a ball on the putting green too.",
    "hoof_damage_relief_on_green.no": "The Local Rule gives no relief for a ball on the putting green.",
}
