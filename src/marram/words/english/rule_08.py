"""Words for Rule 8."""

PROVISIONS: dict[str, str] = {
    "8.1a": "A player must not improve the conditions affecting the stroke: the lie, the intended stance and swing, the line of play, or the relief area. A change that brings no potential advantage is no improvement.",
    "8.1a(1)": "Nothing growing, attached or fixed, and no tee-marker of the teeing area played from, may be moved, bent or broken to improve the conditions.",
    "8.1a(2)": "No loose impediment or movable obstruction may be put in position to improve the conditions, for example to build a stance.",
    "8.1a(3)": "The surface of the ground must not be altered to improve the conditions, for example by replacing or pressing down a divot.",
    "8.1a(4)": "Sand and loose soil must not be removed or pressed down to improve the conditions.",
    "8.1a(5)": "Dew, frost and water must not be removed to improve the conditions.",
    "8.1b": "Some actions are allowed in preparing for a stroke even if they improve the conditions.",
    "8.1b(1)": "Searching fairly for the ball, in a reasonable way, is allowed.",
    "8.1b(2)": "Removing loose impediments and movable obstructions, in a reasonable way, is allowed.",
    "8.1b(3)": "Marking, lifting and replacing a ball, in a reasonable way, is allowed.",
    "8.1b(4)": "The club may be grounded lightly right in front of or behind the ball, but not pressed down, and not in a bunker.",
    "8.1b(5)": "The feet may be placed firmly, digging in a reasonable amount.",
    "8.1b(6)": "A stance may be taken fairly, in the least intrusive way the place allows; a normal stance or swing is no right.",
    "8.1b(7)": "The stroke, and the backswing for a stroke that is then made, may bend or break what is in the way.",
    "8.1b(8)": "In the teeing area played from, growing things, the surface, sand, soil, dew, frost and water may be altered.",
    "8.1b(9)": "Once the ball has been played out of a bunker, the sand there may be smoothed to care for the course.",
    "8.1b(10)": "On the putting green sand and loose soil may be removed, and damage repaired.",
    "8.1b(11)": "A natural object may be moved to see whether it is loose; if it is not, it must stay attached and go back to where it was.",
    "8.1c": "An improvement can be undone before the stroke only where an object was moved or put in position; altered ground, sand, soil, dew, frost or water cannot be restored.",
    "8.1c(1)": "There is no penalty if the object moved or bent is put back before the stroke so that the improvement is gone; nothing else may be used in its place.",
    "8.1c(2)": "There is no penalty if the object put in position is taken away before the stroke so that the improvement is gone.",
    "8.1d": "Whether conditions that got worse after the ball came to rest may be restored depends on who or what worsened them.",
    "8.1d(1)": "What another person or an animal worsened may be restored as nearly as possible; if that is not easy, the ball may be placed on the nearest spot with like conditions, within one club-length, not nearer the hole, in the same area.",
    "8.1d(2)": "What the player's side, someone acting for it, natural forces or a falling natural object worsened must not be improved.",
    "8.2b": "A player must not alter other physical conditions on purpose to affect where the own ball may go, now or after a later stroke.",
    "8.2b Exception": "Caring for the course is no breach.",
    "8.3b": "A player must not, on purpose, improve or worsen the conditions for another player's stroke, or alter conditions to affect where another's ball may go.",
    "8.3b Exception": "Caring for the course is no breach.",
}

NOTES: dict[str, str] = {
    "may_restore_and_clean": "The conditions may be put right as nearly as possible; the ball may be marked, lifted, cleaned and replaced to do so.",
    "most_similar_conditions": "Choose the nearest spot where the conditions are most like the original ones.",
    "leave_conditions_as_they_are": "Leave the conditions as they are.",
    "loose_things_may_still_go": "Loose impediments and movable obstructions may still be taken away, and an object that the player moved may be put back where it was.",
}
