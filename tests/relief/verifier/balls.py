"""Balls to ask about: at random where a Rule is met, and just beside every kind of edge. Same seed, same balls."""

import numpy as np
import shapely

from tests.relief.verifier.ball_places import Places
from tests.relief.verifier.question import Question

BALL = 0.04267 / 2
AREAS = {
    "penalty": "penalty_area",
    "bunker": "bunker",
    "green": "putting_green",
    "tee": "teeing_area",
    "general": "general_area",
}


class Balls(Places):
    """Questions about one course, drawn at random from a seed."""

    def __init__(self, file, name=None, seed=1):
        super().__init__(file, name, seed)
        self.sorts = {
            "in a penalty area": self.in_penalty_area,
            "in a bunker": self.in_bunker,
            "on a path": self.on_condition("path"),
            "at a building": self.at_building,
            "on repair or water": self.on_condition("repair", "puddle", "no_play"),
            "on a wrong green": self.on_wrong_green,
            "embedded": self.embedded,
            "unplayable": self.unplayable,
            "beside an edge": self.beside_edge,
            "lost (E-5)": self.lost,
            "out of bounds (E-5)": self.out_of_bounds,
            "movable obstruction": self.on_movable_obstruction,
            "dropping zone (E-1)": self.with_zone,
        }

    def questions(self, count):
        """Yield so many questions, the sorts in turn; what a map does not hold is left out."""
        made, turn, empty = 0, 0, 0
        names = list(self.sorts)
        while made < count and empty < 6 * len(names):
            name = names[turn % len(names)]
            turn += 1
            found = self.sorts[name](name)
            if found is None:
                empty += 1
                continue
            empty = 0
            made += 1
            yield found

    def asked(self, ground, sort, incident, ball, **more):
        """Return a question; ``None`` where the map leaves open in which area of the course the ball lies."""
        areas = ground.area_at(ball, BALL)
        facts = dict(more.pop("facts", {}))
        if len(areas) != 1:
            return None
        (area,) = areas
        if incident not in {"ball_near_boundary", "ball_not_found"}:
            if area is None:
                return None
            facts.setdefault("area_of_ball", AREAS[area])
        previous = self.previous(ground)
        places = {
            key: ground.flat.degrees([at])[0] for key, at in more.items() if key in {"crossing", "boundary"}
        }
        return Question(
            file=self.file,
            hole=ground.number,
            sort=sort,
            incident=incident,
            edition=self.random.choice((2019, 2023)),
            ball=tuple(map(float, ground.flat.degrees([ball])[0])),
            previous=tuple(map(float, ground.flat.degrees([previous])[0])),
            club_length=round(self.random.uniform(1.05, 1.2), 3),
            right_handed=self.random.random() < 0.7,
            local_rules=more.get("local_rules", ()),
            facts=facts,
            course=self.name,
            **{key: tuple(map(float, at)) for key, at in places.items()},
        )

    # --- the sorts

    def in_penalty_area(self, sort):
        """In a penalty area, marked or not; it crossed the edge near by, given to some centimetres."""
        ground = self.hole()
        joints = ground.joints("red", "yellow", "water")
        ball = self.inside(ground, ground.penalty.least.geometry, joints)
        if ball is None:
            return None
        same = ground.same_penalty_area(ball)
        edge = shapely.boundary(same.least.geometry)
        near = shapely.intersection(edge, shapely.Point(ball).buffer(25))
        at_joint = shapely.intersection(near, joints.buffer(2.0))
        if not at_joint.is_empty and self.random.random() < 0.5:
            near = at_joint
        lines = [
            one for one in shapely.get_parts(near) if one.geom_type == "LineString" and one.length > 0.05
        ]
        if not lines:
            return None
        at = self.random.choice(lines).interpolate(self.random.random(), normalized=True)
        crossing = np.array(at.coords[0])
        if ground.area_at(crossing) == {None} or self.at_boundary(ground, crossing):
            return None
        if self.random.random() < 0.3:
            crossing = crossing + np.array([self.random.uniform(-0.3, 0.3), self.random.uniform(-0.3, 0.3)])
        red = not ground.colour("red").empty and ground.colour("red").inside(ball[None])[0][0] > 0
        return self.asked(
            ground,
            sort,
            "ball_in_penalty_area",
            ball,
            crossing=crossing,
            facts={"penalty_area_colour": "red" if red else "yellow", "found_in_penalty_area": "yes"},
        )

    def at_boundary(self, ground, place):
        """Whether a place lies at the boundary, where water ends to be a penalty area but has no edge of its own."""
        return ground.bounds is not None and abs(ground.bounds.inside(place[None], 0.5)[0][0]) < 0.4

    def in_bunker(self, sort):
        """Unplayable in a bunker."""
        ground = self.hole()
        ball = self.inside(ground, ground.bunkers.least.geometry, ground.joints("bunker"))
        return None if ball is None else self.asked(ground, sort, "unplayable_ball", ball)

    def on_condition(self, *kinds):
        """On a condition of some kinds."""

        def made(sort):
            ground = self.hole()
            things = [one for one in self.course.of_kind(*kinds) if one.geometry.geom_type != "Point"]
            if not things:
                return None
            region = ground.region(things)
            ball = self.inside(ground, region.least.geometry, ground.joints(*kinds))
            if ball is None or ground.area_at(ball, BALL) & {None, "tee", "penalty"}:
                return None
            exists = "yes" if self.random.random() < 0.8 else "no"
            return self.asked(
                ground, sort, "abnormal_course_condition", ball, facts={"nearest_point_exists": exists}
            )

        return made

    def at_building(self, sort):
        """Beside a building or wall, so that it is in the way of stance or swing."""
        ground = self.hole()
        things = [
            one for one in self.course.of_kind("obstruction") if one.geometry.geom_type.endswith("Polygon")
        ]
        if not things:
            return None
        wall = ground.region(things).least.geometry
        band = shapely.difference(wall.buffer(self.random.uniform(0.03, 0.9)), wall)
        ball = self.inside(ground, band)
        if ball is None or ground.area_at(ball, BALL) & {None, "tee", "penalty"}:
            return None
        return self.asked(
            ground, sort, "abnormal_course_condition", ball, facts={"interference": "stance_or_swing"}
        )

    def on_wrong_green(self, sort):
        """On another hole's green, or just beside it."""
        ground = self.hole()
        greens = ground.wrong_greens
        if greens.empty:
            return None
        beside = self.random.random() < 0.25
        shape = greens.least.geometry
        ball = self.inside(ground, shapely.difference(shape.buffer(0.4), shape) if beside else shape)
        if ball is None or ground.area_at(ball, BALL) != {"general"}:
            return None
        how = "stance_only" if beside else "ball_on_it"
        return self.asked(ground, sort, "wrong_green", ball, facts={"wrong_green_interference": how})

    def embedded(self, sort):
        """Embedded in the general area, now and then right at the edge of something else."""
        ground = self.hole()
        ball = self.near_edge(ground) if self.random.random() < 0.5 else self.beside_play(ground)
        if ball is None or ground.area_at(ball, BALL) != {"general"}:
            return None
        behind = ball + (ball - ground.hole) / np.hypot(*(ball - ground.hole)) * BALL
        areas = ground.area_at(behind)
        if len(areas) != 1:
            return None
        facts = {"spot_behind_in_general_area": "yes" if areas == {"general"} else "no"}
        return self.asked(ground, sort, "embedded_ball", ball, facts=facts)

    def unplayable(self, sort):
        """Unplayable anywhere but in a penalty area."""
        ground = self.hole()
        ball = self.beside_play(ground)
        if ground.area_at(ball, BALL) & {None, "penalty", "tee"}:
            return None
        return self.asked(ground, sort, "unplayable_ball", ball)

    def beside_edge(self, sort):
        """Unplayable just beside an edge."""
        ground = self.hole()
        ball = self.near_edge(ground)
        if ball is None or ground.area_at(ball, BALL) & {None, "penalty", "tee"}:
            return None
        return self.asked(ground, sort, "unplayable_ball", ball)

    def lost(self, sort):
        """Lost on the course, with the alternative to stroke and distance."""
        ground = self.hole()
        ball = self.beside_play(ground)
        if ground.area_at(ball, BALL) & {None, "penalty"}:
            return None
        return self.asked(ground, sort, "ball_not_found", ball, local_rules=("E-5",))

    def out_of_bounds(self, sort):
        """Out of bounds, up to 25 m, with the alternative to stroke and distance."""
        ground = self.hole()
        if ground.bounds is None and ground.out.empty:
            return None
        for _ in range(12):
            ball = self.beside_play(ground) * 1.0
            ball = ball + np.array([self.random.uniform(-60, 60), self.random.uniform(-60, 60)])
            if ground.area_at(ball, BALL) == {None}:
                crossed = self.crossed(ground, ball)
                if crossed is None:
                    return None
                return self.asked(
                    ground, sort, "ball_near_boundary", ball, boundary=crossed, local_rules=("E-5",)
                )
        return None

    def on_movable_obstruction(self, sort):
        """On a movable obstruction, in any area of the course (Rule 15.2a)."""
        ground = self.hole()
        ball = self.near_edge(ground) if self.random.random() < 0.5 else self.beside_play(ground)
        if ball is None or None in ground.area_at(ball, BALL):
            return None
        return self.asked(ground, sort, "ball_in_or_on_movable_obstruction", ball)

    def with_zone(self, sort):
        """In a penalty area that a dropping zone serves."""
        if not self.course.of_kind("zone"):
            return None
        found = self.in_penalty_area(sort)
        if found is None:
            return None
        facts = {**found.facts, "dropping_zone_provided": "yes"}
        return Question(**{**found.__dict__, "facts": facts, "local_rules": ("E-1",)})
