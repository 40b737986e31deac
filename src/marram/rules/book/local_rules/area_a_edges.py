"""Model Local Rules, area A: where the edge runs along a wall, a road or a fence, and what lies beyond a road."""

from marram.rules.book.relief_options import offer, stroke_and_distance
from marram.rules.book.rule_18_lost import lost_or_out
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_course import (
    BoundaryEdge,
    BoundaryFeature,
    boundary_feature,
    boundary_for_this_hole,
    edge_by_notice,
    fence_named,
    road_named,
)
from marram.rules.ruling import Judgement, Ruling, no_penalty


@provision("Definitions: out of bounds")
def on_boundary_feature(case: Case) -> Ruling | Judgement:
    """A ball on or in a wall, road or fence of the boundary: the Local Rules say which side is its edge."""
    if case[boundary_feature] is BoundaryFeature.FENCE:
        return inside_boundary_fence(case)
    return on_wall_or_road(case)


@provision("A-3")
def inside_boundary_fence(case: Case) -> Ruling:
    """The course-side points of the posts are the edge; since 2023 a Local Rule may put it beyond the fence."""
    if case.played_since(EDITION_2023) and case.local_rule("A-3") and case[fence_named]:
        return no_penalty("A-3").under("Definitions: out of bounds").play_as_it_lies()
    return lost_or_out(case).under("Definitions: out of bounds")


@provision("A-2")
def on_wall_or_road(case: Case) -> Ruling | Judgement:
    """The Committee says which edge of a wall or road is the boundary; where it has not, it decides."""
    edge = case[edge_by_notice] if case.local_rule("A-2") else BoundaryEdge.NOT_NAMED
    if edge is BoundaryEdge.COURSE_SIDE:
        return lost_or_out(case).under("A-2")
    if edge is BoundaryEdge.FAR_SIDE:
        return no_penalty("A-2").under("Definitions: out of bounds").play_as_it_lies()
    out = offer(no_penalty("18.2b"), stroke_and_distance("18.2b"), may_play_as_it_lies=False)
    return Judgement(
        "Definitions: out of bounds",
        "committee",
        ("edge_not_defined", "edge_as_players_read_it"),
        (no_penalty("2.1").play_as_it_lies(), out),
    )


@provision("A-3")
def beyond_public_road(case: Case) -> Ruling:
    """Beyond a road that is out of bounds the course goes on, unless a Local Rule puts that out of bounds too."""
    if case.played_since(EDITION_2023):
        adopted, citation = case.local_rule("A-4") and case[boundary_for_this_hole], "A-4"
    else:
        adopted, citation = case.local_rule("A-3") and case[road_named], "A-3"
    if adopted:
        return lost_or_out(case).under(citation)
    return no_penalty("2.1").under("18.2a(2)").play_as_it_lies().note("only_boundary_of_notice")
