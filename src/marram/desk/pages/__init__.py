"""The pages of the desk and its JSON endpoints, one module each."""

from fastapi import APIRouter

from marram.desk.pages import api, ball, case, settings, start, what

ROUTERS: tuple[APIRouter, ...] = (
    start.router,
    ball.router,
    what.router,
    case.router,
    settings.router,
    api.router,
)
"""Every router of the desk."""

__all__ = ["ROUTERS"]
