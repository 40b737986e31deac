"""Requests held back: a slow network, without waiting for one."""

from collections.abc import Callable

from playwright.sync_api import Route


def holding(held: list[Route]) -> Callable[[Route], None]:
    """Return what holds requests back until they are let go."""

    def hold(route: Route) -> None:
        held.append(route)

    return hold
