"""How somebody tells it: facts about mats that the Committee requires on the fairway (Model Local Rule E-12, from 2023)."""

TOLD: dict[str, str] = {
    "mat_required_here.yes": "The ball lay on grass at fairway height or less, where the Local Rule asks for a mat, and the stroke was not to be made with a putter.",
    "mat_required_here.no": "No mat was required there: the grass was longer, or the stroke was to be made with a putter.",
    "put_on_mat.yes": "{player} had lifted the ball and put it on a mat.",
    "put_on_mat.no": "{player} had not put the ball on a mat.",
    "on_mat.not_yet": "The ball still lay on the grass and had not been played.",
    "on_mat.rolled_off": "Placed on the mat, the ball rolled off for the first time.",
    "on_mat.rolled_off_again": "Placed on the mat, the ball rolled off for the second time.",
    "on_mat.moved_by_accident": "Ball or mat was moved by accident before the stroke.",
    "on_mat.played_without": "The ball was played from the grass, without a mat.",
}
