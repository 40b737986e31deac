"""Situations for teaching: the scene, the Local Rules in force, the question."""

TEXTS: dict[str, str] = {
    "the_player": "the player",
    "scene.on_hole": "{player} plays hole {hole} of {course}, in {form}.",
    "scene.in_competition": "{player} plays a competition at {course}, in {form}.",
    "form.stroke_play": "stroke play",
    "form.match_play": "match play",
    "form.stableford": "Stableford",
    "form.maximum_score": "Maximum Score",
    "form.par_bogey": "Par/Bogey",
    "adopted": "Model Local Rule {code} is in force ({title}).",
    "not_adopted": "Model Local Rule {codes} is not in force.",
    "none_adopted": "None of these Model Local Rules is in force: {codes}.",
    "edition": "The Rules of {edition} applied.",
    "level.1": "easy",
    "level.2": "medium",
    "level.3": "hard",
    "title": "{number}. {level}",
    "ruling": "Ruling: {headline}",
    "rests_on": "It rests on: {citations}",
    "again": "The same again: marram {command} --seed {seed}",
}
