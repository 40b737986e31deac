"""The pages of the desk and its JSON endpoints, one module each."""

from fastapi import APIRouter

from marram.desk.pages import (
    api,
    ball,
    case,
    hole_locations,
    map_api,
    map_editor,
    marking,
    settings,
    situation_api,
    start,
    together,
    what,
)

ROUTERS: tuple[APIRouter, ...] = (
    start.router,
    ball.router,
    what.router,
    case.router,
    together.router,
    settings.router,
    api.router,
    situation_api.router,
    map_api.router,
    map_editor.router,
    hole_locations.router,
    marking.router,
)
"""Every router of the desk."""

__all__ = ["ROUTERS"]
