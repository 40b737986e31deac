"""The page templates of every room, made ready once."""

from functools import cache

from fastapi.templating import Jinja2Templates

from marram.desk.day.navigation import navigation
from marram.desk.live.happening import asked_here
from marram.desk.live.play import play_here
from marram.desk.log.handed import handed_here
from marram.desk.people.who import may, may_see, who_asks
from marram.desk.shell.assets import DESK, ROOMS, asset
from marram.desk.shell.signed_forms import SignedForms, signed_form
from marram.desk.shell.wording import WORDING, in_their_language
from marram.records.entry import new_ident


@cache
def templates() -> Jinja2Templates:
    """Return the page templates."""
    found = Jinja2Templates(directory=[DESK / room / "templates" for room in ROOMS])
    found.env.add_extension(SignedForms)
    found.env.globals |= {
        "signed_form": signed_form,
        "may": may,
        "may_see": may_see,
        "who_asks": who_asks,
        "navigation": navigation,
        "play_here": play_here,
        "asked_here": asked_here,
        "handed_here": handed_here,
    }
    found.env.globals |= WORDING
    found.env.globals["asset"] = asset
    found.env.globals["new_ident"] = new_ident
    found.env.finalize = in_their_language
    return found
