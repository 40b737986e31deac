"""Which notes of a ruling still say something once the hole is lost: how to play the ball on is no longer told."""

from collections.abc import Iterable

_OF_PLAYING_ON = frozenset(
    {
        "after_relief_other_partner_plays",
        "both_provisionals_lost_too",
        "do_not_correct_wrong_place",
        "drop_not_counted",
        "finish_hole_with_other_ball",
        "first_ball_counts_second_ignored",
        "go_on_with_right_ball",
        "or_penalty_area_relief_at_once",
        "original_out_of_play",
        "then_other_partner_plays",
        "penalties_do_not_change_order",
        "place_on_estimated_spot",
        "play_out_from_right_place",
        "play_out_with_substituted_ball",
        "power_line_no_wrong_place",
        "provisional_lost_too",
        "putt_and_next_stroke_count",
        "putt_to_be_replayed_does_not_count",
        "right_partner_plays_from_first_wrong_spot",
        "second_ball_has_taken_three",
        "stroke_and_distance_is_added",
        "stroke_replayed_by_same_partner",
        "strokes_from_outside_do_not_count",
        "strokes_on_wrong_hole_do_not_count",
        "strokes_with_wrong_ball_void",
        "waiting_time_is_over",
    }
)
"""Notes on the player's own ball, or on the strokes of the hole: without meaning once it is lost (Rule 6.5)."""


def notes_left(notes: Iterable[str], *, lost: bool) -> tuple[str, ...]:
    """Return the notes that hold: all of them, or where the hole is lost those that are not about playing it on."""
    return tuple(note for note in notes if not (lost and note in _OF_PLAYING_ON))
