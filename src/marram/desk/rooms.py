"""The rooms of the desk: every router of its pages and of its JSON endpoints."""

from fastapi import APIRouter

from marram.desk.book import book_pages, changes_pages
from marram.desk.cards import card_entry, card_list, card_page, walking
from marram.desk.competition import kept_page, settings
from marram.desk.course import map_api, map_editor, marking, mending
from marram.desk.day import now, officials_page, ready_page
from marram.desk.field import draw_page, entries_page
from marram.desk.holes import hole_locations, hole_sheet
from marram.desk.live import stream
from marram.desk.log import (
    beginning,
    day_page,
    log_pages,
    opinion_pages,
    player_page,
    recording,
    suspension_pages,
)
from marram.desk.matches import asked_page, bracket_page, match_list, match_page
from marram.desk.offline import arriving, web_app
from marram.desk.people import joining, me, people_page, signing_in
from marram.desk.publishing import pages as published_pages
from marram.desk.publishing import papers
from marram.desk.results import board_live, board_page, closing_pages, public_board, why_page
from marram.desk.rulings import (
    api,
    ball,
    case,
    drawings,
    explained,
    finding_api,
    flag,
    may,
    start,
    story_api,
    together,
    what,
)
from marram.desk.teaching import (
    briefing_page,
    class_pages,
    class_stream,
    examination_pages,
    examination_stream,
    examining_pages,
    kept_briefings,
    learn_page,
    quiz_page,
    strokes_page,
    tap_page,
)

ROUTERS: tuple[APIRouter, ...] = (
    start.router,
    ball.router,
    flag.router,
    what.router,
    case.router,
    together.router,
    may.router,
    drawings.router,
    explained.router,
    briefing_page.router,
    quiz_page.router,
    strokes_page.router,
    learn_page.router,
    tap_page.router,
    class_pages.router,
    class_stream.router,
    examination_pages.router,
    examination_stream.router,
    examining_pages.router,
    kept_briefings.router,
    book_pages.router,
    changes_pages.router,
    settings.router,
    kept_page.router,
    api.router,
    finding_api.router,
    story_api.router,
    map_api.router,
    map_editor.router,
    mending.router,
    hole_locations.router,
    hole_sheet.router,
    marking.router,
    beginning.router,
    player_page.router,
    opinion_pages.router,
    day_page.router,
    suspension_pages.router,
    recording.router,
    log_pages.router,
    now.router,
    ready_page.router,
    officials_page.router,
    entries_page.router,
    draw_page.router,
    stream.router,
    joining.router,
    signing_in.router,
    people_page.router,
    me.router,
    web_app.router,
    arriving.router,
    card_list.router,
    card_page.router,
    card_entry.router,
    walking.router,
    match_list.router,
    bracket_page.router,
    match_page.router,
    asked_page.router,
    board_page.router,
    why_page.router,
    closing_pages.router,
    public_board.router,
    board_live.router,
    published_pages.router,
    papers.router,
)
"""Every router of the desk."""

__all__ = ["ROUTERS"]
